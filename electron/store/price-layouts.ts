import { importLayoutSchema, type ImportLayout } from '../../core/pricing/import/layout.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** How a supplier's file was laid out when it last came in. */
export type PriceLayout = { readonly name: string; readonly usedOn: string; readonly layout: ImportLayout };

/** The remembered layouts, by name; one that no longer reads is left out, since it is only a convenience. */
export function listLayouts(db: ReadableDb): readonly PriceLayout[] {
  return db.rows(query.selectFrom('price_layouts').selectAll().orderBy('name')).flatMap((row) => {
    const layout = importLayoutSchema.safeParse(JSON.parse(row.record));
    return layout.success ? [{ name: row.name, usedOn: row.used_on, layout: layout.data }] : [];
  });
}

/** Remembers a layout under a name, in place of what was remembered under it. */
export function putLayout(db: WritableDb, name: string, usedOn: string, layout: ImportLayout): void {
  const row = { used_on: usedOn, record: JSON.stringify(layout) };
  db.run(
    query
      .insertInto('price_layouts')
      .values({ name, ...row })
      .onConflict((conflict) => conflict.column('name').doUpdateSet(row)),
  );
}

/** Forgets a layout; answers whether there was one. */
export function forgetLayout(db: WritableDb, name: string): boolean {
  return db.run(query.deleteFrom('price_layouts').where('name', '=', name)) === 1;
}
