import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { Block, Sheet, SheetKind } from '../../core/documents/sheet.ts';
import { stillToCut, stillToCutSentence } from '../../core/job/still-to-cut.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { gaugeBlockIn, stringLine } from '../../core/layout/string-line.ts';
import { formatInches, formatLength } from '../../core/units/format-length.ts';
import { inchesOf } from '../../core/units/sixteenths.ts';
import { oldHouse } from '../drawings/old-house.ts';
import { cell, computed, sampleJob, tables, tableUnder, wordsOf } from './sample.ts';

const job = sampleJob();
const result = computed(job);

function sheetOf(kind: SheetKind, change?: (file: JobFile) => void): Sheet {
  if (change === undefined) return makeSheet(kind, job, result);
  const file = sampleJob();
  change(file);
  return makeSheet(kind, file, computed(file));
}

type Table = Extract<Block, { kind: 'table' }>;

function paragraphs(sheet: Sheet): string {
  return sheet.blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).join('\n');
}

/** The table of tails under an eave's heading on the layout sheet. */
function tailTable(sheet: Sheet, name: string): Table {
  const at = sheet.blocks.findIndex((block) => block.kind === 'heading' && block.text.endsWith(name));
  const table = sheet.blocks.slice(at).find((block) => block.kind === 'table');
  if (at < 0 || table?.kind !== 'table') throw new Error(`no table of ${name}`);
  return table;
}

function column({ columns, rows }: Table, title: string): readonly string[] {
  const index = columns.findIndex((one) => one.title === title);
  if (index < 0) throw new Error(`no column ${title}`);
  return rows.map((row) => cell(row, index));
}

describe('the layout sheet', () => {
  const sheet = sheetOf('layout');

  it('lists every tail and every rafter without one by station, with mark, overhang and what is cut at the plate', () => {
    for (const layout of result.eaves) {
      const table = tailTable(sheet, layout.name);
      const byStation = [
        ...layout.extenders.map(({ centreIn, mark }) => ({ at: centreIn, mark })),
        ...layout.unplaced.map(({ stationIn }) => ({ at: stationIn, mark: '-' })),
      ].sort((a, b) => a.at - b.at);
      expect(column(table, 'Station')).toEqual(byStation.map(({ at }) => formatLength(at)));
      expect(column(table, 'Tail')).toEqual(byStation.map(({ mark }) => mark));
      const overhangs = column(table, 'Overhang');
      for (const extender of layout.extenders) {
        const row = table.rows.find((one) => one.cells.includes(extender.mark));
        expect(overhangs).toContain(formatLength(extender.overhangLevelIn));
        const { seatSixteenths, heelSixteenths, shimSixteenths } = extender.fit;
        const expected =
          seatSixteenths > 0
            ? `seat ${formatInches(inchesOf(seatSixteenths))}, heel ${formatInches(inchesOf(heelSixteenths))}`
            : shimSixteenths > 0
              ? `shim ${formatInches(inchesOf(shimSixteenths))}`
              : 'on the corner';
        expect(row?.cells).toContain(expected);
      }
    }
  });

  it('says of every tail that its crown is up, and leaves room for the as-built where none was typed back', () => {
    for (const layout of result.eaves) {
      const table = tailTable(sheet, layout.name);
      expect(column(table, 'Crown').filter((crown) => crown.startsWith('up'))).toHaveLength(
        layout.extenders.length,
      );
      expect(column(table, 'As built').filter((text) => /^_{8,}$/.test(text))).toHaveLength(
        layout.extenders.length,
      );
    }
  });

  it('shows what is in place and where it was set, once that is typed back', () => {
    const [eave] = result.eaves;
    const extender = eave?.extenders.find(({ method }) => method === 'side');
    if (eave === undefined || extender === undefined) throw new Error('the sample has tails');
    const built = sheetOf('layout', (file) => {
      file.design.asBuilt = [
        { eaveId: eave.eaveId, extenderId: extender.id, inPlace: true, stationIn: null, note: 'nailed dry' },
      ];
    });
    const row = tailTable(built, eave.name).rows.find((one) => one.cells.includes(extender.mark));
    expect(cell(row, 8)).toBe('in place. nailed dry');
    expect(wordsOf(built)).toMatch(
      /1 of \d+ tails are in place; \d+ tails and \d+ other pieces are still to be cut\./,
    );
  });

  it('draws each eave in plan and elevation, its deck and its joints, rakes too', () => {
    const titles = sheet.blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing.title] : []));
    for (const { name, extenders } of result.eaves) {
      expect(titles.some((title) => title.startsWith(`Plan of ${name}`))).toBe(true);
      expect(titles.some((title) => title.startsWith(`Fascia of ${name}`))).toBe(true);
      expect(titles.some((title) => title.startsWith(`New deck of ${name}`))).toBe(true);
      expect(extenders.length).toBeGreaterThan(0);
    }
    expect(titles.some((title) => title.startsWith('Nails of '))).toBe(true);
    for (const { name } of result.rakes) expect(titles.some((title) => title.includes(name))).toBe(true);
  });

  it('repeats what is to be looked at, and lies on its side', () => {
    for (const { text } of result.findings)
      expect(wordsOf(sheet)).toContain(JSON.stringify(text).slice(1, -1));
    expect(sheet.orientation).toBe('landscape');
  });
});

describe('the crew lists', () => {
  const sheet = sheetOf('lists');

  it('say crown up over every list, so on every page', () => {
    const headings = sheet.blocks.flatMap((block, index) =>
      sheet.blocks[index + 1]?.kind === 'table' && block.kind === 'heading' ? [block.text] : [],
    );
    expect(headings.length).toBe(tables(sheet).length);
    for (const heading of headings) expect(heading).toMatch(/crown up$/);
  });

  it('are large, in every list', () => {
    for (const table of tables(sheet)) expect(table.large).toBe(true);
  });

  it('give every piece of the takeoff once, with its length to the sixteenth', () => {
    const listed = tables(sheet).flatMap((table) => {
      const length = table.columns.findIndex(({ title }) => title === 'Length' || title === 'Long points');
      return table.rows.map((row) => [cell(row, 0), cell(row, length)] as const);
    });
    for (const { mark, lengthSixteenths, use } of result.takeoff.pieces) {
      // A filler is listed whole, its layers in words.
      const found = listed.filter(([own]) => (use === 'filler' ? mark.startsWith(own) : own === mark));
      expect([mark, found.map(([, length]) => length)]).toEqual([
        mark,
        [formatLength(inchesOf(lengthSixteenths))],
      ]);
    }
  });

  it('list every bay with its clear distance and what becomes of its block', () => {
    for (const layout of result.eaves) {
      const stock = job.design.eaves.find(({ eaveId }) => eaveId === layout.eaveId)?.blocks.stock.section;
      const table = tableUnder(sheet, `Blocks by bay of ${layout.name}, ${stock}, crown up`);
      expect(column(table, 'Mark')).toEqual(layout.bays.map(({ mark }) => mark));
      expect(column(table, 'Clear')).toEqual(layout.bays.map(({ clearIn }) => formatLength(clearIn)));
      for (const [index, bay] of layout.bays.entries()) {
        const words = column(table, 'Block')[index];
        expect(words?.includes('old block comes out')).toBe(bay.oldBlockOut);
        expect(words?.startsWith('new block')).toBe(bay.block === 'block');
      }
    }
  });

  it('name long and short points of the fascia, and the tail under each joint', () => {
    for (const layout of result.eaves) {
      const stock = job.design.eaves.find(({ eaveId }) => eaveId === layout.eaveId)?.fascia.stock.section;
      const table = tableUnder(sheet, `Fascia of ${layout.name}, ${stock}, crown up`);
      expect(column(table, 'Short points')).toEqual(
        layout.fascia.map(({ shortSixteenths }) => formatLength(inchesOf(shortSixteenths))),
      );
      const joints = column(table, 'Joint on').slice(0, -1);
      for (const [index, mark] of joints.entries()) {
        const tail = layout.extenders.find((extender) => extender.mark === mark);
        const at = layout.fascia[index]?.toIn ?? Number.NaN;
        expect(at).toBeGreaterThanOrEqual(tail?.leftIn ?? Number.NaN);
        expect(at).toBeLessThanOrEqual(tail?.rightIn ?? Number.NaN);
      }
    }
  });

  it('name the hand of a piece that is no mirror image of itself, in its own column or by its mitre', () => {
    const handed = result.takeoff.pieces.filter(({ hand }) => hand !== undefined);
    expect(handed.length).toBeGreaterThan(0);
    const rows = new Map(
      tables(sheet).flatMap(({ rows: own }) => own.map((row) => [cell(row, 0), row.cells] as const)),
    );
    for (const { mark, hand } of handed)
      expect(JSON.stringify(rows.get(mark))).toMatch(new RegExp(`"${hand}"|mitre`));
  });
});

describe('the string line', () => {
  const house = oldHouse();
  const line = stringLine(house.layout);

  it('runs three quarters of an inch off every tail, though the wall bows (common practice, no source)', () => {
    for (const { fromTailIn } of line?.stations ?? []) expect(fromTailIn).toBeCloseTo(0.75, 9);
    // Wall out 0 at the left, 3/4 in. at 8 ft: at r5's tail the string is 16 + 3/4 - 3/4 from the wall, less what it bows back.
    for (const { stationIn, fromWallIn } of line?.stations ?? []) {
      const wallOut = stationIn <= 96 ? (0.75 * stationIn) / 96 : 0.75 - (0.5 * (stationIn - 96)) / 96;
      expect(fromWallIn).toBeCloseTo(16 + gaugeBlockIn - wallOut, 6);
    }
  });

  it('stands at the top corner of every tail that is brought to it, and tells how far off the old rafters are', () => {
    for (const { tailAboveIn, extender, asFoundAboveIn } of line?.stations ?? []) {
      expect(tailAboveIn).toBeCloseTo(0, 9);
      expect(asFoundAboveIn).toBeCloseTo(-extender.liftAtTailIn, 9);
    }
  });

  it('is stretched from the first tail to the last, and not at all between fewer than two', () => {
    expect([line?.left.extender.mark, line?.right.extender.mark]).toEqual([
      house.layout.extenders[0]?.mark,
      house.layout.extenders.at(-1)?.mark,
    ]);
    expect(stringLine({ ...house.layout, extenders: house.layout.extenders.slice(0, 1) })).toBeUndefined();
  });

  it('follows tails that follow a bowed wall by their own distance from it', () => {
    const follow = oldHouse({}, { fasciaInPlan: 'follow' });
    const bent = stringLine(follow.layout)?.stations ?? [];
    expect(bent[0]?.fromTailIn).toBeCloseTo(0.75, 9);
    expect(bent.at(-1)?.fromTailIn).toBeCloseTo(0.75, 9);
    // The wall stands out in the middle, so that the tails there stand nearer to the string, or past it.
    expect(Math.min(...bent.map(({ fromTailIn }) => fromTailIn))).toBeLessThan(0.4);
  });

  it('is on its sheet at every tail, with the words that its sag is not reckoned', () => {
    const sheet = sheetOf('string-line');
    expect(wordsOf(sheet)).toContain('its sag is not reckoned');
    for (const layout of result.eaves) {
      const table = tableUnder(sheet, `The string at each tail, ${layout.name}`);
      const stations = stringLine(layout)?.stations ?? [];
      expect(column(table, 'Tail')).toEqual(layout.extenders.map(({ mark }) => mark));
      expect(column(table, 'From the wall')).toEqual(
        stations.map(({ fromWallIn }) => formatLength(fromWallIn)),
      );
      const drawn = sheet.blocks.some(
        (block) =>
          block.kind === 'drawing' &&
          block.drawing.title.includes(`heights of ${layout.name}, before and after`),
      );
      expect(drawn).toBe(true);
    }
  });
});

describe('the templates', () => {
  const sheet = sheetOf('templates');

  it('stand at full size, one a group of notched tails, with every mark of the group', () => {
    const pages = sheet.blocks.filter((block) => block.kind === 'full-size');
    expect(pages.length).toBe(tables(sheet)[0]?.rows.length);
    const rows = tables(sheet)[0]?.rows ?? [];
    for (const [index, page] of pages.entries()) {
      expect(page.note).toContain(cell(rows[index], 2));
      expect(page.heading).toContain(`Template ${cell(rows[index], 0)} of ${pages.length}`);
    }
  });

  it('state their tolerance, which the shop sets', () => {
    expect(wordsOf(sheet)).toContain('no more than 1/16\\" in seat');
    const coarse = sheetOf('templates', (file) => {
      file.settings.cutting.templateToleranceIn = 0.5;
    });
    expect(wordsOf(coarse)).toContain('no more than 1/2\\"');
    expect(tables(coarse)[0]?.rows.length).toBeLessThan(tables(sheet)[0]?.rows.length ?? 0);
  });
});

describe('the set-up cards', () => {
  it('set the rise on the tongue against 12 in. on the blade, with the saw off square: 7/12 is 30.3 and 59.7 deg', () => {
    // Angle of a 7/12 roof: atan(7/12) = 30.256 deg; framing-square tables give 30-1/4, from memory.
    const sheet = sheetOf('set-up-card', (file) => {
      for (const eave of file.survey.eaves)
        for (const rafter of eave.rafters) {
          rafter.pitchRisePer12 = null;
          rafter.heightAbovePlateIn = null;
        }
    });
    const cards = sheet.blocks.flatMap((block) => (block.kind === 'cards' ? block.cards : []));
    expect(cards.length).toBeGreaterThan(0);
    expect(cards[0]?.setting).toBe('Tongue 7"  ·  Blade 12"');
    expect(cards[0]?.lines[0]).toBe('Saw off square: 30.3 deg plumb, 59.7 deg level');
    // HAP 5, 2x6: plumb depth 5.5 x sqrt(1 + (7/12)^2) = 6.367; heel 1.367, seat 1.367 / (7/12) = 2.344.
    expect(cards[0]?.lines.slice(1, 4)).toEqual([
      'Down the wall line: 5"',
      'Seat, level: 2-3/8"',
      'Heel, plumb: 1-3/8"',
    ]);
  });
});

describe('what is still to be cut', () => {
  it('is every piece that is not in place, by what was typed back', () => {
    const [eave] = result.eaves;
    const [first, second] = eave?.extenders ?? [];
    if (eave === undefined || first === undefined || second === undefined)
      throw new Error('the sample has tails');
    const file = sampleJob();
    file.design.asBuilt = [
      { eaveId: eave.eaveId, extenderId: first.id, inPlace: true, stationIn: null, note: '' },
      { eaveId: eave.eaveId, extenderId: second.id, inPlace: false, stationIn: null, note: 'leave' },
      { eaveId: eave.eaveId, extenderId: 'gone', inPlace: true, stationIn: null, note: '' },
    ];
    const now = computed(file);
    const left = stillToCut(now.eaves, now.takeoff.pieces, file.design);
    expect(left.tailsInPlace).toBe(1);
    expect(left.inPlace.map(({ mark }) => mark)).toContain(first.mark);
    expect(left.toCut.map(({ mark }) => mark)).not.toContain(first.mark);
    expect(left.toCut.map(({ mark }) => mark)).toContain(second.mark);
    expect(left.toCut.length + left.inPlace.length).toBe(now.takeoff.pieces.length);
    expect(left.withoutTail.map(({ extenderId }) => extenderId)).toEqual(['gone']);
    const typed = left.tails.filter(({ asBuilt }) => asBuilt !== null).map(({ extender }) => extender.id);
    expect(typed.sort()).toEqual([first.id, second.id].sort());
    expect(stillToCutSentence(left)).toMatch(/^1 of \d+ tails are in place; \d+ tails and/);
  });

  it('is noted on the cut list and the saw list, and only once something is in place', () => {
    const [eave] = result.eaves;
    const extenderId = eave?.extenders[0]?.id ?? '';
    for (const kind of ['cut-list', 'saw-list'] as const) {
      expect(paragraphs(sheetOf(kind))).not.toContain('in place;');
      const begun = sheetOf(kind, (file) => {
        file.design.asBuilt = [
          { eaveId: eave?.eaveId ?? '', extenderId, inPlace: true, stationIn: null, note: '' },
        ];
      });
      expect(paragraphs(begun)).toMatch(
        /1 of \d+ tails are in place; .* The boards here are for what is still to be cut\./,
      );
    }
  });

  it('is nothing once all of a small job is in place', () => {
    const all = { tails: [], tailsInPlace: 0, toCut: [], inPlace: [], withoutTail: [] };
    expect(stillToCutSentence(all)).toBe('0 of 0 tails are in place; nothing is left to be cut.');
  });
});
