import { createContext, useCallback, useContext, useMemo, useState } from 'react';
import type { EaveDesign } from '../../../../core/eave/design-document.ts';
import { layOutOneEave } from '../../../../core/job/lay-out-eaves.ts';
import type { JobInput } from '../../../../core/job/job-file.ts';
import type { EaveLayout, Extender } from '../../../../core/layout/layout-types.ts';
import type { EaveSurvey } from '../../../../core/survey/survey-document.ts';
import { inputOf, type Surroundings } from '../../compute/computation.ts';
import type { Documents } from '../../editor/documents.ts';
import { hungForRafter } from '../../editor/tail-edits.ts';
import { useJob } from '../../job-context.ts';

/** An edit of the job, not made yet. */
type Edit = (documents: Documents) => Documents;

/** What is shown during a drag: the edit, null where nothing would change, and the tail that it leaves in hand. */
type Shown = { readonly edit: Edit | null; readonly tailId: string | null };

/** The tails of an eave in the person's hand: which one is taken up, and how they stand while it is moved. */
export type TailHand = {
  readonly eaveId: string;
  readonly designIndex: number;
  readonly design: EaveDesign;
  /** As the tails stand now, while one is moved or the whole job is still being worked out; null while there is none. */
  readonly layout: EaveLayout | null;
  /** What that layout was made of. */
  readonly madeOf: { readonly survey: EaveSurvey; readonly design: EaveDesign } | null;
  /** The tail taken up; undefined where none is. */
  readonly tail: Extender | undefined;
  readonly take: (id: string | null) => void;
  /** True while an edit is shown that is not made yet. */
  readonly isMoving: boolean;
  /** Shows what an edit would give, and the tail that it leaves in hand, e.g. during a drag; null lets go of it. */
  readonly show: (shown: Shown | null) => void;
  /** Makes an edit, as one step that can be undone, and takes up the tail that it leaves. */
  readonly make: (what: string, edit: Edit, thenTake?: string | null) => void;
};

export const TailHandContext = createContext<TailHand | null>(null);

/** The tails in hand; only inside the design of an eave. */
export function useTailHand(): TailHand {
  const hand = useContext(TailHandContext);
  if (hand === null) throw new Error('useTailHand outside of the design of an eave');
  return hand;
}

/** Keeps the tails of an eave in hand. */
export function useTailsOf(eaveId: string, designIndex: number, design: EaveDesign): TailHand {
  const { editor, documents, surroundings, computation, isWorking } = useJob();
  const [takenId, take] = useState<string | null>(null);
  const [shown, setShown] = useState<Shown | null>(null);
  // What was made by hand stands at once; the rest of the job follows.
  const [made, setMade] = useState<Documents | null>(null);
  const isAhead = shown !== null || (isWorking && made === documents);
  const edit = shown?.edit ?? null;
  const live = useMemo(
    () => (isAhead ? layOutLive(edit === null ? documents : edit(documents), surroundings, eaveId) : null),
    [isAhead, edit, documents, surroundings, eaveId],
  );
  const { good } = computation;
  const settled = useMemo(
    () => (good === null ? null : withLayout(good.input, good.result.eaves, eaveId)),
    [good, eaveId],
  );
  const { layout = null, madeOf = null } = live ?? settled ?? {};
  const make = useCallback(
    (what: string, change: Edit, thenTake?: string | null) => {
      setShown(null);
      editor.change(what, change);
      setMade(editor.read().history.present);
      if (thenTake !== undefined) take(thenTake);
    },
    [editor],
  );
  const tail = tailOf(layout, madeOf?.design ?? design, shown?.tailId ?? takenId);
  return useMemo(
    () => ({
      eaveId,
      designIndex,
      design,
      layout,
      madeOf,
      tail,
      take,
      isMoving: shown !== null,
      show: setShown,
      make,
    }),
    [eaveId, designIndex, design, layout, madeOf, tail, shown, make],
  );
}

/** A tail by its id; by its rafter's where it is hung for one. */
function tailOf(layout: EaveLayout | null, design: EaveDesign, tailId: string | null): Extender | undefined {
  if (layout === null || tailId === null) return undefined;
  const { extenders, rafters } = layout;
  return (
    extenders.find(({ id }) => id === tailId) ??
    extenders.find((tail) => hungForRafter(design, rafters, tail) === tailId)
  );
}

type Laid = { readonly layout: EaveLayout; readonly madeOf: NonNullable<TailHand['madeOf']> };

/** The eave laid out alone; null where something else has to be mended first. */
function layOutLive(documents: Documents, surroundings: Surroundings, eaveId: string): Laid | null {
  const input = inputOf(documents, surroundings);
  const layout = layOutOneEave(input, eaveId);
  return layout.ok ? withLayout(input, [layout.value], eaveId) : null;
}

function withLayout(input: JobInput, layouts: readonly EaveLayout[], eaveId: string): Laid | null {
  const layout = layouts.find((eave) => eave.eaveId === eaveId);
  const survey = input.survey.eaves.find((eave) => eave.id === eaveId);
  const design = input.design.eaves.find((eave) => eave.eaveId === eaveId);
  return layout && survey && design ? { layout, madeOf: { survey, design } } : null;
}
