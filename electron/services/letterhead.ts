import { readPicture } from '../../core/documents/picture.ts';
import type { Sheet } from '../../core/documents/sheet.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import type { WritableDb } from '../store/database.ts';
import { getLogo, putLogo } from '../store/logos.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';

/** The picture at the head of every paper. */
export function letterheadHandlers({
  store,
  today,
}: Context): Pick<Handlers, 'settings.logo' | 'settings.putLogo'> {
  return {
    'settings.logo': () => {
      const logo = store.read((db) => getLogo(db, getSettings(db).settings.letterhead.logoSha256));
      if (logo === undefined) return ok({ logo: null });
      const { mediaType, widthPx, heightPx, bytes } = logo;
      return ok({
        logo: { mediaType, widthPx, heightPx, base64: Buffer.from(bytes).toString('base64') },
      });
    },
    'settings.putLogo': async ({ base64 }) => {
      if (base64 === '') {
        return store.write((db) => {
          chooseLogo(db, '');
          return ok({});
        });
      }
      const bytes = Buffer.from(base64, 'base64');
      const picture = readPicture(bytes);
      if (!picture.ok) return picture;
      const { makePaper } = await import('../paper/make-paper.ts');
      try {
        // A picture that the printer cannot read must never stop a paper later.
        await makePaper(trial(today()), 'letter', { ...picture.value, base64: bytes.toString('base64') });
      } catch {
        return fail({ code: 'offer', fault: { what: 'picture-unreadable' } });
      }
      return store.write((db) => {
        chooseLogo(db, putLogo(db, picture.value, bytes));
        return ok({});
      });
    },
  };
}

function chooseLogo(db: WritableDb, logoSha256: string): void {
  const { settings, revision } = getSettings(db);
  putSettings(db, { ...settings, letterhead: { ...settings.letterhead, logoSha256 } }, revision);
}

/** A page that says nothing, to try a logo on. */
function trial(date: string): Sheet {
  return {
    kind: 'quote',
    title: '',
    fileName: 'trial',
    shop: { name: '', licence: '', address: '', contact: '' },
    job: { name: '', siteAddress: '', customer: '' },
    date,
    blocks: [],
  };
}
