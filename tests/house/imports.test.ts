import { describe, expect, it } from 'vitest';
import { inspectHouse } from './imports.ts';

describe('the house', () => {
  it('keeps its import boundaries, file lengths and the place of SQL', () => {
    expect(inspectHouse().breaches).toEqual([]);
  });

  it('was really read: a check that sees no files would be green too', () => {
    const report = inspectHouse();
    expect(report.files).toBeGreaterThan(120);
    expect(report.imports).toBeGreaterThan(400);
  });
});
