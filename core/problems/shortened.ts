/** Cuts what a person typed so that a sentence stays one sentence: 40 characters at most, the last then `…`. */
export function shortened(typed: string): string {
  return typed.replace(/^(.{39}).{2,}$/su, '$1…');
}
