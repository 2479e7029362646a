// Named rating points and one printed rating as evidence: what is confirmed, what is not, and that the unsure is never guessed.

import { describe, expect, test } from 'vitest';
import shipped from '../../../data/rating-points.json';
import { refrigerant } from '../../../src/matter/refrigerants/index.ts';
import {
  applicationLimits,
  type PrintedRating,
  ratingConditions,
  ratingEvidence,
  ratingPoint,
  ratingPointNames,
  ratingPoints,
  ratingPointVariants,
} from '../../../src/parts/compressor/index.ts';
import { type RatingPointFile, readRatingPoints } from '../../../src/parts/compressor/rating-points.ts';

const celsius = (kelvin: number | null) => (kelvin === null ? null : Math.round((kelvin - 273.15) * 100) / 100);

describe('points by name', () => {
  // Open compilations of data sheets; from memory where the status says unsure.
  test.each([
    ['ashraeLow', [-23.3, 54.4, 32.2, 32.2], true],
    ['ashraeMedium', [-6.7, 54.4, 35, 46.1], false],
    ['ashraeMediumOlder', [-6.7, 54.4, 4.4, 32.2], false],
    ['ashraeHigh', [7.2, 54.4, 35, 46.1], true],
    ['ashraeHighCooledGas', [7.2, 54.4, 18.3, 46.1], false],
    ['ashraeCheckPoint', [-23.3, 48.9, null, null], false],
    ['cecomafLow', [-25, 55, 32, 55], true],
    ['cecomafMedium', [-10, 55, 32, 55], true],
    ['cecomafHigh', [5, 55, 32, 55], false],
    ['en12900Low', [-35, 40, null, 40], false],
    ['en12900LowAt32', [-35, 40, 32, 40], false],
    ['en12900Medium', [-10, 45, null, 45], false],
    ['en12900MediumSuperheat10', [-10, 45, 0, 45], false],
    ['en12900High', [5, 50, null, 50], false],
    ['en12900HighAt20', [5, 50, 20, 50], false],
  ] as const)('%s: %j', (name, temperatures, confirmed) => {
    const { evaporating, condensing, returnGas, liquid, confirmed: is } = ratingPoint(name);
    expect([evaporating, condensing, returnGas, liquid].map(celsius)).toEqual(temperatures);
    expect(is).toBe(confirmed);
  });

  test('the confirmed ones are those whose four temperatures two sources give', () => {
    expect([...ratingPointNames].sort()).toEqual(['ashraeHigh', 'ashraeLow', 'cecomafLow', 'cecomafMedium']);
  });

  test('reference: ASHRAE high back pressure is 27.8 K superheat and 8.3 K subcooling (open compilations of data sheets)', () => {
    const { evaporating, condensing, returnGas, liquid } = ratingConditions('ashraeHigh');
    expect(returnGas - evaporating).toBeCloseTo(27.8, 6);
    expect(condensing - liquid).toBeCloseTo(8.3, 6);
  });

  test('each lies inside the evaporating range of its application', () => {
    for (const point of ratingPoints) {
      const { evaporating } = applicationLimits(point.application);
      expect(point.evaporating).toBeGreaterThanOrEqual(evaporating.lowest);
      expect(point.evaporating).toBeLessThanOrEqual(evaporating.highest);
    }
  });

  test('variants are told together, from whichever is asked', () => {
    const names = (of: string) => ratingPointVariants(of).map(({ name }) => name);
    expect(names('ashraeMedium')).toEqual(['ashraeMedium', 'ashraeMediumOlder']);
    expect(names('ashraeMediumOlder')).toEqual(['ashraeMedium', 'ashraeMediumOlder']);
    expect(names('cecomafLow')).toEqual(['cecomafLow']);
  });

  test.each(ratingPoints.filter((point) => !point.confirmed).map(({ name }) => name))(
    '%s is unsure: refused by name, with the reason',
    (name) => {
      expect(() => ratingConditions(name)).toThrow(
        expect.objectContaining({ code: 'unsureRatingPoint', expected: expect.stringContaining('unsure') }),
      );
    },
  );

  test('an unknown name', () => {
    expect(() => ratingPoint('somewhere')).toThrow(expect.objectContaining({ code: 'unknownRatingPoint' }));
  });
});

describe('the data file', () => {
  test.each([
    ['points.0', (copy) => Object.assign(copy.points[0]!, { liquid: 400 })],
    ['points.0', (copy) => Object.assign(copy.points[0]!, { returnGas: null })],
    ['points.0', (copy) => Object.assign(copy.points[0]!, { returnGas: 200 })],
    ['points.1', (copy) => Object.assign(copy.points[1]!, { name: copy.points[0]!.name })],
    ['points.0.application', (copy) => Object.assign(copy.points[0]!, { application: 'middling' })],
    ['points.0.variantOf', (copy) => Object.assign(copy.points[0]!, { variantOf: 'nothing' })],
  ] as [string, (copy: RatingPointFile) => void][])('%s, case %#', (path, change) => {
    const copy = structuredClone(shipped);
    change(copy);
    expect(() => readRatingPoints(copy)).toThrow(expect.objectContaining({ name: 'DataError', path }));
  });
});

describe('one rating as evidence', () => {
  const watts = (likely: number) => ({ low: likely * 0.95, likely, high: likely * 1.05, origin: 'nameplate' }) as const;
  const rating: PrintedRating = {
    fluid: refrigerant('R134a'),
    path: 'ratings.0',
    label: 'Rating',
    at: 'ashraeLow',
    given: { capacity: watts(170), power: watts(150) },
    supply: { frequency: 50, voltage: 230 },
    surroundings: 305.35,
  };

  test('at a confirmed point', () => {
    const point = ratingEvidence(rating);
    expect(point).toMatchObject({ ...ratingConditions('ashraeLow'), given: rating.given, path: 'ratings.0' });
    expect('series' in point).toBe(false);
    expect(ratingEvidence({ ...rating, series: 'ratings' }).series).toBe('ratings');
  });

  test('at an unsure point only with the four temperatures typed', () => {
    expect(() => ratingEvidence({ ...rating, at: 'en12900Low' })).toThrow(
      expect.objectContaining({ code: 'unsureRatingPoint' }),
    );
    const at = { evaporating: 238.15, condensing: 313.15, returnGas: 293.15, liquid: 313.15 };
    expect(ratingEvidence({ ...rating, at })).toMatchObject(at);
  });

  const at = ratingConditions('ashraeLow');
  test.each([
    ['nothing given', { given: {} }, 'nothingGiven'],
    ['no frequency', { supply: { frequency: null, voltage: 230 } }, 'missingFrequency'],
    ['a capacity of 0', { given: { capacity: { low: 0, likely: 0, high: 0, origin: 'typed' } } }, 'badInput'],
    ['gas colder than dew', { at: { ...at, returnGas: 240 } }, 'returnGasBelowEvaporating'],
    ['liquid above condensing', { at: { ...at, liquid: 340 } }, 'liquidAboveCondensing'],
    ['evaporating above condensing', { at: { ...at, evaporating: 335 } }, 'evaporatingAboveCondensing'],
    ['beyond the fluid', { at: { ...at, condensing: 390 } }, 'outsideFluid'],
  ] as [string, Partial<PrintedRating>, string][])('%s', (_, change, code) => {
    expect(() => ratingEvidence({ ...rating, ...change })).toThrow(expect.objectContaining({ code }));
  });
});
