import type { learningCommands } from '../../core/contract/learning-commands.ts';
import { fail, ok } from '../../core/result.ts';
import type { Handlers } from '../handlers.ts';
import { getSettings, putSettings } from '../store/settings.ts';
import type { Context } from './context.ts';

type ReminderCommands = Extract<keyof typeof learningCommands, 'learning.remind' | 'learning.forgetReminder'>;

/** Most questions of the shop's own. */
export const mostReminders = 200;

/** What the shop asks before each quote, beside what is usually forgotten. */
export function reminderHandlers({ store, newId }: Context): Pick<Handlers, ReminderCommands> {
  return {
    'learning.remind': ({ text }) =>
      store.write((db) => {
        const { settings, revision } = getSettings(db);
        if (settings.reminders.length >= mostReminders)
          return fail({ code: 'costs', fault: { what: 'too-many-reminders', most: mostReminders } });
        const id = newId().slice(0, 40);
        const reminders = [...settings.reminders, { id, text, from: '' }];
        putSettings(db, { ...settings, reminders }, revision);
        return ok({ id });
      }),
    'learning.forgetReminder': ({ id }) =>
      store.write((db) => {
        const { settings, revision } = getSettings(db);
        const reminders = settings.reminders.filter((one) => one.id !== id);
        if (reminders.length === settings.reminders.length)
          return fail({ code: 'not-found', what: 'question' });
        putSettings(db, { ...settings, reminders }, revision);
        return ok({});
      }),
  };
}
