import { useState } from 'react';
import type { JobInput } from '../../../core/job/job-file.ts';
import { type Variant, variantKeys } from '../../../core/job/variants.ts';
import { problemSentence } from '../../../core/problems/sentence.ts';
import { formatLength } from '../../../core/units/format-length.ts';
import { formatUsd } from '../../../core/units/money.ts';
import { Button } from '../../kit/button.tsx';
import { FoldPanel } from '../../kit/fold-panel.tsx';
import { useJob } from '../job-context.ts';
import { Caution } from '../parts/caution.tsx';
import { Said } from '../parts/said.tsx';
import { useVariants } from './use-variants.ts';

const figureHeadings = [
  'Tails',
  'Not plain beside',
  'Largest gap',
  'Boards',
  'Total',
  'Hours',
  'Findings',
] as const;

/** Other ways to lay the eave out, side by side with what they cost; each can be taken, as one step back. */
export function VariantTable({ eaveId }: { readonly eaveId: string }) {
  const { computation } = useJob();
  const input = computation.good?.input ?? null;
  const [wanted, setWanted] = useState<JobInput | null>(null);
  const made = useVariants(wanted, eaveId);
  if (input === null) return null;
  const isOld = wanted !== null && wanted !== input;
  const isWorking = wanted !== null && made?.isComplete !== true;
  return (
    <FoldPanel title="Other layouts" says="side by side, with what they cost">
      <div className="variant-tools">
        <Button isDisabled={isWorking || !computation.current} onPress={() => setWanted(input)}>
          {made === null || isOld ? 'Compare' : 'Compare again'}
        </Button>
        <span role="status" className="muted">
          {isWorking
            ? `Working out ${made === null ? 'the first' : `${made.variants.length + 1} of ${variantKeys.length}`}.`
            : isOld
              ? 'These are from before the last change.'
              : 'Sums are of the whole job; boards as planned at first, before the search for fewer dollars.'}
        </span>
      </div>
      {made === null ? null : (
        <>
          <table className="table variant-table">
            <caption className="visually-hidden">Other layouts of the eave</caption>
            <thead>
              <tr>
                <th scope="col">Layout</th>
                {figureHeadings.map((title) => (
                  <th key={title} scope="col" className="align-right">
                    {title}
                  </th>
                ))}
                <th scope="col">
                  <span className="visually-hidden">Take it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {made.variants.map((variant) => (
                <VariantRow key={variant.key} variant={variant} eaveId={eaveId} isOld={isOld} />
              ))}
            </tbody>
          </table>
          <Caution />
        </>
      )}
    </FoldPanel>
  );
}

function VariantRow(props: { readonly variant: Variant; readonly eaveId: string; readonly isOld: boolean }) {
  const { variant, eaveId, isOld } = props;
  const { editor } = useJob();
  const { figures, differs } = variant;
  const isDesign = variant.key === 'as-designed';
  const take = (): void =>
    editor.change(`taking the layout "${variant.name}"`, (now) => {
      const taken = variant.design.eaves.find((eave) => eave.eaveId === eaveId);
      if (taken === undefined) return now;
      const { preferredSide, pins, addedTails, layout } = taken;
      return {
        ...now,
        design: {
          ...now.design,
          eaves: now.design.eaves.map((eave) =>
            eave.eaveId === eaveId ? { ...eave, preferredSide, pins, addedTails, layout } : eave,
          ),
        },
      };
    });
  return (
    <tr>
      <th scope="row">
        {variant.name}
        {isDesign ? null : (
          <details className="differs">
            <summary>
              {differs.length === 0
                ? 'The same tails'
                : differs.length === 1
                  ? '1 tail otherwise'
                  : `${differs.length} tails otherwise`}
            </summary>
            <ul>
              {differs.map((one) => (
                <li key={`${one.stationIn} ${one.text}`}>
                  <Said text={one.text} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </th>
      {figures.ok ? (
        <>
          <td className="align-right">{figures.value.tails}</td>
          <td className="align-right">{figures.value.tailsBySpecialMethod}</td>
          <td className="align-right">
            {figures.value.largestGapIn === null ? '' : formatLength(figures.value.largestGapIn)}
          </td>
          <td className="align-right">{formatUsd(figures.value.boardsUsd)}</td>
          <td className="align-right">
            {formatUsd(figures.value.totalUsd)}
            {figures.value.lacks === 0 ? null : <span className="muted"> without {figures.value.lacks}</span>}
          </td>
          <td className="align-right">{figures.value.labourHours}</td>
          <td className="align-right">{figures.value.findings}</td>
        </>
      ) : (
        <td colSpan={figureHeadings.length}>
          <Said text={problemSentence(figures.problem)} />
        </td>
      )}
      <td>
        {isDesign || !figures.ok || differs.length === 0 ? null : (
          <Button
            tone="quiet"
            isDisabled={isOld}
            aria-label={`Take the layout: ${variant.name}`}
            onPress={take}
          >
            Take it
          </Button>
        )}
      </td>
    </tr>
  );
}
