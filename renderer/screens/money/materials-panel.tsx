import { attempt } from '../../host/attempt.ts';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { type Learning, materialWords, signedPercent } from './money-words.ts';
import { percentWords } from '../../kit/amounts.ts';

type Material = Learning['materials'][number];

/** How much material was bought beyond what was reckoned, and at what price, with an allowance to take. */
export function MaterialsPanel({ materials }: { readonly materials: readonly Material[] }) {
  return (
    <Panel title="Material bought against reckoned" look="flush">
      <table className="table">
        <caption className="visually-hidden">Material bought against reckoned</caption>
        <thead>
          <tr>
            <th scope="col">Material</th>
            <th scope="col" className="align-right">
              Jobs
            </th>
            <th scope="col" className="align-right">
              Bought beyond
            </th>
            <th scope="col">Each job: quantity; price</th>
            <th scope="col" className="align-right">
              Allowed now
            </th>
            <th scope="col">Proposed</th>
          </tr>
        </thead>
        <tbody>
          {materials.map((material) => (
            <tr key={material.group}>
              <th scope="row">{materialWords[material.group]}</th>
              <td className="align-right">{material.jobs.length}</td>
              <td className="align-right">{signedPercent(material.overQuantityPercent)}</td>
              <td>
                <ul className="rate-jobs">
                  {material.jobs.map((job) => (
                    <li key={job.jobId}>
                      {job.jobName}: {signedPercent(job.overQuantityPercent)};{' '}
                      {signedPercent(job.overPricePercent)}
                    </li>
                  ))}
                </ul>
              </td>
              <td className="align-right">{percentWords(material.usedPercent)}</td>
              <td>
                <TakeAllowance material={material} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="money-legend muted">
        Counted are lines of receipts that were matched to the purchase list, at the reckoned price, returns
        taken off.
      </p>
    </Panel>
  );
}

function TakeAllowance({ material }: { readonly material: Material }) {
  const { group, offeredPercent, usedPercent } = material;
  if (offeredPercent === null || offeredPercent === usedPercent || (group !== 'nails' && group !== 'plank'))
    return null;
  const take = async (): Promise<void> => {
    const done = await attempt('learning.takeAllowance', { group, percent: Number(offeredPercent) });
    if (done !== undefined) notify(`${offeredPercent} % is allowed from now on.`);
  };
  return (
    <Button
      tone="quiet"
      onPress={() => void take()}
      aria-label={`Take ${offeredPercent} % for ${materialWords[group]}`}
    >
      Take {offeredPercent} %
    </Button>
  );
}
