import { describe, expect, test } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { Block } from '../../core/documents/sheet.ts';
import { soundResult } from '../job/example-job.ts';
import { prices, rakeJob, type RakeJob } from './rake-job.ts';

const priced: RakeJob = {
  priceList: prices,
  rakeDesign: { sheathing: { itemId: 'sheet' } },
  eaveDesign: { ends: { left: { kind: 'rake', meets: 'gable' } }, sheathing: { itemId: 'sheet' } },
};

function sheetOf(kind: Parameters<typeof makeSheet>[0], change: RakeJob = {}) {
  const job = rakeJob({ ...priced, ...change });
  const result = soundResult(job);
  return { sheet: makeSheet(kind, job, result), result };
}
const paragraphs = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : []));
const rakeParagraph = (change: RakeJob = {}) =>
  paragraphs(sheetOf('quote', change).sheet.blocks).find((text) => text.startsWith('West rake:'));

describe('the quote', () => {
  test('says what is built at the rake in plain words', () => {
    expect(rakeParagraph()).toMatch(
      /^West rake: \d+ lookouts of 2x4 No\.2 lumber, let into the old gable rafter and run back into the roof, and a 2x6 No\.2 rafter at the edge carry a new overhang of 1' 0" past the gable wall, measured level, up to the ridge\. A fascia of 1x8 primed covers the edge and meets that of the eave at the corner\. New roof sheathing panels cover it, back to the old deck\. A metal drip edge finishes it, set with the roofing\.$/,
    );
  });

  test('promises only what is counted: no sheathing, edge or fascia where none is wanted, no rake where none is built', () => {
    const bare = {
      rakeDesign: {
        kind: 'ladder',
        overhangIn: 9,
        sheathing: { kind: 'none' },
        dripEdge: false,
        fascia: { wanted: false },
      },
    };
    expect(rakeParagraph(bare)).toMatch(/^West rake: a ladder of 2x4 No\.2 lumber on the gable, and/);
    expect(rakeParagraph(bare)).not.toMatch(/sheathing|planks|drip edge|fascia/);
    expect(rakeParagraph({ rakeDesign: { kind: 'none' } })).toBeUndefined();
  });
});

describe('the takeoff', () => {
  test('draws the rake and lists each of its pieces with length and cuts', () => {
    const { sheet, result } = sheetOf('takeoff');
    const titles = sheet.blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing.title] : []));
    expect(titles).toContain('Rake R1, West rake');
    const cells = sheet.blocks.flatMap((block) =>
      block.kind === 'table' ? block.rows.map((row) => row.cells[0]) : [],
    );
    for (const { mark } of result.takeoff.pieces.filter(({ rakeId }) => rakeId === 'gable'))
      expect(cells).toContain(mark);
  });
});

test('the calculation sheet carries the checks of the rake with the others of its eave', () => {
  const { sheet } = sheetOf('calculation');
  expect(JSON.stringify(sheet.blocks)).toContain("Lookouts' backspan to overhang");
});

/** The rake's job with a closed eave. */
function closed(design: object = {}): RakeJob {
  const soffit = {
    id: 'soffit',
    category: 'sheet',
    description: 'Soffit',
    unit: 'each',
    widthIn: 48,
    lengthIn: 96,
    prices: [{ priceUsd: '40', observedOn: '2026-04-01' }],
  };
  return {
    priceList: [...prices, soffit],
    eaveDesign: {
      ends: { left: { kind: 'rake', meets: 'gable' } },
      soffit: { kind: 'level', itemId: 'soffit' },
    },
    design,
  };
}
const openBelow = (change: RakeJob) =>
  soundResult(rakeJob(change)).findings.filter(
    ({ topic, rakeId }) => topic === 'soffit-not-counted' && rakeId !== undefined,
  );

describe('a rake left open below', () => {
  test('beside a closed eave is told, and named in the quote as not in the price', () => {
    expect(openBelow(closed()).map(({ text }) => text)).toEqual([
      expect.stringMatching(/^West rake: its eave gets a closed soffit, and what closes the rake/),
    ]);
    expect(JSON.stringify(sheetOf('quote', closed()).sheet.blocks)).toContain(
      'Soffit under the overhang at the gable',
    );
  });

  test('is no question beside an open eave, nor once it is named or entered', () => {
    expect(openBelow({})).toEqual([]);
    expect(openBelow(closed({ exclusions: ['Soffit at the gable'] }))).toEqual([]);
  });
});
