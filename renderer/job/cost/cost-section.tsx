/** What the job took against what was reckoned. */
export function CostSection() {
  return <div className="stack" />;
}
