import type { AsBuilt, EaveDesign } from '../../core/eave/design-document.ts';
import { plainMeans, type LayoutMeans } from '../../core/layout/layout-means.ts';
import { wallOf } from '../../core/layout/wall-of.ts';
import type { Wall } from '../../core/layout/solver/wall.ts';
import { dressedSection } from '../../core/lumber/dressed-sizes.ts';
import { placeRafters } from '../../core/survey/place-rafters.ts';
import type { EaveSurvey } from '../../core/survey/survey-document.ts';
import { makeDesign } from './make-layout.ts';

function squareEnd(faceIn: number) {
  return { kind: 'square' as const, faceIn, backIn: faceIn };
}

/** The wall of a survey as the solver takes it, with a fascia run from corner to corner. */
export function makeWall(
  survey: EaveSurvey,
  design: EaveDesign = makeDesign(),
  means: Partial<LayoutMeans> & { readonly asBuilt?: readonly AsBuilt[] } = {},
): Wall {
  const placed = placeRafters(survey, 0);
  const stock = dressedSection(design.extender.section);
  if (!placed.ok || stock === undefined) throw new Error('no such wall');
  return wallOf({
    survey,
    design,
    ...placed.value,
    stock,
    means: { ...plainMeans, ...means },
    run: { left: squareEnd(0), right: squareEnd(survey.lengthIn) },
  });
}
