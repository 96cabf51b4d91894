/** A computation that a person's input can make impossible: the value, or the problem that stopped it. */
export type Result<T, P> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: P };

/** Wraps a value as success. */
export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** Wraps a problem as failure. */
export function fail<P>(problem: P): { readonly ok: false; readonly problem: P } {
  return { ok: false, problem };
}

/** Marks a branch that the types say cannot be reached; throws if a bug reaches it. */
export function assertNever(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`);
}
