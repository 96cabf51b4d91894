import { problemSentence } from '../../../core/problems/sentence.ts';
import { figuresMissing } from '../../kit/figures-missing.ts';
import { formatUsd, type Usd } from '../../../core/units/money.ts';
import { attempt } from '../../host/attempt.ts';
import { fromBase64 } from '../../host/base64.ts';
import { tell, useAnswer } from '../../host/queries.ts';
import { saveFile } from '../../host/save-file.ts';
import { Answer } from '../../kit/answer.tsx';
import { Button } from '../../kit/button.tsx';
import { notify } from '../../kit/notices.tsx';
import { Panel } from '../../kit/panel.tsx';
import { allSaved } from '../parts/all-saved.ts';
import { useJob } from '../job-context.ts';

/** Estimates as they were saved: frozen, numbered, never changed by later prices or readings. */
export function SavedEstimates() {
  const { jobId, editor, computation, surroundings } = useJob();
  const saved = useAnswer('estimates.list', { jobId });
  const save = async (): Promise<void> => {
    try {
      await allSaved(editor);
      const reply = await tell('estimates.save', { jobId });
      if (reply.ok) notify(`Estimate ${reply.value.number} was saved as it stands.`);
      else notify(problemSentence(reply.problem), 'problem');
    } catch {
      notify('The estimate was not saved. It can be saved once Eavewright answers again.', 'problem');
    }
  };
  return (
    <Panel
      title="Saved estimates"
      look="flush"
      actions={
        <Button isDisabled={!computation.current} onPress={() => void save()}>
          Save this estimate
        </Button>
      }
    >
      <Answer query={saved}>
        {(list) =>
          list.length === 0 ? (
            <p className="muted panel-words">
              None yet. A saved estimate keeps its figures, whatever prices do later.
            </p>
          ) : (
            <table className="table">
              <caption className="visually-hidden">Saved estimates</caption>
              <thead>
                <tr>
                  <th scope="col">No.</th>
                  <th scope="col">Saved on</th>
                  <th scope="col">Prices of</th>
                  <th scope="col" className="align-right">
                    Total
                  </th>
                  <th scope="col">
                    <span className="visually-hidden">Print again</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {list.map((one) => (
                  <tr key={one.id}>
                    <th scope="row">{one.number}</th>
                    <td>{one.savedOn}</td>
                    <td>{one.asOf}</td>
                    <td className="align-right">
                      {formatUsd(one.totalUsd as Usd)}
                      {one.lacks > 0 ? (
                        <span className="tag tag-care">{figuresMissing(one.lacks)}</span>
                      ) : null}
                      {one.intact ? null : (
                        <span className="tag tag-care">damaged on the disk: not what was saved</span>
                      )}
                    </td>
                    <td className="align-right">
                      <Button
                        tone="quiet"
                        isDisabled={!one.intact}
                        aria-label={`Quote of estimate ${one.number} as it was saved, as PDF`}
                        onPress={() => void saveQuote(one.id, surroundings.settings.paperSize)}
                      >
                        Quote as PDF
                      </Button>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          )
        }
      </Answer>
    </Panel>
  );
}

/** Prints the quote as it was when the estimate was saved, whatever prices and the program did since. */
async function saveQuote(estimateId: string, paperSize: 'letter' | 'a4'): Promise<void> {
  const paper = await attempt('paper.ofEstimate', { estimateId, sheet: 'quote', paperSize });
  if (paper !== undefined) await saveFile(paper.fileName, fromBase64(paper.pdfBase64), 'application/pdf');
}
