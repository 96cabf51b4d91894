import { describe, expect, test } from 'vitest';
import { shopSettingsSchema } from '../../core/pricing/shop-settings.ts';
import { surveySchema } from '../../core/survey/survey-document.ts';
import { headerNailsEach } from '../../core/takeoff/header-nails.ts';
import { findNail } from '../../core/takeoff/nails.ts';
import { leastEndBearingIn } from '../../core/takeoff/panel-layout.ts';
import { nailsAcross, panelGapIn } from '../../core/takeoff/sheathing-strip.ts';
import { ventAreaOf } from '../../core/takeoff/vent-area.ts';

const { fastening } = shopSettingsSchema.parse({});
const diameterOf = (nail: string) => findNail(nail)?.diameterIn ?? 0;

const survey = (site: object, lengthsIn: readonly number[] = [480, 480]) =>
  surveySchema.parse({
    version: 1,
    site,
    eaves: lengthsIn.map((lengthIn, index) => ({
      id: `e${index}`,
      name: `Eave ${index}`,
      lengthIn,
      pitchRisePer12: 6,
      heightAbovePlateIn: 5,
      rafters: [],
    })),
  });

const at = (site: object, lengthsIn?: readonly number[]) => {
  const house = survey(site, lengthsIn);
  const [first] = house.eaves;
  return first === undefined ? null : ventAreaOf(house, first);
};

describe('nails against the fastening table of the code', () => {
  test('a header block gets at least the two 16d through each end of a block between rafters off the plate', () => {
    // IBC 2304.10.1, item 1, as seen in transcription: two 16d common (3-1/2 x 0.162) end nailed. Three for a 2x6: common
    // practice, no source.
    expect(diameterOf(fastening.headerNail)).toBeGreaterThanOrEqual(0.162);
    expect([headerNailsEach(fastening, 3.5), headerNailsEach(fastening, 5.5)]).toEqual([2, 3]);
  });

  test('a whole rafter is toenailed to the ridge with three of 10d common or thicker', () => {
    // IRC Table R602.3(1), rafter to ridge: toenail 3-10d common (3 x 0.148); row partly from memory.
    expect(fastening.ridgeNailsPerRafter).toBeGreaterThanOrEqual(3);
    expect(diameterOf(fastening.ridgeNail)).toBeGreaterThanOrEqual(0.148);
  });

  test('a tail gets the three toenails of a rafter into the plate, and one with both faces free no fewer', () => {
    // IRC Table R602.3(1), rafter to plate: 3-16d box (0.135) or 3-10d common (0.148); seen in transcription.
    expect(diameterOf(fastening.plateNail)).toBeGreaterThanOrEqual(0.135);
    expect(fastening.plateToenailsOneFace).toBeGreaterThanOrEqual(3);
    expect(fastening.plateToenailsBothFaces).toBeGreaterThanOrEqual(fastening.plateToenailsOneFace);
  });

  test('soffit panels are nailed with 6d at 6 in. along their edges', () => {
    // Panel association's construction guide, form E30, table 37 (2011), as seen: closed soffit of 11/32 over 24 in., 6d.
    expect(fastening.soffitNail).toMatch(/^6d .*galvanized$/);
    expect(fastening.soffitSpacingIn).toBeLessThanOrEqual(6);
    // A panel 24 in. wide across a nailer: 24 / 6 + 1.
    expect(nailsAcross(24, fastening.soffitSpacingIn)).toBe(5);
  });
});

describe('panels', () => {
  test('lie 1/8 in. apart, which a 10d box nail between them shows', () => {
    // Panel makers' layout rule, on secondary pages; shank of 10d box 0.128 in.: NDS 2018, Table L4.
    expect(panelGapIn).toBe(0.125);
    expect(Math.abs(diameterOf('10d box') - panelGapIn)).toBeLessThan(1 / 64);
  });

  test('joined on the middle of a 2x bear 11/16 in. on each side, more than we ask for', () => {
    // (1-1/2 - 1/8) / 2. The least of 1/2 in.: common practice, no source.
    expect((1.5 - panelGapIn) / 2).toBe(0.6875);
    expect(leastEndBearingIn).toBeLessThan(0.6875);
  });
});

describe('net free area of vents', () => {
  test('of 1500 sq ft at 1/300 is 720 sq in., half of it at the eaves, shared by their length', () => {
    // IRC R806.2, older wording seen; arithmetic: 1500 / 300 x 144 = 720, 360 at the eaves, 180 at each of two alike.
    expect(at({ atticAreaSqFt: 1500, ventRatio: '1/300' })).toMatchObject({
      wholeSqIn: 720,
      wantedSqIn: 180,
    });
    expect(at({ atticAreaSqFt: 1500, ventRatio: '1/300' }, [480])?.wantedSqIn).toBe(360);
    expect(at({ atticAreaSqFt: 1500, ventRatio: '1/300' }, [120, 360])?.wantedSqIn).toBe(90);
  });

  test('at 1/150 is twice as much, and the upper vents of 40 to 50 percent leave 50 to 60 to the eaves', () => {
    // IRC R806.2 since 2012, on a secondary page: 40 to 50 % of it within 3 ft of the ridge.
    expect(at({ atticAreaSqFt: 1500 })?.wholeSqIn).toBe(1440);
    expect(at({ atticAreaSqFt: 1500, eaveVentShare: 0.6 }, [480])?.wantedSqIn).toBeCloseTo(864, 9);
    expect(at({})).toBeNull();
  });
});
