/** A section or grade as it is compared: without regard to case and spaces around or doubled. */
export function plainWords(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}
