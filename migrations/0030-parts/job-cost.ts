/**
 * What a job took. Entries are never changed: a correction is a row of its own that names the one it replaces, once.
 * `record` is what stands in a paper, checked on its way in and out.
 */
export const jobCostTables = `
  CREATE TABLE time_entries (
    id TEXT PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    sequence INTEGER NOT NULL UNIQUE,
    entered_on TEXT NOT NULL,
    replaces TEXT UNIQUE REFERENCES time_entries (id),
    takes_back INTEGER NOT NULL CHECK (takes_back IN (0, 1)),
    person TEXT NOT NULL,
    worked_on TEXT NOT NULL,
    phase TEXT NOT NULL,
    hours TEXT NOT NULL,
    note TEXT NOT NULL,
    rate_usd TEXT NOT NULL,
    cost_usd TEXT NOT NULL
  ) STRICT;
  CREATE INDEX time_entries_by_job ON time_entries (job_id, sequence);

  CREATE TABLE bills (
    id TEXT PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    sequence INTEGER NOT NULL UNIQUE,
    entered_on TEXT NOT NULL,
    replaces TEXT UNIQUE REFERENCES bills (id),
    takes_back INTEGER NOT NULL CHECK (takes_back IN (0, 1)),
    total_usd TEXT NOT NULL,
    record TEXT NOT NULL
  ) STRICT;
  CREATE INDEX bills_by_job ON bills (job_id, sequence);

  CREATE TABLE progress (
    sequence INTEGER PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    phase TEXT NOT NULL,
    noted_on TEXT NOT NULL,
    quantity TEXT,
    percent TEXT,
    to_complete_usd TEXT
  ) STRICT;
  CREATE INDEX progress_by_job ON progress (job_id, phase, sequence);

  CREATE TABLE attachments (
    id TEXT PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    sequence INTEGER NOT NULL UNIQUE,
    added_on TEXT NOT NULL,
    name TEXT NOT NULL,
    file_name TEXT NOT NULL UNIQUE,
    bytes INTEGER NOT NULL,
    sha256 TEXT NOT NULL
  ) STRICT;
  CREATE INDEX attachments_by_job ON attachments (job_id, sequence);

  CREATE TABLE close_outs (
    job_id TEXT PRIMARY KEY NOT NULL REFERENCES jobs (id),
    finished_on TEXT NOT NULL,
    record TEXT NOT NULL
  ) STRICT, WITHOUT ROWID;
`;
