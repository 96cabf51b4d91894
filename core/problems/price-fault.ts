import { assertNever } from '../result.ts';

/** What can go wrong here that a person can mend. */
export type PriceFault =
  | { readonly what: 'nothing-to-change' }
  | { readonly what: 'changed-since'; readonly item: string; readonly entry: string }
  | { readonly what: 'undo-gone' }
  | { readonly what: 'list-full'; readonly items: number; readonly most: number }
  | { readonly what: 'id-taken'; readonly id: string }
  | { readonly what: 'import-gone' }
  | { readonly what: 'import-stopped' }
  | { readonly what: 'import-faults'; readonly faults: number; readonly first: string }
  | { readonly what: 'import-nothing' }
  | { readonly what: 'not-text'; readonly looksLike: 'workbook' | 'pdf' | 'bytes' }
  | { readonly what: 'file-too-long'; readonly of: 'rows' | 'columns' | 'bytes'; readonly most: number }
  | { readonly what: 'column-twice'; readonly field: string }
  | { readonly what: 'column-missing'; readonly field: string }
  // boards of the shop
  | { readonly what: 'piece-not-here'; readonly piece: string }
  | { readonly what: 'offcuts-in-already' }
  | { readonly what: 'offcuts-moved' };

/** The sentence for it. */
export function priceSentence(fault: PriceFault): string {
  switch (fault.what) {
    case 'nothing-to-change':
      return 'No item is chosen. Choose the items whose prices change.';
    case 'changed-since':
      return `The ${fault.entry} of ${fault.item} was changed elsewhere in the meantime, so nothing was changed. Look at the item and do it again.`;
    case 'undo-gone':
      return 'That change can no longer be undone: the program was started anew since, or too much was changed after it. Change it back by hand.';
    case 'list-full':
      return `The price list would have ${fault.items} items; it holds ${fault.most}. Leave rows out of the file.`;
    case 'id-taken':
      return `There is an item "${fault.id}" already. Look for it in the list, or give the new one another description.`;
    case 'import-gone':
      return 'The file is not held any more. Choose it again.';
    case 'import-stopped':
      return 'The import was stopped; nothing was changed.';
    case 'import-faults':
      return `Nothing was imported: ${fault.faults === 1 ? 'one cell' : `${fault.faults} cells`} cannot be read. The first: ${fault.first}`;
    case 'import-nothing':
      return 'The file changes nothing: the list says all of it already.';
    case 'not-text':
      return notText[fault.looksLike];
    case 'file-too-long':
      return `The file has more than ${fault.most.toLocaleString('en-US')} ${fault.of}. Split it, or leave out what is not needed.`;
    case 'column-twice':
      return `Two columns are named as ${fault.field}. Leave one of them out.`;
    case 'column-missing':
      return `No column is named as ${fault.field}. Choose one, or give a value for every row.`;
    case 'piece-not-here':
      return `Board ${fault.piece} of the shop is not to be had: it is set aside for another job, or gone. Remove it here, or free it there.`;
    case 'offcuts-in-already':
      return 'What is left of this job is in the stock already. Take it back first, then add it anew.';
    case 'offcuts-moved':
      return 'Some of what was left of this job is set aside or gone by now, so it cannot be taken back. Free those boards first.';
    default:
      return assertNever(fault);
  }
}

const notText = {
  workbook:
    'This is a workbook or a zip file, not text. Open it in a spreadsheet, save the sheet as CSV, and choose that file.',
  pdf: 'This is a PDF, not text. Ask the supplier for the list as CSV or as a spreadsheet.',
  bytes: 'This is no text file. Save the list as CSV in a spreadsheet, and choose that file.',
} as const;
