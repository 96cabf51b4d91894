import { dressedSection } from '../lumber/dressed-sizes.ts';
import { pieceMark } from '../layout/marks.ts';
import type { JobInput } from '../job/job-file.ts';
import type { PriceItem } from '../pricing/price-list.ts';
import { longestUsableIn, type PriceQuestion } from '../pricing/stock-lengths.ts';
import type { Problem } from '../problems/problem.ts';
import { sixteenthsDown, sixteenthsUp, type Sixteenths } from '../units/sixteenths.ts';
import { coverLack } from './item-lack.ts';
import { layCover } from './lay-cover.ts';
import type { CoverBoard } from './panel-layout.ts';
import { ordinarySheet, panelGapIn, type SheetSize } from './sheathing-strip.ts';
import { eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';
import { laidVents, type LaidVents } from './vents.ts';

/** What a soffit is reckoned from. */
export type SoffitQuestion = PriceQuestion & Pick<JobInput, 'survey'>;

/** A length of ledger on the wall, or a nailer across the soffit. */
export type SoffitStick = {
  readonly mark: string;
  readonly stationIn: number;
  readonly lengthSixteenths: Sixteenths;
};

/** The soffit of one eave, as it is built. */
export type SoffitPlan = {
  readonly kind: 'level' | 'sloped';
  /** Undefined where the item named cannot be bought as a sheet; then it is counted in ordinary sheets. */
  readonly item: PriceItem | undefined;
  readonly sheet: SheetSize;
  /** From the wall to the back of the edge boards: widest, to which panels are ripped, and narrowest. [in] */
  readonly widthIn: number;
  readonly leastWidthIn: number;
  /** Stations of its ends. [in] */
  readonly fromIn: number;
  readonly toIn: number;
  readonly areaSqFt: number;
  /** Every panel as laid: low is at the fascia, high at the wall. */
  readonly boards: readonly CoverBoard[];
  readonly ledger: readonly SoffitStick[];
  readonly nailers: readonly (SoffitStick & { readonly tailMark: string })[];
  readonly vents: LaidVents | null;
  readonly lacks: readonly Problem[];
};

/** A ledger is bought in 16 ft where no price list says better. [in] */
const assumedLongestIn = 192;

/**
 * The soffit of an eave: panels ripped to the widest tail and laid along it with joints on tails, the ledger and nailers
 * that carry a level one, and vents up to the net free area asked for. On a bowed wall every panel is scribed to the wall.
 * It runs between the backs of the edge boards' ends; at an inside corner from the wall's end, at any corner cut in a
 * mitre. Panels have 1/8 in. between them. Ledgers are as long as can be, in equal lengths; nailers reach from the ledger
 * to the tail's end, rounded down.
 * Worked: level, 16 in. wide, a ledger of 2x4 -> nailers of 14-1/2 in.
 * @param eave - the eave as surveyed, designed and laid out.
 * @param input - price list, settings and survey.
 * @returns null where the tails stay open, or no item is chosen for the soffit. [in]
 */
export function soffitOf(eave: EaveToTakeOff, input: SoffitQuestion): SoffitPlan | null {
  const { layout, design } = eave;
  const { kind, itemId } = design.soffit;
  if (kind === 'open' || itemId === '' || layout.extenders.length === 0) return null;
  const named = input.priceList.find(({ id }) => id === itemId);
  const fitting = named?.category === 'sheet' ? named : undefined;
  const item = fitting?.retired === true ? undefined : fitting;
  const sheet = {
    widthIn: fitting?.widthIn ?? ordinarySheet.widthIn,
    lengthIn: fitting?.lengthIn ?? ordinarySheet.lengthIn,
  };
  const widths = layout.extenders.map(({ section }) => section.soffitWidthIn ?? 0);
  const widthIn = Math.max(...widths);
  const fromIn = Math.min(0, layout.fasciaRun.left.backIn);
  const toIn = Math.max(layout.wallLengthIn, layout.fasciaRun.right.backIn);
  const strip = { fromIn, toIn, widthIn, breakIn: null };
  const vents = laidVents(eave, input, toIn - fromIn);
  return {
    kind,
    item,
    sheet,
    widthIn,
    leastWidthIn: Math.min(...widths),
    fromIn,
    toIn,
    areaSqFt: (widthIn * (toIn - fromIn)) / 144,
    boards: layCover(layout, strip, { coverIn: sheet.widthIn, boardIn: sheet.lengthIn, gapIn: panelGapIn }),
    ledger: kind === 'level' && design.soffit.ledger.wanted ? ledgerOf(eave, input) : [],
    nailers: kind === 'level' && design.soffit.nailers ? nailersOf(eave) : [],
    vents: vents.ok ? vents.value : null,
    lacks: [
      ...(item === undefined
        ? [
            coverLack(eave, {
              what: 'Soffit',
              itemId,
              kind: 'sheet',
              fits: fitting !== undefined,
              named,
              entry: 'soffit.itemId',
            }),
          ]
        : []),
      ...(vents.ok ? [] : [vents.problem]),
      ...ledgerLack(eave),
    ],
  };
}

function ledgerOf({ layout, design }: EaveToTakeOff, input: PriceQuestion): readonly SoffitStick[] {
  const longestIn = longestUsableIn(input, design.soffit.ledger.stock) ?? assumedLongestIn;
  const count = Math.max(1, Math.ceil(layout.wallLengthIn / longestIn - 1e-9));
  const lengthIn = layout.wallLengthIn / count;
  return Array.from({ length: count }, (_, index) => ({
    mark: pieceMark(layout.letter, 'L', index + 1),
    stationIn: lengthIn * index,
    lengthSixteenths: sixteenthsUp(lengthIn),
  }));
}

function nailersOf({ layout, design }: EaveToTakeOff): SoffitPlan['nailers'] {
  const ledgerIn = design.soffit.ledger.wanted
    ? (dressedSection(design.soffit.ledger.stock.section)?.thicknessIn ?? 0)
    : 0;
  return layout.extenders.flatMap(({ mark, centreIn, section }, index) => {
    const lengthSixteenths = sixteenthsDown((section.soffitWidthIn ?? 0) - ledgerIn);
    return lengthSixteenths > 0
      ? [
          {
            mark: pieceMark(layout.letter, 'N', index + 1),
            stationIn: centreIn,
            lengthSixteenths,
            tailMark: mark,
          },
        ]
      : [];
  });
}

/** The lumber of ledger and nailers has to be known, where one of them is wanted. */
function ledgerLack({ layout, design, designIndex }: EaveToTakeOff): readonly Problem[] {
  const { kind, ledger, nailers } = design.soffit;
  const wanted = kind === 'level' && (ledger.wanted || nailers);
  if (!wanted || dressedSection(ledger.stock.section) !== undefined) return [];
  return [
    {
      code: 'unknown-section',
      section: ledger.stock.section,
      use: `the soffit ledger of ${eaveLabel(layout)}`,
      field: `design.eaves.${designIndex}.soffit.ledger.stock.section`,
    },
  ];
}
