import { type EaveEnd, type RakeDesign, rakeDesignSchema } from '../../../core/eave/design-document.ts';
import type { PriceItem } from '../../../core/pricing/price-list.ts';
import { type RakeSurvey, rakeSurveySchema, type Side } from '../../../core/survey/survey-document.ts';
import { type Documents, withDraft, withMovedDrafts, withValueAt } from './documents.ts';
import { freeEnd, withoutMeeting } from './eave-ends.ts';
import { nextId } from './next-id.ts';
import { pricedStock } from './priced-stock.ts';
import { removing } from './removing.ts';

/** The rakes of an eave with their places in the survey; null as eave gives those that rise from no eave. */
export function rakesOfEave(
  documents: Documents,
  eaveId: string | null,
): readonly { readonly rake: RakeSurvey; readonly index: number }[] {
  const eaves = new Set(documents.survey.eaves.map(({ id }) => id));
  return documents.survey.rakes
    .map((rake, index) => ({ rake, index }))
    .filter(({ rake }) => (eaveId === null ? !eaves.has(rake.eaveId) : rake.eaveId === eaveId));
}

/** The ends of an eave that no rake rises from yet. */
export function endsWithoutRake(documents: Documents, eaveId: string): readonly Side[] {
  const taken = new Set(rakesOfEave(documents, eaveId).map(({ rake }) => rake.end));
  return (['left', 'right'] as const).filter((end) => !taken.has(end));
}

/**
 * Adds a rake at an end of an eave, with a design like that of the last rake, and lets the eave's end meet it where it met
 * nothing. The run to the ridge, and the overhang of a first one, stay blank: nobody's number is computed with.
 */
export function addRake(
  documents: Documents,
  eaveId: string,
  end: Side,
  prices: readonly PriceItem[],
): Documents {
  const { survey } = documents;
  const index = survey.rakes.length;
  const eave = survey.eaves.find(({ id }) => id === eaveId);
  const id = nextId(
    'rake-',
    survey.rakes.map((rake) => rake.id),
  );
  const rake = rakeSurveySchema.parse({
    id,
    name: `${eave?.name ?? 'Eave'}, ${end} rake`.slice(0, 80),
    eaveId,
    end,
    runIn: 12,
  });
  const measured: Documents = { ...documents, survey: { ...survey, rakes: [...survey.rakes, rake] } };
  return addRakeDesign(
    withDraft(withMeeting(measured, eaveId, end, id), `survey.rakes.${index}.runIn`, ''),
    id,
    prices,
  );
}

/** Adds the design of a rake that has none: like the last one, else with what the shop buys. */
export function addRakeDesign(documents: Documents, rakeId: string, prices: readonly PriceItem[]): Documents {
  const { design } = documents;
  const like = design.rakes.at(-1);
  const path = `design.rakes.${design.rakes.length}.overhangIn`;
  const likePath = `design.rakes.${design.rakes.length - 1}.overhangIn`;
  const added: Documents = {
    ...documents,
    design: { ...design, rakes: [...design.rakes, like ? { ...like, rakeId } : firstDesign(rakeId, prices)] },
  };
  const blank = like === undefined ? '' : documents.drafts[likePath];
  return blank === undefined ? added : withDraft(added, path, blank);
}

/** Takes a rake out, with its design and whatever was half typed in either; the eave's end meets nothing then. */
export function removeRake(documents: Documents, index: number): Documents {
  const rake = documents.survey.rakes[index];
  if (rake === undefined) return documents;
  const designIndex = documents.design.rakes.findIndex(({ rakeId }) => rakeId === rake.id);
  const { survey, design } = documents;
  const without: Documents = {
    ...documents,
    survey: { ...survey, rakes: survey.rakes.filter((_, at) => at !== index) },
    design: {
      ...design,
      rakes: design.rakes.filter((_, at) => at !== designIndex),
      eaves: design.eaves.map((eave) => ({ ...eave, ends: withoutMeeting(eave.ends, rake.id) })),
      decisions: design.decisions.filter((one) => !one.checkId.endsWith(`/${rake.id}`)),
    },
  };
  const moved = withMovedDrafts(without, 'survey.rakes', removing(index));
  return designIndex < 0 ? moved : withMovedDrafts(moved, 'design.rakes', removing(designIndex));
}

/** Moves a rake to another eave or end; what met it there meets nothing, and the new end meets it where it met nothing. */
export function moveRake(documents: Documents, index: number, to: { eaveId: string; end: Side }): Documents {
  const rake = documents.survey.rakes[index];
  if (rake === undefined || (rake.eaveId === to.eaveId && rake.end === to.end)) return documents;
  const freed: Documents = {
    ...documents,
    design: {
      ...documents.design,
      eaves: documents.design.eaves.map((eave) => ({ ...eave, ends: withoutMeeting(eave.ends, rake.id) })),
    },
  };
  return withMeeting(
    withValueAt(freed, `survey.rakes.${index}`, { ...rake, ...to }),
    to.eaveId,
    to.end,
    rake.id,
  );
}

/** Lets an eave's end meet a rake, where it met nothing before. */
function withMeeting(documents: Documents, eaveId: string, end: Side, rakeId: string): Documents {
  const at = documents.design.eaves.findIndex((eave) => eave.eaveId === eaveId);
  const now = documents.design.eaves[at]?.ends[end] ?? null;
  if (now === null || now.kind !== freeEnd.kind) return documents;
  return withValueAt(documents, `design.eaves.${at}.ends.${end}`, {
    kind: 'rake',
    meets: rakeId,
  } satisfies EaveEnd);
}

function firstDesign(rakeId: string, prices: readonly PriceItem[]): RakeDesign {
  return rakeDesignSchema.parse({
    rakeId,
    overhangIn: 12,
    lookout: pricedStock('2x4', prices),
    barge: pricedStock('2x6', prices),
    fascia: { stock: pricedStock('1x8', prices) },
    sheathing: {
      itemId: prices.find((item) => item.category === 'sheet' && !item.retired)?.id ?? '',
    },
  });
}
