import { describe, expect, it } from 'vitest';
import { asBuiltSchema, type AsBuilt } from '../../core/eave/design-document.ts';
import { layOutEave } from '../../core/layout/lay-out-eave.ts';
import type { EaveLayout } from '../../core/layout/layout-types.ts';
import { plainMeans } from '../../core/layout/layout-means.ts';
import { makeEave } from '../survey/make-eave.ts';
import { besideRafters, makeDesign } from './make-layout.ts';

function built(extenderId: string, stationIn: number | null, inPlace = true): AsBuilt {
  return asBuiltSchema.parse({ eaveId: 'north', extenderId, stationIn, inPlace });
}

const eave = makeEave([24, 48, 72], { lengthIn: 96 });

function layOutBuilt(asBuilt: readonly AsBuilt[], design = makeDesign(), survey = eave): EaveLayout {
  const layout = layOutEave(survey, design, 'A', null, undefined, { ...plainMeans, asBuilt });
  if (!layout.ok) throw new Error('not laid out');
  return layout.value;
}

function told({ extenders }: EaveLayout): readonly string[] {
  return extenders.map(
    ({ id, method, side, centreIn, because, inPlace }) =>
      `${id} ${method} ${side} ${centreIn} ${because}${inPlace ? ', in place' : ''}`,
  );
}

describe('a tail that was built', () => {
  it('where it was laid out is in place, and stays as it was', () => {
    expect(told(layOutBuilt([built('r2', null)]))).toEqual([
      'r1 side right 25.5 preferred',
      'r2 side right 49.5 preferred, in place',
      'r3 side right 73.5 preferred',
    ]);
  });

  it('at another station stands there, and bays and blocks follow', () => {
    const layout = layOutBuilt([built('r2', 46.5625)]);
    expect(told(layout)[1]).toBe('r2 side left 46.5625 built, in place');
    // The extender right of the first rafter ends at 26-1/4; this one begins at 46.5625 less 3/4.
    expect(layout.bays.map(({ fromIn, toIn }) => [fromIn, toIn])).toEqual([
      [26.25, 45.8125],
      [48.75, 71.25],
    ]);
  });

  it('that is set but not yet in place is held at its station all the same', () => {
    expect(told(layOutBuilt([built('r2', 46.5, false)]))[1]).toBe('r2 side left 46.5 built');
  });

  it('off the rafter by a joist or so is packed out, by as much as is clear', () => {
    const layout = layOutBuilt([built('r2', 51)]);
    expect(layout.extenders[1]).toMatchObject({ method: 'filler', filler: { wantedIn: 1.5 } });
  });

  it('further off is hung, and stays the tail of its rafter', () => {
    const layout = layOutBuilt([built('r2', 60)]);
    expect(layout.extenders[1]).toMatchObject({
      id: 'r2',
      method: 'block-hung',
      mark: 'A-T01',
      standsFor: 'r2',
    });
    expect(layout.extenders[1]?.headers).toHaveLength(1);
    expect(layout.unplaced).toEqual([]);
  });

  it('into another clashes, which is told', () => {
    const layout = layOutBuilt([built('r1', 46)], makeDesign({ pins: [{ rafterId: 'r2', side: 'left' }] }));
    expect(layout.findings.filter(({ topic }) => topic === 'pinned-clash').map(({ text }) => text)).toEqual([
      expect.stringContaining(
        'A hung tail was built at 3\' 10", where it clashes. In the way: the extender of rafter 2',
      ),
      expect.stringContaining('Rafter 2: the extender is pinned to the left, where it clashes.'),
    ]);
  });

  it('against a pin stands where it was built', () => {
    const layout = layOutBuilt(
      [built('r2', 46.5)],
      makeDesign({ pins: [{ rafterId: 'r2', side: 'right' }] }),
    );
    expect(told(layout)[1]).toBe('r2 side left 46.5 built, in place');
  });

  it('of an eave that is another changes nothing here', () => {
    const other = { ...built('r2', 46.5), eaveId: 'south' };
    const means = { ...plainMeans, asBuilt: [other].filter(({ eaveId }) => eaveId === 'north') };
    const layout = layOutEave(eave, makeDesign(), 'A', null, undefined, means);
    expect(layout.ok && told(layout.value)[1]).toBe('r2 side right 49.5 preferred');
  });
});

describe('a hung tail that was built', () => {
  const sixteen = makeDesign({ layout: { ...besideRafters, allowBlockHung: true, largestGapIn: 16 } });

  it('stays where it is while the rest is laid out anew around it', () => {
    expect(told(layOutBuilt([], sixteen))[1]).toBe('gap-1 block-hung right 37.5 gap');
    expect(told(layOutBuilt([built('gap-1', 36)], sixteen))[1]).toBe(
      'gap-1 block-hung right 36 built, in place',
    );
    // Larger gaps would do without it now, but there it is.
    expect(told(layOutBuilt([built('gap-1', 36)]))).toEqual([
      'r1 side right 25.5 preferred',
      'gap-1 block-hung right 36 built, in place',
      'r2 side right 49.5 preferred',
      'r3 side right 73.5 preferred',
    ]);
  });

  it('of the person stands where it was built, not where it was drawn', () => {
    const design = makeDesign({ addedTails: [{ id: 'mine', stationIn: 36 }] });
    expect(told(layOutBuilt([built('mine', 37.25)], design))[1]).toBe(
      'mine block-hung right 37.25 built, in place',
    );
  });
});
