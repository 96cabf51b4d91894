import type { Occupied, PlacedRafter } from '../layout/layout-types.ts';
import type { EaveSurvey } from './survey-document.ts';

/**
 * Everything that stands on the plate of an eave before the new work: rafters, the ceiling joists against their faces,
 * and what else is in the way, from left to right.
 * @param eave - the survey; `eave.rafters` in the order of `rafters`. [in]
 * @param rafters - the same rafters on their stations. [in]
 * @returns intervals along the wall line. Worked: a rafter 1-1/2 thick at 16 with a 1-5/8 joist on its right ->
 *   rafter 15-1/4 to 16-3/4, joist 16-3/4 to 18-3/8. [in]
 */
export function occupiedPlaces(eave: EaveSurvey, rafters: readonly PlacedRafter[]): readonly Occupied[] {
  const places: Occupied[] = [];
  for (const [index, rafter] of rafters.entries()) {
    const reading = eave.rafters[index];
    if (reading === undefined) throw new Error('a placed rafter without its reading');
    const joistIn = reading.joistThicknessIn ?? eave.joistThicknessIn;
    const { leftFaceIn, rightFaceIn, number } = rafter;
    if (reading.joist === 'left' || reading.joist === 'both') {
      const label = `the ceiling joist left of rafter ${number}`;
      places.push({ label, kind: 'joist', leftIn: leftFaceIn - joistIn, rightIn: leftFaceIn });
    }
    places.push({ label: `rafter ${number}`, kind: 'rafter', leftIn: leftFaceIn, rightIn: rightFaceIn });
    if (reading.joist === 'right' || reading.joist === 'both') {
      const label = `the ceiling joist right of rafter ${number}`;
      places.push({ label, kind: 'joist', leftIn: rightFaceIn, rightIn: rightFaceIn + joistIn });
    }
  }
  for (const { label, fromIn, toIn } of eave.obstructions) {
    places.push({
      label: label.trim() === '' ? 'what else is in the way' : label.trim(),
      kind: 'obstruction',
      leftIn: Math.min(fromIn, toIn),
      rightIn: Math.max(fromIn, toIn),
    });
  }
  return places.sort((a, b) => a.leftIn - b.leftIn || a.rightIn - b.rightIn);
}
