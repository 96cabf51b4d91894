import { formatLength } from '../units/format-length.ts';
import { inchesOf } from '../units/sixteenths.ts';
import { fillerToleranceIn } from './build-filler.ts';
import type { FoundLayout } from './found-layout.ts';
import { overlaps } from './in-the-way.ts';
import type { Finding } from './layout-types.ts';
import type { Method } from '../eave/design-document.ts';
import { casesOfTails, tellOnce, type Case } from './say-findings.ts';

/** Of this many hung tails at most each is told by itself. */
const toldSingly = 3;

/**
 * Tells how tails are held that do not simply stand against a rafter: why, by station, what to look at, and what else
 * would do. Structural ones are advisory.
 * @param found - the eave. [in]
 */
export function findMethods(found: FoundLayout): readonly Finding[] {
  const { eaveId, extenders } = found.laid;
  const by = (method: Method): readonly Case[] =>
    casesOfTails(extenders, (one) => (one.method === method ? 0 : null));
  return [
    ...findStandIns(found),
    ...findExtras(found),
    ...tellOnce(
      eaveId,
      casesOfTails(extenders, ({ filler }) => filler?.wantedIn ?? null),
      {
        topic: 'method',
        structural: true,
        say: (thickness) =>
          `a ceiling joist lies there, so the tail stands past it on a filler of ${thickness}. Such a joint is weaker than one face to face.`,
      },
    ),
    ...tellOnce(eaveId, by('outer-face'), {
      topic: 'method',
      structural: false,
      say: () =>
        "the tail stands outside the end rafter, past the wall's end: the wall's finish has to come off there.",
    }),
    ...tellOnce(eaveId, by('full-length'), {
      topic: 'method',
      structural: true,
      say: () => 'a whole new rafter goes beside it, from tail to ridge.',
    }),
    ...tellOnce(eaveId, by('end-replacement'), {
      topic: 'method',
      structural: true,
      say: () => 'the old rafter comes out and a new one takes its place: hold the roof up first.',
    }),
    ...findWeakHosts(found),
    ...findCrossedHeaders(found),
    ...findFillers(found),
  ];
}

/** The hung tails that stand for rafters without one of their own. */
function findStandIns(found: FoundLayout): readonly Finding[] {
  const { eaveId, extenders, rafters } = found.laid;
  const pairs = extenders.flatMap((tail) => {
    const rafter = rafters.find(({ id }) => id === tail.standsFor);
    return rafter === undefined || tail.because === 'pinned' || tail.because === 'built'
      ? []
      : [{ tail, rafter }];
  });
  if (pairs.length > toldSingly) {
    const each = pairs.map(({ tail, rafter }) => `${rafter.number} at ${formatLength(tail.centreIn)}`);
    const text = `${pairs.length} rafters have no side free; a tail hangs between rafters for each: ${each.join(', ')}.`;
    return [{ eaveId, stationIn: null, topic: 'method', text, structural: false }];
  }
  return pairs.map(({ tail, rafter }) => ({
    eaveId,
    stationIn: tail.centreIn,
    topic: 'method',
    text: `Rafter ${rafter.number} at ${formatLength(rafter.centreIn)} has no side free (${takenWords(rafter.number, tail.clash, found)}): its tail hangs between rafters, at ${formatLength(tail.centreIn)}.${pastJoist(rafter.number, found)}`,
    structural: false,
  }));
}

function takenWords(number: number, clash: string | null, { placed }: FoundLayout): string {
  const sides = placed.prepared.places[number - 1]?.sides;
  return sides !== undefined && sides.left.joist !== null && sides.right.joist !== null
    ? 'ceiling joists hold both'
    : (clash ?? 'its neighbours take both');
}

/** Where else the tail of a rafter with joists on its sides could stand. */
function pastJoist(number: number, { placed, wall }: FoundLayout): string {
  const sides = placed.prepared.places[number - 1]?.sides;
  const place = [sides?.left, sides?.right].find((side) => side?.joist?.clash === null)?.joist?.place;
  if (place === undefined || wall.rafters[number - 1]?.condition !== 'sound') return '';
  return ` With a filler past the joist it could stand at ${formatLength((place.leftIn + place.rightIn) / 2)}.`;
}

/** The hung tails that stand for no rafter. */
function findExtras({ laid: { eaveId, extenders, largestGap } }: FoundLayout): readonly Finding[] {
  const reasons = [
    {
      because: 'gap',
      words: `so that no gap is over ${formatLength(largestGap.gapIn)}`,
      without: 'allow a larger gap',
    },
    {
      because: 'panel-joint',
      words: 'under joints of the panels',
      without: 'let panels be cut back to the tails',
    },
  ] as const;
  return reasons.flatMap(({ because, words, without }): readonly Finding[] => {
    const extra = extenders.filter(
      (one) => one.method === 'block-hung' && one.because === because && one.standsFor === null,
    );
    const [only, second] = extra;
    if (only === undefined) return [];
    const where = extra.map(({ centreIn }) => formatLength(centreIn)).join(', ');
    const text = `${extra.length === 1 ? 'A tail hangs' : `${extra.length} tails hang`} between rafters ${words}: at ${where}. To do without, ${without} under Layout in Design.`;
    return [
      {
        eaveId,
        stationIn: second === undefined ? only.centreIn : null,
        topic: 'method',
        text,
        structural: false,
      },
    ];
  });
}

/** Rafters in doubt that something is nailed to all the same. */
function findWeakHosts({ laid: { eaveId, extenders, rafters } }: FoundLayout): readonly Finding[] {
  const weak = rafters.filter(({ condition }) => condition !== 'sound');
  const beside = weak.filter(({ id }) =>
    extenders.some(({ method, rafterId }) => rafterId === id && nailedToRafter.has(method)),
  );
  const headers = weak.filter(({ number }) =>
    extenders.some(
      ({ method, rafterNumber, headers: own }) =>
        method === 'block-hung' && own.length > 0 && (rafterNumber === number || rafterNumber === number - 1),
    ),
  );
  const cases = (list: typeof weak): readonly Case[] =>
    list.map(({ number, centreIn }) => ({ number, stationIn: centreIn, value: 0 }));
  return [
    ...tellOnce(eaveId, cases(beside), {
      topic: 'method',
      structural: true,
      say: () => 'a tail is nailed to it, and its condition is not sound: look at it first.',
    }),
    ...tellOnce(eaveId, cases(headers), {
      topic: 'method',
      structural: true,
      say: () =>
        'the header block of a hung tail is nailed to it, and its condition is not sound: look at it first.',
    }),
  ];
}

const nailedToRafter: ReadonlySet<Method> = new Set(['side', 'filler', 'outer-face']);

/** Header blocks that cross where something else stands on the plate. */
function findCrossedHeaders({ laid: { eaveId, extenders, occupied } }: FoundLayout): readonly Finding[] {
  const blocks = extenders.flatMap(({ headers }) => headers).filter(({ sharedWith }) => sharedWith === null);
  return blocks.flatMap((block) =>
    occupied
      .filter((one) => one.kind === 'obstruction' && overlaps(one, block))
      .map((one) => ({
        eaveId,
        stationIn: (one.leftIn + one.rightIn) / 2,
        topic: 'method',
        text: `Header block ${block.mark} crosses the bay where ${one.label} stands on the plate, at ${formatLength(one.leftIn)} to ${formatLength(one.rightIn)}: see whether it is in the way up the slope.`,
        structural: false,
      })),
  );
}

/** Fillers that cannot be built as thick as they should be, or that have hardly any length past the joist. */
function findFillers({ laid: { eaveId, extenders } }: FoundLayout): readonly Finding[] {
  const off = casesOfTails(extenders, ({ filler }) =>
    filler !== null && Math.abs(filler.offIn) > fillerToleranceIn + 1e-9 ? filler.wantedIn : null,
  );
  const short = casesOfTails(extenders, ({ filler, section }) => {
    const lengthIn = filler === null ? Number.POSITIVE_INFINITY : inchesOf(filler.lengthSixteenths);
    return lengthIn < section.backspanIn / 2 ? lengthIn : null;
  });
  return [
    ...tellOnce(eaveId, off, {
      topic: 'filler-thickness',
      structural: true,
      say: (wanted) =>
        `no boards or panels of the price list build up to a filler of ${wanted} within 1/16". Add a thickness to the price list, or plane and shim it to fit.`,
    }),
    ...tellOnce(eaveId, short, {
      topic: 'filler-thickness',
      structural: true,
      say: (length) =>
        `the rafter is clear of the ceiling joist for so little of the backspan that the filler is ${length} long. Nail through the joist, too, or hang the tail.`,
    }),
  ];
}
