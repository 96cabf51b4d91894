import type { CheckResult, CheckStep } from '../checks/check-types.ts';
import type { JobInput } from '../job/job-file.ts';
import { sourceText, standingSentence } from './check-words.ts';
import { decisionText } from './decision-words.ts';
import { titleOf } from './grouped-checks.ts';
import type { Block, Row } from './sheet.ts';

/** A check with its number on the sheet: `A7`. */
export type NumberedCheck = { readonly number: string; readonly check: CheckResult };

/** One check on the calculation sheet: its reckoning as a table, then what it rests on and who decided what. */
export function calculationBlocks({ number, check }: NumberedCheck, input: JobInput): readonly Block[] {
  const heading: Block = { kind: 'heading', text: `${number}  ${titleOf(check)}` };
  const said: Block = {
    kind: 'paragraph',
    text: `${ended(check.what)} ${ended(check.where)} ${standingSentence(check)}`,
  };
  const notes: Block = { kind: 'list', items: notesOf(check, input) };
  if (check.why.length === 0) return [heading, said, notes];
  return [
    heading,
    {
      kind: 'table',
      columns: [
        { title: 'Step', align: 'left', share: 3 },
        { title: 'Formula', align: 'left', share: 3 },
        { title: 'With the numbers', align: 'left', share: 3 },
        { title: 'Result', align: 'right', share: 1.6 },
      ],
      rows: check.why.map(stepRow),
    },
    said,
    notes,
  ];
}

function stepRow(step: CheckStep): Row {
  const label = step.source === undefined ? step.label : `${step.label}\n${sourceText(step.source)}`;
  return { cells: [label, step.formula, step.withNumbers, step.result] };
}

function notesOf(check: CheckResult, input: JobInput): readonly string[] {
  return [
    ...check.source.map((source) => `Source: ${sourceText(source)}.`),
    ...check.assumptions.map((assumption) => `Taken as given: ${ended(assumption)}`),
    ...(check.remedy === null ? [] : [`What would help: ${ended(check.remedy)}`]),
    ...input.design.decisions
      .filter((decision) => decision.checkId === check.id)
      .map((decision) => decisionText(decision, check)),
  ];
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
