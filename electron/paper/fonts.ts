import { createRequire } from 'node:module';
import { join } from 'node:path';

/** Name by which sheets and drawings ask for the font. */
export const paperFont = 'SourceSans3';

/** Files of the embedded font (Source Sans 3, SIL Open Font License): it has fractions and figures of one width. */
export function fontFiles(): { readonly normal: string; readonly bold: string } {
  const folder = join(
    createRequire(import.meta.url).resolve('@expo-google-fonts/source-sans-3/package.json'),
    '..',
  );
  return {
    normal: join(folder, '400Regular', 'SourceSans3_400Regular.ttf'),
    bold: join(folder, '600SemiBold', 'SourceSans3_600SemiBold.ttf'),
  };
}
