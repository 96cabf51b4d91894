import { describe, expect, test } from 'vitest';
import { tidySheet } from '../../core/documents/tidy-sheet.ts';
import { makeSheet } from '../../core/documents/make-sheet.ts';
import { computed, sampleJob } from './sample.ts';

const job = sampleJob();
const sheet = makeSheet('calculation', job, computed(job));
const column = { title: 'Step', align: 'left', share: 1 } as const;

describe('a tidied sheet', () => {
  test('prints a cell without stray spaces, and keeps the line ends that part its source from its step', () => {
    const { blocks } = tidySheet({
      ...sheet,
      blocks: [
        { kind: 'table', columns: [column], rows: [{ cells: ['  Dead   load\n  ASCE 7, Table C3.1-1 '] }] },
      ],
    });
    expect(blocks).toEqual([
      { kind: 'table', columns: [column], rows: [{ cells: ['Dead load\nASCE 7, Table C3.1-1'] }] },
    ]);
  });

  test('says each step of a reckoning and its source on lines of their own', () => {
    const cells = sheet.blocks.flatMap((block) =>
      block.kind === 'table' ? block.rows.flatMap((row) => row.cells) : [],
    );
    expect(cells.filter((cell) => cell.startsWith('Dead load on level area\nASCE 7')).length).toBeGreaterThan(
      5,
    );
  });
});
