import { describe, expect, test } from 'vitest';
import { uncountedSoffits } from '../../core/takeoff/uncounted-soffit.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { ventCosts } from '../../core/pricing/vent-costs.ts';
import { layOut, lineOf, smallJob, type SmallJob, smallTakeoff } from './small-job.ts';

const panel = {
  id: 'panel',
  category: 'sheet',
  description: '3/8 panel',
  unit: 'sheet',
  widthIn: 48,
  lengthIn: 96,
  thicknessIn: 0.375,
  prices: [{ priceUsd: '40', observedOn: '2026-04-01' }],
};
const vent = (rest: object) => ({
  id: 'vent',
  category: 'other',
  description: 'Vent',
  unit: 'each',
  prices: [{ priceUsd: '7.50', observedOn: '2026-04-01' }],
  ...rest,
});
const closed = (soffit: object = {}, rest: SmallJob = {}): SmallJob => ({
  priceList: [panel],
  ...rest,
  eaveDesign: { soffit: { kind: 'level', itemId: 'panel', ...soffit }, ...rest.eaveDesign },
});
/** The vents of one eave of 10 ft over an attic of so many square feet. */
const vented = (atticAreaSqFt: number | null, item: object, ventNetFreeSqIn: number, site: object = {}) =>
  closed(
    { ventItemId: 'vent', ventNetFreeSqIn },
    { priceList: [panel, vent(item)], survey: { site: { atticAreaSqFt, ...site } } },
  );

const quantityOf = (change: SmallJob, id: string) => lineOf(smallTakeoff(change), id).quantity;
const lacksOf = (change: SmallJob) => smallTakeoff(change).lacks.map(problemSentence);
const findingsOf = (change: SmallJob) => {
  const job = smallJob(change);
  return uncountedSoffits(job, layOut(job)).map(({ topic, text }) => [topic, text]);
};

const costOf = (change: SmallJob) => {
  const { drafts, lacks } = ventCosts(smallJob(change), lineOf(smallTakeoff(change), 'vents-vent'));
  return { cost: drafts.map(({ line }) => [line.quantity, line.unit, line.costUsd]), lacks };
};

describe('a level soffit', () => {
  const takeoff = smallTakeoff(closed());

  test('is as wide as the overhang behind the fascia and as long as the eave: 16 in. by 10 ft', () => {
    const line = lineOf(takeoff, 'soffit-panel');
    // 16 x 120 / 144 = 13.33 SF; panels of 8 and 2 ft, two rips of 16 in. from one sheet.
    expect([line.phase, line.quantity, line.unit]).toEqual(['Soffit', '13.33', 'SF']);
    expect(line.need).toMatchObject({ kind: 'sheets', itemId: 'panel', sheets: 1 });
  });

  test('stands on a ledger along the wall and a nailer from it to each tail', () => {
    expect(quantityOf(closed(), 'ledger-2x4')).toBe('10');
    const nailers = takeoff.pieces.filter(({ use }) => use === 'soffit-nailer');
    // 16 less the 1-1/2 of the ledger.
    expect(nailers.map(({ mark, lengthSixteenths }) => [mark, lengthSixteenths / 16])).toEqual(
      [1, 2, 3, 4, 5].map((number) => [`A-N0${number}`, 14.5]),
    );
    const without = smallTakeoff(closed({ ledger: { wanted: false } })).pieces;
    expect(without.find(({ use }) => use === 'soffit-nailer')?.lengthSixteenths).toBe(16 * 16);
    expect(without.some(({ use }) => use === 'ledger')).toBe(false);
  });

  test('takes 6d nails across each tail and joint and along the ledger between them, counted by hand', () => {
    // Tails at 13-1/2, 37-1/2, 61-1/2, 85-1/2, 109-1/2 (on the right of rafters 1-1/2 thick). Panels joint on the fourth.
    // Across 16 in. at 6 in.: ceil(16 / 6) + 1 = 4; 5 tails and 1 joint: 24. Along the ledger: 13.5 in. to the first tail
    // ceil(13.5 / 6) = 3 - 0 -> 4 - 1 = 3; four gaps of 24 in.: 5 - 2 = 3 each; 10.5 in. at the end: 3 - 1 = 2. 3 + 12 + 2 = 17.
    expect(lineOf(takeoff, 'nails-6d-common-galvanized').quantity).toBe('41');
    const sub = { fascia: { stock: { section: '1x8' }, subFascia: { wanted: true } } };
    expect(quantityOf(closed({}, { eaveDesign: sub }), 'nails-6d-common-galvanized')).toBe('58');
  });

  test('nails its ledger at each stud and its nailers at both ends', () => {
    const parts = lineOf(takeoff, 'nails-16d-common').madeOf;
    // Studs at 16 in. along 120: 9 of 2; nailers 5 x 2 x 2.
    expect(parts.find(({ label }) => label.includes('soffit ledger'))?.value).toBe('18 nails');
    expect(parts.find(({ label }) => label.includes('soffit nailers'))?.value).toBe('20 nails');
  });

  test('is worked by the foot', () => {
    expect(quantityOf(closed(), 'labour-soffit')).toBe('1');
    expect(quantityOf(closed(), 'labour-soffit-framing')).toBe('0.7');
  });

  test('follows the longest tail of a bowed wall, and tells how narrow it gets', () => {
    const bowed = closed(
      {},
      {
        eave: {
          wallReadings: [
            { id: 'a', stationIn: 0, outIn: 0 },
            { id: 'b', stationIn: 120, outIn: 1 },
          ],
        },
      },
    );
    const own = layOut(smallJob(bowed))[0]?.extenders.map(({ overhangLevelIn }) => overhangLevelIn) ?? [];
    expect(Math.max(...own) - Math.min(...own)).toBeCloseTo(0.8, 3);
    const line = lineOf(smallTakeoff(bowed), 'soffit-panel');
    expect(Number(line.quantity)).toBeCloseTo((Math.max(...own) * 120) / 144, 2);
    expect(line.madeOf[0]?.label).toContain('where it is narrowest');
  });
});

describe('a sloped soffit', () => {
  test('lies under the tails: 16 x 1.118 wide, on neither ledger nor nailers', () => {
    const takeoff = smallTakeoff(closed({ kind: 'sloped' }));
    expect(lineOf(takeoff, 'soffit-panel').quantity).toBe('14.91');
    expect(takeoff.pieces.some(({ use }) => use === 'ledger' || use === 'soffit-nailer')).toBe(false);
  });
});

describe('a soffit that is not counted', () => {
  test('says so while no item is chosen for it, and no line of it stands', () => {
    const change = closed({ itemId: '' });
    expect(findingsOf(change).map(([topic]) => topic)).toEqual(['soffit-not-counted']);
    expect(smallTakeoff(change).lines.some(({ phase }) => phase === 'Soffit')).toBe(false);
    expect(findingsOf(closed())).toEqual([]);
    expect(findingsOf(closed({ kind: 'open' }))).toEqual([]);
  });

  test('is counted in ordinary sheets and named where its item cannot be bought', () => {
    expect(lacksOf(closed({ itemId: 'gone' }))).toContain(
      'Soffit of Eave A (Wall 1): "gone" is not on the price list. Choose another sheet in Design.',
    );
    expect(lacksOf(closed({}, { priceList: [{ ...panel, retired: true }] }))).toContain(
      'Soffit of Eave A (Wall 1): "3/8 panel" is not bought any more. Choose another sheet in Design.',
    );
    expect(quantityOf(closed({ itemId: 'gone' }), 'soffit-panels')).toBe('13.33');
  });

  test('is not told on an eave whose tails stay open', () => {
    expect(
      smallTakeoff({ eaveDesign: { soffit: { kind: 'open', itemId: 'panel' } } }).lines.map(({ id }) => id),
    ).not.toContain('soffit-panels');
  });
});

describe('vents', () => {
  test('are as many as reach the net free area: 150 sq ft at 1/150 and half at the eaves want 72 sq in.', () => {
    const change = vented(150, {}, 26);
    expect(lineOf(smallTakeoff(change), 'vents-vent')).toMatchObject({
      phase: 'Soffit',
      quantity: '3',
      unit: 'each',
      need: { kind: 'vents', itemId: 'vent', count: 3, lengthFt: null },
    });
    expect(quantityOf(change, 'labour-soffit-vents')).toBe('0.45');
    expect(quantityOf(vented(150, {}, 24), 'vents-vent')).toBe('3');
    expect(quantityOf(vented(150, {}, 23.9), 'vents-vent')).toBe('4');
  });

  test('in strips run as far as they are needed, and are bought in whole pieces or by the foot', () => {
    // 72 / 9 = 8 ft.
    expect(lineOf(smallTakeoff(vented(150, { lengthIn: 48 }, 9)), 'vents-vent')).toMatchObject({
      quantity: '8',
      unit: 'LF',
      need: { count: 2, lengthFt: null },
    });
    expect(lineOf(smallTakeoff(vented(150, { unit: 'LF' }, 9)), 'vents-vent').need).toMatchObject({
      lengthFt: '8',
    });
  });

  test('in strips end with the soffit, and what is short is told', () => {
    const change = vented(300, { unit: 'LF' }, 9);
    expect(quantityOf(change, 'vents-vent')).toBe('10');
    expect(findingsOf(change)).toEqual([
      ['vents', expect.stringMatching(/gives 90 of the 144 sq in\. asked of this eave/)],
    ]);
  });

  test('follow the share at the eaves that is stated', () => {
    expect(quantityOf(vented(150, {}, 26, { eaveVentShare: 1 }), 'vents-vent')).toBe('6');
    expect(quantityOf(vented(150, {}, 26, { ventRatio: '1/300' }), 'vents-vent')).toBe('2');
  });

  test('are asked for where none is chosen and the attic is known, until they are excluded', () => {
    const none = closed({}, { survey: { site: { atticAreaSqFt: 150 } } });
    expect(findingsOf(none)).toEqual([['vents', expect.stringMatching(/^No vent is chosen.*72 sq in\./)]]);
    expect(findingsOf({ ...none, design: { exclusions: ['Vents by others'] } })).toEqual([]);
  });

  test('say what is missing to count them', () => {
    expect(lacksOf(vented(null, {}, 26))).toContain(
      'Vents of Eave A (Wall 1): how many are needed follows from the level area of the vented attic. Enter it in the survey.',
    );
    expect(lacksOf(vented(150, {}, 0))).toContain(
      'Vents of Eave A (Wall 1): enter the net free area of one, or of one foot of strip, as its maker states it, in Design.',
    );
    expect(lacksOf(vented(150, { category: 'edge' }, 26))).toContain(
      'Vents of Eave A (Wall 1): "Vent" is no vent. Choose one in Design that stands under Other on the price list.',
    );
    expect(lacksOf(vented(150, { retired: true }, 26))).toContain(
      'Vents of Eave A (Wall 1): "Vent" is not bought any more. Choose another vent in Design.',
    );
  });

  test('cost each, or by the foot', () => {
    expect(costOf(vented(150, {}, 26))).toEqual({ cost: [['3', 'each', '22.50']], lacks: [] });
    expect(costOf(vented(150, { unit: 'LF' }, 9))).toEqual({ cost: [['8', 'LF', '60.00']], lacks: [] });
    expect(costOf(vented(150, { lengthIn: 48 }, 9)).cost).toEqual([['2', 'each', '15.00']]);
    expect(costOf(vented(150, { unit: 'box' }, 26)).lacks).toMatchObject([{ code: 'unit-does-not-fit' }]);
    expect(costOf(vented(150, { prices: [] }, 26)).lacks).toMatchObject([{ code: 'no-price' }]);
  });
});
