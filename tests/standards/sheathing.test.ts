import { describe, expect, test } from 'vitest';
import { dripEdgeLapIn, dripEdgePieces } from '../../core/takeoff/drip-edge.ts';
import { nailsAcross } from '../../core/takeoff/sheathing-strip.ts';
import { lineOf, smallJob, layOut, smallTakeoff } from '../takeoff/small-job.ts';

describe('sheathing against published spacings', () => {
  // Spacing 6 in. at edges and 12 in. between: IRC 2018, Table R602.3(1); 6 in. everywhere: 2021 edition, from memory.
  // The counts of a 4 ft x 8 ft sheet follow by hand from these.
  test('a sheet on supports at 24 in. takes 33 nails at 6 and 12 in., and 45 at 6 in. everywhere', () => {
    expect(2 * nailsAcross(48, 6) + 3 * nailsAcross(48, 12)).toBe(33);
    expect(5 * nailsAcross(48, 6)).toBe(45);
  });

  test('a sheet on supports at 16 in. takes 43 and 63', () => {
    expect(2 * nailsAcross(48, 6) + 5 * nailsAcross(48, 12)).toBe(43);
    expect(7 * nailsAcross(48, 6)).toBe(63);
  });

  test('the takeoff nails a 48 in. strip of one sheet on five tails with 45', () => {
    // Overhang 48 / 1.118 in. level at 6/12, so that the strip is 48 in. up the slope; five tails at 24 in.
    const takeoff = smallTakeoff({
      stations: [6, 30, 54, 78, 95],
      eave: { lengthIn: 96 },
      eaveDesign: {
        overhangIn: 48,
        overhangMeasured: 'along-slope',
        sheathing: { kind: 'panels', coversFascia: false },
      },
      settings: { fastening: { sheathingNail: '8d box' } },
    });
    expect(lineOf(takeoff, 'nails-8d-box').quantity).toBe('45');
  });

  test('the strip over a 16 in. overhang at 6/12 is 17.9 in. wide', () => {
    // Slope factor 1.118: framing-square table, 13.42 in. per foot of run; 16 x 13.42 / 12 = 17.89.
    const line = lineOf(
      smallTakeoff({ eaveDesign: { sheathing: { kind: 'panels', coversFascia: false } } }),
      'sheathing-panels',
    );
    // 17.889 x 120 / 144 = 14.91 SF.
    expect(line.quantity).toBe('14.91');
    expect(line.madeOf[0]?.value).toBe('1\' 5-7/8"');
  });

  test('drip edge laps at least 2 in.', () => {
    // Source: IRC 2015, R905.2.8.5 (as seen in transcription). Pieces of 10 ft: common practice, no source.
    expect(dripEdgeLapIn).toBe(2);
    expect(dripEdgePieces(120, 120)).toBe(1);
    expect(dripEdgePieces(121, 120)).toBe(2);
    expect(dripEdgePieces(238, 120)).toBe(2);
    expect(dripEdgePieces(239, 120)).toBe(3);
    expect(dripEdgePieces(34 * 12, 120)).toBe(4);
  });
});

const run40 = (spacingIn: number) => {
  const stations = Array.from({ length: (40 * 12) / spacingIn + 1 }, (_, index) => 1 + spacingIn * index);
  const job = smallJob({ stations, eave: { lengthIn: 490 } });
  const takeoff = smallTakeoff({ stations, eave: { lengthIn: 490 } });
  return { rafters: layOut(job)[0]?.rafters.length, takeoff };
};

describe('blocks between rafters', () => {
  // Rafters in a run L at spacing s: L / s + 1; blocks: L / s; block length s less both neighbours' thickness.
  // Source: arithmetic of the framing layout, computed by hand.
  test('a run of 40 ft has 21 rafters and 20 blocks at 24 in., 31 and 30 at 16 in.', () => {
    const at24 = run40(24);
    expect(at24.rafters).toBe(21);
    expect(lineOf(at24.takeoff, 'blocks-2x6-No.2').quantity).toBe('20');
    const at16 = run40(16);
    expect(at16.rafters).toBe(31);
    expect(lineOf(at16.takeoff, 'blocks-2x6-No.2').quantity).toBe('30');
  });

  test('a block at 24 in. on centre is 21 in. where both neighbours are doubled', () => {
    const lengths = run40(24).takeoff.pieces.filter((piece) => piece.use === 'block');
    expect(new Set(lengths.map((piece) => piece.lengthSixteenths))).toEqual(new Set([21 * 16]));
  });
});
