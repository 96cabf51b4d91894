import type { Method } from '../eave/design-document.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import type { EaveLayout, Extender, FasciaLine, Unplaced } from '../layout/layout-types.ts';
import { numberList } from '../layout/number-list.ts';
import { assertNever } from '../result.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { type EaveParts, eavesWithParts } from './eave-drawings.ts';
import { rakeParagraphs } from './rake-scope.ts';
import { stockName } from './stock-name.ts';

/** A paragraph of the scope, and which eave or rake it is about. */
export type ScopeParagraph = {
  /** `eave/ID`, `rake/ID`. */
  readonly key: string;
  /** What it is about, by name. */
  readonly name: string;
  readonly text: string;
};

/** What is built, in plain words, one paragraph an eave or rake: only what the takeoff counts is promised. */
export function generatedScope(input: JobInput, result: JobResult): readonly ScopeParagraph[] {
  return eavesWithParts(input, result.eaves).flatMap((parts): readonly ScopeParagraph[] => [
    { key: `eave/${parts.layout.eaveId}`, name: parts.layout.name, text: eaveParagraph(parts, result) },
    ...rakeParagraphs(input, result, parts.layout.eaveId),
  ]);
}

/** The scope as it is printed: the person's own words where he wrote some, else the program's; a blank one is left out. */
export function scopeParagraphs(input: JobInput, result: JobResult): readonly string[] {
  const own = new Map(input.design.offer.scopeTexts.map(({ key, text }) => [key, text]));
  return generatedScope(input, result)
    .map(({ key, text }) => own.get(key) ?? text)
    .filter((text) => text.trim() !== '');
}

function eaveParagraph({ layout, design }: EaveParts, result: JobResult): string {
  const counted = new Set(result.takeoff.lines.map(({ kind, phase }) => `${kind}, ${phase}`));
  const tails = layout.extenders.length;
  const blocks = result.takeoff.pieces.filter(
    (piece) => piece.use === 'block' && piece.eaveId === layout.eaveId,
  ).length;
  const wall = `${layout.name}, ${formatLength(layout.wallLengthIn)} long`;
  const sentences =
    tails === 0
      ? [`${wall}: no rafter gets a new tail, so the eave is not extended.`]
      : [
          `${wall}: ${tails} new rafter ${tails === 1 ? 'tail' : 'tails'} of ${stockName(design.extender)} lumber ${tails === 1 ? 'is' : 'are'} ${fasteningWords(layout.extenders)}, so that the roof's framing reaches ${formatLength(layout.overhangLevelIn)} past the wall, measured level${layout.lineInPlan.bowed ? clientBowWords(layout) : ''}.`,
          ...inPlaceSentences(layout.extenders),
          lineSentence(layout.fasciaLine.mode),
          ...unplacedSentences(layout.unplaced),
        ];
  if (blocks > 0) {
    sentences.push(
      `${blocks} ${blocks === 1 ? 'block' : 'blocks'} of ${stockName(design.blocks.stock)} lumber ${blocks === 1 ? 'closes' : 'close'} the bays between the rafters at the wall.`,
    );
  }
  if (layout.fascia.length > 0) {
    sentences.push(
      `A new fascia of ${stockName(design.fascia.stock)}${
        layout.subFasciaRun === null ? '' : ` on a ${stockName(design.fascia.subFascia.stock)} behind it`
      } runs ${formatLength(layout.fasciaLengthIn)}${cornerWords(layout)}.`,
    );
  }
  const sheathed = counted.has('sheet, Sheathing and edge') || counted.has('plank, Sheathing and edge');
  if (tails > 0 && design.sheathing.kind !== 'none' && sheathed) {
    sentences.push(
      design.sheathing.kind === 'panels'
        ? 'New roof sheathing panels cover the overhang.'
        : 'New roof planks cover the overhang.',
    );
  }
  if (tails > 0 && design.dripEdge && counted.has('edge, Sheathing and edge')) {
    sentences.push('A metal drip edge finishes the roof edge.');
  }
  const { kind, itemId, ventItemId } = design.soffit;
  if (tails > 0 && kind !== 'open' && itemId !== '' && counted.has('sheet, Soffit')) {
    const vents = ventItemId !== '' && counted.has('vents, Soffit') ? ', with vents in it' : '';
    sentences.push(`A ${kind} soffit closes the overhang from below${vents}.`);
  }
  return sentences.join(' ');
}

/** How the tails are fastened, most first: `fastened beside the old rafters, 2 of them hung between old rafters on blocks`. */
function fasteningWords(extenders: readonly Extender[]): string {
  const counts = Map.groupBy(extenders, ({ method }) => method);
  const [most, ...others] = [...counts].toSorted(([, a], [, b]) => b.length - a.length);
  if (most === undefined) return 'fastened beside the old rafters';
  const rest = others.map(([method, some]) => `${some.length} of them ${methodWords[method]}`);
  return [methodWords[most[0]], ...rest].join(', ');
}

const methodWords: Readonly<Record<Method, string>> = {
  side: 'fastened beside the old rafters',
  filler: 'fastened beside an old rafter over packing',
  'outer-face': 'fastened on the outside of the end rafter',
  'block-hung': 'hung between old rafters on blocks',
  'full-length': 'whole up to the ridge beside the old rafter',
  'end-replacement': 'whole up to the ridge in the place of the old rafter',
};

function inPlaceSentences(extenders: readonly Extender[]): readonly string[] {
  const there = extenders.filter(({ inPlace }) => inPlace).length;
  return there === 0
    ? []
    : [`${there} of them ${there === 1 ? 'is' : 'are'} in place already and not in this price.`];
}

function cornerWords({ fasciaRun }: EaveLayout): string {
  const mitred = [fasciaRun.left, fasciaRun.right].filter(({ kind }) => kind === 'mitre').length;
  return mitred === 0 ? '' : `, mitred at ${mitred === 1 ? 'its corner' : 'both corners'}`;
}

/** One sentence a reason, with the rafters' numbers drawn together: `Rafters 3, 5-9 get no new tail, because ...`. */
function unplacedSentences(unplaced: readonly Unplaced[]): readonly string[] {
  const reasons = [
    ['no-side-free', ', because both sides are taken at the wall'],
    ['pinned-none', ''],
  ] as const;
  return reasons.flatMap(([reason, because]) => {
    const numbers = unplaced
      .filter((missing) => missing.reason === reason)
      .map(({ rafterNumber }) => rafterNumber);
    if (numbers.length === 0) return [];
    return [
      `${numbers.length === 1 ? 'Rafter' : 'Rafters'} ${numberList(numbers)} ${numbers.length === 1 ? 'gets' : 'get'} no new tail${because}.`,
    ];
  });
}

function lineSentence(mode: FasciaLine['mode']): string {
  const own = 'Each tail is cut for its own rafter';
  switch (mode) {
    case 'parallel':
      return `${own}, and the new edge runs straight, parallel to the wall plate.`;
    case 'level':
      return `${own}, and the new edge runs straight and level.`;
    case 'best-fit':
      return `${own}, and the new edge runs straight; it may fall slightly along the wall, as the old roof does.`;
    case 'as-found':
      return `${own} and follows it, so the new edge is as straight as the old roof.`;
    default:
      return assertNever(mode);
  }
}

/** The wall is not straight: what the client will see at its soffit. */
function clientBowWords({ lineInPlan: { kind, least, most } }: EaveLayout): string {
  if (kind === 'follow') return '; the wall is not straight, and the new edge follows it';
  return least === null || most === null
    ? ''
    : ` from a straight line along the wall; the wall itself is not straight, so that the overhang is between ${formatInches(least.overhangIn)} and ${formatInches(most.overhangIn)} and the new edge runs straight`;
}
