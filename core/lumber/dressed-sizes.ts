/** A section of dressed softwood lumber: its trade name, nominal and actual size. */
export type DressedSection = {
  readonly section: string;
  readonly nominalThicknessIn: number;
  readonly nominalWidthIn: number;
  readonly thicknessIn: number;
  readonly depthIn: number;
};

/** Dressed dry thickness by nominal thickness. [in] Source: PS 20-20, size tables for boards and dimension. */
const dryThicknessIn: Readonly<Record<string, number>> = { '1': 0.75, '5/4': 1, '2': 1.5 };

/** Dressed dry width by nominal width. [in] Source: PS 20-20. */
const dryWidthIn: Readonly<Record<string, number>> = {
  '2': 1.5,
  '3': 2.5,
  '4': 3.5,
  '6': 5.5,
  '8': 7.25,
  '10': 9.25,
  '12': 11.25,
};

const nominalThicknessIn: Readonly<Record<string, number>> = { '1': 1, '5/4': 1.25, '2': 2 };

/** Every section that the program knows, thinnest first, then narrowest first. */
export const dressedSections: readonly DressedSection[] = ['1', '5/4', '2'].flatMap((thickness) =>
  ['2', '3', '4', '6', '8', '10', '12'].map((width) => ({
    section: `${thickness}x${width}`,
    nominalThicknessIn: nominalThicknessIn[thickness] ?? Number.NaN,
    nominalWidthIn: Number(width),
    thicknessIn: dryThicknessIn[thickness] ?? Number.NaN,
    depthIn: dryWidthIn[width] ?? Number.NaN,
  })),
);

const bySection: ReadonlyMap<string, DressedSection> = new Map(
  dressedSections.map((dressed) => [dressed.section, dressed]),
);

/**
 * Looks up a section by its trade name.
 * @param section - e.g. `2x6`, `1x8`, `5/4x6`.
 * @returns its nominal and dressed dry size, or undefined when the program does not know it. [in]
 */
export function dressedSection(section: string): DressedSection | undefined {
  return bySection.get(section);
}

/** Writes a section the one way that sections are compared: `2 X 6` and `2 × 6` -> `2x6`. */
export function plainSection(section: string): string {
  return section
    .trim()
    .toLowerCase()
    .replace(/\s*[x×]\s*/g, 'x')
    .trim();
}
