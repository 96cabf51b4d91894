import type { JobInput } from '../job/job-file.ts';
import type { CostLine } from '../pricing/estimate-types.ts';

/** Something that is usually forgotten in a quote for eaves. */
export type ForgottenTopic = {
  readonly id: string;
  /** As it is asked for. */
  readonly asks: string;
  /** As it is named among others. */
  readonly short: string;
  /** Where absent, every job raises it. */
  readonly raisedBy?: (input: JobInput) => boolean;
  /** Words of a line, exclusion or assumption that answer it. */
  readonly words?: RegExp;
  /** A line of this kind answers it whatever it is called. */
  readonly lineKind?: CostLine['kind'];
  /** An entry that answers it, in words; null while it is blank. */
  readonly entered?: (input: JobInput) => string | null;
};

const isOld = ({ survey: { yearBuilt } }: JobInput): boolean => yearBuilt === null || yearBuilt < 1978;
const hasLevelSoffit = ({ design }: JobInput): boolean =>
  design.eaves.some(({ soffit }) => soffit.kind === 'level');

/** What is usually forgotten, in the order of the work. */
export const forgottenTopics: readonly ForgottenTopic[] = [
  filled('client', 'Who is the quote for?', 'the client’s name', ({ job }) => job.customer.name),
  filled('site', 'Where is the work?', 'the address of the work', ({ job }) => job.siteAddress),
  filled(
    'shop',
    'Does the paper bear your shop’s name and address?',
    'your shop’s name and address',
    (input) => (input.settings.shopName.trim() === '' ? '' : input.settings.address),
  ),
  filled(
    'licence',
    'Does it bear your licence number?',
    'your licence number',
    ({ settings }) => settings.licenceNumber,
  ),
  {
    id: 'permit',
    asks: 'Who gets the permit, and pays it?',
    short: 'the permit',
    words: /permit/i,
    lineKind: 'permit',
  },
  {
    id: 'staging',
    asks: 'Staging, ladders, planks?',
    short: 'staging',
    words: /staging|stage|ladder|scaffold|plank.*week/i,
  },
  { id: 'set-up', asks: 'Setting up and taking down?', short: 'set-up', words: /set ?-?up|mobili/i },
  {
    id: 'protection',
    asks: 'Protection of house, plants and ground?',
    short: 'protection',
    words: /protect/i,
  },
  {
    id: 'temporary-cover',
    asks: 'Cover of the open roof edge each night?',
    short: 'temporary cover',
    words: /tarp|temporar|cover.*night|dry-?in/i,
  },
  { id: 'delivery', asks: 'Delivery of the lumber?', short: 'delivery', words: /deliver/i },
  { id: 'runs', asks: 'Runs to the yard?', short: 'runs to the yard', words: /\bruns?\b|pick-?up|errand/i },
  { id: 'fasteners', asks: 'Nails and fasteners?', short: 'fasteners', words: /nail|screw|fasten/i },
  {
    id: 'lead',
    // 40 CFR 745, subpart E: houses built before 1978 (from memory: verify).
    asks: 'Lead-safe work, since the house was built before 1978 or its year is not known?',
    short: 'lead-safe work',
    raisedBy: isOld,
    words: /\blead\b|lead-safe/i,
  },
  {
    id: 'asbestos',
    asks: 'Asbestos in old siding or soffit?',
    short: 'asbestos',
    raisedBy: isOld,
    words: /asbestos/i,
  },
  { id: 'hidden', asks: 'Rot that shows once it is open?', short: 'hidden damage', words: /hidden|\brot/i },
  {
    id: 'window-head',
    asks: 'Do the soffits clear the window heads?',
    short: 'window heads',
    raisedBy: hasLevelSoffit,
    words: /window/i,
    entered: ({ survey }) =>
      survey.eaves.length > 0 &&
      survey.eaves.every(({ windowHeadBelowPlateIn }) => windowHeadBelowPlateIn !== null)
        ? 'Measured, see Checks'
        : null,
  },
  {
    id: 'utility',
    asks: 'Power drop, mast, lights and cameras at the eave?',
    short: 'the power drop',
    words: /power|utility|\bmast\b|\bwires?\b|electric/i,
  },
  {
    id: 'ice-barrier',
    asks: 'Ice barrier from the new edge to 24 in. inside the wall?',
    short: 'the ice barrier',
    raisedBy: ({ survey }) => survey.site.iceBarrierRequired !== false,
    words: /\bice\b/i,
  },
  {
    id: 'roofing',
    asks: 'Roofing where new meets old?',
    short: 'the roofing tie-in',
    words: /roofing|shingle|flashing/i,
  },
  { id: 'gutters', asks: 'Gutters off and on again?', short: 'gutters', words: /gutter|downspout/i },
  { id: 'paint', asks: 'Paint and primer?', short: 'paint', words: /paint|prim(er|ing)/i },
  {
    id: 'dump',
    asks: 'Dump fee or dumpster?',
    short: 'the dump',
    words: /dump|disposal/i,
    lineKind: 'disposal',
  },
  { id: 'clean-up', asks: 'Clean-up?', short: 'clean-up', words: /clean/i },
  filled('own-hours', 'Do your own hours have a wage?', 'a wage for the hours', ({ settings }) =>
    Number(settings.labour.wageUsdPerHour) > 0 ? 'Hours are priced at the shop’s wage' : '',
  ),
  filled('tax', 'Is the sales tax right?', 'the sales tax', ({ settings: { money } }) =>
    money.taxRule === 'none' ? 'No tax' : Number(money.taxPercent) > 0 ? `${money.taxPercent} %` : '',
  ),
  filled('payments', 'When is what paid?', 'the payments', ({ design: { offer } }) =>
    offer.payments.map(({ when }) => when).join(', '),
  ),
  filled(
    'start',
    'When does the work begin, and how long does it take?',
    'start and duration',
    ({ design: { offer } }) => (offer.workingDays === null ? '' : offer.start),
  ),
  filled(
    'warranty',
    'What do you stand for afterwards?',
    'the warranty',
    ({ design: { offer } }) => offer.warranty,
  ),
];

/** A topic that an entry answers once it is filled in. */
function filled(id: string, asks: string, short: string, entry: (input: JobInput) => string): ForgottenTopic {
  return { id, asks, short, entered: (input) => (entry(input).trim() === '' ? null : entry(input).trim()) };
}
