import type { JobInfo, JobInput } from '../job/job-file.ts';
import type { ShopSettings } from '../pricing/shop-settings.ts';
import { footCaution } from './cautions.ts';
import type { MoneySheetKind, Sheet, SheetKind } from './sheet.ts';

/** What each sheet is called, on paper and on the screen. */
export const sheetTitles: Readonly<Record<SheetKind, string>> = {
  takeoff: 'Takeoff',
  'cut-list': 'Cut list',
  'saw-list': 'Saw list',
  'purchase-list': 'Purchase list',
  layout: 'Layout sheet',
  lists: 'Crew lists',
  'string-line': 'String line',
  templates: 'Seat templates',
  'set-up-card': 'Set-up cards',
  quote: 'Quote',
  calculation: 'Calculation',
};

/** What every sheet carries beside its blocks: shop, job, date and a file name that sorts by day and job. */
export function sheetHead(kind: SheetKind, input: JobInput): Omit<Sheet, 'blocks'> {
  const { settings, job } = input;
  return {
    kind,
    title: sheetTitles[kind],
    fileName: fileName([input.asOf, job.name, '-', sheetTitles[kind].toLowerCase()].join(' ')),
    shop: shopHead(settings),
    job: { name: job.name, siteAddress: job.siteAddress, customer: job.customer.name },
    date: input.asOf,
    footCaution,
  };
}

/** How the shop stands at the head of its papers. */
function shopHead(settings: ShopSettings): Sheet['shop'] {
  return {
    name: settings.shopName,
    licence: settings.licenceNumber,
    address: settings.address,
    contact: [settings.phone, settings.email].filter((part) => part.trim() !== '').join('  ·  '),
    ...(settings.letterhead.logoSha256 === '' ? {} : { logo: settings.letterhead.logoSha256 }),
  };
}

/**
 * What a paper of a job's money carries beside its blocks. It shows no structure, so no caution stands at its foot.
 * @param title - what it is called, with its number: `Invoice 12`.
 * @param sorting - how its file name begins, so that files sort by number.
 */
export function moneyHead(
  kind: MoneySheetKind,
  of: { readonly settings: ShopSettings; readonly job: JobInfo },
  paper: { readonly title: string; readonly sorting: string; readonly date: string },
): Omit<Sheet, 'blocks'> {
  const { settings, job } = of;
  return {
    kind,
    title: paper.title,
    fileName: fileName(`${paper.sorting} ${job.name}`),
    shop: shopHead(settings),
    job: { name: job.name, siteAddress: job.siteAddress, customer: job.customer.name },
    date: paper.date,
  };
}

/** Drops what a file name may not hold on some computer, and keeps it short. */
export function fileName(text: string): string {
  const plain = Array.from(text)
    .map((character) =>
      (character.codePointAt(0) ?? 0) < 0x20 || '\\/:*?"<>|'.includes(character) ? ' ' : character,
    )
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
  return plain.length <= 100 ? plain : `${plain.slice(0, 84).trim()} ${plain.slice(plain.lastIndexOf('- '))}`;
}
