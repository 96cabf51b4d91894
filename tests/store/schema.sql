-- The shop file's tables. Written again by: vitest run tests/store -u
-- version 30

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

CREATE TABLE close_outs (
    job_id TEXT PRIMARY KEY NOT NULL REFERENCES jobs (id),
    finished_on TEXT NOT NULL,
    record TEXT NOT NULL
  ) STRICT, WITHOUT ROWID;

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

CREATE TABLE index_values (
    series TEXT NOT NULL,
    month TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (series, month)
  ) STRICT, WITHOUT ROWID;

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

CREATE TABLE left_out (
    job_id TEXT NOT NULL REFERENCES jobs (id),
    phase TEXT NOT NULL,
    PRIMARY KEY (job_id, phase)
  ) STRICT, WITHOUT ROWID;

CREATE TABLE logos (
    sha256 TEXT PRIMARY KEY NOT NULL,
    media_type TEXT NOT NULL CHECK (media_type IN ('image/png', 'image/jpeg')),
    width_px INTEGER NOT NULL,
    height_px INTEGER NOT NULL,
    bytes BLOB NOT NULL
  ) STRICT;

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
, species TEXT NOT NULL DEFAULT '', minimum_pack INTEGER NOT NULL DEFAULT 1, notes TEXT NOT NULL DEFAULT '') STRICT;

CREATE TABLE price_layouts (
    name TEXT PRIMARY KEY NOT NULL,
    used_on TEXT NOT NULL,
    record TEXT NOT NULL
  ) STRICT, WITHOUT ROWID;

CREATE TABLE prices (
  sequence INTEGER PRIMARY KEY NOT NULL,
  item_id TEXT NOT NULL REFERENCES price_items (id) ON DELETE CASCADE,
  price_usd TEXT NOT NULL,
  observed_on TEXT NOT NULL,
  source TEXT NOT NULL,
  valid_until TEXT
) STRICT;

CREATE TABLE progress (
    sequence INTEGER PRIMARY KEY NOT NULL,
    job_id TEXT NOT NULL REFERENCES jobs (id),
    phase TEXT NOT NULL,
    noted_on TEXT NOT NULL,
    quantity TEXT,
    percent TEXT,
    to_complete_usd TEXT
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
  sha256 TEXT NOT NULL, chosen TEXT,
  UNIQUE (number, revision)
) STRICT;

CREATE TABLE settings (
  id INTEGER PRIMARY KEY NOT NULL CHECK (id = 1),
  revision INTEGER NOT NULL CHECK (revision >= 0),
  version INTEGER NOT NULL,
  json TEXT NOT NULL
) STRICT;

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

CREATE INDEX attachments_by_job ON attachments (job_id, sequence);

CREATE INDEX bills_by_job ON bills (job_id, sequence);

CREATE INDEX estimates_by_job ON estimates (job_id, number);

CREATE INDEX invoices_by_job ON invoices (job_id, number);

CREATE INDEX jobs_by_customer ON jobs (customer_id);

CREATE INDEX payments_by_job ON payments (job_id, sequence);

CREATE INDEX prices_by_day ON prices (item_id, observed_on, sequence);

CREATE INDEX progress_by_job ON progress (job_id, phase, sequence);

CREATE INDEX quotes_by_job ON quotes (job_id, number, revision);

CREATE INDEX stock_pieces_here ON stock_pieces (gone_on, section, grade);

CREATE INDEX time_entries_by_job ON time_entries (job_id, sequence);
