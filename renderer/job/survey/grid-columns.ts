import type { EaveSurvey, RafterSurvey } from '../../../core/survey/survey-document.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatPitch } from '../../../core/units/pitch.ts';

/** A column of the rafter grid that is typed in. */
export type GridColumn = {
  readonly key: keyof RafterSurvey;
  readonly title: string;
  /** What a blank cell stands for: the eave's own value. */
  readonly blankMeans: (eave: EaveSurvey, rafter: RafterSurvey | null) => string | undefined;
};

/** The typed columns after the reading, in the order in which the tape is taken up. */
export const gridColumns: readonly GridColumn[] = [
  { key: 'joist', title: 'Joist on', blankMeans: () => undefined },
  {
    key: 'joistThicknessIn',
    title: 'Joist thick',
    blankMeans: (eave, rafter) =>
      rafter === null || rafter.joist === 'none' ? '' : formatLength(eave.joistThicknessIn),
  },
  { key: 'pitchRisePer12', title: 'Pitch', blankMeans: (eave) => formatPitch(eave.pitchRisePer12) },
  {
    key: 'heightAbovePlateIn',
    title: 'Above plate',
    blankMeans: (eave) => formatLength(eave.heightAbovePlateIn),
  },
  { key: 'thicknessIn', title: 'Thick', blankMeans: (eave) => formatLength(eave.rafterThicknessIn) },
  { key: 'depthIn', title: 'Deep', blankMeans: (eave) => formatLength(eave.rafterDepthIn) },
  {
    key: 'clearBackspanIn',
    title: 'Clear back',
    blankMeans: (eave) => (eave.clearBackspanIn === null ? 'clear' : formatLength(eave.clearBackspanIn)),
  },
  { key: 'oldTailIn', title: 'Old tail', blankMeans: () => undefined },
  { key: 'condition', title: 'Condition', blankMeans: () => undefined },
  { key: 'note', title: 'Note', blankMeans: () => undefined },
];

/** Which faces a ceiling joist lies on, in words. */
export const joistWords: Readonly<Record<RafterSurvey['joist'], string>> = {
  none: 'None',
  left: 'Left',
  right: 'Right',
  both: 'Both',
};

/** In what state an old rafter is, in words. */
export const conditionWords: Readonly<Record<RafterSurvey['condition'], string>> = {
  sound: 'Sound',
  doubtful: 'Doubtful',
  rotten: 'Rotten',
};

/** What a reading means, by the eave's way of reading. */
export function readingTitle(eave: EaveSurvey): string {
  switch (eave.readingMode) {
    case 'running':
      return 'Reading';
    case 'bays-clear':
      return 'Clear bay';
    case 'bays-centres':
      return 'Bay, centres';
    default:
      return eave.readingMode satisfies never;
  }
}
