import { describe, expect, test } from 'vitest';
import { parseLength } from '../../core/units/parse-length.ts';
import { checkOf, type Change } from './checked-job.ts';

/** Reads the first length after some words of a remedy. [in] */
function lengthIn(remedy: string | null, before: string): number {
  const text = new RegExp(`${before} ((?:\\d+' )?[\\d-/]+")`).exec(remedy ?? '')?.[1];
  return fromText(text);
}
function beyond(check: string, change: Change) {
  const result = checkOf(check, change);
  expect([check, result.verdict]).toEqual([check, 'beyond']);
  return result;
}
const heavy = { groundSnowPsf: 150 };

describe('a remedy with numbers in it brings the figure within', () => {
  test.each(['bending', 'shear', 'deflection'])('a shorter overhang, for %s', (check) => {
    const change: Change = {
      site: heavy,
      stations: [12, 60, 108],
      structure: { species: 'spruce-pine-fir' },
      eaveDesign: { overhangIn: 84, backspanRatio: 1 },
    };
    const shorterIn = lengthIn(beyond(check, change).remedy, 'level overhang of');
    const at = (overhangIn: number) =>
      checkOf(check, { ...change, eaveDesign: { overhangIn, backspanRatio: 1 } }).verdict;
    expect(at(shorterIn)).toBe('within');
    expect(at(shorterIn + 0.25)).toBe('beyond');
  });

  test('a longer backspan, or closer nails, for the worst nail', () => {
    const change: Change = {
      site: { groundSnowPsf: 100 },
      stations: [12, 48, 84],
      eaveDesign: { overhangIn: 24, backspanRatio: 1 },
    };
    const result = beyond('sister-nails', change);
    const backspanIn = lengthIn(result.remedy, 'backspan of');
    const ratio = backspanIn / (24 * Math.hypot(1, 0.5));
    const longer = checkOf('sister-nails', {
      ...change,
      eaveDesign: { overhangIn: 24, backspanRatio: ratio },
    });
    expect(longer.verdict).toBe('within');
    const spacingIn = Number(/nails at (\d+) in\. in each row/.exec(result.remedy ?? '')?.[1]);
    const closer = checkOf('sister-nails', { ...change, settings: { fastening: { sister: { spacingIn } } } });
    expect(closer.verdict).toBe('within');
  });

  test('a backspan measured against what is in the way', () => {
    const change: Change = { eave: { clearBackspanIn: 30 }, eaveDesign: { overhangIn: 16 } };
    const overhangIn = lengthIn(beyond('backspan', change).remedy, 'overhang of');
    expect(checkOf('backspan', { ...change, eaveDesign: { overhangIn } }).verdict).toBe('within');
  });

  test('a tie at the plate, for wind uplift', () => {
    const change: Change = { site: { windUpliftPsf: 200 }, eaveDesign: { overhangIn: 24 } };
    const result = beyond('uplift-plate', change);
    const plateTieUpliftLb = Number(/rates at ([\d,]+) lb/.exec(result.remedy ?? '')?.[1]?.replace(',', ''));
    expect(checkOf('uplift-plate', { ...change, structure: { plateTieUpliftLb } }).verdict).toBe('within');
    expect(
      checkOf('uplift-plate', { ...change, structure: { plateTieUpliftLb: plateTieUpliftLb - 6 } }).verdict,
    ).toBe('beyond');
  });

  test('a stronger panel, for its span', () => {
    const change: Change = { stations: [12, 42, 72, 102], structure: { panelRating: '24/16' } };
    const rating = /A (\d+\/\d+) panel/.exec(beyond('sheathing-span', change).remedy ?? '')?.[1];
    expect(checkOf('sheathing-span', { ...change, structure: { panelRating: rating } }).verdict).toBe(
      'within',
    );
  });

  test('a longer tie-back, for a strip that is too narrow', () => {
    const tieBackIn = lengthIn(beyond('panel-width', {}).remedy, 'tie-back');
    expect(checkOf('panel-width', { eaveDesign: { sheathing: { tieBackIn } } }).verdict).toBe('within');
  });

  test('a vent with more free area', () => {
    const change: Change = { site: { atticAreaSqFt: 900 }, structure: { soffitVentSqInPerFt: 2 } };
    const wanted = Number(/vent of ([\d.]+) sq in\./.exec(beyond('ventilation', change).remedy ?? '')?.[1]);
    expect(checkOf('ventilation', { ...change, structure: { soffitVentSqInPerFt: wanted } }).verdict).toBe(
      'within',
    );
  });

  test('less overhang, for the lot line and the window head', () => {
    const near: Change = { eave: { lotLineIn: 70 }, eaveDesign: { overhangIn: 16 } };
    const overhangIn = lengthIn(beyond('lot-line', near).remedy, 'overhang of');
    expect(checkOf('lot-line', { ...near, eaveDesign: { overhangIn } }).verdict).toBe('within');
    const low: Change = {
      eave: { windowHeadBelowPlateIn: 6 },
      eaveDesign: { overhangIn: 16, soffit: { kind: 'level' } },
    };
    const lessIn = fromText(/([\d-/]+") of overhang/.exec(beyond('window-head', low).remedy ?? '')?.[1]);
    const shorter = (inches: number) =>
      checkOf('window-head', { ...low, eaveDesign: { overhangIn: inches, soffit: { kind: 'level' } } })
        .verdict;
    expect([shorter(lessIn), shorter(lessIn + 1 / 8)]).toEqual(['within', 'beyond']);
  });
});

function fromText(text: string | undefined): number {
  const read = parseLength(text ?? '');
  if (!read.ok) throw new Error(`no length: ${text}`);
  return read.value;
}
