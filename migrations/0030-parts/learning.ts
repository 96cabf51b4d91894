/** Phases of finished jobs whose hours the person does not want to learn from. */
export const learningTables = `
  CREATE TABLE left_out (
    job_id TEXT NOT NULL REFERENCES jobs (id),
    phase TEXT NOT NULL,
    PRIMARY KEY (job_id, phase)
  ) STRICT, WITHOUT ROWID;
`;
