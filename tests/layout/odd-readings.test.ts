import { describe, expect, it } from 'vitest';
import { makeEave } from '../survey/make-eave.ts';
import { layOut } from './make-layout.ts';

type Values = readonly (readonly [stationIn: number, value: number])[];

function questions(wall: Values, plate: Values = []) {
  const eave = makeEave([16, 40, 64], {
    wallReadings: wall.map(([stationIn, outIn], index) => ({ id: `w${index}`, stationIn, outIn })),
    plateReadings: plate.map(([stationIn, upIn], index) => ({ id: `p${index}`, stationIn, upIn })),
  });
  return layOut(eave).findings.filter(({ topic }) => topic === 'measure-again');
}

describe('a reading along the wall is questioned', () => {
  it('where it leaps from its neighbours: 1-1/4 in. between 0 and 0, 4 ft to each side', () => {
    expect(
      questions([
        [0, 0],
        [48, 0],
        [96, 1.25],
        [144, 0],
        [192, 0],
      ]),
    ).toMatchObject([
      { stationIn: 96, text: `The wall reading at 8' 0" is 1-1/4" off its neighbours: measure again?` },
    ]);
  });

  it('where it stands past the end of the wall', () => {
    expect(
      questions([
        [0, 0],
        [250, 0.5],
      ]),
    ).toMatchObject([
      {
        stationIn: 250,
        text: `The wall reading at 20' 10" lies past the wall's end at 20' 0": measure again?`,
      },
    ]);
  });

  it('of the plate as of the wall, from whatever level line', () => {
    expect(
      questions(
        [],
        [
          [0, 40],
          [48, 39.9],
          [96, 41],
          [144, 39.7],
        ],
      ),
    ).toMatchObject([
      { stationIn: 96, text: expect.stringContaining('The plate reading at 8\' 0" is 1-3/16" off') },
    ]);
  });
});

describe('a reading along the wall is not questioned', () => {
  it('where the wall bows evenly, by more than an inch over 20 ft', () => {
    // A parabola 1-1/2 in. high: each reading lies 0.375 off the line between its neighbours 5 ft away.
    const bow = [0, 60, 120, 180, 240].map((x) => [x, 1.5 * (1 - ((x - 120) / 120) ** 2)] as const);
    expect(questions(bow)).toEqual([]);
    expect(
      questions([
        [0, 0],
        [120, 1.5],
        [240, 0],
      ]),
    ).toEqual([]);
  });

  it('where there are only two, or it falls evenly', () => {
    expect(
      questions([
        [0, 0],
        [40, 2],
      ]),
    ).toEqual([]);
    expect(
      questions(
        [],
        [
          [0, 0],
          [48, -2],
          [96, -4],
          [144, -6],
        ],
      ),
    ).toEqual([]);
  });
});
