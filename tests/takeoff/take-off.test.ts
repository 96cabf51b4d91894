import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { phases } from '../../core/eave/phases.ts';
import { problemSentence } from '../../core/problems/sentence.ts';
import { layOut, lineOf, smallJob, smallTakeoff } from './small-job.ts';
import { takeOff } from '../../core/takeoff/take-off.ts';
import { uncountedSoffits } from '../../core/takeoff/uncounted-soffit.ts';

const fasciaNailsFor = (section: string) =>
  lineOf(
    smallTakeoff({ eaveDesign: { fascia: { stock: { section, grade: '' } } } }),
    'nails-8d-common-galvanized',
  ).quantity;

const lackCodesAt = (wageUsdPerHour: string) =>
  smallTakeoff({ settings: { labour: { wageUsdPerHour } } }).lacks.map((lack) => lack.code);

const dumpLoads = (id: string, quantity: string) => ({
  id,
  description: `Cost ${id}`,
  phase: 'Clean-up',
  kind: 'disposal',
  quantity,
  unit: 'load',
  unitCostUsd: '80',
});

describe('takeoff', () => {
  test('lines come in the order of the work, each id once, none with a quantity of zero', () => {
    const { lines } = smallTakeoff({ eaveDesign: { soffit: { kind: 'open' } } });
    const order = lines.map((line) => phases.indexOf(line.phase));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(new Set(lines.map((line) => line.id)).size).toBe(lines.length);
    expect(lines.filter((line) => Number(line.quantity) <= 0)).toEqual([]);
    expect(lines.length).toBeGreaterThan(12);
  });

  test('a client reads no marks and no stock names', () => {
    for (const line of smallTakeoff().lines) {
      expect(line.clientWording).not.toMatch(/[A-Z]-[EBF]\d|2x6|1x8|\d+d /);
      expect(line.clientWording).not.toBe('');
      expect(line.madeOf.length).toBeGreaterThan(0);
    }
  });

  test('nails for the plate count one face, since the rafter hides the other', () => {
    const nails = lineOf(smallTakeoff(), 'nails-16d-common');
    expect(nails.madeOf).toContainEqual({
      label: 'Eave A, extender to plate: 5 extenders, 3 toenails on the open face',
      value: '15 nails',
      ref: 'setting/fastening.plateToenailsOneFace',
    });
  });

  test('nails of one kind add up over their uses, and loss is added before pounds', () => {
    // Backspan 2 x 17.889 = 35.777 in.: rows at 2, 18 (34 is past 33.777) and 10, 26 -> 4 nails; 5 x 4 + 15 toenails.
    const nails = lineOf(smallTakeoff(), 'nails-16d-common');
    expect(nails.quantity).toBe('35');
    // 35 x 1.10 = 38.5 -> 39; 39 / 49 = 0.7959 -> 0.80 lb.
    expect(nails.need).toEqual({ kind: 'nails', nail: '16d common', count: 39, pounds: '0.8' });
  });

  test('one nail for everything stands on one line', () => {
    const { lines } = smallTakeoff({
      settings: {
        fastening: {
          sister: { nail: '10d box' },
          plateNail: '10d box',
          blockNail: '10d box',
          fasciaNail: '10d box',
          sheathingNail: '10d box',
        },
      },
    });
    expect(lines.filter((line) => line.kind === 'nails').map((line) => line.id)).toEqual(['nails-10d-box']);
  });

  test('fascia up to 5-1/2 in. actual depth takes two nails a tail, deeper takes three', () => {
    expect(fasciaNailsFor('1x6')).toBe('10');
    expect(fasciaNailsFor('1x8')).toBe('15');
  });

  test('each fascia joint takes the nails of one more tail', () => {
    const stations = Array.from({ length: 17 }, (_, index) => 12 + 24 * index);
    const job = smallJob({ stations, eave: { lengthIn: 408 } });
    const joints = (layOut(job)[0]?.fascia.length ?? 0) - 1;
    expect(joints).toBeGreaterThan(0);
    const nails = lineOf(takeOff(job, layOut(job)), 'nails-8d-common-galvanized');
    expect(nails.quantity).toBe(String((17 + joints) * 3));
  });

  test('a nail that the program does not know is named instead of left out', () => {
    const { lacks } = smallTakeoff({ settings: { fastening: { blockNail: 'old square nail' } } });
    expect(lacks.map(problemSentence)).toContain(
      'Nail "old square nail": is not known here, so it cannot be counted in pounds. Choose one like 16d common in Settings.',
    );
  });

  test('an eave that takes no extender is named instead of left out', () => {
    const pins = [12, 36, 60, 84, 108].map((_, index) => ({ rafterId: `r${index + 1}`, side: 'none' }));
    const takeoff = smallTakeoff({ eaveDesign: { pins, layout: { allowBlockHung: false } } });
    expect(takeoff.lines).toEqual([]);
    expect(takeoff.lacks.map(problemSentence)).toEqual([
      'Eave A (Wall 1): no rafter of it takes an extender, so nothing of it is counted. Free a side of its rafters in Design, or take the eave out.',
    ]);
  });

  test('sheathing without an item on the price list is counted and named', () => {
    const takeoff = smallTakeoff();
    expect(takeoff.lacks).toContainEqual({
      code: 'entry-invalid',
      what: 'Sheathing of Eave A (Wall 1)',
      detail: 'no sheet is chosen, so it has no price. Choose one of the price list in Design.',
      field: 'design.eaves.0.sheathing.itemId',
    });
    expect(Number(lineOf(takeoff, 'sheathing-panels').quantity)).toBeGreaterThan(10);
  });

  test('a closed soffit is said to be uncounted until it is entered as a cost or excluded', () => {
    const closed = { eaveDesign: { soffit: { kind: 'level' } } };
    const soffitFindings = (design: object) => {
      const job = smallJob({ ...closed, design });
      return uncountedSoffits(job, layOut(job)).map(({ topic }) => topic);
    };
    expect(soffitFindings({})).toEqual(['soffit-not-counted']);
    expect(soffitFindings({ exclusions: ['Soffit panels by others'] })).toEqual([]);
    const soffitCost = {
      id: 'soffit',
      description: 'Soffit panels, set',
      phase: 'Soffit',
      kind: 'sub',
      quantity: '10',
      unit: 'LF',
      unitCostUsd: '12',
    };
    expect(soffitFindings({ extraCosts: [soffitCost] })).toEqual([]);
  });

  test('without a wage the takeoff says that labour counts as nothing', () => {
    expect(lackCodesAt('0')).toContain('no-wage');
    expect(lackCodesAt('30')).not.toContain('no-wage');
  });

  test('an entered cost of zero quantity is not printed', () => {
    const { lines } = smallTakeoff({
      design: { extraCosts: [dumpLoads('dump', '1'), dumpLoads('none', '0')] },
    });
    expect(lines.filter((line) => line.kind === 'extra').map((line) => line.id)).toEqual(['extra-dump']);
  });

  test('two eaves are told apart on each line, and their parts add up to it', () => {
    const takeoff = smallTakeoff({ moreEaves: [[12, 40, 64]] });
    expect(lineOf(takeoff, 'extenders-2x6-No.2').where).toBe('Eave A: 5, Eave B: 3');
    for (const line of takeoff.lines.filter(({ kind }) => kind === 'labour')) {
      const parts = [...line.where.matchAll(/: ([\d.]+) h/g)].map((match) => match[1] ?? '0');
      expect(parts.reduce((sum, part) => sum.plus(part), new Decimal(0)).toFixed()).toBe(line.quantity);
    }
  });
});
