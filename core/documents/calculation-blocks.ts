import type { CheckResult, CheckStep } from '../checks/check-types.ts';
import type { JobInput } from '../job/job-file.ts';
import { limitText, ratioText, sourceText, standingSentence, verdictWords } from './check-words.ts';
import { decisionText } from './decision-words.ts';
import { titleOf } from './grouped-checks.ts';
import type { Block, Row } from './sheet.ts';

/** A check with its number on the sheet: `A7`. */
export type NumberedCheck = { readonly number: string; readonly check: CheckResult };

/** One check on the calculation sheet: its reckoning as a table, then what it rests on and who decided what. */
export function calculationBlocks({ number, check }: NumberedCheck, input: JobInput): readonly Block[] {
  const heading: Block = { kind: 'heading', text: `${number}. ${titleOf(check)}` };
  const what = `${ended(check.what)} ${ended(check.where)}`;
  if (check.why.length === 0)
    return [
      heading,
      { kind: 'paragraph', text: `${what} ${standingSentence(check)}` },
      ...noteBlocks(check, input),
    ];
  return [
    heading,
    {
      kind: 'table',
      columns: [
        { title: 'Step', align: 'left', share: 3.6 },
        { title: 'Formula', align: 'left', share: 2.8 },
        { title: 'With the numbers', align: 'left', share: 2.8 },
        { title: 'Result', align: 'right', share: 1.6 },
      ],
      rows: [...check.why.map(stepRow), verdictRow(check)],
    },
    {
      kind: 'paragraph',
      text:
        check.verdict === 'within' || check.verdict === 'beyond'
          ? what
          : `${what} ${standingSentence(check)}`,
    },
    ...noteBlocks(check, input),
  ];
}

function stepRow(step: CheckStep): Row {
  const label = step.source === undefined ? step.label : `${step.label}\n${sourceText(step.source)}`;
  return { cells: [label, step.formula, step.withNumbers, step.result] };
}

/** The verdict closes the table, so that no page parts it from its figures. */
function verdictRow(check: CheckResult): Row {
  const { verdict, value, limit, ratio } = check;
  const figures = [value?.text ?? '', limit === null ? '' : `against ${limitText(check)}`].join(' ').trim();
  return {
    cells: [verdictWords[verdict], '', figures, ratio === null ? '' : `ratio ${ratioText(ratio)}`],
    style: 'subtotal',
  };
}

function noteBlocks(check: CheckResult, input: JobInput): readonly Block[] {
  const decisions = input.design.decisions.filter((decision) => decision.checkId === check.id);
  const small = [
    ...(check.source.length === 0 ? [] : [`Source: ${check.source.map(sourceText).join('; ')}.`]),
    ...(check.assumptions.length === 0 ? [] : [`Taken as given: ${check.assumptions.map(ended).join(' ')}`]),
  ];
  return [
    ...(check.remedy === null ? [] : [`What would help: ${ended(check.remedy)}`]).map(
      (text): Block => ({ kind: 'paragraph', text }),
    ),
    ...decisions.map((decision): Block => ({ kind: 'paragraph', text: decisionText(decision, check) })),
    ...small.map((text): Block => ({ kind: 'paragraph', text, small: true })),
  ];
}

function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
