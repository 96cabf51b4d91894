import { describe, expect, it } from 'vitest';
import type { Method } from '../../core/eave/design-document.ts';
import { layoutRulesSchema } from '../../core/pricing/shop-settings.ts';
import type { EaveLayout, Finding } from '../../core/layout/layout-types.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import { makeEave } from '../survey/make-eave.ts';
import { besideRafters, layOut, makeDesign } from './make-layout.ts';

const allowed = { ...besideRafters, allowFiller: true, allowBlockHung: true, allowFullLength: true };

function told({ extenders }: EaveLayout): readonly string[] {
  return extenders.map(
    ({ mark, id, method, side, centreIn, because }) =>
      `${mark} ${id} ${method}${method === 'block-hung' ? '' : ` ${side}`} ${centreIn} ${because}`,
  );
}

function of({ findings }: EaveLayout, topic: Finding['topic']): readonly string[] {
  return findings.filter((finding) => finding.topic === topic).map(({ text }) => text);
}

/** Three rafters 1-1/2 thick at 24 in. on centre; the middle one as given. */
function threeRafters(middle: object, rest: Parameters<typeof makeEave>[1] = {}) {
  return makeEave([], {
    lengthIn: 96,
    rafters: [
      { id: 'a', readingIn: 24 },
      { id: 'b', readingIn: 48, ...middle },
      { id: 'c', readingIn: 72 },
    ],
    ...rest,
  });
}

function besideOr(layout: object, rest: Parameters<typeof makeDesign>[0] = {}) {
  return makeDesign({ ...rest, layout: { ...besideRafters, ...layout } });
}

function pinned(side: 'left' | 'right', method: Method) {
  return makeDesign({ layout: besideRafters, pins: [{ rafterId: 'b', side, method }] });
}

function added(stationIn: number) {
  return makeDesign({ addedTails: [{ id: 'mine', stationIn }] });
}

describe('a rafter with a ceiling joist on both sides', () => {
  const eave = threeRafters({ joist: 'both' });

  it('gets a filler past the joist, on the preferred side, as the default weights have it', () => {
    const layout = layOut(eave, makeDesign({ layout: allowed }));
    // 48 + 3/4 + joist 1-1/2 + half the tail.
    expect(told(layout)).toEqual([
      'A-E01 a side right 25.5 preferred',
      'A-E02 b filler right 51 moved',
      'A-E03 c side right 73.5 preferred',
    ]);
    expect(layout.extenders[1]).toMatchObject({
      clash: 'the ceiling joist right of rafter 2, at 4\' 0-3/4" to 4\' 2-1/4"',
      filler: { mark: 'A-P01', wantedIn: 1.5 },
    });
    expect(of(layout, 'method')).toEqual([
      'Rafter 2: a ceiling joist lies there, so the tail stands past it on a filler of 1-1/2". Such a joint is weaker than one face to face.',
    ]);
    expect(layout.findings.find(({ topic }) => topic === 'method')?.structural).toBe(true);
  });

  it('gets a tail hung in a bay beside it where no filler is allowed', () => {
    const layout = layOut(eave, makeDesign({ layout: { ...allowed, allowFiller: false } }));
    const [, hung] = layout.extenders;
    // Even between 25.5 and 73.5 would be 49.5, on the joist: as near as nailing allows, 50-1/4 + 1/2 + 3/4.
    expect(told(layout)[1]).toBe('A-T01 gap-2 block-hung 51.5 moved');
    expect(hung).toMatchObject({ standsFor: 'b', rafterId: 'b', rafterNumber: 2 });
    expect(of(layout, 'method')).toEqual([
      'Rafter 2 at 4\' 0" has no side free (ceiling joists hold both): its tail hangs between rafters, at 4\' 3-1/2". With a filler past the joist it could stand at 3\' 9".',
    ]);
  });

  it('gets the cheaper of both where the shop weighs them otherwise', () => {
    const rules = layoutRulesSchema.parse({ weights: { filler: 12 } });
    const layout = layOutEave(eave, makeDesign({ layout: allowed }), 'A', null, undefined, {
      rules,
      sheetLengthIn: 96,
      fillers: [],
      asBuilt: [],
    });
    expect(layout.ok && layout.value.extenders[1]?.method).toBe('block-hung');
  });

  it('gets none where neither is allowed, and is told what would serve it', () => {
    const layout = layOut(eave, makeDesign());
    expect(of(layout, 'no-side-free')).toEqual([
      'Rafter 2 at 4\' 0" has no side free for an extender. Left: the ceiling joist left of rafter 2, at 3\' 9-3/4" to 3\' 11-1/4". Right: the ceiling joist right of rafter 2, at 4\' 0-3/4" to 4\' 2-1/4". Allow fillers, under Layout in Design: past the joist it could stand at 3\' 9".',
    ]);
  });
});

describe('a header block', () => {
  it('runs from rafter to rafter at the back end of its tail, in whole sixteenths', () => {
    const eave = threeRafters({ joist: 'both' });
    const layout = layOut(eave, makeDesign({ layout: { ...allowed, allowFiller: false } }));
    const hung = layout.extenders[1];
    // 71-1/4 less 48-3/4; joists lie below the slope and take nothing out.
    expect(hung?.headers).toEqual([
      {
        mark: 'A-H01',
        place: 'back',
        leftIn: 48.75,
        rightIn: 71.25,
        alongIn: hung?.section.backspanIn,
        lengthSixteenths: 22.5 * 16,
        sharedWith: null,
      },
    ]);
  });

  it('is rounded down, so that it goes in', () => {
    const eave = makeEave([24, 48.1], { lengthIn: 96 });
    const layout = layOut(eave, makeDesign({ layout: { ...allowed, largestGapIn: 16 } }));
    // 24.1 less 1.5 is 22.6, 22-9/16 to a sixteenth below.
    expect(layout.extenders.flatMap(({ headers }) => headers)).toMatchObject([
      { lengthSixteenths: 22 * 16 + 9 },
    ]);
  });

  it('loses the thickness of an extender that reaches back past it', () => {
    const eave = makeEave([], {
      lengthIn: 96,
      rafters: [
        { id: 'a', readingIn: 24 },
        { id: 'b', readingIn: 48, clearBackspanIn: 24 },
      ],
    });
    const layout = layOut(eave, makeDesign({ layout: { ...allowed, largestGapIn: 16 } }));
    // The hung tail has the shorter clear backspan of both; the extender right of a reaches past its header.
    expect(layout.extenders.flatMap(({ headers }) => headers)).toMatchObject([
      { leftIn: 26.25, rightIn: 47.25, alongIn: 24, lengthSixteenths: 21 * 16 },
    ]);
  });

  it('is shared by two tails of one bay and cut once', () => {
    const eave = makeEave([24, 64], { lengthIn: 96 });
    const layout = layOut(eave, makeDesign({ layout: { ...allowed, largestGapIn: 16 } }));
    const hung = layout.extenders.filter(({ method }) => method === 'block-hung');
    expect(hung.map(({ id }) => id)).toEqual(['gap-1', 'gap-1-2']);
    expect(hung.map(({ headers }) => headers[0]?.mark)).toEqual(['A-H01', 'A-H01']);
    expect(hung.map(({ headers }) => headers[0]?.sharedWith)).toEqual([null, 'gap-1']);
  });
});

describe('a gap wider than what spans it may be', () => {
  it('gets hung tails, evenly: old rafters at 24 in. laid out again at 16', () => {
    const layout = layOut(
      makeEave([12, 36, 60], { lengthIn: 73.5 }),
      makeDesign({ layout: { ...allowed, largestGapIn: 16 } }),
    );
    expect(told(layout)).toEqual([
      'A-E01 r1 side right 13.5 preferred',
      'A-T01 gap-1 block-hung 25.5 gap',
      'A-E02 r2 side right 37.5 preferred',
      'A-T02 gap-2 block-hung 49.5 gap',
      'A-E03 r3 side right 61.5 preferred',
    ]);
    expect(of(layout, 'wide-gap')).toEqual([]);
    expect(of(layout, 'method')).toEqual([
      '2 tails hang between rafters so that no gap is over 1\' 4": at 2\' 1-1/2", 4\' 1-1/2". To do without, allow a larger gap under Layout in Design.',
    ]);
  });

  it('is closed by the other side first, which costs less', () => {
    // Rafters 26 apart: right and left of them the tails stand 26 - 3 apart.
    const layout = layOut(
      makeEave([12, 38], { lengthIn: 50 }),
      makeDesign({ layout: { ...allowed, largestGapIn: 24 } }),
    );
    expect(told(layout)).toEqual(['A-E01 r1 side right 13.5 preferred', 'A-E02 r2 side left 36.5 gap']);
  });

  it('is told with what would close it where hung tails are not allowed', () => {
    const layout = layOut(
      makeEave([12, 52], { lengthIn: 64 }),
      makeDesign({ layout: { ...besideRafters, largestGapIn: 24 } }),
    );
    expect(of(layout, 'wide-gap')).toEqual([
      'The tails at 1\' 1-1/2" and 4\' 2-1/2" stand 3\' 1" apart, centre to centre: no gap over 2\' 0" is asked for. To do so, allow tails hung between rafters, under Layout in Design: a tail hung at 2\' 8" would close it.',
    ]);
  });
});

describe('a rafter that is not sound', () => {
  const design = makeDesign({ layout: allowed });

  it('holds no tail: rotten, a whole new rafter goes beside it, from tail to ridge', () => {
    const layout = layOut(threeRafters({ condition: 'rotten' }, { rafterSpanIn: 120 }), design);
    const [, whole] = layout.extenders;
    expect(told(layout)[1]).toBe('A-E02 b full-length right 49.5 moved');
    expect(whole?.clash).toBe('rafter 2 is rotten');
    // 6/12: slope factor 1.118034; 120 and 16 level, 5-1/2 deep plumb tail adds 2-3/4, 1 in. to trim:
    // 136 x 1.118034 + 2.75 + 1 = 155.8026, 155-13/16 up. A plumb cut at the ridge adds nothing overall.
    expect(whole?.blankSixteenths).toBe(155 * 16 + 13);
    expect(of(layout, 'method')).toContain(
      'Rafter 2: a whole new rafter goes beside it, from tail to ridge.',
    );
  });

  it('asks for the span where it is missing, at its entry', () => {
    const layout = layOut(threeRafters({ condition: 'rotten' }), design);
    expect(layout.findings.find(({ topic }) => topic === 'no-side-free')).toMatchObject({
      field: 'survey.eaves.0.rafterSpanIn',
      text: expect.stringMatching(/rafter 2 is rotten.*Enter the rafter span in Survey/),
    });
  });

  it('is a problem at that entry where a whole rafter is pinned', () => {
    const pins = [{ rafterId: 'b', side: 'left' as const, method: 'full-length' as const }];
    expect(layOutEave(threeRafters({}), makeDesign({ pins }), 'B', null)).toEqual({
      ok: false,
      problem: {
        code: 'entry-invalid',
        what: 'North eave, rafter span',
        detail:
          'rafter 2 is to get a whole new one, whose length follows from it. Enter the span, or change that pin.',
        field: 'survey.eaves.1.rafterSpanIn',
      },
    });
  });

  it('doubtful, has its tail hung beside it, and the header that is nailed to it is told', () => {
    const layout = layOut(threeRafters({ condition: 'doubtful' }), design);
    expect(layout.extenders[1]).toMatchObject({ method: 'block-hung', standsFor: 'b', centreIn: 50 });
    expect(of(layout, 'method')).toContain(
      'Rafter 2: the header block of a hung tail is nailed to it, and its condition is not sound: look at it first.',
    );
  });

  it('rotten, holds no header block either', () => {
    const layout = layOut(threeRafters({ condition: 'rotten' }), design);
    expect(layout.extenders.map(({ rafterId }) => rafterId)).toEqual(['a', 'c']);
  });
});

describe('an end rafter flush with the wall', () => {
  const eave = makeEave([0.75, 24.75], { lengthIn: 25.5 });
  it('takes its tail inside, unless outer faces are allowed', () => {
    const [first, last] = layOut(eave, besideOr({})).extenders;
    expect([first?.centreIn, last?.centreIn]).toEqual([2.25, 23.25]);
    expect(last?.clash).toBe("it would stand past the wall's right end");
  });

  it('takes it outside where pinned there, and the finish is told of', () => {
    const pins = [{ rafterId: 'r2', side: 'right' as const, method: 'outer-face' as const }];
    const layout = layOut(eave, besideOr({}, { pins }));
    expect(told(layout)[1]).toBe('A-E02 r2 outer-face right 26.25 pinned');
    expect(layout.extenders[1]?.clash).toBeNull();
    expect(of(layout, 'method')).toEqual([
      "Rafter 2: the tail stands outside the end rafter, past the wall's end: the wall's finish has to come off there.",
    ]);
  });

  it('takes it outside where a joist lies inside and that is allowed', () => {
    const rafters = [
      { id: 'r1', readingIn: 0.75, joist: 'right' as const },
      { id: 'r2', readingIn: 24.75 },
    ];
    const layout = layOut(makeEave([], { lengthIn: 25.5, rafters }), besideOr({ allowOuterFace: true }));
    expect(told(layout)[0]).toBe('A-E01 r1 outer-face left -0.75 moved');
  });

  it('is replaced where pinned so: the new one stands in its place and the old one is gone', () => {
    const pins = [{ rafterId: 'r1', side: 'left' as const, method: 'end-replacement' as const }];
    const thick = makeEave([], {
      lengthIn: 50,
      rafterThicknessIn: 2,
      rafterSpanIn: 120,
      rafters: [
        { id: 'r1', readingIn: 1 },
        { id: 'r2', readingIn: 25 },
      ],
    });
    const layout = layOut(thick, besideOr({}, { pins }));
    expect(layout.extenders[0]).toMatchObject({
      method: 'end-replacement',
      leftIn: 0.25,
      rightIn: 1.75,
      clash: null,
      blankSixteenths: 155 * 16 + 13,
    });
    // From the new one's face to the next rafter's, not from the old one's.
    expect(layout.bays[0]).toMatchObject({ fromIn: 1.75, toIn: 24 });
  });
});

describe('a pin with a method', () => {
  it('of a filler stands past the joist, though fillers are not allowed to the program', () => {
    const layout = layOut(threeRafters({ joist: 'right' }), pinned('right', 'filler'));
    expect(told(layout)[1]).toBe('A-E02 b filler right 51 pinned');
    expect(layout.extenders[1]?.clash).toBeNull();
  });

  it('of a filler where no joist lies goes against the rafter, and says so', () => {
    const layout = layOut(threeRafters({}), pinned('left', 'filler'));
    expect(told(layout)[1]).toBe('A-E02 b side left 46.5 pinned');
    expect(of(layout, 'pin-out-of-place')).toEqual([
      'At 3\' 10-1/2": no ceiling joist lies on the left of rafter 2, so the tail goes against the rafter without a filler.',
    ]);
  });

  it('of a hung tail hangs one in the bay on that side', () => {
    expect(told(layOut(threeRafters({}), pinned('left', 'block-hung')))[1]).toBe(
      // Even between 25.5 and 73.5 would be 49.5, past the rafter: as near as nailing allows, 47-1/4 - 1/2 - 3/4.
      'A-T01 gap-1 block-hung 46 pinned',
    );
    expect(told(layOut(threeRafters({}), pinned('right', 'block-hung')))[1]).toBe(
      'A-T01 gap-2 block-hung 50 pinned',
    );
  });

  it('of an end replacement or an outer face in mid-wall goes beside the rafter, and says so', () => {
    for (const method of ['end-replacement', 'outer-face'] as const) {
      const layout = layOut(threeRafters({}), pinned('left', method));
      expect(told(layout)[1]).toBe('A-E02 b side left 46.5 pinned');
      expect(of(layout, 'pin-out-of-place')).toHaveLength(1);
    }
  });

  it('left to the program takes a filler where a joist holds the pinned side', () => {
    const design = makeDesign({ layout: allowed, pins: [{ rafterId: 'b', side: 'right' }] });
    expect(told(layOut(threeRafters({ joist: 'right' }), design))[1]).toBe('A-E02 b filler right 51 pinned');
  });
});

describe("a tail of the person's own", () => {
  it('hangs at its station, on header blocks, and the rest is laid out around it', () => {
    const layout = layOut(threeRafters({}), added(37));
    expect(told(layout)).toEqual([
      'A-E01 a side right 25.5 preferred',
      'A-T01 mine block-hung 37 pinned',
      'A-E02 b side right 49.5 preferred',
      'A-E03 c side right 73.5 preferred',
    ]);
    expect(layout.extenders[1]?.headers).toHaveLength(1);
  });

  it('stands for a rafter beside it that has no other', () => {
    const layout = layOut(threeRafters({ joist: 'both' }), added(37));
    expect(layout.extenders[1]?.standsFor).toBe('b');
    expect(layout.unplaced).toEqual([]);
  });

  it('makes a rafter beside it take its other side', () => {
    const layout = layOut(threeRafters({}), added(26));
    expect(told(layout)[0]).toBe('A-E01 a side left 22.5 moved');
    expect(layout.extenders[0]?.clash).toBe('the hung tail, at 2\' 1-1/4" to 2\' 2-3/4"');
  });

  it('on top of a rafter stays, and the clash is told', () => {
    const layout = layOut(threeRafters({}), added(48));
    expect(layout.extenders.find(({ id }) => id === 'mine')?.clash).toBe(
      'rafter 2, at 3\' 11-1/4" to 4\' 0-3/4"',
    );
    expect(of(layout, 'pinned-clash')).toEqual([
      'A hung tail is set at 4\' 0", where it clashes. In the way: rafter 2, at 3\' 11-1/4" to 4\' 0-3/4". Move the pin, or take that away first.',
    ]);
  });

  it('past the last rafter has nothing to hang on, which is told', () => {
    const layout = layOut(threeRafters({}), added(84));
    expect(layout.extenders.at(-1)).toMatchObject({ id: 'mine', rafterNumber: 3, headers: [] });
    expect(of(layout, 'pin-out-of-place')).toEqual([
      'At 7\' 0": the tail at 7\' 0" does not stand between two rafters, so no header block can carry it.',
    ]);
  });
});
