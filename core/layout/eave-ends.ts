import type { Design, EaveDesign, EaveEnd } from '../eave/design-document.ts';
import { edgeBoards } from '../eave/edge-boards.ts';
import { levelOverhang } from '../eave/level-overhang.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import type { Side, Survey } from '../survey/survey-document.ts';
import type { FasciaRun, RunEnd } from './layout-types.ts';

/** What one end of an eave meets, and the boards that run into it there. [in] */
export type Meeting = {
  readonly kind: Exclude<EaveEnd['kind'], 'free'>;
  readonly name: string;
  /** Level, from the framing face of the wall round the corner to the back of its edge boards. */
  readonly overhangIn: number;
  readonly subFasciaIn: number;
  readonly fasciaIn: number;
};

/** What an eave meets at its ends; null where an end is free, or what it should meet is not there. */
export type Meetings = Readonly<Record<Side, Meeting | null>>;

/** Both ends free. */
export const noMeetings: Meetings = { left: null, right: null };

/**
 * What an eave meets at its ends, by the survey and the design: the rake's or the other eave's overhang and edge boards.
 * @param documents - survey and design of the job.
 * @param eave - its id and its ends; it cannot meet itself.
 */
export function meetingsOf(
  documents: { readonly survey: Survey; readonly design: Design },
  { eaveId, ends }: Pick<EaveDesign, 'eaveId' | 'ends'>,
): Meetings {
  const meet = (end: EaveEnd): Meeting | null =>
    end.kind !== 'rake' && end.meets === eaveId ? null : meetingOf(documents, end);
  return { left: meet(ends.left), right: meet(ends.right) };
}

function meetingOf(
  { survey, design }: { readonly survey: Survey; readonly design: Design },
  { kind, meets }: EaveEnd,
): Meeting | null {
  if (kind === 'free') return null;
  if (kind === 'rake') {
    const rake = survey.rakes.find(({ id }) => id === meets);
    const built = design.rakes.find(({ rakeId }) => rakeId === meets);
    if (rake === undefined || built === undefined || built.kind === 'none') return null;
    const board = built.fascia.wanted ? dressedSection(built.fascia.stock.section) : undefined;
    return {
      kind,
      name: rake.name.trim(),
      overhangIn: built.overhangIn,
      // The barge rafter's tail ends behind the eave's sub-fascia, which runs past it.
      subFasciaIn: 0,
      fasciaIn: board?.thicknessIn ?? 0,
    };
  }
  const eave = survey.eaves.find(({ id }) => id === meets);
  const other = design.eaves.find(({ eaveId }) => eaveId === meets);
  if (eave === undefined || other === undefined) return null;
  const boards = edgeBoards(other);
  const overhang = levelOverhang(other, eave.pitchRisePer12, boards.thicknessIn, eave.name);
  if (!overhang.ok) return null;
  return { kind, name: eave.name.trim(), overhangIn: overhang.value, ...boards };
}

/**
 * The runs of fascia and sub-fascia of an eave, from end to end.
 *
 * Free: past the wall's end as designed, square. Rake and outside corner: past the wall's end by the other overhang; the
 * mitre's short point lies where the backs of both boards meet, its long point further out by the other board's thickness
 * (45 degrees where both are as thick). Inside corner: back at the other fascia's line, so that the long point is on
 * the board's back. Both walls are taken to stand square to one another. A sub-fascia runs past a barge rafter, and
 * stops square where what it meets has none. Source: geometry; trade.md 4. Not rounded.
 * Worked: 1x8 round an outside corner of 16 in. -> back at -16, face at -16-3/4; at an inside one 16 and 16-3/4.
 * @param eave - wall, boards and tails. [in]
 * @param meetings - what its ends meet.
 * @param longest - usable length of the longest boards; null where the price list has none. [in]
 */
export function edgeRuns(
  eave: {
    readonly letter: string;
    readonly wallLengthIn: number;
    readonly design: Pick<EaveDesign, 'fascia'>;
    readonly tailCentresIn: readonly number[];
  },
  meetings: Meetings,
  longest: { readonly fasciaIn: number | null; readonly subFasciaIn: number | null },
): { readonly fascia: FasciaRun; readonly subFascia: FasciaRun | null } {
  const { letter, wallLengthIn, tailCentresIn } = eave;
  const { bevelJoints } = eave.design.fascia;
  const boards = edgeBoards(eave.design);
  const ends = (board: 'fascia' | 'subFascia') => ({
    left: endOf(meetings.left, eave.design.fascia.pastLeftIn, board, (pastIn) => -pastIn),
    right: endOf(meetings.right, eave.design.fascia.pastRightIn, board, (pastIn) => wallLengthIn + pastIn),
  });
  const shared = { letter, tailCentresIn, bevelJoints };
  return {
    fascia: {
      ...shared,
      kind: 'F',
      ...ends('fascia'),
      thicknessIn: boards.fasciaIn,
      longestIn: longest.fasciaIn,
    },
    subFascia: eave.design.fascia.subFascia.wanted
      ? {
          ...shared,
          kind: 'U',
          ...ends('subFascia'),
          thicknessIn: boards.subFasciaIn,
          longestIn: longest.subFasciaIn,
        }
      : null,
  };
}

/** One end of a run; `at` gives the station that lies so far past the wall's end. [in] */
function endOf(
  meeting: Meeting | null,
  freePastIn: number,
  board: 'fascia' | 'subFascia',
  at: (pastIn: number) => number,
): RunEnd {
  if (meeting === null) return square(at(freePastIn));
  const out = meeting.kind === 'inside-corner' ? -1 : 1;
  const backIn = meeting.overhangIn + (board === 'fascia' ? meeting.subFasciaIn : 0);
  const otherIn = board === 'fascia' ? meeting.fasciaIn : meeting.subFasciaIn;
  if (otherIn === 0) return square(at(out * backIn));
  return { kind: 'mitre', faceIn: at(out * (backIn + otherIn)), backIn: at(out * backIn) };
}

function square(stationIn: number): RunEnd {
  return { kind: 'square', faceIn: stationIn, backIn: stationIn };
}
