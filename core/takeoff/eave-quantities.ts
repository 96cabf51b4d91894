import type { Method } from '../eave/design-document.ts';
import type { EaveLayout, Extender } from '../layout/layout-types.ts';
import { assertNever } from '../result.ts';
import type { CoveredEave } from './cover.ts';
import type { EaveTaskKey } from './labour-tasks.ts';
import type { LaidVents } from './vents.ts';

/** How much of a task an eave asks for. [sides, rafters, LF, bays, pieces, SF] */
export function eaveTaskQuantity(key: EaveTaskKey, eave: CoveredEave): number {
  const { layout, design, cover, soffit } = eave;
  switch (key) {
    case 'survey-rafters':
      return layout.rafters.length;
    case 'set-up-side':
    case 'clean-up-side':
      return 1;
    case 'strip-roof-edge':
    case 'strip-fascia':
      return layout.wallLengthIn / 12;
    case 'old-blocks-out':
      return layout.bays.filter((bay) => bay.oldBlockOut).length;
    case 'cut-extenders':
      return tailsToSet(layout).length;
    case 'install-extenders':
      return tailsToSet(layout, 'side', 'outer-face').length;
    case 'install-over-fillers':
      return tailsToSet(layout, 'filler').length;
    case 'install-hung':
      return tailsToSet(layout, 'block-hung').length;
    case 'install-whole':
      return tailsToSet(layout, 'full-length').length;
    case 'replace-end':
      return tailsToSet(layout, 'end-replacement').length;
    case 'shims':
      return tailsToSet(layout).filter(({ fit }) => fit.shimSixteenths > 0).length;
    case 'cut-tails':
      return design.trimAllowanceIn > 0 ? tailsToSet(layout).length : 0;
    case 'blocks':
      return layout.bays.filter((bay) => bay.block === 'block').length;
    case 'sub-fascia':
      return layout.subFascia.reduce((sum, { fromIn, toIn }) => sum + toIn - fromIn, 0) / 12;
    case 'fascia':
      return layout.fasciaLengthIn / 12;
    case 'mitres':
      return cornersOf(layout);
    case 'sheathing':
      return cover.kind === 'none' ? 0 : cover.strip.areaSqFt;
    case 'drip-edge':
      return design.dripEdge ? layout.fasciaLengthIn / 12 : 0;
    case 'soffit-framing':
      return soffit === null || soffit.ledger.length + soffit.nailers.length === 0
        ? 0
        : (soffit.toIn - soffit.fromIn) / 12;
    case 'soffit':
      return soffit === null ? 0 : (soffit.toIn - soffit.fromIn) / 12;
    case 'soffit-vents':
      return ventsToSet(soffit?.vents ?? null);
    default:
      return assertNever(key);
  }
}

/** Tails that are still to be cut and set, of some methods or of all. */
function tailsToSet({ extenders }: EaveLayout, ...methods: readonly Method[]): readonly Extender[] {
  return extenders.filter(
    ({ inPlace, method }) => !inPlace && (methods.length === 0 || methods.includes(method)),
  );
}

/** Mitres with the fascia of another eave; that with a rake's is a task of the rake. */
function cornersOf({ ends, fasciaRun }: EaveLayout): number {
  return (['left', 'right'] as const).filter(
    (side) => fasciaRun[side].kind === 'mitre' && ends[side].kind !== 'rake',
  ).length;
}

/** A strip that is sold by the foot is set in lengths like this. [in] Common practice, no source: 8 ft. */
const stripLengthIn = 96;

/** Vents to be cut in, or lengths of strip. */
function ventsToSet(vents: LaidVents | null): number {
  if (vents === null) return 0;
  return vents.item.unit === 'LF' ? Math.ceil((vents.lengthIn ?? 0) / stripLengthIn) : vents.count;
}
