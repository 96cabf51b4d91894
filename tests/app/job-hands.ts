import type { Locator, Page } from 'playwright-core';

/** The entry at a dotted path of the job. */
export function entryAt(page: Page, path: string): Locator {
  return page.locator(`[data-path="${path}"]`);
}

/** Types into an entry in place of what stands there, and leaves it. */
export async function typeEntry(page: Page, path: string, text: string): Promise<void> {
  const entry = entryAt(page, path);
  await entry.click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text);
  await page.keyboard.press('Tab');
}

/** Opens the sample job from the empty list. */
export async function openSample(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the sample job' }).click();
  await page.waitForURL(/\/jobs\/.+\/survey/);
  await figuresFollow(page);
}

/** Starts a job from nothing. */
export async function startJob(page: Page, name: string): Promise<void> {
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.getByRole('button', { name: 'New job' }).first().click();
  await page.getByRole('dialog').getByRole('textbox').first().fill(name);
  await page.getByRole('button', { name: 'Start the job' }).click();
  await page.getByRole('button', { name: 'Add the first eave' }).waitFor();
}

/** Waits until the figures follow from what is typed. */
export async function figuresFollow(page: Page): Promise<void> {
  await page.locator('.standing', { hasText: /Figures follow from what is typed[.;]/ }).waitFor();
}

/** The path of the entry that has the focus; null where none has. */
export function focusedPath(page: Page): Promise<string | null> {
  return page.evaluate(() => document.activeElement?.getAttribute('data-path') ?? null);
}

/** Waits until everything typed is on the disk. */
export async function allSaved(page: Page): Promise<void> {
  await page.locator('.saved-line.saved-saved').waitFor();
}

/** Goes to a section of the job. */
export async function goToSection(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Sections of the job' }).getByRole('link', { name }).click();
}

/** Opens a panel that is folded up. */
export async function unfold(page: Page, title: string): Promise<void> {
  const panel = page.locator('details.fold-panel', {
    has: page.getByRole('heading', { name: title, exact: true }),
  });
  if ((await panel.getAttribute('open')) === null) await panel.locator('summary').click();
}

/** Types readings down the column, Enter after each, from the empty row under the last rafter. */
export async function typeReadings(page: Page, eave: number, readings: readonly string[]): Promise<void> {
  const next = page.getByRole('textbox', { name: 'Reading of the next rafter' });
  await next.click();
  for (const reading of readings) {
    await page.keyboard.type(reading);
    await page.keyboard.press('Enter');
  }
  await entryAt(page, `survey.eaves.${eave}.rafters.${readings.length - 1}.readingIn`).waitFor();
}
