/** Puts the caret into the search field of the screen. */
export function focusSearch(): void {
  document.querySelector<HTMLInputElement>('.frame-main input[type="search"]')?.focus();
}
