import { jobFileSchema, type JobFile } from '../../core/job/job-file.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { makeEave } from '../survey/make-eave.ts';

/** Old houses that were made up for these tests. */

/** A long house of 60 ft: 31 rafters at 24 in. on centre, the end ones flush with the corners. */
export function longHouse() {
  const stations = Array.from({ length: 31 }, (_, index) => 0.75 + (index * 718.5) / 30);
  return makeEave(stations, { name: 'Long eave', lengthIn: 720 });
}

/**
 * A house whose every second rafter lies between two ceiling joists: full 2 in. rafters and joists of 1-7/8, spaced as they
 * came, 17 to 26 in.
 */
export function crowdedHouse() {
  const stations = [1, 20.5, 44.5, 62, 86.75, 109, 131.5, 153.5, 178.25, 199];
  return makeEave([], {
    name: 'Crowded eave',
    lengthIn: 200,
    rafterThicknessIn: 2,
    joistThicknessIn: 1.875,
    rafters: stations.map((readingIn, index) => ({
      id: `r${index + 1}`,
      readingIn,
      joist: index % 2 === 1 ? ('both' as const) : ('none' as const),
    })),
  });
}

/** A wall of 20 ft that stands 1 in. out in its middle. */
export function bowedHouse() {
  return makeEave([0.75, 24, 48, 72, 96, 120, 144, 168, 192, 216, 239.25], {
    name: 'Bowed eave',
    wallReadings: [
      { id: 'w1', stationIn: 0, outIn: 0 },
      { id: 'w2', stationIn: 120, outIn: 1 },
      { id: 'w3', stationIn: 240, outIn: 0 },
    ],
  });
}

/** A house of 30 ft with a wing of 14 ft at its right end: rafters at some 21 in., the two walls in the bend meet in a valley. */
export function bentHouse(): JobFile {
  const walls = [
    { id: 'north', lengthIn: 360, rafters: 18, ends: {} },
    {
      id: 'south',
      lengthIn: 168,
      rafters: 9,
      every: 21,
      ends: { right: { kind: 'inside-corner', meets: 'west' } },
    },
    {
      id: 'west',
      lengthIn: 168,
      rafters: 9,
      every: 21,
      ends: { left: { kind: 'inside-corner', meets: 'south' } },
    },
    { id: 'east', lengthIn: 168, rafters: 9, ends: {} },
  ];
  return jobFileSchema.parse({
    format: 'eavewright-job',
    version: 1,
    asOf: '2026-04-30',
    job: { name: 'Bent house' },
    survey: {
      version: 1,
      eaves: walls.map(({ id, lengthIn, rafters }) => ({
        id,
        name: `The ${id} eave`,
        lengthIn,
        pitchRisePer12: 6,
        heightAbovePlateIn: 5,
        rafters: Array.from({ length: rafters }, (_, index) => ({
          id: `r${index + 1}`,
          readingIn: 0.75 + (index * (lengthIn - 1.5)) / (rafters - 1),
        })),
      })),
    },
    design: {
      version: 1,
      eaves: walls.map(({ id, ends }) => ({
        eaveId: id,
        overhangIn: 16,
        extender: { section: '2x6' },
        fascia: { stock: { section: '2x8' } },
        blocks: { stock: { section: '2x6' } },
        ends,
      })),
    },
    priceList: [],
  });
}

/** One line for each tail: mark, station, gap to the one before, how it is held and why, header or filler. */
export function rowsOf({ extenders }: EaveLayout): readonly string[] {
  return extenders.map(({ mark, centreIn, method, side, because, headers, filler }, index) => {
    const before = extenders[index - 1];
    const gap = before === undefined ? '' : ` (${formatLength(centreIn - before.centreIn)})`;
    const held = method === 'block-hung' ? 'hung' : `${method} ${side}`;
    const [header] = headers;
    const made =
      header === undefined ? '' : `, ${header.mark} ${formatLength(inchesOf(header.lengthSixteenths))}`;
    const filled = filler === null ? '' : `, ${filler.mark} ${formatLength(filler.wantedIn)}`;
    return `${mark} ${formatLength(centreIn)}${gap} ${held}, ${because}${made}${filled}`;
  });
}
