import { describe, expect, test } from 'vitest';
import { headerPieces, shimPieces } from '../../core/takeoff/tail-pieces.ts';
import { eavesToTakeOff } from '../../core/takeoff/takeoff-context.ts';
import { takeOff } from '../../core/takeoff/take-off.ts';
import type { Takeoff } from '../../core/takeoff/takeoff-types.ts';
import { layOut, lineOf, smallJob, type SmallJob, smallTakeoff } from './small-job.ts';

/** Five rafters at 24 in.; the third has joists on both its faces, or is pinned to a method. */
const stations = [12, 36, 60, 84, 108] as const;
const rafters = (third: object) =>
  stations.map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index === 2 ? third : {}),
  }));
const only = (allowed: object) => ({
  panelJointsOnTails: false,
  largestGapIn: 48,
  allowFiller: false,
  allowBlockHung: false,
  allowFullLength: false,
  ...allowed,
});
const hung: SmallJob = {
  eave: { rafters: rafters({ joist: 'both' }) },
  eaveDesign: { layout: only({ allowBlockHung: true }) },
};
const lumber = (section: string) => ({
  id: section,
  category: 'lumber',
  description: section,
  unit: 'each',
  section,
  grade: 'No.2',
  lengthFt: 12,
});
const filled: SmallJob = {
  eave: { rafters: rafters({ joist: 'both' }) },
  eaveDesign: { layout: only({ allowFiller: true }) },
  priceList: [lumber('2x6')],
};
const pinned = (method: string, rafterId: string): SmallJob => ({
  eave: { rafterSpanIn: 144 },
  eaveDesign: { layout: only({}), pins: [{ rafterId, side: 'right', method }] },
});

const ids = (takeoff: Takeoff) => takeoff.lines.map(({ id }) => id);
const partOf = (takeoff: Takeoff, line: string, words: string) =>
  lineOf(takeoff, line).madeOf.find(({ label }) => label.includes(words))?.value;
const quantityOf = (takeoff: Takeoff, line: string) => lineOf(takeoff, line).quantity;

const slants = (eaveDesign: object) =>
  smallTakeoff({ eaveDesign }).pieces.flatMap(({ use, slantSixteenths }) =>
    use === 'extender' ? [slantSixteenths] : [],
  );

const lapLabel = (backEnd: string) =>
  lineOf(smallTakeoff({ eave: { clearBackspanIn: 30 }, eaveDesign: { backEnd } }), 'nails-16d-common')
    .madeOf[0]?.label;

const begun = (extenderIds: readonly string[]) =>
  smallTakeoff({
    ...hung,
    design: {
      asBuilt: extenderIds.map((extenderId) => ({ eaveId: 'wall-1', extenderId })),
    },
  });

describe('a tail hung between rafters', () => {
  const takeoff = smallTakeoff(hung);

  test('is a piece of its own with the header block it hangs on', () => {
    const tail = takeoff.pieces.find(({ method }) => method === 'block-hung');
    expect(tail).toMatchObject({ mark: 'A-T01', use: 'extender' });
    expect(tail?.cuts).toMatch(/; hung between rafters 3 and 4 on A-H01$/);
    expect(quantityOf(takeoff, 'hung-tails-2x6-No.2')).toBe('1');
    expect(quantityOf(takeoff, 'extenders-2x6-No.2')).toBe('4');
    const header = takeoff.pieces.find(({ use }) => use === 'header');
    // Rafters at 60 and 84, 1-1/2 thick; the tail of rafter 4 stands on its right: 84 - 60 - 1.5 = 22.5 in. clear.
    expect(header).toMatchObject({ mark: 'A-H01', lengthSixteenths: 22.5 * 16 });
    expect(header?.cuts).toContain('behind the back end of A-T01');
  });

  test('takes three 16d through each end of its block and three into it, and toenails on both its faces', () => {
    // Header blocks: common practice, no source; two for a 2x4. By hand: 2 ends x 3 + 3 = 9.
    expect(partOf(takeoff, 'nails-16d-common', 'header blocks')).toBe('9 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'both faces free')).toBe('4 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'on the open face')).toBe('12 nails');
    // Lap 35.777 - 2.75 = 33.027 in.: rows at 2-1/2 and 18-1/2, 10-1/2 and 26-1/2; four joints of four.
    expect(partOf(takeoff, 'nails-16d-common', 'extender to rafter')).toBe('16 nails');
    expect(quantityOf(takeoff, 'nails-16d-common')).toBe(String(9 + 4 + 12 + 16));
    const shallow = smallTakeoff({
      ...hung,
      eaveDesign: { ...hung.eaveDesign, extender: { section: '2x4', grade: 'No.2' } },
    });
    expect(partOf(shallow, 'nails-16d-common', 'header blocks')).toBe('6 nails');
  });

  test('is hung at its own rate, which is marked a placeholder', () => {
    expect(quantityOf(takeoff, 'labour-install-hung')).toBe('0.8');
    expect(quantityOf(takeoff, 'labour-install-extenders')).toBe('1.8');
    expect(quantityOf(takeoff, 'labour-cut-extenders')).toBe('1');
    expect(lineOf(takeoff, 'labour-install-hung').madeOf[0]?.label).toContain('placeholder');
    expect(lineOf(takeoff, 'hung-tails-2x6-No.2').clientWording).toBe(
      'Lumber for new tails hung between the old rafters',
    );
  });

  test('shares its block with another of the same bay: one piece, its ends nailed once, both tails nailed to it', () => {
    const job = smallJob({ stations: [12, 60], eave: { lengthIn: 80 }, eaveDesign: { layout: only({}) } });
    const [layout] = layOut(job);
    const first = layout?.extenders[0];
    if (layout === undefined || first === undefined) throw new Error('no tail');
    const header = {
      mark: 'A-H01',
      place: 'back',
      leftIn: 12.75,
      rightIn: 59.25,
      alongIn: 30,
      lengthSixteenths: (46.5 * 16) as never,
      sharedWith: null,
    } as const;
    const hungAt = (mark: string, sharedWith: string | null) => ({
      ...first,
      id: mark,
      mark,
      method: 'block-hung' as const,
      headers: [{ ...header, sharedWith }],
    });
    const two = { ...layout, extenders: [hungAt('A-T01', null), hungAt('A-T02', 'A-T01')] };
    const [eave] = eavesToTakeOff(job, [two]);
    if (eave === undefined) throw new Error('no eave');
    expect(headerPieces(eave).map(({ mark }) => mark)).toEqual(['A-H01']);
    // 2 ends x 3 + 2 tails x 3 = 12.
    expect(partOf(takeOff(job, [two]), 'nails-16d-common', 'header blocks')).toBe('12 nails');
  });
});

describe('a tail past a joist over a filler', () => {
  const takeoff = smallTakeoff(filled);

  test('has a filler of lumber as thick as the joist, tacked on, and longer nails through both', () => {
    const filler = takeoff.pieces.find(({ use }) => use === 'filler');
    expect(filler).toMatchObject({ mark: 'A-P01', stock: { section: '2x6' } });
    expect(filler?.cuts).toBe(
      'square ends; 1-1/2" of the 1-1/2" between rafter 3 and A-E03, behind the joist',
    );
    expect(takeoff.pieces.find(({ method }) => method === 'filler')?.cuts).toMatch(/over filler A-P01$/);
    expect(partOf(takeoff, 'nails-16d-common', 'fillers')).toBe('4 nails');
    // The lap is no longer than the filler: our least of four nails in a joint.
    expect(quantityOf(takeoff, 'nails-30d-common')).toBe('4');
    expect(quantityOf(takeoff, 'labour-install-over-fillers')).toBe('0.6');
  });

  test('takes a layer of panel from what the sheathing leaves, and asks for no sheet more', () => {
    const panel = {
      id: 'ply',
      category: 'sheet',
      description: '1/2 panel',
      unit: 'sheet',
      widthIn: 48,
      lengthIn: 96,
      thicknessIn: 0.5,
    };
    const built = smallTakeoff({
      ...filled,
      eave: { rafters: rafters({ joist: 'both', joistThicknessIn: 2 }) },
      eaveDesign: { ...filled.eaveDesign, sheathing: { itemId: 'ply' } },
      priceList: [lumber('2x6'), panel],
    });
    // 2 in. = 1-1/2 of lumber and 1/2 of panel; the lumber layer is A-P01a.
    expect(built.pieces.find(({ use }) => use === 'filler')?.mark).toBe('A-P01a');
    expect(lineOf(built, 'fillers-ply').need).toMatchObject({ kind: 'sheets', sheets: 0 });
    expect(lineOf(built, 'fillers-ply').description).toBe(
      'Filler layers 1/2 panel, from what other cuts leave',
    );
    expect(lineOf(built, 'sheathing-ply').need).toMatchObject({ kind: 'sheets', sheets: 1 });
    expect(partOf(built, 'nails-16d-common', 'fillers')).toBe('8 nails');
  });
});

describe('a whole rafter', () => {
  test('beside an old one is nailed along its whole length and toenailed at the ridge', () => {
    const takeoff = smallTakeoff(pinned('full-length', 'r3'));
    const whole = takeoff.pieces.find(({ method }) => method === 'full-length');
    // Plate to ridge 144 x 1.118 = 160.997 in., tail 17.889, plumb 2.75, 1 to trim: 182.636 -> 182-11/16.
    expect(whole?.lengthSixteenths).toBe(Math.ceil((160.997 + 17.889 + 2.75 + 1) * 16));
    expect(whole?.cuts).toContain('ridge end plumb, parallel to the tail');
    expect(whole?.cuts).toMatch(/whole rafter on the right of rafter 3, up to the ridge$/);
    // Lap 158.247: row 1 from 2-1/2 at 16 in. to 146-1/2, ten; row 2 from 10-1/2 to 154-1/2, ten.
    expect(partOf(takeoff, 'nails-16d-common', '1 joint of 20')).toBe('20 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'at the ridge')).toBe('3 nails');
    expect(quantityOf(takeoff, 'whole-rafters-2x6-No.2')).toBe('1');
    expect(quantityOf(takeoff, 'labour-install-whole')).toBe('1.5');
  });

  test('in the place of an end rafter has no rafter to be nailed to: both faces at the plate, and the ridge', () => {
    const takeoff = smallTakeoff(pinned('end-replacement', 'r1'));
    expect(takeoff.pieces.find(({ method }) => method === 'end-replacement')?.cuts).toMatch(
      /whole rafter in the place of rafter 1, up to the ridge$/,
    );
    expect(partOf(takeoff, 'nails-16d-common', 'both faces free')).toBe('4 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'extender to rafter')).toBe('16 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'at the ridge')).toBe('3 nails');
    expect(quantityOf(takeoff, 'labour-replace-end')).toBe('2');
  });

  test('and a tail on an outer face is counted like one beside a rafter', () => {
    // The first rafter flush with the wall's end: its outer face lies past it.
    const takeoff = smallTakeoff({
      stations: [0.75, 36, 60, 84, 108],
      eaveDesign: { layout: only({}), pins: [{ rafterId: 'r1', side: 'left', method: 'outer-face' }] },
    });
    expect(takeoff.pieces.find(({ method }) => method === 'outer-face')?.cuts).toMatch(
      /on the outer face of rafter 1$/,
    );
    expect(partOf(takeoff, 'nails-16d-common', 'extender to rafter')).toBe('20 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'on the open face')).toBe('15 nails');
    expect(quantityOf(takeoff, 'labour-install-extenders')).toBe('2.25');
  });
});

describe('plumb ends', () => {
  test('that are parallel slant by depth x pitch, so that pieces nest: 5-1/2 at 6/12 -> 2-3/4 in.', () => {
    expect(new Set(slants({}))).toEqual(new Set([44]));
    expect(slants({ extender: { section: '2x4', grade: '' } })[0]).toBe(28);
  });

  test('are none where the back end or the tail is square', () => {
    expect(new Set(slants({ backEnd: 'square' }))).toEqual(new Set([undefined]));
    expect(new Set(slants({ tailCut: 'square' }))).toEqual(new Set([undefined]));
  });

  test('shorten the lap on its bottom edge, where nails may be one fewer', () => {
    // Backspan 30 in. clear: square end 30, last place 27-1/2 -> 2-1/2, 18-1/2 and 10-1/2, 26-1/2: four. Plumb end
    // 27-1/4, last place 24-3/4 -> 2-1/2, 18-1/2 and 10-1/2: three, raised to our least of four.
    expect(lapLabel('square')).toBe('Eave A, extender to rafter: 5 joints of 4 at rafter 1-5');
    expect(lapLabel('parallel')).toBe(
      'Eave A, extender to rafter: 5 joints of 4 (our least for a joint) at rafter 1-5',
    );
  });
});

describe('shims', () => {
  test('are wedges as long as the plate: low at the wall face, higher by the pitch inside', () => {
    // HAP 6-1/2, 2x6 at 6/12: 6.5 - 6.149 = 0.351 -> 3/8 in.; over a 3-1/2 plate 3/8 + 1-3/4 = 2-1/8 in.
    const takeoff = smallTakeoff({ eave: { heightAbovePlateIn: 6.5 } });
    const shims = takeoff.pieces.filter(({ use }) => use === 'shim');
    expect(shims.map(({ mark }) => mark)).toEqual(['A-S01', 'A-S02', 'A-S03', 'A-S04', 'A-S05']);
    expect(shims[0]).toMatchObject({
      lengthSixteenths: 3.5 * 16,
      cuts: 'square ends; ripped to 3/8" at the wall\'s face, top bevelled 26.6 deg to 2-1/8" inside; under A-E01',
    });
    expect(quantityOf(takeoff, 'shims-2x6-No.2')).toBe('5');
    expect(quantityOf(takeoff, 'labour-shims')).toBe('0.5');
  });

  test('are none where no tape shows one, or where the tail is notched', () => {
    expect(ids(smallTakeoff({ eave: { heightAbovePlateIn: 6.16 } }))).not.toContain('shims-2x6-No.2');
    expect(ids(smallTakeoff())).not.toContain('shims-2x6-No.2');
  });

  test('taller than the stock is deep are made of two on one another', () => {
    // HAP 11: 4.851 in. at the wall's face, 6.601 inside: more than 5-1/2.
    const job = smallJob({ eave: { heightAbovePlateIn: 11 } });
    const [eave] = eavesToTakeOff(job, layOut(job));
    if (eave === undefined) throw new Error('no eave');
    expect(
      shimPieces(eave)
        .map(({ mark }) => mark)
        .slice(0, 2),
    ).toEqual(['A-S01a', 'A-S01b']);
  });

  test('under kicked-up tails are packers', () => {
    const takeoff = smallTakeoff({
      eave: { pitchRisePer12: 8, heightAbovePlateIn: 6 },
      eaveDesign: { kickUpPitchRisePer12: 4, kickUpRaiseIn: 3 },
    });
    // Tail at 4/12: plumb depth 5.797; 9 - 5.797 = 3.203 -> 3-3/16 in.
    const packer = takeoff.pieces.find(({ use }) => use === 'packer');
    expect(packer?.cuts).toContain('ripped to 3-3/16" at the wall\'s face');
    expect(ids(takeoff)).toContain('packers-2x6-No.2');
    expect(ids(takeoff)).not.toContain('shims-2x6-No.2');
  });
});

describe('what is in place', () => {
  test('is a piece still, and is neither bought, nailed nor cut again', () => {
    const takeoff = begun(['r1', 'r2']);
    const there = takeoff.pieces.filter(({ inPlace }) => inPlace === true).map(({ mark }) => mark);
    expect(there).toEqual(['A-E01', 'A-E02']);
    const line = lineOf(takeoff, 'extenders-2x6-No.2');
    expect(line.quantity).toBe('2');
    expect(line.description).toContain('2 pieces in place');
    expect(line.need).toMatchObject({ marks: ['A-E04', 'A-E05'] });
    expect(partOf(takeoff, 'nails-16d-common', 'extender to rafter')).toBe('8 nails');
    expect(partOf(takeoff, 'nails-16d-common', 'on the open face')).toBe('6 nails');
    expect(quantityOf(takeoff, 'labour-install-extenders')).toBe('0.9');
    // The fascia is still to be nailed to every tail.
    expect(quantityOf(takeoff, 'nails-8d-common-galvanized')).toBe('15');
  });

  test('takes its header block along', () => {
    const hungId =
      layOut(smallJob(hung))[0]?.extenders.find(({ method }) => method === 'block-hung')?.id ?? '';
    const takeoff = begun([hungId]);
    expect(takeoff.pieces.find(({ use }) => use === 'header')?.inPlace).toBe(true);
    expect(ids(takeoff)).not.toContain('hung-tails-2x6-No.2');
    expect(ids(takeoff)).not.toContain('headers-2x6-No.2');
    expect(ids(takeoff)).not.toContain('labour-install-hung');
  });
});
