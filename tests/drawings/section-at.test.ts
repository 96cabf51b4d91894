import { describe, expect, it } from 'vitest';
import { drawSection } from '../../core/drawings/draw-section.ts';
import { drawSectionAt, placeAt, sectionPlaces } from '../../core/drawings/section-at.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { oldHouse, tailBy } from './old-house.ts';
import { extent, polygonTitled, textsOf } from './painted-shapes.ts';

describe('a section at any station', () => {
  const house = oldHouse({}, { pins: [{ rafterId: 'r3', side: 'none' }] });
  const { layout, survey, design } = house;
  const places = sectionPlaces(layout);

  it('can stand at every new tail and at every old rafter that gets none, from left to right', () => {
    expect(places).toHaveLength(layout.extenders.length + layout.unplaced.length);
    const stations = places.map(({ stationIn }) => stationIn);
    expect(stations).toEqual(stations.toSorted((a, b) => a - b));
    expect(places.some((place) => place.kind === 'rafter' && place.rafter.id === 'r3')).toBe(true);
  });

  it('takes what stands nearest to the station that was asked for', () => {
    for (let stationIn = 0; stationIn <= layout.wallLengthIn; stationIn += 1.25) {
      const found = placeAt(places, stationIn);
      const nearest = Math.min(...places.map((place) => Math.abs(place.stationIn - stationIn)));
      expect(Math.abs((found?.stationIn ?? Number.NaN) - stationIn)).toBe(nearest);
    }
    expect(placeAt([], 10)).toBeUndefined();
  });

  it('shows an old rafter as found, with its height above the plate and what is left of its tail', () => {
    const found = oldHouse({}, { pins: [{ rafterId: 'r4', side: 'none' }] });
    const place = sectionPlaces(found.layout).find((one) => one.kind === 'rafter' && one.rafter.id === 'r4');
    if (place === undefined) throw new Error('rafter 4 gets no tail');
    const drawing = drawSectionAt(place, found.layout, found.survey, found.design);
    const { points } = polygonTitled(drawing, /^Old rafter 4$/);
    expect(Math.max(...points.map(([x]) => x))).toBe(3);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['HAP 5"', 'old tail 3"']));
  });

  it('draws the tail of a place as its section does', () => {
    const place = places.find((one) => one.kind === 'tail');
    if (place?.kind !== 'tail') throw new Error('the house has tails');
    expect(drawSectionAt(place, layout, survey, design)).toEqual(
      drawSection(layout, place.extender, survey, design),
    );
  });
});

describe('the section of a hung tail', () => {
  const house = oldHouse({}, { backEnd: 'square' });
  const extender = tailBy(house, 'block-hung');
  const drawing = drawSection(house.layout, extender, house.survey, house.design);

  it('has its header block against its back end, as thick as the stock along the slope', () => {
    const { points } = polygonTitled(drawing, /^Header block/);
    const { slopeFactor, backspanIn } = extender.section;
    const nearest = Math.max(...points.slice(0, 2).map(([x]) => x));
    expect(nearest).toBeCloseTo(-backspanIn / slopeFactor, 9);
    const [far = [0, 0], near = [0, 0]] = points;
    expect(Math.hypot(near[0] - far[0], near[1] - far[1])).toBeCloseTo(1.5, 9);
  });

  it('says how it is fastened', () => {
    expect(textsOf(drawing)).toEqual(expect.arrayContaining([`${extender.mark} hung  2x6`]));
    expect(drawing.description).toContain(`hung between rafters ${extender.rafterNumber} and`);
  });
});

describe('the section of a kicked-up tail', () => {
  const house = oldHouse({ pitchRisePer12: 9 }, { kickUpPitchRisePer12: 5, kickUpRaiseIn: 3 });
  const extender = tailBy(house, 'side');
  const drawing = drawSection(house.layout, extender, house.survey, house.design);
  const { kickUp } = extender.section;

  it('has its new deck at the tail pitch from the break out: two planes that meet at the break', () => {
    if (kickUp === null) throw new Error('the tail is kicked up');
    const deck = polygonTitled(drawing, /^New deck$/);
    const [inner = [0, 0], , , outer = [0, 0]] = deck.points;
    expect(inner).toEqual([
      expect.closeTo(kickUp.breakOutIn, 6),
      expect.closeTo(kickUp.breakAbovePlateIn, 6),
    ]);
    expect((outer[1] - inner[1]) / (outer[0] - inner[0])).toBeCloseTo(-extender.pitchRisePer12 / 12, 9);
    const old = polygonTitled(drawing, /^Old deck$/);
    const ends = old.points.map(([x]) => x);
    // The old deck stops where the new plane leaves it; its upper edge lies square above.
    expect(old.points[3]?.[0]).toBeCloseTo(kickUp.breakOutIn, 6);
    expect(extent(ends)).toBeGreaterThan(0);
    expect(textsOf(drawing).join(' ')).toContain(`break ${formatLength(-kickUp.breakOutIn)} inside the wall`);
  });
});
