-- The shop file's tables. Written again by: vitest run tests/store -u
-- version 30

CREATE TABLE counters (
  name TEXT PRIMARY KEY NOT NULL,
  last INTEGER NOT NULL CHECK (last >= 0)
) STRICT;

CREATE TABLE customers (
  id TEXT PRIMARY KEY NOT NULL,
  sequence INTEGER NOT NULL UNIQUE,
  name TEXT NOT NULL,
  address TEXT NOT NULL,
  phone TEXT NOT NULL,
  email TEXT NOT NULL
) STRICT;

CREATE TABLE documents (
  job_id TEXT NOT NULL REFERENCES jobs (id) ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('survey', 'design', 'drafts')),
  version INTEGER NOT NULL,
  json TEXT NOT NULL,
  PRIMARY KEY (job_id, kind)
) STRICT, WITHOUT ROWID;

CREATE TABLE estimates (
  id TEXT PRIMARY KEY NOT NULL,
  job_id TEXT NOT NULL REFERENCES jobs (id),
  number INTEGER NOT NULL UNIQUE,
  as_of TEXT NOT NULL,
  saved_on TEXT NOT NULL,
  total_usd TEXT NOT NULL,
  lacks INTEGER NOT NULL,
  json TEXT NOT NULL,
  sha256 TEXT NOT NULL
) STRICT;

CREATE TABLE jobs (
  id TEXT PRIMARY KEY NOT NULL,
  customer_id TEXT REFERENCES customers (id),
  name TEXT NOT NULL CHECK (name <> ''),
  site_address TEXT NOT NULL,
  notes TEXT NOT NULL,
  archived INTEGER NOT NULL CHECK (archived IN (0, 1)),
  revision INTEGER NOT NULL CHECK (revision >= 0),
  change_sequence INTEGER NOT NULL UNIQUE,
  changed_on TEXT NOT NULL,
  estimate_on TEXT
) STRICT;

CREATE TABLE labour_rates (
  task TEXT PRIMARY KEY NOT NULL,
  sequence INTEGER NOT NULL,
  hours_per_unit REAL NOT NULL,
  mark TEXT NOT NULL CHECK (mark IN ('placeholder', 'own'))
) STRICT;

CREATE TABLE price_items (
  id TEXT PRIMARY KEY NOT NULL,
  sequence INTEGER NOT NULL UNIQUE,
  category TEXT NOT NULL,
  description TEXT NOT NULL,
  unit TEXT NOT NULL,
  supplier TEXT NOT NULL,
  taxable INTEGER NOT NULL CHECK (taxable IN (0, 1)),
  retired INTEGER NOT NULL CHECK (retired IN (0, 1)),
  section TEXT NOT NULL,
  grade TEXT NOT NULL,
  length_ft REAL,
  nail TEXT NOT NULL,
  package_lb REAL,
  package_count INTEGER,
  width_in REAL,
  length_in REAL,
  thickness_in REAL
) STRICT;

CREATE TABLE prices (
  sequence INTEGER PRIMARY KEY NOT NULL,
  item_id TEXT NOT NULL REFERENCES price_items (id) ON DELETE CASCADE,
  price_usd TEXT NOT NULL,
  observed_on TEXT NOT NULL,
  source TEXT NOT NULL,
  valid_until TEXT
) STRICT;

CREATE TABLE quotes (
  id TEXT PRIMARY KEY NOT NULL,
  job_id TEXT NOT NULL REFERENCES jobs (id),
  number INTEGER NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  state TEXT NOT NULL CHECK (state IN ('draft', 'sent', 'accepted', 'declined')),
  made_on TEXT NOT NULL,
  sent_on TEXT,
  valid_until TEXT NOT NULL,
  decided_on TEXT,
  total_usd TEXT NOT NULL,
  lacks INTEGER NOT NULL,
  note TEXT NOT NULL,
  json TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  UNIQUE (number, revision)
) STRICT;

CREATE TABLE settings (
  id INTEGER PRIMARY KEY NOT NULL CHECK (id = 1),
  revision INTEGER NOT NULL CHECK (revision >= 0),
  version INTEGER NOT NULL,
  json TEXT NOT NULL
) STRICT;

CREATE INDEX estimates_by_job ON estimates (job_id, number);

CREATE INDEX jobs_by_customer ON jobs (customer_id);

CREATE INDEX prices_by_day ON prices (item_id, observed_on, sequence);

CREATE INDEX quotes_by_job ON quotes (job_id, number, revision);
