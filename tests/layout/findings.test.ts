import { describe, expect, it } from 'vitest';
import type { EaveLayout, Finding } from '../../core/layout/layout-types.ts';
import { numberList } from '../../core/layout/number-list.ts';
import { makeEave } from '../survey/make-eave.ts';
import { besideRafters, layOut, makeDesign } from './make-layout.ts';

function of(layout: EaveLayout, topic: Finding['topic']): readonly Finding[] {
  return layout.findings.filter((finding) => finding.topic === topic);
}

const stations = [16, 38, 60, 82, 104, 126, 148, 170, 192, 214];

function withRafter(number: number, own: Record<string, number>) {
  const rafters = stations.map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index + 1 === number ? own : {}),
  }));
  return makeEave([], { rafters });
}

describe('a reading out of line with its neighbours is questioned', () => {
  it('pitch: rafter 9 is 1.1 degrees off', () => {
    const pitchRisePer12 = 12 * Math.tan(((26.565 + 1.1) * Math.PI) / 180);
    expect(of(layOut(withRafter(9, { pitchRisePer12 })), 'measure-again')).toEqual([
      {
        eaveId: 'north',
        stationIn: 192,
        topic: 'measure-again',
        text: 'Rafter 9: the pitch is 1.1 degrees off the neighbours: measure again?',
        structural: false,
      },
    ]);
  });

  it('height above plate: rafter 3 is 5/8 in. off', () => {
    expect(of(layOut(withRafter(3, { heightAbovePlateIn: 4.375 })), 'measure-again')).toMatchObject([
      { stationIn: 60, text: 'Rafter 3: the height above plate is 5/8" off the neighbours: measure again?' },
    ]);
  });

  it('but not what an old house brings along: half a degree, half an inch', () => {
    const pitchRisePer12 = 12 * Math.tan(((26.565 + 0.5) * Math.PI) / 180);
    expect(of(layOut(withRafter(5, { pitchRisePer12, heightAbovePlateIn: 5.5 })), 'measure-again')).toEqual(
      [],
    );
  });

  it('nor an even change along the eave, as of a settled plate', () => {
    const rafters = stations.map((readingIn, index) => ({
      id: `r${index}`,
      readingIn,
      heightAbovePlateIn: 5 + 0.3 * index,
    }));
    expect(of(layOut(makeEave([], { rafters })), 'measure-again')).toEqual([]);
  });

  it('and with two rafters nobody can say which one is off', () => {
    const rafters = [
      { id: 'a', readingIn: 20 },
      { id: 'b', readingIn: 44, pitchRisePer12: 9 },
    ];
    expect(of(layOut(makeEave([], { rafters })), 'measure-again')).toEqual([]);
  });
});

describe('what repeats along an eave is told in one sentence', () => {
  const layout = layOut(makeEave(stations, { windowHeadBelowPlateIn: 6 }));

  it.each(['throat', 'insertion', 'window-head'] as const)('%s', (topic) => {
    const found = of(layout, topic);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ stationIn: null, text: expect.stringMatching(/^Rafters 1-10: /) });
  });

  it('with rafter numbers drawn together from three on', () => {
    expect(numberList([2, 5, 6, 7, 8, 9])).toBe('2, 5-9');
    expect(numberList([1, 2, 4, 5, 6, 9, 10])).toBe('1, 2, 4-6, 9, 10');
    expect(numberList([7])).toBe('7');
    expect(numberList([])).toBe('');
  });
});

describe('the section tells', () => {
  it('a shortened backspan, with the ratio that is left', () => {
    const layout = layOut(withRafter(4, { clearBackspanIn: 27 }));
    // 27 / 17.889 = 1.509
    expect(of(layout, 'backspan-short')).toMatchObject([
      {
        stationIn: 83.5,
        structural: true,
        text: expect.stringContaining('only 1.51 times what it sticks out, 2 wanted'),
      },
    ]);
    expect(of(layOut(withRafter(4, { clearBackspanIn: 36 })), 'backspan-short')).toEqual([]);
  });

  it('that a piece above the plate does not bear without a shim', () => {
    const layout = layOut(makeEave(stations, { heightAbovePlateIn: 6.5 }));
    // 6.5 - 6.149 = 0.351, 3/8 to a sixteenth
    expect(of(layout, 'no-bearing')).toMatchObject([
      {
        structural: true,
        text: expect.stringContaining('clears the plate by 3/8" and does not bear without'),
      },
    ]);
    expect(of(layout, 'throat')).toEqual([]);
  });

  it('how many bearing shims to rip, and that nothing is bought for them', () => {
    // Each tail as its rafter goes: HAP 6-1/2 clears by 0.351 in., 6-3/4 by 0.601, 6.16 by 0.011, which no tape shows.
    const survey = makeEave([], {
      rafters: [
        { id: 'a', readingIn: 20, heightAbovePlateIn: 6.5 },
        { id: 'b', readingIn: 42, heightAbovePlateIn: 5 },
        { id: 'c', readingIn: 64, heightAbovePlateIn: 6.75 },
        { id: 'd', readingIn: 86, heightAbovePlateIn: 6.16 },
      ],
    });
    const layout = layOut(survey, makeDesign({ fasciaLine: 'as-found' }));
    expect(of(layout, 'no-bearing').map(({ text }) => text)).toEqual([
      'Rafters 1, 3: the extender clears the plate by 3/8" to 5/8" and does not bear without a bearing shim of that height. Shims: 2 of 3/8" to 5/8", listed with the pieces.',
    ]);
  });

  it('a seat shorter than 1-1/2 in.', () => {
    // Source of the limit: IRC R802.6. Seat (6.149 - 5.6) / 0.5 = 1.098 in.; at HAP 5.3 it is 1.698 in.
    const short = layOut(makeEave(stations, { heightAbovePlateIn: 5.6 }));
    expect(of(short, 'seat-short')).toMatchObject([
      {
        structural: true,
        text: expect.stringContaining('bears on 1-1/8" of the plate; at least 1-1/2" on wood'),
      },
    ]);
    expect(of(layOut(makeEave(stations, { heightAbovePlateIn: 5.3 })), 'seat-short')).toEqual([]);
  });

  it('the depth left above the notch, and that notch rules differ', () => {
    const [throat] = of(layOut(makeEave(stations)), 'throat');
    expect(throat).toMatchObject({
      structural: true,
      text: expect.stringMatching(
        /4-1\/2" of 5-1\/2" is left above the notch.*1-3\/8" here.*15\/16".*3-1\/2" left.*ask the building department/,
      ),
    });
  });

  it('a fascia that does not cover a plumb tail: 2x6 on 2x6 tails is short, 2x8 covers', () => {
    // Common practice, no source: 2x8 fascia with 2x6 tails. Plumb cut 6.149 in. against 5-1/2.
    const short = layOut(makeEave(stations), makeDesign({ fascia: { stock: { section: '2x6' } } }));
    expect(of(short, 'fascia-cover')).toMatchObject([
      { text: expect.stringContaining('2x6 fascia is 5/8" too narrow') },
    ]);
    expect(of(layOut(makeEave(stations)), 'fascia-cover')).toEqual([]);
    const square = layOut(
      makeEave(stations),
      makeDesign({ tailCut: 'square', fascia: { stock: { section: '2x6' } } }),
    );
    expect(of(square, 'fascia-cover')).toEqual([]);
  });

  it('a soffit below the window head, unless it was not measured or there is room', () => {
    // Soffit 9.524 in. below the plate.
    const low = layOut(makeEave(stations, { windowHeadBelowPlateIn: 8 }));
    expect(of(low, 'window-head')).toMatchObject([
      { text: expect.stringContaining('comes 1-1/2" below the lowest window') },
    ]);
    expect(of(layOut(makeEave(stations, { windowHeadBelowPlateIn: 10 })), 'window-head')).toEqual([]);
    expect(of(layOut(makeEave(stations)), 'window-head')).toEqual([]);
  });

  it('the deepest section that slides in under a deck that stays on', () => {
    // HAP cos t = 4.472 in. over the plate: a 2x4 goes in, a 2x6 does not.
    expect(of(layOut(makeEave(stations)), 'insertion')).toMatchObject([
      {
        structural: false,
        text: expect.stringMatching(
          /room for 4-1\/2" of depth, and a 2x6 is 5-1\/2" deep\. The deepest that fits everywhere is a 2x4/,
        ),
      },
    ]);
    expect(of(layOut(makeEave(stations, { deckStaysOn: false })), 'insertion')).toEqual([]);
    expect(of(layOut(makeEave(stations), makeDesign({ extender: { section: '2x4' } })), 'insertion')).toEqual(
      [],
    );
    const low = layOut(makeEave(stations, { heightAbovePlateIn: 3 }));
    expect(of(low, 'insertion')[0]?.text).toContain('No 2x4 or deeper fits: strip the deck.');
  });
});

describe('a tail brought up to the fascia line', () => {
  // Tails 0.48 in. apart either way: the lower one turns up about its back end, 0.32 in. at the wall.
  const rafters = [
    { id: 'r1', readingIn: 40, heightAbovePlateIn: 5 },
    { id: 'r2', readingIn: 62, heightAbovePlateIn: 5.96 },
  ];

  it('lifts a deck that stays on, which is told', () => {
    expect(of(layOut(makeEave([], { rafters })), 'under-deck')).toMatchObject([
      { stationIn: 41.5, text: expect.stringContaining('stands 5/16" above the rafter at the wall') },
    ]);
  });

  it('does no harm where the deck is stripped, or the tails are left as found', () => {
    expect(of(layOut(makeEave([], { rafters, deckStaysOn: false })), 'under-deck')).toEqual([]);
    const asFound = makeDesign({ fasciaLine: 'as-found' });
    expect(of(layOut(makeEave([], { rafters }), asFound), 'under-deck')).toEqual([]);
  });
});

describe('a square cut steeper than the overhang is long', () => {
  it('brings the lower corner inside the wall', () => {
    // d sin t = 5.5 x 0.7071 = 3.889 in. against 2 in. of overhang at 12/12.
    const steep = makeEave([100], { pitchRisePer12: 12, heightAbovePlateIn: 9 });
    const layout = layOut(steep, makeDesign({ overhangIn: 2, tailCut: 'square' }));
    expect(of(layout, 'tail-short')).toMatchObject([
      { text: expect.stringContaining('1-7/8" inside the wall face') },
    ]);
    expect(of(layOut(steep, makeDesign({ overhangIn: 2 })), 'tail-short')).toEqual([]);
  });
});

describe('the layout tells', () => {
  it('a fascia that runs more than 24 in. past its last tail', () => {
    const layout = layOut(makeEave([16, 38, 60], { lengthIn: 90 }));
    expect(of(layout, 'wide-gap')).toMatchObject([
      {
        stationIn: 75.75,
        structural: true,
        text: expect.stringContaining('right end stands 2\' 4-1/2" past the last tail'),
      },
    ]);
    expect(of(layOut(makeEave([16, 38, 60], { lengthIn: 84 })), 'wide-gap')).toEqual([]);
  });

  it('tails further apart, centre to centre, than what spans them may, and what would close the gap', () => {
    const layout = { ...besideRafters, largestGapIn: null };
    expect(of(layOut(makeEave([16, 40, 64], { lengthIn: 80 }), makeDesign({ layout })), 'wide-gap')).toEqual(
      [],
    );
    expect(of(layOut(makeEave([16, 40, 70], { lengthIn: 80 }), makeDesign({ layout })), 'wide-gap')).toEqual([
      {
        eaveId: 'north',
        stationIn: 55,
        topic: 'wide-gap',
        text: 'The tails at 3\' 5-1/2" and 5\' 8-1/2" stand 2\' 3" apart, centre to centre: the soffit may span 2\' 0". To do so, allow tails hung between rafters, under Layout in Design: a tail hung at 4\' 7" would close it.',
        structural: true,
      },
    ]);
  });

  it('an eave without any extender', () => {
    const pins = [{ rafterId: 'r1', side: 'none' as const }];
    const layout = layOut(makeEave([100]), makeDesign({ pins }));
    expect(of(layout, 'unplaced')).toHaveLength(1);
    expect(layout).toMatchObject({ extenders: [], fascia: [], fasciaLengthIn: 0 });
  });

  it('no structural result as an approval', () => {
    const rafters = stations.map((readingIn, index) => ({
      id: `r${index}`,
      readingIn,
      heightAbovePlateIn: 4.6 + (index % 5) * 0.5,
      clearBackspanIn: 20 + index,
    }));
    const eave = makeEave([], { rafters, windowHeadBelowPlateIn: 4 });
    const { findings } = layOut(eave, makeDesign({ fasciaLine: 'as-found' }));
    const structural = findings.filter((finding) => finding.structural);
    expect(new Set(structural.map(({ topic }) => topic))).toEqual(
      new Set(['wide-gap', 'backspan-short', 'no-bearing', 'seat-short', 'throat']),
    );
    for (const { text } of findings)
      expect(text).not.toMatch(/\b(OK|pass|passes|safe|approved|NaN|undefined)\b/i);
  });
});
