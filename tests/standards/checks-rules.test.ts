import { describe, expect, test } from 'vitest';
import { ratedPanels } from '../../core/checks/data/panel-ratings.ts';
import { checkOf, type Change } from '../checks/checked-job.ts';

const heelOf = (heelIn: number) => ({
  eave: { pitchRisePer12: 12, heightAbovePlateIn: 5.5 * Math.SQRT2 - heelIn },
});

const supportOf = (section: string) => outcome('lateral-support', { eaveDesign: { extender: { section } } });

const backspanVerdict = (backspanRatio: number) => outcome('backspan', { eaveDesign: { backspanRatio } })[2];

const panelNailsAt = (sheathingSpacingIn: number) =>
  outcome('sheathing-nails', { settings: { fastening: { sheathingSpacingIn } } })[2];

const ventedBy = (ventRatio: string) => checkOf('ventilation', { site: { atticAreaSqFt: 1500, ventRatio } });

const lotLineAt = (lotLineIn: number) =>
  checkOf('lot-line', { eave: { lotLineIn }, eaveDesign: { overhangIn: 24 } });

const dropLimit = (eave: object) => outcome('service-drop', { eave: { heightAbovePlateIn: 5, ...eave } })[1];

/** Number, limit and verdict of a check. */
function outcome(check: string, change: Change = {}) {
  const { value, limit, verdict } = checkOf(check, change);
  return [value?.number ?? null, limit?.number ?? null, verdict] as const;
}
/** A 6/12 roof whose height above plate leaves a seat of 3-1/2 in. under a 2x6: heel 1.75, so 6.149 - 1.75. */
const seatOfPlate = {
  eave: { pitchRisePer12: 6, heightAbovePlateIn: 5.5 * Math.hypot(1, 0.5) - 1.75, plateWidthIn: 3.5 },
};

describe('the notch over the plate, 2x6 at 6/12 with a 3-1/2 in. seat', () => {
  test('is deeper than a quarter of the depth', () => {
    // Worked by hand: 3.5 sin t = 1.565 against 5.5 / 4 = 1.375. IRC R802.7.1, as seen on secondary pages.
    const [deep, quarter, verdict] = outcome('notch', { ...seatOfPlate, design: { notchRule: 'quarter' } });
    expect(deep).toBeCloseTo(1.565, 3);
    expect(quarter).toBe(1.375);
    expect(verdict).toBe('beyond');
  });

  test('is deeper than a sixth', () => {
    // 5.5 / 6 = 0.917. IRC R802.7.1, as seen on secondary pages.
    const [, sixth, verdict] = outcome('notch', { ...seatOfPlate, design: { notchRule: 'sixth' } });
    expect(sixth).toBeCloseTo(0.9167, 4);
    expect(verdict).toBe('beyond');
  });

  test('leaves 3.935 in., more than the 3-1/2 that a cantilevered portion of 24 in. or less needs', () => {
    // IRC R802.7.1.1, as seen in transcription: 5.5 - 1.565.
    const [left, least, verdict] = outcome('notch', { ...seatOfPlate, design: { notchRule: 'remaining' } });
    expect(left).toBeCloseTo(3.935, 3);
    expect(least).toBe(3.5);
    expect(verdict).toBe('within');
  });

  test('is for an engineer where the overhang is more than 24 in.', () => {
    expect(checkOf('notch', { ...seatOfPlate, eaveDesign: { overhangIn: 24.25 } }).verdict).toBe(
      'needs-engineer',
    );
    expect(checkOf('notch', { ...seatOfPlate, eaveDesign: { overhangIn: 24 } }).verdict).toBe('within');
  });

  test('is shown by all three readings whatever rule is picked, and not judged while none is', () => {
    const none = checkOf('notch', { ...seatOfPlate, design: { notchRule: null } });
    expect(none).toMatchObject({ verdict: 'not-covered', missingField: 'design.notchRule', ratio: null });
    expect(none.why.map(({ label }) => label)).toEqual([
      'Square to the slope',
      'Plumb',
      'Left above the notch',
    ]);
  });

  test.each([
    // Seats whose notch is just a quarter of 5-1/2 in.: worked by hand, 1.375 / sin t. [pitch, seat]
    [4, 4.35],
    [6, 3.07],
    [12, 1.94],
  ])('at %d/12 is a quarter of a 2x6 with a seat of %d in.', (pitch, seatIn) => {
    const m = pitch / 12;
    const eave = {
      pitchRisePer12: pitch,
      heightAbovePlateIn: 5.5 * Math.hypot(1, m) - seatIn * m,
      plateWidthIn: 5.5,
    };
    const { ratio } = checkOf('notch', { eave, design: { notchRule: 'quarter' } });
    expect(ratio).toBeCloseTo(1, 2);
  });
});

const nailsFromEnd = (endDistanceIn: number) =>
  outcome('nail-distances', { settings: { fastening: { sister: { endDistanceIn } } } });

describe('rules of thumb', () => {
  test('a seat of 1-1/2 in. is the least on wood', () => {
    // IRC R802.6, as seen in transcription. At 12/12 the seat is as long as the heel is high.
    expect(outcome('seat-length', heelOf(1.5))[2]).toBe('within');
    expect(outcome('seat-length', heelOf(1.45))[2]).toBe('beyond');
  });

  test('a 2x12 wants side support at the plate, a 2x10 does not, and neither is over 6 to 1', () => {
    // IRC R802.8, 2024 text, as seen in transcription; nominal sizes.
    expect(supportOf('2x12')).toEqual([6, 5, 'beyond']);
    expect(supportOf('2x10')).toEqual([5, 5, 'within']);
  });

  test.each([
    // IRC Table R502.3.3(2), as seen in transcription. [section, spacing, cantilever]
    ['2x8', 12, 42],
    ['2x8', 16, 36],
    ['2x10', 12, 61],
    ['2x10', 16, 53],
    ['2x10', 24, 43],
    ['2x12', 16, 72],
    ['2x12', 24, 58],
  ])('a %s at %d in. may reach %d in. under a balcony', (section, spacing, cantilever) => {
    const stations = [0, 1, 2, 3].map((index) => 12 + index * spacing);
    expect(outcome('overhang-depth', { stations, eaveDesign: { extender: { section } } })[1]).toBe(
      cantilever,
    );
  });

  test('a 2x8 at 24 in., and a 2x6, stand outside the balcony table', () => {
    for (const section of ['2x8', '2x6'])
      expect(outcome('overhang-depth', { eaveDesign: { extender: { section } } })[2]).toBe('not-covered');
  });

  test('an overhang may be a third of the span, and the deck rule would give a quarter: 2 ft of 8', () => {
    // Third: wood frame manual, on secondary pages. Quarter: IRC R507, on secondary pages.
    const result = checkOf('overhang-span', { eave: { rafterSpanIn: 96 } });
    expect(result.limit?.number).toBe(32);
    expect(result.assumptions.join()).toContain(`2' 0"`);
  });

  test('nails keep 15 D to the ends: 2.43 in. for a 16d common', () => {
    // NDS commentary, from memory: 15 x 0.162.
    expect(nailsFromEnd(2)).toEqual([2, 15 * 0.162, 'beyond']);
    expect(nailsFromEnd(2.5)).toEqual([2.5, 15 * 0.162, 'within']);
  });

  test('backspans from 2 to 1 are within, to 1.5 to 1 beyond, and shorter ones for an engineer', () => {
    // Common practice, no source.
    expect([2.5, 2, 1.75, 1.5, 1.4].map(backspanVerdict)).toEqual([
      'within',
      'within',
      'beyond',
      'beyond',
      'needs-engineer',
    ]);
  });

  test('treated lumber and fascia want galvanized nails', () => {
    // Fascia: common practice, no source. Treated lumber: IRC R317.3, from memory.
    expect(outcome('nail-corrosion')[2]).toBe('within');
    expect(outcome('nail-corrosion', { structure: { treated: true } })[2]).toBe('beyond');
    expect(outcome('nail-corrosion', { settings: { fastening: { fasciaNail: '8d common' } } })[2]).toBe(
      'beyond',
    );
  });
});

describe('sheathing', () => {
  test('span ratings are those of the code table, from memory', () => {
    // IRC Table R503.2.1.1(1): roof spacing with and without edge support, total and live load.
    expect(Object.entries(ratedPanels).map(([rating, one]) => [rating, ...Object.values(one)])).toEqual([
      ['24/0', 24, 20, 40, 30],
      ['24/16', 24, 24, 50, 40],
      ['32/16', 32, 28, 40, 30],
      ['40/20', 40, 32, 40, 30],
      ['48/24', 48, 36, 45, 35],
    ]);
  });

  test('a 32/16 panel over a gap of 30 in. wants edge support', () => {
    // Same table: 28 in. without, 32 in. with.
    const stations = [12, 42, 72, 102];
    const clips = (edgeClips: boolean) => outcome('sheathing-span', { stations, structure: { edgeClips } });
    expect(clips(false)).toEqual([30, 28, 'beyond']);
    expect(clips(true)).toEqual([30, 32, 'within']);
  });

  test('a strip of 17.9 in. over 16 in. of overhang at 6/12 is narrower than the table holds for', () => {
    // IRC Table R503.2.1.1(1), note c, as seen quoted; 16 x 1.118 by the framing square.
    const [wide, least, verdict] = outcome('panel-width', {
      eaveDesign: { sheathing: { coversFascia: false } },
    });
    expect(wide).toBeCloseTo(17.89, 2);
    expect([least, verdict]).toEqual([24, 'beyond']);
  });

  test('panel nails stand at 6 in. near the roof edge', () => {
    // IRC Table R602.3(1), note f, from memory.
    expect([6, 12].map(panelNailsAt)).toEqual(['within', 'beyond']);
  });
});

describe('roof edge, house and lot', () => {
  test('1500 sq ft of attic want 1440 sq in. at 1/150 and 720 at 1/300, 360 of them at the eaves', () => {
    // IRC R806.2, worked by hand: 1500 / 150 x 144, 1500 / 300 x 144; half at the eaves.
    expect(ventedBy('1/150').why[0]?.result).toBe('1,440 sq in.');
    expect(ventedBy('1/300').why[0]?.result).toBe('720 sq in.');
    expect(ventedBy('1/300').limit?.number).toBeCloseTo(360, 10);
  });

  test('18 in. of new overhang turn one course of ice barrier into two at 7/12', () => {
    // IRC R905.1.2 (24 in. inside the wall line, on secondary pages), worked by hand:
    // (18 + 0.75 + 4.5 + 24) x 1.1577 = 54.7 in.; without the overhang (0.75 + 4.5 + 24) x 1.1577 = 33.9.
    const [wide, course, verdict] = outcome('ice-barrier', {
      eave: { pitchRisePer12: 7, heightAbovePlateIn: 5 },
      eaveDesign: { overhangIn: 18 },
    });
    expect(wide).toBeCloseTo(54.7, 1);
    expect([course, verdict]).toEqual([36, 'beyond']);
    expect((0.75 + 4.5 + 24) * Math.hypot(1, 7 / 12)).toBeLessThan(36);
  });

  test('34 ft of 5-1/2 in. fascia and 7-1/4 in. frieze are 36 sq ft of paint, over the 20 of the rule', () => {
    // 40 CFR 745; worked by hand: 34 x 12.75 / 12.
    const long = { stations: [12, 36], eave: { lengthIn: 408 } };
    const [painted, most, verdict] = outcome('painted-area', long);
    expect(painted).toBeCloseTo(36.125, 6);
    expect([most, verdict]).toEqual([20, 'beyond']);
    expect(outcome('painted-area', { ...long, survey: { yearBuilt: 1978 } })[2]).toBe('within');
  });

  test('a wall 6-1/2 ft from the line with 24 in. of overhang leaves 4-1/2 ft less the fascia: ask', () => {
    // IRC Table R302.1(1), on secondary pages: 2 to 5 ft a rated underside, from 5 ft free, nearer than 2 ft none.
    expect(lotLineAt(78)).toMatchObject({ value: { number: 78 - 24 - 0.75 }, verdict: 'beyond' });
    expect(lotLineAt(78).remedy).toMatch(/one-hour rating/);
    expect(lotLineAt(40).remedy).toMatch(/no projection nearer than 2 ft/);
    expect(lotLineAt(60 + 24.75).verdict).toBe('within');
  });

  test('a power drop is 3 ft above a roof of 4/12, 8 ft above a flatter one, 18 in. where it comes to a mast', () => {
    // Electrical code 230.24(A), on secondary pages.
    expect(dropLimit({ pitchRisePer12: 4 })).toBe(36);
    expect(dropLimit({ pitchRisePer12: 3.9 })).toBe(96);
    expect(dropLimit({ pitchRisePer12: 4, serviceDropToMast: true })).toBe(18);
  });

  test('a tail sags no more than L/180, L being twice the overhang', () => {
    // IRC R301.7 and its note, as seen in transcription; 16 in. at 6/12: 2 x 17.889 / 180.
    expect(outcome('deflection')[1]).toBeCloseTo((2 * 16 * Math.hypot(1, 0.5)) / 180, 10);
  });
});
