import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { CuttingProblem } from '../../core/cutting/cut-plan-types.ts';
import type { Sixteenths } from '../../core/units/sixteenths.ts';

/** A problem whose least cost is known. [cents] */
export type KnownInstance = { readonly name: string; readonly problem: CuttingProblem; readonly opt: number };

const stockFile = z.object({
  instances: z.array(
    z.object({
      name: z.string(),
      stock: z.array(z.object({ len: z.number(), cost: z.number(), max: z.number().nullable() })),
      items: z.array(z.tuple([z.number(), z.number()])),
      opt: z.number(),
    }),
  ),
});

const binFile = z.object({
  instances: z.array(
    z.object({
      name: z.string(),
      cap: z.number(),
      items: z.array(z.tuple([z.number(), z.number()])),
      opt: z.number(),
    }),
  ),
});

/**
 * Reads instances with known optima, whole units, kerf already in the lengths: every `yard*.json` of a folder
 * (`instances: [{ name, stock: [{ len, cost, max }], items: [[len, demand]], opt }]`) and every `falkenauer*.json`
 * (`instances: [{ name, cap, items, opt }]`: bins of one capacity, each of which counts for a cent).
 */
export function readInstances(
  directory: string,
): readonly (readonly [set: string, instances: readonly KnownInstance[]])[] {
  return readdirSync(directory)
    .toSorted()
    .flatMap((file) => {
      const read = (): unknown => JSON.parse(readFileSync(join(directory, file), 'utf8'));
      if (/^yard.*\.json$/.test(file))
        return [
          [
            file,
            stockFile.parse(read()).instances.map(({ name, stock, items, opt }) => ({
              name,
              opt,
              problem: problemOf(stock, items),
            })),
          ] as const,
        ];
      if (/^falkenauer.*\.json$/.test(file))
        return [
          [
            file,
            binFile.parse(read()).instances.map(({ name, cap, items, opt }) => ({
              name,
              opt,
              problem: problemOf([{ len: cap, cost: 1, max: null }], items),
            })),
          ] as const,
        ];
      return [];
    });
}

function problemOf(
  stock: readonly { readonly len: number; readonly cost: number; readonly max: number | null }[],
  items: readonly (readonly [length: number, demand: number])[],
): CuttingProblem {
  return {
    stock: { section: '2x6', grade: '' },
    items: items.flatMap(([length, demand], kind) =>
      Array.from({ length: demand }, (_, index) => ({
        mark: `${kind}-${index}`,
        lengthSixteenths: length as Sixteenths,
      })),
    ),
    lengths: stock.map(({ len, cost, max }, index) => ({
      itemId: `L${len}-${index}`,
      lengthSixteenths: len as Sixteenths,
      priceCents: cost,
      ...(max === null ? {} : { available: max }),
    })),
    kerfSixteenths: 0 as Sixteenths,
    endTrimSixteenths: 0 as Sixteenths,
  };
}
