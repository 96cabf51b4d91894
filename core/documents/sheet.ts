import type { Drawing } from '../drawings/drawing.ts';

/** The sheets that the program prints. */
export const sheetKinds = [
  'takeoff',
  'cut-list',
  'saw-list',
  'purchase-list',
  'layout',
  'lists',
  'string-line',
  'templates',
  'set-up-card',
  'quote',
  'calculation',
] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** Papers of a job's money, made when something happens and kept as they were. */
export const moneySheetKinds = ['invoice', 'credit', 'change-order', 'statement', 'job-report'] as const;
export type MoneySheetKind = (typeof moneySheetKinds)[number];

/** Those that a saved estimate keeps as they were, to be printed again whatever the program or the prices do later. */
export const keptSheetKinds = ['quote', 'takeoff', 'cut-list'] as const satisfies readonly SheetKind[];
export type KeptSheetKind = (typeof keptSheetKinds)[number];

export type Align = 'left' | 'right' | 'centre';

export type Column = {
  readonly title: string;
  readonly align: Align;
  /** Relative width; `0` fits the content. */
  readonly share: number;
};

export type Row = {
  readonly cells: readonly string[];
  /** `strong`: a line of the body that has to be seen. */
  readonly style?: 'body' | 'strong' | 'group' | 'subtotal' | 'total';
};

/** A part of a sheet, in reading order. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string; readonly small?: boolean }
  | { readonly kind: 'facts'; readonly pairs: readonly (readonly [label: string, value: string])[] }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly Row[];
      /** Set large, to be read at arm's length on the job. */
      readonly large?: boolean;
    }
  /** Drawn at the largest standard scale that fits the page; the painter prints which. */
  | {
      readonly kind: 'drawing';
      readonly drawing: Drawing;
      readonly heightShare: number;
      /** Its type is set large, to be read at arm's length on the job. */
      readonly large?: boolean;
    }
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'signatures'; readonly parties: readonly string[] }
  /** What follows begins on a page of its own. */
  | { readonly kind: 'new-page' }
  /** Printed at full size, over as many pages as it takes, each with its heading and a ruler to check the printer by. */
  | {
      readonly kind: 'full-size';
      readonly heading: string;
      readonly note: string;
      readonly drawing: Drawing;
    }
  /** Cards of the size of a bank card, to be cut out and carried. */
  | { readonly kind: 'cards'; readonly cards: readonly Card[] };

/** What a card says: what it is for, the figures to set, and what to do with them. */
export type Card = {
  readonly title: string;
  readonly setting: string;
  readonly lines: readonly string[];
};

/** What one paper says. */
export type Sheet = {
  readonly kind: SheetKind | MoneySheetKind;
  readonly title: string;
  /** Sorts by job and kind, without extension: `2026-04-30 Harlow eaves - takeoff`. */
  readonly fileName: string;
  readonly shop: {
    readonly name: string;
    readonly licence: string;
    readonly address: string;
    readonly contact: string;
    /** SHA-256 of the logo's file; the printer looks the picture up, so that no paper carries it twice. */
    readonly logo?: string;
  };
  readonly job: { readonly name: string; readonly siteAddress: string; readonly customer: string };
  readonly date: string;
  /** Stands at the foot of every page. */
  readonly footCaution?: string;
  /** Upright where absent. */
  readonly orientation?: 'landscape';
  readonly blocks: readonly Block[];
};
