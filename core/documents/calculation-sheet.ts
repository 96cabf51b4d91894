import type { CheckResult } from '../checks/check-types.ts';
import { runChecks } from '../checks/run-checks.ts';
import type { JobInput } from '../job/job-file.ts';
import type { JobResult } from '../job/job-result.ts';
import { calculationBlocks, type NumberedCheck } from './calculation-blocks.ts';
import { eaveInputBlocks, siteInputBlocks } from './calculation-inputs.ts';
import { checkCaution, checkFootCaution, notReckoned, paintCautionBlocks } from './cautions.ts';
import { limitText, ratioText, verdictWords } from './check-words.ts';
import { decisionText } from './decision-words.ts';
import { type EaveParts, eavesWithParts, sectionOf } from './eave-drawings.ts';
import { checksOfEave, titleOf } from './grouped-checks.ts';
import { overhangFacts } from './overhang-words.ts';
import type { Block, Row, Sheet } from './sheet.ts';
import { sheetHead } from './sheet-head.ts';

/**
 * Makes the calculation sheet for a building department or an engineer: what was entered, each check with formula,
 * numbers, result, limit, source and its mark, verdict and recorded decision. The caution is on every page.
 */
export function calculationSheet(input: JobInput, result: JobResult): Sheet {
  const checks = runChecks(input, result);
  return {
    ...sheetHead('calculation', input),
    footCaution: checkFootCaution,
    blocks: [
      {
        kind: 'facts',
        pairs: [
          ['Site', input.job.siteAddress],
          ['Client', input.job.customer.name],
          ['Date', input.asOf],
          ['Eaves', String(result.eaves.length)],
          ...overhangFacts(result.eaves),
        ],
      },
      { kind: 'caution', text: checkCaution },
      {
        kind: 'paragraph',
        text:
          'Ratio: value over limit where more is worse, limit over value where less is worse; above 1 is beyond the ' +
          'limit. Behind each source stands how well it was seen; a source from memory has to be looked up.',
      },
      { kind: 'paragraph', text: notReckoned },
      ...siteInputBlocks(input),
      ...eavesWithParts(input, result.eaves).flatMap((parts) => eaveBlocks(parts, input, checks)),
      ...otherDecisionBlocks(input, checks),
      ...paintCautionBlocks(input),
    ],
  };
}

function eaveBlocks(parts: EaveParts, input: JobInput, checks: readonly CheckResult[]): readonly Block[] {
  const { layout } = parts;
  const section = sectionOf(parts, 'shop');
  let number = 0;
  const groups = checksOfEave(checks, layout.eaveId).map(({ group, checks: ofGroup }) => ({
    group,
    checks: ofGroup.map((check): NumberedCheck => {
      number += 1;
      return { number: `${layout.letter}${number}`, check };
    }),
  }));
  return [
    { kind: 'heading', text: `Eave ${layout.letter}: ${layout.name}` },
    ...eaveInputBlocks(parts),
    ...(section === undefined ? [] : [{ kind: 'drawing' as const, drawing: section, heightShare: 0.5 }]),
    { kind: 'heading', text: `Summary of eave ${layout.letter}` },
    {
      kind: 'table',
      columns: [
        { title: 'No.', align: 'left', share: 0 },
        { title: 'Check', align: 'left', share: 3 },
        { title: 'Where', align: 'left', share: 2 },
        { title: 'Value', align: 'right', share: 1.6 },
        { title: 'Limit', align: 'right', share: 2 },
        { title: 'Ratio', align: 'right', share: 0 },
        { title: 'Verdict', align: 'left', share: 1.6 },
      ],
      rows: groups.flatMap(({ group, checks: ofGroup }): readonly Row[] => [
        { cells: [group], style: 'group' },
        ...ofGroup.map(summaryRow),
      ]),
    },
    ...groups.flatMap(({ checks: ofGroup }) => ofGroup.flatMap((one) => calculationBlocks(one, input))),
  ];
}

function summaryRow({ number, check }: NumberedCheck): Row {
  return {
    cells: [
      number,
      titleOf(check),
      check.where,
      check.value?.text ?? '–',
      limitText(check),
      check.ratio === null ? '–' : ratioText(check.ratio),
      verdictWords[check.verdict],
    ],
    style: check.verdict === 'beyond' || check.verdict === 'needs-engineer' ? 'strong' : 'body',
  };
}

/** Decisions on checks that are no longer made are told as well: nothing recorded drops off the paper. */
function otherDecisionBlocks(input: JobInput, checks: readonly CheckResult[]): readonly Block[] {
  const gone = input.design.decisions.filter(
    (decision) => !checks.some((check) => check.id === decision.checkId),
  );
  return gone.length === 0
    ? []
    : [
        { kind: 'heading', text: 'Decisions on checks that are no longer made' },
        { kind: 'list', items: gone.map((decision) => decisionText(decision, null)) },
      ];
}
