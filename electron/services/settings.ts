import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { canonicalJson } from '../store/canonical-json.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';
import { letterheadHandlers } from './letterhead.ts';

/** The shop's settings. */
export function settingsHandlers(
  context: Context,
): Pick<Handlers, 'settings.get' | 'settings.save' | 'settings.logo' | 'settings.putLogo'> {
  return {
    ...letterheadHandlers(context),
    'settings.get': () => ok(context.store.read(getSettings)),
    'settings.save': ({ settings, baseRevision }) =>
      context.store.write((db) => {
        const stored = getSettings(db);
        if (stored.revision === baseRevision) {
          return ok({ revision: putSettings(db, settings, baseRevision) });
        }
        // The same save once more, because its answer was lost on the way.
        return canonicalJson(stored.settings) === canonicalJson(settings)
          ? ok({ revision: stored.revision })
          : fail({ code: 'changed-elsewhere', what: 'settings' });
      }),
  };
}
