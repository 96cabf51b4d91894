import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { Context } from './context.ts';

/** What the program is, and saving a file where the shell can. */
export function appHandlers(context: Context): Pick<Handlers, 'app.info' | 'files.save'> {
  return {
    'app.info': () =>
      ok({
        version: context.version,
        shell: context.shell,
        today: context.today(),
        savesFiles: context.saveFile !== null,
      }),
    'files.save': async ({ fileName, base64 }) => {
      if (context.saveFile === null) return fail({ code: 'not-here', what: 'Saving through a dialog' });
      const saved = await context.saveFile(plainFileName(fileName), Buffer.from(base64, 'base64'));
      return saved.ok ? ok({ saved: saved.value }) : saved;
    },
  };
}

/** A file name that every system takes and that cannot point into another folder. */
export function plainFileName(name: string): string {
  const plain = name
    // oxlint-disable-next-line no-control-regex -- control characters are what is to be taken out
    .replace(/[\u0000-\u001f<>:"/\\|?*]+/g, '-')
    .replace(/^[.\s]+|[.\s]+$/g, '')
    .slice(0, 150);
  return plain === '' ? 'eavewright' : plain;
}
