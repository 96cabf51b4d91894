import { type EaveDesign, eaveDesignSchema } from '../../../core/eave/design-document.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { type EaveSurvey, eaveSurveySchema } from '../../../core/survey/survey-document.ts';
import { type Documents, withDraft, withMovedDrafts } from './documents.ts';
import { freeEnd, withoutMeeting } from './eave-ends.ts';
import { nextId } from './next-id.ts';
import { pricedStock } from './priced-stock.ts';
import { rakesOfEave, removeRake } from './rake-list.ts';
import { removing } from './removing.ts';

/**
 * Adds an eave with its design. What only the tape can tell (length, pitch, height above plate, overhang) stays blank:
 * a draft of nothing stands at the entry and the number under it is never computed with.
 * @param prices - price list, so that the first lumber sizes are ones that the shop buys.
 */
export function addEave(documents: Documents, prices: readonly PriceItem[]): Documents {
  const { survey } = documents;
  const index = survey.eaves.length;
  const id = nextId(
    'eave-',
    survey.eaves.map((eave) => eave.id),
  );
  const eave: EaveSurvey = eaveSurveySchema.parse({
    id,
    name: `Eave ${index + 1}`,
    lengthIn: 12,
    pitchRisePer12: 6,
    heightAbovePlateIn: 0,
    rafters: [],
  });
  const surveyed: Documents = { ...documents, survey: { ...survey, eaves: [...survey.eaves, eave] } };
  return ['lengthIn', 'pitchRisePer12', 'heightAbovePlateIn'].reduce<Documents>(
    (so_far, key) => withDraft(so_far, `survey.eaves.${index}.${key}`, ''),
    addDesign(surveyed, id, prices),
  );
}

/**
 * Adds the design of an eave that has none: like the last one, with what is blank or half typed there, so that the number
 * under a blank overhang is never passed on as if somebody had typed it.
 */
export function addDesign(documents: Documents, eaveId: string, prices: readonly PriceItem[]): Documents {
  const { design } = documents;
  const like = design.eaves.at(-1);
  const eaves = [...design.eaves, like ? likeDesign(like, eaveId) : firstDesign(eaveId, prices)];
  const added = { ...documents, design: { ...design, eaves } };
  const path = `design.eaves.${design.eaves.length}`;
  if (like === undefined) return withDraft(added, `${path}.overhangIn`, '');
  const likePath = `design.eaves.${design.eaves.length - 1}.`;
  return Object.entries(documents.drafts)
    .filter(([at]) => at.startsWith(likePath))
    .reduce<Documents>(
      (so_far, [at, text]) => withDraft(so_far, `${path}.${at.slice(likePath.length)}`, text),
      added,
    );
}

/** Takes an eave out, with its design, its rakes, whatever was half typed in either, and what else named it. */
export function removeEave(before: Documents, index: number): Documents {
  const eave = before.survey.eaves[index];
  if (eave === undefined) return before;
  const documents = rakesOfEave(before, eave.id).reduceRight(
    (now, rake) => removeRake(now, rake.index),
    before,
  );
  const designIndex = documents.design.eaves.findIndex((design) => design.eaveId === eave.id);
  const without: Documents = {
    ...documents,
    survey: { ...documents.survey, eaves: documents.survey.eaves.filter((_, at) => at !== index) },
    design: {
      ...documents.design,
      eaves: documents.design.eaves
        .filter((_, at) => at !== designIndex)
        .map((design) => ({ ...design, ends: withoutMeeting(design.ends, eave.id) })),
      asBuilt: documents.design.asBuilt.filter((one) => one.eaveId !== eave.id),
      // Its id can come back with another eave, which nobody decided anything about.
      decisions: documents.design.decisions.filter((one) => !one.checkId.endsWith(`/${eave.id}`)),
    },
  };
  const kept = documents.design.asBuilt.map((one) => one.eaveId !== eave.id);
  const built = withMovedDrafts(without, 'design.asBuilt', (at) =>
    kept[at] === true ? kept.slice(0, at).filter(Boolean).length : null,
  );
  const moved = withMovedDrafts(built, 'survey.eaves', removing(index));
  return designIndex < 0 ? moved : withMovedDrafts(moved, 'design.eaves', removing(designIndex));
}

/** Moves an eave one place up (-1) or down (+1) in the order of the sheets; its letter follows its place. */
export function moveEave(documents: Documents, index: number, by: -1 | 1): Documents {
  const other = index + by;
  const eaves = [...documents.survey.eaves];
  const one = eaves[index];
  const two = eaves[other];
  if (one === undefined || two === undefined) return documents;
  eaves[index] = two;
  eaves[other] = one;
  return withMovedDrafts({ ...documents, survey: { ...documents.survey, eaves } }, 'survey.eaves', (at) =>
    at === index ? other : at === other ? index : at,
  );
}

function likeDesign(like: EaveDesign, eaveId: string): EaveDesign {
  return {
    ...like,
    eaveId,
    pins: [],
    addedTails: [],
    layout: { ...like.layout, baysWithoutTail: [] },
    ends: { left: freeEnd, right: freeEnd },
    blocks: { ...like.blocks, openBays: [] },
  };
}

function firstDesign(eaveId: string, prices: readonly PriceItem[]): EaveDesign {
  const stock = (section: string) => pricedStock(section, prices);
  return eaveDesignSchema.parse({
    eaveId,
    overhangIn: 12,
    extender: stock('2x6'),
    fascia: { stock: stock('2x8') },
    soffit: {},
    blocks: { stock: stock('2x6') },
    sheathing: {
      itemId: prices.find((item) => item.category === 'sheet' && !item.retired)?.id ?? '',
    },
  });
}
