import { useState } from 'react';
import type { Documents } from '../editor/documents.ts';
import { isUnfilled } from '../editor/unfilled.ts';

/**
 * Whether an entry is as it was added: blank, nothing typed in it, not left yet. It asks for nothing in red; the line at
 * the foot says what is still blank.
 * @returns whether it is fresh, and what to call once it was typed in or left.
 */
export function useFresh(path: string, documents: Documents): readonly [isFresh: boolean, touch: () => void] {
  const [isTouched, setTouched] = useState(false);
  const isBlank = documents.drafts[path]?.trim() === '';
  return [!isTouched && isBlank && isUnfilled(documents, path), () => setTouched(true)];
}
