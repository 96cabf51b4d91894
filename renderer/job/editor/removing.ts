/** Where the entries of a list go when one of them is removed. */
export function removing(index: number): (at: number) => number | null {
  return (at) => (at === index ? null : at > index ? at - 1 : at);
}
