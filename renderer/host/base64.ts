/** Writes bytes as base64 text, the only way that bytes cross the bridge. */
export function toBase64(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => {
      const address = typeof reader.result === 'string' ? reader.result : '';
      resolve(address.slice(address.indexOf(',') + 1));
    });
    reader.addEventListener('error', () => reject(new Error('the bytes could not be read')));
    reader.readAsDataURL(new Blob([bytes]));
  });
}

/** Reads bytes from base64 text. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (character) => character.codePointAt(0) ?? 0);
}
