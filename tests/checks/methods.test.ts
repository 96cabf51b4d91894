import { describe, expect, test } from 'vitest';
import { eaveToCheck } from '../../core/checks/eave-to-check.ts';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';
import { lapOf } from '../../core/takeoff/lap.ts';
import { staggeredNails } from '../../core/takeoff/stagger.ts';
import { bend } from './beam-by-stiffness.ts';
import { besideOnly, checkOf, checksOf, fullJob, resultOf, type Change } from './checked-job.ts';

/** Rafters 24 in. apart, joists on both faces of the third. */
function joisted(change: Change = {}): Change {
  const rafters = [12, 36, 60, 84, 108].map((readingIn, index) => ({
    id: `r${index + 1}`,
    readingIn,
    ...(index === 2 ? { joist: 'both' } : {}),
  }));
  return { ...change, eave: { rafters, ...change.eave } };
}

/** The third rafter's tail on a filler past its joist. */
function filled(change: Change = {}): Change {
  return joisted({
    ...change,
    eaveDesign: { layout: { ...besideOnly, allowFiller: true }, ...change.eaveDesign },
  });
}

/** The third rafter is rotten, so that a whole one goes in beside it. */
function whole(change: Change = {}): Change {
  return {
    ...change,
    eave: {
      rafters: [12, 36, 60, 84, 108].map((readingIn, index) => ({
        id: `r${index + 1}`,
        readingIn,
        ...(index === 2 ? { condition: 'rotten' } : {}),
      })),
      ...change.eave,
    },
    eaveDesign: { layout: { ...besideOnly, allowFullLength: true }, ...change.eaveDesign },
  };
}

/** Roof live load that the checks take over the first eave's overhang. [psf] */
function roofLiveOf(change: Change): number | undefined {
  const job = fullJob(change);
  const result = resultOf(job);
  const [layout] = result.eaves;
  return layout === undefined ? undefined : eaveToCheck(job, result, layout)?.loads.roofLivePsf;
}

function roofingAt(kickUpPitchRisePer12: number) {
  return checkOf('roofing-pitch', { eaveDesign: { kickUpPitchRisePer12, layout: besideOnly } });
}

function assumptionsOf(check: string, change: Change): string {
  return checkOf(check, change).assumptions.join(' ');
}

describe('a tail on a filler', () => {
  test('asks for a nail that is longer by the filler: 30d stands 1-1/2 in. deep, 16d half an inch', () => {
    // NDS 2018, 12.1.6.4: six diameters. 4-1/2 - 1-1/2 - 1-1/2 = 1-1/2 of 6 x 0.207 = 1.242; 3-1/2 leaves 1/2 of 0.972.
    expect(checkOf('nail-penetration', filled())).toMatchObject({
      verdict: 'within',
      where: expect.stringMatching(/^Rafter 3/),
    });
    const short = { settings: { fastening: { throughFillerNail: '16d common' } } };
    const beyond = checkOf('nail-penetration', filled(short));
    expect(beyond).toMatchObject({
      verdict: 'beyond',
      value: { number: 0.5 },
      limit: { number: expect.closeTo(0.972, 9) },
    });
    expect(beyond.remedy).toMatch(/^30d common nails would bring it within/);
    const nails = checkOf('sister-nails', filled(short));
    expect(nails).toMatchObject({ verdict: 'beyond', limit: { number: 0 } });
    expect(nails.remedy).toMatch(/longer by the filler/);
  });

  test('says what of the filler is and is not covered', () => {
    const text = assumptionsOf('nail-penetration', filled());
    expect(text).toMatch(/taken as a gap that hands nothing on, the harder reading/);
    expect(text).toMatch(/Not covered: what the filler's own nails hand on/);
  });

  test('has nails only where its filler lies, so they are fewer and each takes more', () => {
    const job = fullJob(filled());
    const [eave] = resultOf(job).eaves;
    const tail = eave?.extenders.find(({ method }) => method === 'filler');
    const filler = (tail?.filler?.lengthSixteenths ?? 0) / 16;
    expect(filler).toBeGreaterThan(0);
    expect(filler).toBeLessThan(tail?.section.backspanIn ?? 0);
    // One nail of the sister joint in Douglas fir-larch over the gap is worth less than one beside the rafter.
    const plain = checkOf(
      'sister-nails',
      joisted({ eaveDesign: { pins: [{ rafterId: 'r3', side: 'none' }] } }),
    );
    expect(checkOf('sister-nails', filled()).ratio ?? 0).toBeGreaterThan(plain.ratio ?? 0);
  });
});

describe('the nails that the checks reckon', () => {
  test('stand in the lap that the takeoff counts, whatever the back end', () => {
    for (const backEnd of ['square', 'parallel'] as const) {
      const job = fullJob({ eaveDesign: { backEnd } });
      const [extender] = resultOf(job).eaves[0]?.extenders ?? [];
      const depthIn = dressedSection('2x6')?.depthIn ?? 0;
      if (extender === undefined) throw new Error('no extender');
      const counted = staggeredNails(
        lapOf(extender, { backEnd }, depthIn),
        job.settings.fastening.sister,
      ).length;
      const step = checkOf('sister-nails', { eaveDesign: { backEnd } }).why.find(
        ({ label }) => label === 'Nails in the joint',
      );
      expect(step?.result).toMatch(new RegExp(`^${counted} nails`));
    }
  });
});

describe('a whole rafter', () => {
  test('bends in its span as an independent beam solution by direct stiffness says', () => {
    const check = checkOf('full-length', whole());
    const [dead, moment] = [/Load on the overhang/, /Moment in the span/].map(
      (label) => check.why.find((step) => label.test(step.label))?.withNumbers ?? '',
    );
    // Snow of 40 psf governs: w on the span, w_D on the 16 in. of overhang, as the steps tell them.
    const all = Number(/^w ([\d.]+) lb/.exec(moment ?? '')?.[1]);
    const own = Number(/^([\d.]+) x/.exec(dead ?? '')?.[1]);
    const nodesIn = [0, 16, ...Array.from({ length: 48 }, (_, index) => 16 + 3 * (index + 1))];
    const beam = { nodesIn, stiffness: 1e6, supports: [1, 49] as const };
    const onSpan = bend({ ...beam, even: { fromIn: 16, toIn: 160, lbPerIn: all } });
    const onTail = bend({ ...beam, even: { fromIn: 0, toIn: 16, lbPerIn: own } });
    const far = (onSpan.reactionsLb.get(49) ?? 0) + (onTail.reactionsLb.get(49) ?? 0);
    // Where the shear is nothing the moment is R^2 / (2 w), from the far end's reaction of that beam.
    const stress = (6 * far ** 2) / (2 * all) / (1.5 * 5.5 ** 2);
    expect((check.value?.number ?? 0) / stress).toBeCloseTo(1, 2);
    expect(check.where).toMatch(/^Rafter 3/);
  });

  test('presses on the plate with half its span beside the overhang', () => {
    const pressed = checkOf('plate-bearing', whole());
    expect(pressed.where).toMatch(/^Rafter 3/);
    expect(pressed.why.find(({ label }) => label === 'Load on the plate')?.formula).toMatch(
      /half of the span/,
    );
    expect(pressed.value?.number ?? 0).toBeGreaterThan(checkOf('plate-bearing').value?.number ?? 0);
  });

  test('needs its span: without it nothing of its back end is reckoned', () => {
    const open = whole({ eave: { rafterSpanIn: null } });
    const results = checksOf(fullJob(open));
    // The layout may refuse a whole rafter without a span; where it is laid out, its checks say what is missing.
    const laid =
      resultOf(fullJob(open)).eaves[0]?.extenders.some(({ method }) => method === 'full-length') === true;
    const check = results.find(({ check: name }) => name === 'full-length');
    expect(check?.verdict).toBe(laid ? 'not-covered' : 'within');
  });

  test('asks for nothing where there is none', () => {
    expect(checkOf('full-length')).toMatchObject({ verdict: 'within', value: null, remedy: null });
  });
});

describe('a kicked-up tail', () => {
  const kicked: Change = { eaveDesign: { kickUpPitchRisePer12: 3, layout: besideOnly } };

  test('is not covered where its lap is a wedge: nails, shear, sag, bearing and uplift', () => {
    for (const check of [
      'sister-nails',
      'nail-penetration',
      'uplift-sister',
      'uplift-plate',
      'shear',
      'deflection',
      'plate-bearing',
      'old-rafter',
    ]) {
      const { verdict, value, assumptions } = checkOf(check, kicked);
      expect([check, verdict, value]).toEqual([check, 'not-covered', null]);
      expect(assumptions.join(' ')).toMatch(/kicked up, so that its nails stand in a wedge/);
    }
  });

  test('bends at the plate as any tail does, under the loads of its own flatter pitch', () => {
    // IRC Table R301.6: 20 psf below 4/12; ASCE 7-16, Eq. 4.8-1: 18 at 6/12.
    expect(checkOf('bending', kicked)).toMatchObject({ limit: { unit: 'psi' } });
    expect(['within', 'beyond']).toContain(checkOf('bending', kicked).verdict);
    expect([roofLiveOf(kicked), roofLiveOf({})]).toEqual([20, 18]);
  });

  test('is held against the least pitch of asphalt shingles', () => {
    // IRC R905.2.2, from memory.
    expect(roofingAt(3)).toMatchObject({ verdict: 'within', value: { number: 3 }, limit: { number: 2 } });
    expect(roofingAt(3).assumptions.join(' ')).toMatch(/two layers of underlayment/);
    expect(roofingAt(1.5)).toMatchObject({ verdict: 'beyond' });
    expect(roofingAt(1.5).remedy).toMatch(/kick-up of 2\/12 or steeper/);
    expect(checkOf('roofing-pitch', { site: { roofing: 'slate-1/4' } }).verdict).toBe('not-covered');
  });
});

describe('on a bowed wall the worst tail governs', () => {
  const wallReadings = [
    { id: 'w1', stationIn: 0, outIn: 0 },
    { id: 'w2', stationIn: 60, outIn: -3 },
    { id: 'w3', stationIn: 120, outIn: 0 },
  ];

  test('by its own overhang, where it stands', () => {
    const bowed = resultOf(fullJob({ eave: { wallReadings } })).eaves[0]?.lineInPlan.most;
    for (const check of ['overhang-length', 'overhang-span', 'lot-line']) {
      const { value, stationIn } = checkOf(check, { eave: { wallReadings } });
      const straight = checkOf(check).value?.number ?? 0;
      const more = (bowed?.overhangIn ?? 0) - 16;
      expect(more).toBeGreaterThan(2);
      expect(value?.number).toBeCloseTo(straight + (check === 'lot-line' ? -more : more), 9);
      expect(stationIn).toBe(bowed?.stationIn);
    }
    expect(checkOf('bending', { eave: { wallReadings } }).ratio ?? 0).toBeGreaterThan(
      checkOf('bending').ratio ?? 0,
    );
  });
});
