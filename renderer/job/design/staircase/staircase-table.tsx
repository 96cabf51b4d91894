import { useEffect, useRef } from 'react';
import type { CostStaircase } from '../../../../core/job/cost-staircase.ts';
import { formatInches } from '../../../../core/units/format-length.ts';
import { formatUsd } from '../../../../core/units/money.ts';
import { Button } from '../../../kit/button.tsx';
import { ScrollBox } from '../../../kit/scroll-box.tsx';
import { againstToday, knownAs, stepOfToday, stretchOf } from './staircase-words.ts';

/** The steps in figures, each of which can be taken at its far end. */
export function StaircaseTable(props: {
  readonly staircase: CostStaircase;
  readonly chosen: number;
  readonly isDisabled: boolean;
  readonly take: (index: number) => void;
}) {
  const { staircase, chosen } = props;
  const row = useRef<HTMLTableRowElement>(null);
  const count = staircase.steps.length;
  useEffect(() => {
    // Only the box is scrolled, never the page. Steps come while they are worked out, and move the row.
    const box = row.current?.closest('.staircase-steps');
    if (chosen < count && row.current !== null && box !== null && box !== undefined)
      box.scrollTop = row.current.offsetTop - box.clientHeight / 2;
  }, [chosen, count]);
  const today = stepOfToday(staircase);
  const cheaper = new Set(staircase.cheaper.map(({ overhangIn }) => overhangIn));
  return (
    <ScrollBox label="Steps of the boards’ cost, in figures" className="staircase-steps">
      <table className="table">
        <caption className="visually-hidden">Boards’ cost by overhang</caption>
        <thead>
          <tr>
            <th scope="col">Overhang</th>
            <th scope="col" className="align-right">
              Boards
            </th>
            <th scope="col" className="align-right">
              Against today
            </th>
            <th scope="col">Known</th>
            <th scope="col">
              <span className="visually-hidden">Take it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {staircase.steps.map((step, index) => (
            <tr
              key={step.fromOverhangIn}
              ref={index === chosen ? row : null}
              data-state={index === chosen ? 'chosen' : undefined}
            >
              <th scope="row">
                <span className="no-wrap">{stretchOf(step)}</span>
                {step === today ? ' (today)' : cheaper.has(step.toOverhangIn) ? ' (nearest cheaper)' : ''}
              </th>
              <td className="align-right">{step.boardsUsd === null ? '' : formatUsd(step.boardsUsd)}</td>
              <td className="align-right">{step === today ? '' : againstToday(step, today)}</td>
              <td>{knownAs(step)}</td>
              <td className="align-right">
                {step.boardsUsd === null || step.toOverhangIn === staircase.todayIn ? null : (
                  <Button
                    tone="quiet"
                    isDisabled={props.isDisabled}
                    aria-label={`Take ${formatInches(step.toOverhangIn)} as the overhang`}
                    onPress={() => props.take(index)}
                  >
                    Take {formatInches(step.toOverhangIn)}
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}
