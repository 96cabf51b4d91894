/**
 * Change orders, and the ledger of what was billed and paid. What is approved or issued is frozen with its hash. Invoices and
 * credits share one series of numbers; a payment is taken back by a row of its own.
 */
export const billingTables = `
  CREATE TABLE change_orders (
    id TEXT PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    number INTEGER NOT NULL CHECK (number >= 1),
    state TEXT NOT NULL CHECK (state IN ('draft', 'sent', 'approved', 'declined')),
    made_on TEXT NOT NULL,
    sent_on TEXT,
    decided_on TEXT,
    note TEXT NOT NULL,
    price_usd TEXT NOT NULL,
    json TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    UNIQUE (job_id, number)
  ) STRICT;

  CREATE TABLE invoices (
    number INTEGER PRIMARY KEY NOT NULL CHECK (number >= 1),
    id TEXT NOT NULL UNIQUE,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    kind TEXT NOT NULL CHECK (kind IN ('deposit', 'stage', 'progress', 'final', 'credit')),
    credits INTEGER REFERENCES invoices (number),
    issued_on TEXT NOT NULL,
    due_on TEXT NOT NULL,
    total_usd TEXT NOT NULL,
    json TEXT NOT NULL,
    sha256 TEXT NOT NULL
  ) STRICT;
  CREATE INDEX invoices_by_job ON invoices (job_id, number);

  CREATE TABLE payments (
    id TEXT PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    sequence INTEGER NOT NULL UNIQUE,
    paid_on TEXT NOT NULL,
    amount_usd TEXT NOT NULL,
    how TEXT NOT NULL,
    note TEXT NOT NULL,
    takes_back TEXT UNIQUE REFERENCES payments (id)
  ) STRICT;
  CREATE INDEX payments_by_job ON payments (job_id, sequence);
`;
