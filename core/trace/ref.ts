/** Splits a ref at its first slash: `board/2x6 No.2/3` -> `board` and `2x6 No.2/3`. */
export function splitRef(ref: string): { readonly kind: string; readonly rest: string } {
  const cut = ref.indexOf('/');
  return cut < 0 ? { kind: ref, rest: '' } : { kind: ref.slice(0, cut), rest: ref.slice(cut + 1) };
}

/**
 * Finds what the first part of a ref names, and what is left behind it. Ids may hold slashes of their own, so the
 * longest id that fits is taken.
 */
export function ownerOf<T>(
  rest: string,
  owners: readonly T[],
  idOf: (owner: T) => string,
): { readonly owner: T; readonly rest: string } | undefined {
  let best: T | undefined;
  let length = -1;
  for (const owner of owners) {
    const id = idOf(owner);
    if (id.length > length && rest.startsWith(`${id}/`)) {
      best = owner;
      length = id.length;
    }
  }
  return best === undefined ? undefined : { owner: best, rest: rest.slice(length + 1) };
}
