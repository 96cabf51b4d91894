import { X } from 'lucide-react';
import type { CheckResult } from '../../../core/checks/check-types.ts';
import { decisionText } from '../../../core/documents/decision-words.ts';
import { IconButton } from '../../kit/icon-button.tsx';
import { removeFrom } from '../editor/list-edits.ts';
import { useJob } from '../job-context.ts';

/**
 * The decisions recorded against a check, each removable; they stand beside the figure and change nothing of it.
 * @param check - what the check says now; null where the check is no longer there.
 */
export function DecisionNotes(props: {
  readonly checkId: string;
  readonly check: CheckResult | null;
  readonly onRemoved?: (() => void) | undefined;
}) {
  const { editor, documents } = useJob();
  const decisions = documents.design.decisions.flatMap((decision, index) =>
    decision.checkId === props.checkId ? [{ decision, index }] : [],
  );
  if (decisions.length === 0) return null;
  return (
    <ul className="decisions">
      {decisions.map(({ decision, index }) => (
        <li key={index} className="decision">
          <span>{decisionText(decision, props.check)}</span>
          <IconButton
            label={`Remove the decision of ${decision.who} (can be undone)`}
            icon={<X size={14} aria-hidden="true" />}
            onPress={() => {
              editor.change(`removing the decision of ${decision.who}`, (now) =>
                removeFrom(now, 'design.decisions', index),
              );
              props.onRemoved?.();
            }}
          />
        </li>
      ))}
    </ul>
  );
}
