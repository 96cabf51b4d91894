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
    json: string;
    sha256: string;
  };
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
};

export type DocumentKind = 'survey' | 'design' | 'drafts';
