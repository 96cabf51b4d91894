import { Link } from 'wouter';
import { ages } from '../../../core/billing/ledger.ts';
import { Panel } from '../../kit/panel.tsx';
import { ageWords, lateWords, leftWords, type ShopMoney } from './money-words.ts';
import { dollars } from '../../kit/amounts.ts';

/** What waits: quotes for an answer, work for a bill, bills for their money. */
export function WaitsPanels({ money }: { readonly money: ShopMoney }) {
  return (
    <div className="money-waits">
      <QuotesWait money={money} />
      <WorkWaits money={money} />
      <BillsWait money={money} />
    </div>
  );
}

function QuotesWait({ money }: { readonly money: ShopMoney }) {
  return (
    <Panel title="Quotes to be answered" look="flush">
      {money.quotes.length === 0 ? (
        <p className="money-empty muted">None is out.</p>
      ) : (
        <table className="table">
          <caption className="visually-hidden">Quotes to be answered</caption>
          <thead>
            <tr>
              <th scope="col">Job</th>
              <th scope="col">Quote</th>
              <th scope="col" className="align-right">
                Total
              </th>
            </tr>
          </thead>
          <tbody>
            {money.quotes.map((quote) => (
              <tr key={`${quote.number}/${quote.revision}`}>
                <th scope="row">
                  <Link href={`/jobs/${quote.jobId}/quote`}>{quote.jobName}</Link>
                </th>
                <td>
                  {quote.number}, <span className="no-wrap">sent {quote.sentOn}</span>
                  <br />
                  <span className={quote.daysLeft <= 7 ? 'tag tag-care' : 'muted'}>
                    {leftWords(quote.daysLeft)}
                  </span>
                </td>
                <td className="align-right">{dollars(quote.totalUsd)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Panel>
  );
}

function WorkWaits({ money }: { readonly money: ShopMoney }) {
  const behind = money.jobs.filter(({ overBilledUsd }) => Number(overBilledUsd) < 0);
  return (
    <Panel title="Work to be billed" look="flush">
      {behind.length === 0 ? (
        <p className="money-empty muted">All that is earned is billed.</p>
      ) : (
        <table className="table">
          <caption className="visually-hidden">Work to be billed</caption>
          <thead>
            <tr>
              <th scope="col">Job</th>
              <th scope="col" className="align-right">
                Earned
              </th>
              <th scope="col" className="align-right">
                Not billed
              </th>
            </tr>
          </thead>
          <tbody>
            {behind.map((job) => (
              <tr key={job.jobId}>
                <th scope="row">
                  <Link href={`/jobs/${job.jobId}/billing`}>{job.name}</Link>
                </th>
                <td className="align-right">{dollars(job.earnedUsd)}</td>
                <td className="align-right">{dollars(String(-Number(job.overBilledUsd)))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Panel>
  );
}

function BillsWait({ money }: { readonly money: ShopMoney }) {
  return (
    <Panel title="Bills to be paid" look="flush">
      {money.invoices.length === 0 ? (
        <p className="money-empty muted">Every bill is paid.</p>
      ) : (
        <>
          <table className="table">
            <caption className="visually-hidden">Bills to be paid</caption>
            <thead>
              <tr>
                <th scope="col">Job</th>
                <th scope="col">Invoice</th>
                <th scope="col" className="align-right">
                  Open, with tax
                </th>
              </tr>
            </thead>
            <tbody>
              {money.invoices.map((invoice) => (
                <tr key={invoice.number}>
                  <th scope="row">
                    <Link href={`/jobs/${invoice.jobId}/billing`}>{invoice.jobName}</Link>
                  </th>
                  <td>
                    {invoice.number}, <span className="no-wrap">due {invoice.dueOn}</span>
                    <br />
                    <span className={invoice.daysPast > 0 ? 'tag tag-care' : 'muted'}>
                      {lateWords(invoice.daysPast)}
                    </span>
                  </td>
                  <td className="align-right">{dollars(invoice.openUsd)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <dl className="ages">
            {ages
              .filter((age) => Number(money.aged[age]) !== 0)
              .map((age) => (
                <AgeLine key={age} name={ageWords[age]} amount={dollars(money.aged[age])} />
              ))}
          </dl>
        </>
      )}
    </Panel>
  );
}

function AgeLine({ name, amount }: { readonly name: string; readonly amount: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd className="numeric">{amount}</dd>
    </>
  );
}
