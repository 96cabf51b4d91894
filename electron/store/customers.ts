import type { Customer } from '../../core/job/job-file.ts';
import { takeNumber } from './counters.ts';
import type { ReadableDb, WritableDb } from './database.ts';
import { query } from './query.ts';

/** What stands for a job without a customer. */
export const noCustomer: Customer = { name: '', address: '', phone: '', email: '' };

/** Customers in the order they came, with how many jobs each has. */
export function listCustomers(db: ReadableDb): { id: string; customer: Customer; jobs: number }[] {
  const rows = db.rows(
    query
      .selectFrom('customers')
      .innerJoin('jobs', 'jobs.customer_id', 'customers.id')
      .select(({ fn }) => [
        'customers.id',
        'customers.name',
        'customers.address',
        'customers.phone',
        'customers.email',
        fn.count<number>('jobs.id').as('jobs'),
      ])
      .groupBy('customers.id')
      .orderBy('customers.sequence'),
  );
  return rows.map(({ id, jobs, ...customer }) => ({ id, jobs, customer }));
}

/** A customer by id; the blank one for a job that has none. */
export function getCustomer(db: ReadableDb, id: string | null): Customer {
  if (id === null) return noCustomer;
  return (
    db.row(
      query.selectFrom('customers').select(['name', 'address', 'phone', 'email']).where('id', '=', id),
    ) ?? noCustomer
  );
}

/**
 * Finds or makes the row for what a job says of its customer.
 *
 * Typing changes the job's own customer in place. A customer that other jobs share is left as it is for them, and an
 * entry that reads exactly as another customer's becomes that customer.
 * @param currentId - the job's customer until now, null for none.
 * @param newId - makes an id for a new row.
 * @returns the id to link, null for a blank customer.
 */
export function settleCustomer(
  db: WritableDb,
  currentId: string | null,
  customer: Customer,
  newId: () => string,
): string | null {
  if (Object.values(customer).every((text) => text.trim() === '')) return null;
  const same = db.row(
    query
      .selectFrom('customers')
      .select('id')
      .where('name', '=', customer.name)
      .where('address', '=', customer.address)
      .where('phone', '=', customer.phone)
      .where('email', '=', customer.email),
  );
  if (same !== undefined) return same.id;
  if (currentId !== null && jobsOf(db, currentId) <= 1) {
    db.run(query.updateTable('customers').set(customer).where('id', '=', currentId));
    return currentId;
  }
  const id = newId();
  db.run(query.insertInto('customers').values({ id, sequence: takeNumber(db, 'customer'), ...customer }));
  return id;
}

/** Removes a customer that no job speaks of any more. */
export function dropCustomerWithoutJobs(db: WritableDb, id: string | null): void {
  if (id === null || jobsOf(db, id) > 0) return;
  db.run(query.deleteFrom('customers').where('id', '=', id));
}

function jobsOf(db: ReadableDb, customerId: string): number {
  const row = db.row(
    query
      .selectFrom('jobs')
      .select(({ fn }) => fn.countAll<number>().as('jobs'))
      .where('customer_id', '=', customerId),
  );
  return row?.jobs ?? 0;
}
