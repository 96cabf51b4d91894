import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { SupplierCost } from '../job/supplier-ways.ts';
import type { PricedWay } from '../offer/offered-ways.ts';
import { assertNever } from '../result.ts';
import { calculationSheet } from './calculation-sheet.ts';
import { cutListSheet } from './cut-list-sheet.ts';
import { layoutSheet } from './layout-sheet.ts';
import { listsSheet } from './lists-sheet.ts';
import { purchaseListSheet } from './purchase-list-sheet.ts';
import { quoteSheet } from './quote-sheet.ts';
import { setUpCardSheet } from './set-up-card-sheet.ts';
import type { Sheet, SheetKind } from './sheet.ts';
import { stringLineSheet } from './string-line-sheet.ts';
import { sawListSheet } from './saw-list-sheet.ts';
import { takeoffSheet } from './takeoff-sheet.ts';
import { templatesSheet } from './templates-sheet.ts';
import { tidySheet } from './tidy-sheet.ts';

/** What papers say besides the job's own figures. */
export type BesideJob = {
  /** What the lumber costs at each set of suppliers. */
  readonly supplierCosts?: readonly SupplierCost[];
  /** Every way that a quote offers, that of the job's design first. */
  readonly ways?: readonly PricedWay[];
};

/** Says what one paper of a job says, as data: the painter and the printer add no figure of their own. */
export function makeSheet(
  kind: SheetKind,
  input: JobInput,
  result: JobResult,
  beside: BesideJob = {},
): Sheet {
  return tidySheet(sheetOf(kind, input, result, beside));
}

function sheetOf(kind: SheetKind, input: JobInput, result: JobResult, beside: BesideJob): Sheet {
  switch (kind) {
    case 'takeoff':
      return takeoffSheet(input, result);
    case 'cut-list':
      return cutListSheet(input, result, beside.supplierCosts);
    case 'saw-list':
      return sawListSheet(input, result);
    case 'purchase-list':
      return purchaseListSheet(input, result);
    case 'layout':
      return layoutSheet(input, result);
    case 'lists':
      return listsSheet(input, result);
    case 'string-line':
      return stringLineSheet(input, result);
    case 'templates':
      return templatesSheet(input, result);
    case 'set-up-card':
      return setUpCardSheet(input, result);
    case 'quote':
      return quoteSheet(input, result, beside.ways);
    case 'calculation':
      return calculationSheet(input, result);
    default:
      return assertNever(kind);
  }
}
