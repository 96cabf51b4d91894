import type { Design, EaveDesign, RakeDesign } from '../eave/design-document.ts';
import { assertNever } from '../result.ts';
import type { AlternateChange } from './offer-document.ts';

/**
 * The design that an alternate stands for: each of its changes made, in order, at every eave and rake that has it.
 * @param design - as it is drawn.
 * @param changes - what is done otherwise.
 */
export function alternateDesign(design: Design, changes: readonly AlternateChange[]): Design {
  return changes.reduce(withChange, design);
}

function withChange(design: Design, change: AlternateChange): Design {
  switch (change.what) {
    case 'soffit':
      return atEaves(design, (eave) => ({
        ...eave,
        soffit: {
          ...eave.soffit,
          kind: change.kind,
          itemId: change.itemId === '' ? eave.soffit.itemId : change.itemId,
        },
      }));
    case 'vents':
      return atEaves(design, (eave) => ({
        ...eave,
        soffit: { ...eave.soffit, ventItemId: change.itemId },
      }));
    case 'fascia':
      return atRakes(
        atEaves(design, (eave) => ({ ...eave, fascia: { ...eave.fascia, stock: change.stock } })),
        (rake) => ({ ...rake, fascia: { ...rake.fascia, stock: change.stock } }),
      );
    case 'sub-fascia':
      return atEaves(design, (eave) => ({
        ...eave,
        fascia: { ...eave.fascia, subFascia: { wanted: change.wanted, stock: change.stock } },
      }));
    case 'rakes':
      return atRakes(design, (rake) => ({ ...rake, kind: rakeKind(rake, change.built) }));
    case 'sheathing': {
      const sheathed = <S extends EaveDesign['sheathing'] | RakeDesign['sheathing']>(before: S): S => ({
        ...before,
        kind: change.kind,
        itemId: change.itemId === '' ? before.itemId : change.itemId,
      });
      return atRakes(
        atEaves(design, (eave) => ({ ...eave, sheathing: sheathed(eave.sheathing) })),
        (rake) => ({ ...rake, sheathing: sheathed(rake.sheathing) }),
      );
    }
    case 'overhang':
      return atEaves(design, (eave) => ({ ...eave, overhangIn: change.overhangIn }));
    case 'extra-cost':
      return {
        ...design,
        extraCosts: design.extraCosts.map((extra) =>
          extra.id === change.extraId ? { ...extra, optional: !change.included } : extra,
        ),
      };
    default:
      return assertNever(change);
  }
}

/** A rake that was left out is built on lookouts where nothing else is drawn. */
function rakeKind({ kind }: RakeDesign, built: boolean): RakeDesign['kind'] {
  if (!built) return 'none';
  return kind === 'none' ? 'lookouts' : kind;
}

function atEaves(design: Design, change: (eave: EaveDesign) => EaveDesign): Design {
  return { ...design, eaves: design.eaves.map(change) };
}

function atRakes(design: Design, change: (rake: RakeDesign) => RakeDesign): Design {
  return { ...design, rakes: design.rakes.map(change) };
}
