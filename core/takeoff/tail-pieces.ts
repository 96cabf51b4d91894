import type { Stock } from '../eave/stock.ts';
import { pieceMark } from '../layout/marks.ts';
import type { Extender, Filler } from '../layout/layout-types.ts';
import { dressedSection } from '../lumber/dressed-sizes.ts';
import { ordinarySheet } from './sheathing-strip.ts';
import type { JobInput } from '../job/job-file.ts';
import { formatInches, formatLength } from '../units/format-length.ts';
import { slopeAngleDeg } from '../units/pitch.ts';
import { inchesOf, sixteenthsDown, sixteenthsUp } from '../units/sixteenths.ts';
import { hasPlumbEnds } from './lap.ts';
import type { SheetUse } from './sheet-lines.ts';
import { tailCuts } from './tail-cuts.ts';
import { counted, eaveLabel, type EaveToTakeOff } from './takeoff-context.ts';
import type { Piece } from './takeoff-types.ts';

/**
 * The tails of an eave in the order of the wall, whatever their method. A tail with plumb ends tells by how much it slants,
 * d m of its own pitch rounded up, so that pieces nest in a board.
 * @param eave - the eave as surveyed, designed and laid out.
 * @returns pieces with length [1/16 in], station [in] and cuts in words.
 */
export function tailPieces({ layout, design }: EaveToTakeOff): readonly Piece[] {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  return layout.extenders.map((extender): Piece => {
    const slantIn = hasPlumbEnds(design) ? Math.max(0, (depthIn * extender.pitchRisePer12) / 12) : 0;
    return {
      ...pieceOf(extender, layout.eaveId),
      mark: extender.mark,
      use: 'extender',
      stock: design.extender,
      lengthSixteenths: extender.blankSixteenths,
      cuts: tailCuts(extender, { design }),
      method: extender.method,
      ...(slantIn > 0 ? { slantSixteenths: sixteenthsUp(slantIn) } : {}),
    };
  });
}

/**
 * The header blocks that hung tails are nailed to, each once, also where it carries two of them. Of the tails' stock.
 * Already in place as soon as one of its tails is.
 */
export function headerPieces({ layout, design }: EaveToTakeOff): readonly Piece[] {
  const set = new Set(
    layout.extenders.flatMap(({ headers, inPlace }) => (inPlace ? headers.map(({ mark }) => mark) : [])),
  );
  return layout.extenders.flatMap((extender) =>
    extender.headers
      .filter(({ sharedWith }) => sharedWith === null)
      .map((header): Piece => {
        const { inPlace: _, ...rest } = pieceOf(extender, layout.eaveId);
        return {
          ...rest,
          mark: header.mark,
          use: 'header',
          stock: design.extender,
          lengthSixteenths: header.lengthSixteenths,
          stationIn: (header.leftIn + header.rightIn) / 2,
          cuts: `square ends; set ${design.backEnd === 'parallel' ? 'plumb' : 'square to the slope'} ${
            header.place === 'back'
              ? `behind the back end of ${extender.mark}, ${formatLength(header.alongIn)} up the slope from the wall line`
              : `over the plate at ${extender.mark}`
          }`,
          ...(set.has(header.mark) ? { inPlace: true } : {}),
        };
      }),
  );
}

/** One layer of a filler: of lumber, or of a sheet. */
export type FillerLayer = {
  readonly extender: Extender;
  readonly filler: Filler;
  /** Of the filler where it has one layer; else with a letter behind. */
  readonly mark: string;
  readonly stock: Stock | null;
  readonly sheetItemId: string | null;
  readonly thicknessIn: number;
};

/**
 * The layers of all fillers of an eave. A layer that names a price item is of that item's lumber or sheet; one that names
 * none is of the lumber section in its name.
 */
export function fillerLayers(
  { layout }: EaveToTakeOff,
  input: Pick<JobInput, 'priceList'>,
): readonly FillerLayer[] {
  return layout.extenders.flatMap((extender) => {
    const { filler } = extender;
    if (filler === null || filler.lengthSixteenths <= 0) return [];
    return filler.layers.map(({ name, itemId, thicknessIn }, index): FillerLayer => {
      const item = input.priceList.find(({ id }) => id === itemId);
      const mark =
        filler.layers.length === 1 ? filler.mark : `${filler.mark}${String.fromCharCode(97 + index)}`;
      const of = { extender, filler, mark, thicknessIn };
      if (item?.category === 'sheet') return { ...of, stock: null, sheetItemId: item.id };
      const stock =
        item === undefined ? { section: name, grade: '' } : { section: item.section, grade: item.grade };
      return { ...of, stock, sheetItemId: null };
    });
  });
}

/** The layers of fillers that are cut from lumber, each a piece as deep as the tail. */
export function fillerPieces(eave: EaveToTakeOff, input: Pick<JobInput, 'priceList'>): readonly Piece[] {
  const { layout, design } = eave;
  const tailDepthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  return fillerLayers(eave, input).flatMap(
    ({ extender, filler, mark, stock, thicknessIn }): readonly Piece[] => {
      if (stock === null) return [];
      const depthIn = dressedSection(stock.section)?.depthIn ?? 0;
      const ripped = depthIn > tailDepthIn + 1 / 32 ? `; ripped to ${formatInches(tailDepthIn)}` : '';
      return [
        {
          ...pieceOf(extender, layout.eaveId),
          mark,
          use: 'filler',
          stock,
          lengthSixteenths: filler.lengthSixteenths,
          cuts: `square ends${ripped}; ${formatInches(thicknessIn)} of the ${formatInches(filler.wantedIn)} between rafter ${extender.rafterNumber} and ${extender.mark}, behind the joist`,
        },
      ];
    },
  );
}

/** The layers of fillers that are cut from sheets, by sheet item; those in place are left out. */
export function fillerSheets(eave: EaveToTakeOff, input: Pick<JobInput, 'priceList'>): readonly SheetUse[] {
  const { layout, design } = eave;
  const widthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const layers = fillerLayers(eave, input).filter(
    ({ sheetItemId, extender }) => sheetItemId !== null && !extender.inPlace,
  );
  return [...Map.groupBy(layers, ({ sheetItemId }) => sheetItemId)].map(([itemId, ofItem]): SheetUse => {
    const item = input.priceList.find(({ id }) => id === itemId);
    const parts = ofItem.map(({ filler }) => ({ lengthIn: inchesOf(filler.lengthSixteenths), widthIn }));
    return {
      use: 'filler',
      item,
      sheet: {
        widthIn: item?.widthIn ?? ordinarySheet.widthIn,
        lengthIn: item?.lengthIn ?? ordinarySheet.lengthIn,
      },
      layout,
      parts,
      areaSqFt: parts.reduce((sum, part) => sum + part.lengthIn * part.widthIn, 0) / 144,
      trace: ofItem.map(({ mark, filler, extender }) => ({
        label: `${eaveLabel(layout)}: ${mark}, ${formatInches(widthIn)} deep, between rafter ${extender.rafterNumber} and ${extender.mark}`,
        value: formatLength(inchesOf(filler.lengthSixteenths)),
        ref: `section/${layout.eaveId}/${extender.id}`,
      })),
    };
  });
}

/**
 * Shims under tails that clear the plate, and packers under kicked-up ones: blocks of the tails' stock as long as the plate
 * is wide, ripped to a wedge: low at the wall's face, higher inward by the tail's own pitch over the plate. One that
 * comes out taller than the stock is deep is made of two or more, one on the other. None where no tape shows one.
 * @param eave - the eave. [in]
 * @returns pieces as long as the plate, rounded down. [1/16 in]
 */
export function shimPieces({ layout, survey, design }: EaveToTakeOff): readonly Piece[] {
  const depthIn = dressedSection(design.extender.section)?.depthIn ?? 0;
  const shimmed = layout.extenders.filter(({ fit }) => fit.shimSixteenths > 0);
  return shimmed.flatMap((extender, index) => {
    const lowIn = inchesOf(extender.fit.shimSixteenths);
    const highIn = lowIn + (survey.plateWidthIn * extender.pitchRisePer12) / 12;
    const layers = Math.max(1, Math.ceil(highIn / depthIn - 1e-9));
    const mark = pieceMark(layout.letter, 'S', index + 1);
    return Array.from(
      { length: layers },
      (_, layer): Piece => ({
        ...pieceOf(extender, layout.eaveId),
        mark: layers === 1 ? mark : `${mark}${String.fromCharCode(97 + layer)}`,
        use: extender.section.kickUp === null ? 'shim' : 'packer',
        stock: design.extender,
        lengthSixteenths: sixteenthsDown(survey.plateWidthIn),
        cuts: `square ends${layers === 1 ? '' : `, ${layers} on one another`}; ripped to ${formatInches(lowIn)} at the wall's face, top bevelled ${slopeAngleDeg(extender.pitchRisePer12).toFixed(1)} deg to ${formatInches(highIn)} inside; under ${extender.mark}`,
      }),
    );
  });
}

/** What every piece of a tail shares: where it goes, what gave it, and whether it is there already. */
function pieceOf(
  { id, centreIn, inPlace }: Extender,
  eaveId: string,
): Pick<Piece, 'eaveId' | 'stationIn' | 'ref' | 'inPlace'> {
  return { eaveId, stationIn: centreIn, ref: `section/${eaveId}/${id}`, ...(inPlace ? { inPlace } : {}) };
}

/** Says how many of the pieces are in place, e.g. `, 3 in place`; nothing where none is. */
export function inPlaceWords(pieces: readonly Piece[]): string {
  const there = pieces.filter(({ inPlace }) => inPlace === true).length;
  return there === 0 ? '' : `, ${counted(there, 'piece')} in place`;
}
