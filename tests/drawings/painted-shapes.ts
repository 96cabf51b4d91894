import type { Drawing, Shape } from '../../core/drawings/drawing.ts';
import type { Painted, PaintedText, Primitive } from '../../core/drawings/painted.ts';

export function polygonTitled(drawing: Drawing, title: RegExp): Extract<Shape, { kind: 'polygon' }> {
  const found = drawing.shapes.find((shape) => shape.kind === 'polygon' && title.test(shape.title ?? ''));
  if (found?.kind !== 'polygon') throw new Error(`nothing titled ${title}`);
  return found;
}

export function polygonsTitled(
  drawing: Drawing,
  title: RegExp,
): readonly Extract<Shape, { kind: 'polygon' }>[] {
  return drawing.shapes.filter((shape) => shape.kind === 'polygon' && title.test(shape.title ?? '')) as never;
}

export function textsOf(drawing: Drawing): readonly string[] {
  return drawing.shapes.flatMap((shape) =>
    shape.kind === 'text' || shape.kind === 'dimension'
      ? [shape.text]
      : shape.kind === 'running'
        ? shape.stops.map(({ text }) => text)
        : [],
  );
}

export function paintedTexts(painted: Painted): readonly PaintedText[] {
  return painted.primitives.filter((primitive): primitive is PaintedText => primitive.kind === 'text');
}

export function paintedPolygons(painted: Painted): readonly Extract<Primitive, { kind: 'polygon' }>[] {
  return painted.primitives.filter((primitive) => primitive.kind === 'polygon');
}

export function extent(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
