/** Change orders, invoices and payments of the job. */
export function BillingSection() {
  return <div className="stack" />;
}
