/** What JSON takes for blank: no other space. */
const blank = /[ \t\r\n]*/y;
const token =
  // oxlint-disable-next-line no-control-regex -- control characters are what JSON forbids inside a text
  /(?:([{}[\],:])|("(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-]))/uy;

/** What may stand next: a value, the name of an entry, the colon after it, or what follows a value. */
type Awaited = 'value' | 'value-or-end' | 'name' | 'name-or-end' | 'colon' | 'after';

/**
 * Finds the line on which a text ceases to be JSON (RFC 8259), so that a person can look there: machines word their own
 * messages differently, and not all name a place.
 * @param text - a text that `JSON.parse` refused.
 * @returns the line, counted from 1; the last line that holds anything where the text breaks off. `{"a":\n x}` -> 2.
 */
export function jsonFaultLine(text: string): number {
  const open: string[] = [];
  let awaited: Awaited | 'end' = 'value';
  let at = 0;
  for (;;) {
    blank.lastIndex = at;
    const start = at + (blank.exec(text)?.[0].length ?? 0);
    token.lastIndex = start;
    const match = token.exec(text);
    if (match === null) return lineOf(text, start);
    const next = step(awaited, match[1] ?? (match[2] === undefined ? 'scalar' : 'string'), open);
    if (next === undefined) return lineOf(text, start);
    awaited = next;
    at = token.lastIndex;
  }
}

/** What may follow a token where it stands; undefined where it may not stand there. */
function step(awaited: Awaited | 'end', kind: string, open: string[]): Awaited | 'end' | undefined {
  const closed = (): Awaited | 'end' => (open.length === 0 ? 'end' : 'after');
  const wantsValue = awaited === 'value' || awaited === 'value-or-end';
  switch (kind) {
    case 'string':
      if (awaited === 'name' || awaited === 'name-or-end') return 'colon';
      return wantsValue ? closed() : undefined;
    case 'scalar':
      return wantsValue ? closed() : undefined;
    case '{':
    case '[':
      if (!wantsValue) return undefined;
      open.push(kind);
      return kind === '{' ? 'name-or-end' : 'value-or-end';
    case ':':
      return awaited === 'colon' ? 'value' : undefined;
    case ',':
      if (awaited !== 'after') return undefined;
      return open.at(-1) === '{' ? 'name' : 'value';
    default: {
      const empty = kind === '}' ? 'name-or-end' : 'value-or-end';
      if (open.at(-1) !== (kind === '}' ? '{' : '[') || (awaited !== 'after' && awaited !== empty))
        return undefined;
      open.pop();
      return closed();
    }
  }
}

function lineOf(text: string, index: number): number {
  const upTo = index >= text.trimEnd().length ? text.trimEnd() : text.slice(0, index);
  return upTo.split(/\r\n|\r|\n/).length;
}
