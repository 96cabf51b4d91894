import { describe, expect, it } from 'vitest';
import { overhangFacts, overhangWords } from '../../core/documents/overhang-words.ts';
import { layOut, makeDesign } from '../layout/make-layout.ts';
import { makeEave } from '../survey/make-eave.ts';

const wallReadings = [
  { id: 'w1', stationIn: 0, outIn: 0 },
  { id: 'w2', stationIn: 120, outIn: 0.75 },
  { id: 'w3', stationIn: 240, outIn: 0 },
];
const layout = (rest: Parameters<typeof makeDesign>[0], readings = wallReadings) =>
  layOut(
    makeEave([16, 120, 200], { wallReadings: readings }),
    makeDesign({ layout: { largestGapIn: 96 }, ...rest }),
  );

describe('what an overhang is measured from', () => {
  it("is the wall's framing face where the wall is straight, or was not read", () => {
    expect(overhangWords(layout({}, []))).toBe(
      `1' 4" level, from the wall's framing face to the tails' top corners`,
    );
  });

  it('is the reference line on a bowed wall, with how far the tails themselves stick out', () => {
    // 0.75 x 121.5 / 120 short of its peak: 0.741 out at the second tail, 0.109 at the first.
    expect(overhangWords(layout({}))).toBe(
      `1' 4" level, from the straight reference line of the wall readings to the tails' top corners; the tails themselves stick out 15-1/4" (at 10' 1-1/2") to 15-7/8" (at 1' 5-1/2") of the bowed wall`,
    );
  });

  it("is the wall's mean where that was chosen, told by its distance from the reference line", () => {
    expect(overhangWords(layout({ overhangFrom: 'wall-mean' }))).toContain(
      `from the wall's mean, 3/8" outside the straight reference line`,
    );
  });

  it('is the wall at each tail where the fascia follows it', () => {
    expect(overhangWords(layout({ fasciaInPlan: 'follow' }))).toContain('the fascia follows the bow');
  });

  it('stands at the head of a sheet once for each eave', () => {
    expect(overhangFacts([layout({}), layout({})]).map(([label]) => label)).toEqual([
      'Overhang of A',
      'Overhang of A',
    ]);
  });
});
