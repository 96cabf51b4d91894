/**
 * Longest cantilever of floor joists that carry a balcony, No.2 lumber, backspan 2:1, by nominal depth and spacing. [in]
 * Source: IRC Table R502.3.3(2), as seen in transcription. A roof carries less, so the table is on the strict side here.
 */
export const balconyCantilevers: readonly {
  readonly nominalDepthIn: number;
  readonly spacingIn: number;
  readonly cantileverIn: number;
}[] = [
  { nominalDepthIn: 8, spacingIn: 12, cantileverIn: 42 },
  { nominalDepthIn: 8, spacingIn: 16, cantileverIn: 36 },
  { nominalDepthIn: 10, spacingIn: 12, cantileverIn: 61 },
  { nominalDepthIn: 10, spacingIn: 16, cantileverIn: 53 },
  { nominalDepthIn: 10, spacingIn: 24, cantileverIn: 43 },
  { nominalDepthIn: 12, spacingIn: 16, cantileverIn: 72 },
  { nominalDepthIn: 12, spacingIn: 24, cantileverIn: 58 },
];
