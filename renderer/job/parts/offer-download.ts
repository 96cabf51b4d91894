/** Hands a text to the browser as a file to keep; needs no host. */
export function offerDownload(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
