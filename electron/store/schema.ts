import type { ChangeOrderState } from '../../core/billing/change-order.ts';
import type { InvoiceKind } from '../../core/billing/invoice.ts';
import type { KeptState } from '../../core/quotes/quote-state.ts';

/** The tables of the shop file as kysely sees them. Laid by migrations/; money is decimal text. */
export type Schema = {
  quotes: {
    id: string;
    job_id: string;
    number: number;
    revision: number;
    state: KeptState;
    made_on: string;
    sent_on: string | null;
    valid_until: string;
    decided_on: string | null;
    total_usd: string;
    lacks: number;
    note: string;
    /** JSON of the alternate that was accepted; null where that is the one that was offered, or none was. */
    chosen: string | null;
    json: string;
    sha256: string;
  };
  logos: { sha256: string; media_type: string; width_px: number; height_px: number; bytes: Uint8Array };
  counters: { name: string; last: number };
  customers: {
    id: string;
    sequence: number;
    name: string;
    address: string;
    phone: string;
    email: string;
  };
  jobs: {
    id: string;
    customer_id: string | null;
    name: string;
    site_address: string;
    notes: string;
    archived: number;
    revision: number;
    change_sequence: number;
    changed_on: string;
    estimate_on: string | null;
  };
  documents: { job_id: string; kind: DocumentKind; version: number; json: string };
  price_items: {
    id: string;
    sequence: number;
    category: string;
    description: string;
    unit: string;
    supplier: string;
    taxable: number;
    retired: number;
    section: string;
    grade: string;
    length_ft: number | null;
    nail: string;
    package_lb: number | null;
    package_count: number | null;
    width_in: number | null;
    length_in: number | null;
    thickness_in: number | null;
    species: string;
    minimum_pack: number;
    notes: string;
  };
  price_layouts: { name: string; used_on: string; record: string };
  index_values: { series: string; month: string; value: string };
  stock_pieces: {
    id: string;
    sequence: number;
    section: string;
    grade: string;
    length_sixteenths: number;
    value_usd: string;
    from_job_id: string | null;
    for_job_id: string | null;
    added_on: string;
    gone_on: string | null;
    note: string;
  };
  prices: {
    sequence: number;
    item_id: string;
    price_usd: string;
    observed_on: string;
    source: string;
    valid_until: string | null;
  };
  labour_rates: { task: string; sequence: number; hours_per_unit: number; mark: string };
  settings: { id: number; revision: number; version: number; json: string };
  estimates: {
    id: string;
    job_id: string;
    number: number;
    as_of: string;
    saved_on: string;
    total_usd: string;
    lacks: number;
    json: string;
    sha256: string;
  };
  time_entries: {
    id: string;
    job_id: string;
    sequence: number;
    entered_on: string;
    replaces: string | null;
    takes_back: number;
    person: string;
    worked_on: string;
    phase: string;
    hours: string;
    note: string;
    rate_usd: string;
    cost_usd: string;
  };
  bills: {
    id: string;
    job_id: string;
    sequence: number;
    entered_on: string;
    replaces: string | null;
    takes_back: number;
    total_usd: string;
    record: string;
  };
  progress: {
    sequence: number;
    job_id: string;
    phase: string;
    noted_on: string;
    quantity: string | null;
    percent: string | null;
    to_complete_usd: string | null;
  };
  attachments: {
    id: string;
    job_id: string;
    sequence: number;
    added_on: string;
    name: string;
    file_name: string;
    bytes: number;
    sha256: string;
  };
  left_out: { job_id: string; phase: string };
  close_outs: { job_id: string; finished_on: string; record: string };
  change_orders: {
    id: string;
    job_id: string;
    number: number;
    state: ChangeOrderState;
    made_on: string;
    sent_on: string | null;
    decided_on: string | null;
    note: string;
    price_usd: string;
    json: string;
    sha256: string;
  };
  invoices: {
    number: number;
    id: string;
    job_id: string;
    kind: InvoiceKind;
    credits: number | null;
    issued_on: string;
    due_on: string;
    total_usd: string;
    json: string;
    sha256: string;
  };
  payments: {
    id: string;
    job_id: string;
    sequence: number;
    paid_on: string;
    amount_usd: string;
    how: string;
    note: string;
    takes_back: string | null;
  };
};

export type DocumentKind = 'survey' | 'design' | 'drafts';
