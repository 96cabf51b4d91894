import {
  labourRateSchema,
  shopSettingsSchema,
  type LabourRate,
  type ShopSettings,
} from '../../core/pricing/shop-settings.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

export type StoredSettings = { readonly settings: ShopSettings; readonly revision: number };

/** The shop's settings with its labour rates; revision 0 means that nobody has touched the defaults yet. */
export function getSettings(db: ReadableDb): StoredSettings {
  const row = db.row(query.selectFrom('settings').selectAll().where('id', '=', 1));
  if (row === undefined) return { settings: shopSettingsSchema.parse({}), revision: 0 };
  const settings = shopSettingsSchema.parse(JSON.parse(row.json));
  return {
    settings: { ...settings, labour: { ...settings.labour, rates: listLabourRates(db) } },
    revision: row.revision,
  };
}

/** Writes the settings, labour rates to their own table, and answers the new revision. */
export function putSettings(db: WritableDb, settings: ShopSettings, before: number): number {
  const revision = before + 1;
  const { rates } = settings.labour;
  const json = JSON.stringify({ ...settings, labour: { ...settings.labour, rates: [] } });
  db.run(
    query
      .insertInto('settings')
      .values({ id: 1, revision, version: settings.version, json })
      .onConflict((conflict) =>
        conflict.column('id').doUpdateSet({ revision, version: settings.version, json }),
      ),
  );
  db.run(query.deleteFrom('labour_rates'));
  // The last word on a task holds, as it would in a list read from the top.
  const byTask = new Map(rates.map((rate) => [rate.task, rate]));
  let sequence = 0;
  for (const rate of byTask.values()) {
    sequence += 1;
    db.run(
      query
        .insertInto('labour_rates')
        .values({ task: rate.task, sequence, hours_per_unit: rate.hoursPerUnit, mark: rate.mark }),
    );
  }
  return revision;
}

function listLabourRates(db: ReadableDb): LabourRate[] {
  return db
    .rows(query.selectFrom('labour_rates').selectAll().orderBy('sequence'))
    .map((row) =>
      labourRateSchema.parse({ task: row.task, hoursPerUnit: row.hours_per_unit, mark: row.mark }),
    );
}
