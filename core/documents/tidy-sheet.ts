import type { Block, Sheet } from './sheet.ts';

/**
 * Takes stray spaces out of everything that a sheet says: names and descriptions are printed as typed but for what
 * nobody sees on screen. A paragraph and a cell keep their own line ends; an item of a list that holds nothing is left out.
 */
export function tidySheet(sheet: Sheet): Sheet {
  const { shop, job } = sheet;
  return {
    ...sheet,
    shop: {
      name: tidy(shop.name),
      licence: tidy(shop.licence),
      address: tidy(shop.address),
      contact: tidy(shop.contact),
      ...(shop.logo === undefined ? {} : { logo: shop.logo }),
    },
    job: { name: tidy(job.name), siteAddress: tidy(job.siteAddress), customer: tidy(job.customer) },
    blocks: sheet.blocks.map(tidyBlock),
  };
}

function tidyBlock(block: Block): Block {
  switch (block.kind) {
    case 'heading':
    case 'caution':
      return { ...block, text: tidy(block.text) };
    case 'paragraph':
      return { ...block, text: tidyLines(block.text) };
    case 'facts':
      return { ...block, pairs: block.pairs.map(([label, value]) => [label, tidy(value)]) };
    case 'list':
      return { ...block, items: block.items.map(tidy).filter((item) => item !== '') };
    case 'table':
      return { ...block, rows: block.rows.map((row) => ({ ...row, cells: row.cells.map(tidyLines) })) };
    case 'full-size':
      return { ...block, heading: tidy(block.heading), note: tidyLines(block.note) };
    case 'cards':
      return {
        ...block,
        cards: block.cards.map((card) => ({ ...card, title: tidy(card.title), lines: card.lines.map(tidy) })),
      };
    case 'signatures':
      return { ...block, parties: block.parties.map(tidy) };
    default:
      return block;
  }
}

/** Each line tidied; the line ends are the sheet's own. */
function tidyLines(text: string): string {
  return text.split('\n').map(tidy).join('\n').trim();
}

/** One space between words, but for the wider one around a dot that parts two things. */
function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim().replaceAll(' · ', '  ·  ');
}
