import { expect, test } from 'vitest';
import { goToSection, openSample } from './job-hands.ts';
import { accessFaults, takePictures } from './watched-page.ts';
import { programInBrowser } from './program-in-browser.ts';

const watched = programInBrowser(openSample);

test.each(['Survey', 'Design', 'Takeoff', 'Cut plan', 'Estimate'])(
  '%s shows the sample job without complaint, in light and dark',
  async (section) => {
    const { page } = watched;
    await goToSection(page, section);
    await page.locator('.job-main .figure').first().waitFor();
    expect(await page.title()).toBe(`Quillfeather house, two eaves, ${section} - Eavewright`);
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, `job-${section.toLowerCase().replace(' ', '-')}`);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await accessFaults(page)).toEqual([]);
    await takePictures(page, `job-${section.toLowerCase().replace(' ', '-')}-dark`);
    await page.emulateMedia({ colorScheme: 'light' });
    watched.mustBeQuiet();
  },
);

test.each(['Survey', 'Design'])('the house’s side of %s shows without complaint', async (section) => {
  const { page } = watched;
  await goToSection(page, section);
  await page.getByRole('navigation', { name: 'Eaves' }).getByRole('button').first().click();
  expect(await accessFaults(page)).toEqual([]);
  await takePictures(page, `job-house-${section.toLowerCase()}`);
  await page.getByRole('button', { name: 'South eave' }).click();
  watched.mustBeQuiet();
});

test('the caution stands on every section that shows a structural figure', async () => {
  const { page } = watched;
  for (const section of ['Survey', 'Design', 'Checks', 'Takeoff']) {
    await goToSection(page, section);
    const caution = page.locator('.banner-caution', { hasText: 'a licensed engineer decide' });
    expect(await caution.first().isVisible()).toBe(true);
  }
  watched.mustBeQuiet();
});

test('a drawing is scaled and moved by keyboard, and says its scale', async () => {
  const { page } = watched;
  await goToSection(page, 'Design');
  const view = page.getByRole('group', { name: /^Section at A-E01/ });
  const scale = page.locator('.drawing-frame', { has: view }).locator('.drawing-scale');
  await view.focus();
  const fitted = await scale.innerText();
  expect(fitted).toMatch(/^Scale (1 : \d+(\.\d)?|.* = 1' 0")$/);
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('+');
  expect(await scale.innerText()).not.toBe(fitted);
  await page.keyboard.press('ArrowRight');
  expect(await view.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
  await page.keyboard.press('0');
  expect(await scale.innerText()).toBe(fitted);
});

test('texts of the plan are large enough to read, and stand clear of one another', async () => {
  const { page } = watched;
  await goToSection(page, 'Survey');
  const texts = page.locator('.survey-plan .drawn-text');
  await texts.first().waitFor();
  const sizes = await texts.evaluateAll((all) => all.map((text) => Number(text.getAttribute('font-size'))));
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(10);
});

test('every piece of the cut plan shows both its ends, however thin the saw', async () => {
  const { page } = watched;
  await goToSection(page, 'Cut plan');
  await page.locator('.board-shape').first().waitFor();
  for (const width of [1280, 1600]) {
    await page.setViewportSize({ width, height: 900 });
    const edges = await page.locator('.board-shape').evaluateAll((pieces) =>
      pieces.map((piece) => {
        const { strokeWidth, vectorEffect } = getComputedStyle(piece);
        return [Number.parseFloat(strokeWidth), vectorEffect];
      }),
    );
    expect(new Set(edges.map(String))).toEqual(new Set(['1,non-scaling-stroke']));
  }
  await page.setViewportSize({ width: 1280, height: 800 });
});

test('no length, mark or fraction breaks over two lines', async () => {
  const { page } = watched;
  for (const section of ['Survey', 'Design', 'Takeoff', 'Cut plan', 'Estimate']) {
    await goToSection(page, section);
    const figures = page.locator('.job-main .no-wrap:visible, .job-main .figure:visible');
    await figures.first().waitFor();
    const broken = await figures.evaluateAll((all) =>
      all
        .filter((figure) => new Set([...figure.getClientRects()].map((box) => Math.round(box.top))).size > 1)
        .map((figure) => figure.textContent),
    );
    expect(broken).toEqual([]);
  }
});

test('an estimate is saved as it stands and listed', async () => {
  const { page } = watched;
  await goToSection(page, 'Cut plan');
  await page.locator('.search-line', { hasText: /Proven:|Best found:/ }).waitFor({ timeout: 90_000 });
  await goToSection(page, 'Estimate');
  const total = await page.locator('.figure[data-ref="total/total"]').innerText();
  const amount = /\$[\d,.]+/.exec(total)?.[0] ?? '';
  await page.getByRole('button', { name: 'Save this estimate' }).click();
  const saved = page.getByRole('table', { name: 'Saved estimates' });
  await saved.waitFor();
  expect(await saved.innerText()).toContain(amount);
});
