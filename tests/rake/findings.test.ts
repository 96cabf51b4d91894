import { describe, expect, test } from 'vitest';
import { makeRake, saidOf } from './make-rake.ts';

const structural = (rake: ReturnType<typeof makeRake>) =>
  rake.findings
    .filter((finding) => finding.structural)
    .map(({ text }) => text)
    .join(' ');

describe('what a rake tells before it is built', () => {
  test('each finding bears its topic, its eave and its rake', () => {
    const { findings } = makeRake();
    expect(findings.length).toBeGreaterThan(0);
    for (const finding of findings)
      expect(finding).toMatchObject({ topic: 'rake', eaveId: 'north', rakeId: 'gable', stationIn: null });
  });

  test('that a ladder of more than 12 in. wants lookouts, by public guidance, as an advisory figure', () => {
    // Source: public guidance for gable overhangs, its first publisher not known: ladder for about 8 to 12 in.
    expect(structural(makeRake({ design: { kind: 'ladder', overhangIn: 12 } }))).not.toMatch(/ladder hangs/);
    const long = structural(makeRake({ design: { kind: 'ladder', overhangIn: 12.25 } }));
    expect(long).toMatch(/about 8 to 12 in\. by public guidance whose first publisher is not known/);
    expect(long).toMatch(/1' 0-1\/4"/);
  });

  test('that butted lookouts of more than 12 in. hang on their nails', () => {
    expect(structural(makeRake({ design: { atGableRafter: 'butted', overhangIn: 14 } }))).toMatch(
      /hang on their nails/,
    );
    expect(structural(makeRake({ design: { overhangIn: 14 } }))).not.toMatch(/hang on their nails/);
  });

  test('that a lookout reaches back less than it sticks out', () => {
    // Rafter 2 at 16: 15-1/4 back over the house for 18 out.
    const text = structural(makeRake({ design: { overhangIn: 18 } }));
    expect(text).toMatch(/reach back only 1' 3-1\/4" for 1' 7-1\/2" of overhang/);
    expect(structural(makeRake())).not.toMatch(/reach(es)? back only/);
  });

  test('that the first rafter inside stands far from the gable', () => {
    expect(structural(makeRake({ readings: [0.75, 48, 72] }))).toMatch(/span 3' 11-1\/4"/);
    expect(structural(makeRake())).not.toMatch(/its lookouts span/);
  });

  test('that lookouts past the wall find no tail further in', () => {
    const rake = makeRake({
      readings: [0.75, 16, 40],
      eaveDesign: {
        pins: ['r2', 'r3'].map((rafterId) => ({ rafterId, side: 'none' as const })),
        layout: { allowBlockHung: false },
        ends: { left: { kind: 'rake', meets: 'gable' } },
      },
    });
    expect(saidOf(rake)).toMatch(/lookout 1 lies past the wall, where no tail stands further in/);
  });

  test('that lookouts are let into a tail that carries the eave', () => {
    expect(structural(makeRake())).toMatch(/let 1-1\/2" into the top edge of A-E01, which leaves 4"/);
    expect(structural(makeRake({ design: { atGableRafter: 'butted' } }))).not.toMatch(/top edge of A-E01/);
  });

  test('that a lookout on edge would cut a shallow gable rafter through', () => {
    const rake = makeRake({ design: { lookoutLaid: 'on-edge' }, survey: { endRafterDepthIn: 3.5 } });
    expect(structural(rake)).toMatch(/cut the gable rafter of 3-1\/2" through/);
  });

  test("that the eave's end is not set to meet the rake", () => {
    expect(saidOf(makeRake({ eaveDesign: { ends: {} } }))).toMatch(
      /left end of North eave is not set to meet it/,
    );
    expect(saidOf(makeRake({ eaveDesign: { ends: { left: { kind: 'rake', meets: 'other' } } } }))).toMatch(
      /not set/,
    );
    expect(saidOf(makeRake())).not.toMatch(/not set/);
  });

  test('that no new tail stands at the gable, and that a tail is kicked up', () => {
    expect(saidOf(makeRake({ eaveDesign: { pins: [{ rafterId: 'r1', side: 'none' }] } }))).toMatch(
      /no new tail stands at its gable rafter/,
    );
    expect(saidOf(makeRake({ eaveDesign: { kickUpPitchRisePer12: 4, kickUpRaiseIn: 1 } }))).toMatch(
      /kicked up/,
    );
  });

  test('that a ladder finds its gable rafter set back, or a tail in the place of its rail', () => {
    const ladder = { kind: 'ladder', overhangIn: 9 } as const;
    expect(saidOf(makeRake({ design: ladder, readings: [3, 19, 43] }))).toMatch(/stands 2-1\/4" in from/);
    expect(saidOf(makeRake({ design: ladder }))).toMatch(/has only A-E01 to be nailed to, on the far face/);
  });

  test('that a barge rafter or rake fascia does not cover what stands behind it', () => {
    expect(
      saidOf(
        makeRake({
          design: { barge: { section: '2x4' }, kind: 'ladder', lookout: { section: '2x6' }, overhangIn: 10 },
        }),
      ),
    ).toMatch(/barge rafter of 2x4 is shallower than the rungs/);
    expect(saidOf(makeRake({ design: { barge: { section: '2x10' } } }))).toMatch(
      /does not cover the barge rafter/,
    );
  });

  test('that the new sheathing ends on no rafter, and that old boards run past the wall', () => {
    expect(saidOf(makeRake({ design: { sheathing: { stripBackIn: 24 } } }))).toMatch(
      /meets the old deck 2' 0" in from the gable, where no rafter lies/,
    );
    expect(saidOf(makeRake({ design: { sheathing: { stripBackIn: 40 } } }))).not.toMatch(
      /where no rafter lies/,
    );
    expect(saidOf(makeRake({ survey: { deckPastIn: 3 } }))).toMatch(
      /old deck boards run 3" past the gable wall/,
    );
  });

  test('in words that approve of nothing', () => {
    const all = [
      makeRake(),
      makeRake({ design: { kind: 'ladder', overhangIn: 14 } }),
      makeRake({ design: { atGableRafter: 'butted', overhangIn: 14 } }),
    ];
    for (const rake of all)
      expect(saidOf(rake)).not.toMatch(
        /\b(ok|okay|pass|passes|passed|safe|safely|approve[ds]?|approval|fails?)\b/i,
      );
  });
});
