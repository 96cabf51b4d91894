import { memo, useId } from 'react';
import type { Fill } from '../../core/drawings/drawing.ts';
import { hatches } from '../../core/drawings/hatch.ts';
import type { Painted, Primitive } from '../../core/drawings/painted.ts';

/** Lines of a hatch stand wider apart on a screen than on paper. [px/pt] */
const hatchPxPerPt = 1.7;

/** Each hatch of each area by a name of its own. */
const hatchNames = Object.entries(hatches).flatMap(([fill, layers]) =>
  layers.map((layer, index) => ({ fill, name: `${fill}-${index}`, ...layer })),
);

function hatchesOf(fill: Fill) {
  return hatchNames.filter((hatch) => hatch.fill === fill);
}

/**
 * Paints a drawing's primitives as SVG elements. Pens and fills are classes of drawings.css; a shape with a ref
 * answers the pointer, and the same refs stand in the tables beside the drawing for the keyboard.
 */
export const PaintedSvg = memo(function PaintedSvg(props: {
  readonly painted: Painted;
  readonly onRef?: ((ref: string) => void) | undefined;
}) {
  const { painted, onRef } = props;
  const id = useId();
  return (
    <svg
      className="drawing"
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-words`}
      width={painted.widthPx}
      height={painted.heightPx}
      viewBox={`0 0 ${painted.widthPx} ${painted.heightPx}`}
      onClick={(event) => {
        const ref = event.target instanceof Element ? event.target.getAttribute('data-ref') : null;
        if (ref !== null) onRef?.(ref);
      }}
    >
      <title id={`${id}-title`}>{painted.title}</title>
      <desc id={`${id}-words`}>{painted.description}</desc>
      <defs>
        {hatchNames.map(({ name, spacingPt, degrees }) => (
          <Hatch
            key={name}
            id={`${id}-${name}`}
            spacing={spacingPt * hatchPxPerPt}
            // The lines of the pattern stand upright before it is turned.
            degrees={degrees - 90}
          />
        ))}
      </defs>
      {painted.primitives.map((primitive, index) => (
        <Mark key={index} primitive={primitive} id={id} answers={onRef !== undefined} />
      ))}
    </svg>
  );
});

function Hatch(props: { readonly id: string; readonly spacing: number; readonly degrees: number }) {
  return (
    <pattern
      id={props.id}
      width={props.spacing}
      height={props.spacing}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${props.degrees})`}
    >
      <line className="hatch" x1={0} y1={0} x2={0} y2={props.spacing} />
    </pattern>
  );
}

function Mark(props: { readonly primitive: Primitive; readonly id: string; readonly answers: boolean }) {
  const { primitive, id } = props;
  switch (primitive.kind) {
    case 'line':
      return (
        <line
          className={`pen-${primitive.pen}`}
          x1={primitive.x1}
          y1={primitive.y1}
          x2={primitive.x2}
          y2={primitive.y2}
        />
      );
    case 'polygon': {
      const points = primitive.points.map(([x, y]) => `${x},${y}`).join(' ');
      const answers = props.answers && primitive.ref !== undefined;
      return (
        <>
          <polygon
            className={`pen-${primitive.pen} fill-${primitive.fill}${answers ? ' answers' : ''}`}
            points={points}
            {...(answers ? { 'data-ref': primitive.ref } : {})}
          >
            {primitive.title === undefined ? null : <title>{primitive.title}</title>}
          </polygon>
          {hatchesOf(primitive.fill).map(({ name }) => (
            <polygon
              key={name}
              className="hatching"
              points={points}
              style={{ fill: `url(#${id}-${name})` }}
            />
          ))}
        </>
      );
    }
    case 'text':
      return (
        <text
          className={primitive.bold ? 'drawn-text drawn-bold' : 'drawn-text'}
          x={primitive.x}
          y={primitive.y}
          fontSize={primitive.sizePx}
          textAnchor={primitive.anchor}
          {...(primitive.rotateDeg === 0
            ? {}
            : { transform: `rotate(${primitive.rotateDeg} ${primitive.x} ${primitive.y})` })}
        >
          {primitive.text}
        </text>
      );
    default:
      return primitive satisfies never;
  }
}
