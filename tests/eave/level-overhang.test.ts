import { describe, expect, it } from 'vitest';
import { levelOverhang } from '../../core/eave/level-overhang.ts';

function overhang(
  overhangIn: number,
  overhangMeasured: 'level' | 'along-slope',
  overhangTo: 'framing' | 'fascia-face',
  pitch = 6,
) {
  return levelOverhang({ overhangIn, overhangMeasured, overhangTo }, pitch, 0.75, 'North eave');
}

describe('the level overhang of the framing', () => {
  it('is the number itself where it was given so', () => {
    expect(overhang(16, 'level', 'framing')).toEqual({ ok: true, value: 16 });
  });

  it('is less by the fascia where the number reaches its face', () => {
    expect(overhang(16, 'level', 'fascia-face')).toEqual({ ok: true, value: 15.25 });
  });

  it('is O cos t where the number runs along the slope: 20 in. at 9/12 is 16 in. by the 3-4-5 triangle', () => {
    expect(overhang(20, 'along-slope', 'framing', 9)).toEqual({ ok: true, value: 16 });
    expect(overhang(20, 'along-slope', 'fascia-face', 9)).toEqual({ ok: true, value: 15.25 });
  });

  it('is a problem where the fascia leaves nothing', () => {
    const gone = { ok: false, problem: { code: 'overhang-nothing-left', eave: 'North eave' } };
    expect(overhang(0.75, 'level', 'fascia-face')).toEqual(gone);
    expect(overhang(0.8, 'along-slope', 'fascia-face', 24)).toEqual(gone);
    expect(overhang(1, 'level', 'fascia-face')).toEqual({ ok: true, value: 0.25 });
  });
});
