/**
 * Reads an entry of a document.
 * @param document - a JSON document.
 * @param path - dotted path, e.g. `money.taxPercent`.
 */
export function atPath(document: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((part, name) => (isRecord(part) ? part[name] : undefined), document);
}

/**
 * Copies a document with one entry changed.
 * @param document - a JSON document.
 * @param path - dotted path of an entry that is there.
 * @param value - its new value.
 */
export function withPath<T>(document: T, path: string, value: unknown): T {
  return put(document, path.split('.'), value) as T;
}

function put(part: unknown, names: readonly string[], value: unknown): unknown {
  const [name, ...rest] = names;
  if (name === undefined) return value;
  if (!isRecord(part) || !(name in part)) throw new Error(`no such entry: ${name}`);
  return { ...part, [name]: put(part[name], rest, value) };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
