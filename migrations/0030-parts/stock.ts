/** Boards and offcuts that the shop has: what each is, where it came from, and the job that it is set aside for. */
export const stockTables = `
  CREATE TABLE stock_pieces (
    id TEXT PRIMARY KEY NOT NULL,
    sequence INTEGER NOT NULL UNIQUE,
    section TEXT NOT NULL,
    grade TEXT NOT NULL,
    length_sixteenths INTEGER NOT NULL CHECK (length_sixteenths > 0),
    value_usd TEXT NOT NULL,
    from_job_id TEXT REFERENCES jobs (id),
    for_job_id TEXT REFERENCES jobs (id),
    added_on TEXT NOT NULL,
    gone_on TEXT,
    note TEXT NOT NULL
  ) STRICT;
  CREATE INDEX stock_pieces_here ON stock_pieces (gone_on, section, grade);
`;
