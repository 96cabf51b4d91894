import { describe, expect, it } from 'vitest';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import type { JobFile } from '../../core/job/job-file.ts';
import { formatUsd } from '../../core/units/money.ts';
import { cell, centsOf, computed, sampleJob, tableUnder, wordsOf } from './sample.ts';

const job = sampleJob();
const result = computed(job);
const quote = makeSheet('quote', job, result);

function quoteOf(change: (job: JobFile) => void) {
  const changed = sampleJob();
  change(changed);
  const outcome = computed(changed);
  return { sheet: makeSheet('quote', changed, outcome), result: outcome };
}

/** Neither fillers nor hung tails nor whole rafters: a rafter with both sides taken gets no tail. */
function onlyBesideRafters(job: JobFile): void {
  for (const eave of job.design.eaves) {
    eave.layout.allowFiller = false;
    eave.layout.allowBlockHung = false;
    eave.layout.allowFullLength = false;
    eave.pins = [];
  }
}

describe('the quote', () => {
  it('adds up by hand: the phases make the total to the cent', () => {
    const { rows } = tableUnder(quote, 'Price');
    const total = rows.at(-1);
    const sum = rows.slice(0, -1).reduce((cents, row) => cents + centsOf(cell(row, 2)), 0);
    expect(cell(total, 0)).toBe('Total');
    expect(sum).toBe(centsOf(cell(total, 2)));
    expect(cell(total, 2)).toBe(formatUsd(result.estimate.totalUsd));
  });

  it('adds the tax as a line of its own where the client pays it', () => {
    const { sheet, result: taxed } = quoteOf((changed) => {
      changed.settings.money.taxRule = 'client-pays';
      changed.settings.money.taxPercent = '7.25';
    });
    const { rows } = tableUnder(sheet, 'Price');
    const named = (name: string) => rows.find((row) => cell(row, 0) === name);
    expect(centsOf(cell(named('Price before tax'), 2)) + centsOf(cell(named('Sales tax'), 2))).toBe(
      centsOf(cell(named('Total'), 2)),
    );
    expect(centsOf(cell(named('Sales tax'), 2))).toBeGreaterThan(0);
    expect(cell(named('Total'), 2)).toBe(formatUsd(taxed.estimate.totalUsd));
  });

  it('shows the client no cost, wage, hour, markup or margin', () => {
    expect(wordsOf(quote)).not.toMatch(
      /\bcosts?\b|overhead|contingency|mark-?up|margin|profit|wage|burden|\bhours?\b|labou?r rate/i,
    );
    const shown = new Set(wordsOf(quote).match(/\$[\d,]+\.\d\d/g));
    const prices = new Set(
      ['Price', 'If we find hidden damage', 'Payments'].flatMap((heading) =>
        tableUnder(quote, heading).rows.map((row) => row.cells.at(-1)),
      ),
    );
    expect([...shown].filter((amount) => !prices.has(amount))).toEqual([]);
    expect(shown).not.toContain(formatUsd(result.estimate.directCostUsd));
  });

  it('says what is built in plain words, for each eave', () => {
    const words = wordsOf(quote);
    for (const eave of result.eaves) {
      expect(words).toContain(eave.name);
      expect(words).toContain(`${eave.extenders.length} new rafter tails`);
    }
    expect(words).toContain('hung between old rafters on blocks');
  });

  it('draws the rafters that get no tail together in one sentence', () => {
    const { sheet } = quoteOf((changed) => {
      onlyBesideRafters(changed);
      const eave = changed.design.eaves[0];
      const rafters = changed.survey.eaves[0]?.rafters ?? [];
      eave?.pins.push(
        ...[2, 8, 9, 10, 11].map((number) => ({
          rafterId: rafters[number - 1]?.id ?? '',
          side: 'none' as const,
        })),
      );
    });
    const words = wordsOf(sheet);
    expect(words).toContain('Rafters 2, 8-11 get no new tail. ');
    expect(words).toContain('Rafter 6 gets no new tail, because both sides are taken at the wall. ');
  });

  it('prints names without the spaces around them', () => {
    const { sheet } = quoteOf((changed) => {
      changed.settings.shopName = '  Thornbury  Carpentry ';
      changed.job.name = ' Two eaves\t';
      changed.job.customer.name = '  ';
      changed.design.exclusions = ['  Gutters ', '   '];
      for (const eave of changed.survey.eaves) eave.name = `  ${eave.name} `;
      for (const extra of changed.design.extraCosts) extra.description = `${extra.description}   `;
    });
    expect(sheet.shop.name).toBe('Thornbury Carpentry');
    expect(sheet.job.name).toBe('Two eaves');
    const facts = sheet.blocks.find((block) => block.kind === 'facts');
    expect(facts?.pairs[0]).toEqual(['For', 'Client not named']);
    expect(sheet.blocks.at(-1)).toEqual({
      kind: 'signatures',
      parties: ['For Thornbury Carpentry', 'Client'],
    });
    const words = wordsOf(sheet);
    expect(words).toContain('"Gutters"');
    const written = sheet.blocks.filter(({ kind }) => kind !== 'drawing');
    expect(JSON.stringify(written).match(/.{9}((?<!·) {2}(?!·)| [,;]).{9}/g)).toBeNull();
  });

  it('says of tails in place that they are not in its price', () => {
    const { sheet, result: begun } = quoteOf((changed) => {
      changed.design.asBuilt = ['s1', 's2'].map((extenderId) => ({
        eaveId: 'south',
        extenderId,
        inPlace: true,
        stationIn: null,
        note: '',
      }));
    });
    const words = wordsOf(sheet);
    expect(words).toContain('2 of them are in place already and not in this price.');
    expect(words).toContain('Part of this work is in place already.');
    expect(Number(begun.estimate.totalUsd)).toBeLessThan(Number(result.estimate.totalUsd));
    expect(wordsOf(quote)).not.toContain('in place already');
  });

  it('promises no work that is not priced: without sheathing and drip edge it does not speak of them', () => {
    const { sheet } = quoteOf((changed) => {
      for (const eave of changed.design.eaves) {
        eave.sheathing.kind = 'none';
        eave.dripEdge = false;
      }
      for (const rake of changed.design.rakes) {
        rake.sheathing.kind = 'none';
        rake.dripEdge = false;
      }
    });
    const scope = sheet.blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).join(' ');
    expect(scope).not.toMatch(/sheathing|drip edge/);
    expect(scope).toMatch(/new fascia/);
  });

  it('does not speak of tails and blocks at an eave where no rafter gets one', () => {
    const { sheet } = quoteOf((changed) => {
      onlyBesideRafters(changed);
      changed.survey.rakes = [];
      changed.design.rakes = [];
      for (const [index, eave] of changed.design.eaves.entries()) {
        const rafters = changed.survey.eaves[index]?.rafters ?? [];
        eave.pins = rafters.map((rafter) => ({ rafterId: rafter.id, side: 'none' as const }));
      }
    });
    const scope = sheet.blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).join(' ');
    expect(scope).toContain('no rafter gets a new tail, so the eave is not extended.');
    expect(scope).not.toMatch(/fascia of|overhang\.|blocks of/);
  });

  it('lists what is not in the price, and adds what nobody priced or named', () => {
    const { sheet } = quoteOf((changed) => {
      changed.design.exclusions = ['Painting'];
      changed.design.offer.assumptions = [];
      for (const { soffit } of [...changed.design.eaves, ...changed.design.rakes]) soffit.itemId = '';
    });
    const [list] = sheet.blocks.flatMap((block) => (block.kind === 'list' ? [block.items] : []));
    expect(list).toContain('Painting');
    expect(list).toContain('Soffit and vents under the new overhang');
    expect(list).not.toContain('Painting and priming');
  });

  it('says until when its price is good, and by whom it is to be signed', () => {
    expect(wordsOf(quote)).toContain(`["Price good until","${result.estimate.validUntil}"]`);
    expect(quote.blocks.at(-1)).toEqual({
      kind: 'signatures',
      parties: [`For ${job.settings.shopName}`, job.job.customer.name],
    });
    expect(quote.shop.licence).toBe(job.settings.licenceNumber);
  });

  it('names an allowance as a sum that is adjusted', () => {
    const { sheet } = quoteOf((changed) => {
      changed.design.extraCosts.push({
        id: 'rot',
        description: 'Rotted tails found behind the fascia',
        phase: 'Framing',
        kind: 'allowance',
        quantity: '1',
        unit: 'lot',
        unitCostUsd: '300',
        taxable: false,
      });
    });
    expect(wordsOf(sheet)).toMatch(/allowances: sums set aside.*Rotted tails found behind the fascia: \$/);
  });
});

describe('a quote that lacks something', () => {
  const { sheet, result: lacking } = quoteOf((changed) => {
    changed.priceList = changed.priceList.filter((item) => item.category !== 'nails');
  });

  it('says first that it is not complete, and gives no total', () => {
    expect(lacking.estimate.lacks.length + lacking.takeoff.lacks.length).toBeGreaterThan(0);
    const [facts, heading] = sheet.blocks;
    expect(heading).toEqual({ kind: 'heading', text: 'This quote is not complete' });
    expect(JSON.stringify(facts)).toContain('not complete, see below');
    expect(JSON.stringify(facts)).not.toContain('$');
  });

  it('never calls the sum so far a total', () => {
    const { rows } = tableUnder(sheet, 'Price');
    expect(rows.map((row) => cell(row, 0))).not.toContain('Total');
    expect(cell(rows.at(-1), 0)).toBe('Sum so far, not complete');
  });
});
