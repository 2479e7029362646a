// The working of whole assessments over the choices a design can make: each step holds, each number that goes in is a
// design's, another step's or the model's own, and each band has its step.

import { describe, expect, test } from 'vitest';
import { type Assessment, allFormulas, assessDesign, type BandWithUnit } from '../../src/assess/index.ts';
import { fieldRecord } from '../../src/design/index.ts';
import { ratingPointNames } from '../../src/parts/compressor/index.ts';
import { demoTexts } from '../designs.ts';
import { expectTraced } from '../traced-steps.ts';
import { modelsOwn, ofTheEquation } from './working/own-numbers.ts';

type Json = { [key: string]: Json | string | Json[] };

const rated: Json = {
  madeFor: 'R134a',
  nameplate: { ratedCurrent: '1.6 A', power: '260 W' },
  ratings: [{ at: { kind: 'named', point: ratingPointNames[0]! }, capacity: '300 W', power: '250 W' }],
};

const measured: Json = {
  ...rated,
  bench: [
    {
      evaporating: '-5 °C',
      condensing: '38 °C',
      suction: '12 °C',
      discharge: '70 °C',
      liquid: '33 °C',
      surroundings: '20 °C',
      meter: { kind: 'ampsAndVolts', current: '1.7 A', powerFactor: '0.6 to 0.9' },
    },
  ],
};

/** What is changed of a demo: path and new value. */
type Change = readonly [path: string, value: Json | string];

const variants: readonly (readonly [demo: string, changes: readonly Change[]])[] = [
  ['frag-tank-cold-garage', [['machine.compressor', rated]]],
  [
    'frag-tank-cold-garage',
    [
      ['machine.compressor', measured],
      ['machine.count', '3'],
      ['power.crankcaseHeater', '12 W'],
      ['machine.shellPlace', 'outdoors'],
    ],
  ],
  ['reef-in-the-study', [['exchangers.suctionPressureLimit', '2.4 bar']]],
  [
    'frag-tank-cold-garage',
    [
      ['exchangers.condenserArrangement', 'coilInTank'],
      ['room.cooledInSummer', 'yes'],
    ],
  ],
  [
    'frag-tank-cold-garage',
    [
      ['tank.load.lid', 'loose'],
      ['machine.shellPlace', 'outdoors'],
    ],
  ],
  [
    'propane-in-the-cabinet',
    [
      ['room.monthsHeated', '12'],
      ['room.warmest', '36 °C'],
    ],
  ],
  [
    'propane-in-the-cabinet',
    [
      ['room.cooledInSummer', 'yes'],
      ['place.altitude', '1200 m'],
    ],
  ],
  [
    'reef-in-the-study',
    [
      ['prices.discountRate', '0 %'],
      ['room.monthsHeated', '0'],
    ],
  ],
  [
    'reef-in-the-study',
    [
      ['machine.compressor.shellConductance', '4 W/K'],
      ['machine.compressor.leakageRatio', '0'],
      ['exchangers.superheat', '0 K'],
    ],
  ],
  [
    'frag-tank-cold-garage',
    [
      ['machine.compressor', { ...rated, madeFor: 'R404A' }],
      ['machine.refrigerant', 'R404A'],
    ],
  ],
  [
    'reef-in-the-study',
    [
      ['machine.refrigerant', 'R407C'],
      ['exchangers.superheat', '0 K'],
      ['exchangers.subcooling', '0 K'],
    ],
  ],
  [
    'propane-in-the-cabinet',
    [
      ['machine.refrigerant', 'R507A'],
      ['exchangers.condenserArrangement', 'coilInTank'],
    ],
  ],
  [
    'shrimp-rack-unknown-draughts',
    [
      ['tank.load.lid', 'tight'],
      ['exchangers.tubeDiameter', '1 in'],
    ],
  ],
];

describe.each(variants)('%s', (demo, changes) => {
  test(changes.map(([path]) => path).join(', '), () => {
    const assessment = assessed(demo, changes);
    const byResult = new Map(assessment.workings.map((step) => [step.result, step]));
    const absent = assessment.workings.flatMap(({ inputs, from }) =>
      Object.keys(inputs).filter((symbol) => inputs[symbol] === 0 && !(symbol in from)),
    );
    const isGiven = (origin: string) => fieldRecord(origin) !== undefined || origin.startsWith('engine.');
    const values = expectTraced(assessment.workings, allFormulas, isGiven, [...modelsOwn, ...ofTheEquation, ...absent]);
    for (const { result, likely } of bandsIn(assessment)) {
      expect(byResult.has(result), result).toBe(true);
      expect(Math.abs(values.get(result)! - likely), result).toBeLessThanOrEqual(1e-9 * Math.abs(likely));
    }
  });
});

test('each value given of the machine shows how far the likely machine is off it, a displacement alone has none', () => {
  const residuals = (changes: readonly Change[]) =>
    assessed('frag-tank-cold-garage', changes).workings.filter(({ result }) =>
      result.startsWith('identified.residuals.'),
    );
  expect(residuals([])).toEqual([]);
  const [capacity, power] = residuals([['machine.compressor', rated]]);
  expect(capacity).toMatchObject({
    formula: 'compressor.relativeDeviation',
    inputs: { X_given: 300 },
    from: { X_given: 'machine.compressor.ratings.0.capacity' },
  });
  expect(power!.from).toEqual({ X_given: 'machine.compressor.ratings.0.power' });
});

function assessed(demo: string, changes: readonly Change[]): Assessment {
  const design: Json = JSON.parse(demoTexts[`${demo}.json`]!);
  for (const [path, value] of changes) {
    const keys = path.split('.');
    const last = keys.pop()!;
    let at = design;
    for (const key of keys) {
      at[key] ??= {};
      at = at[key] as Json;
    }
    at[last] = value;
  }
  const outcome = assessDesign(JSON.stringify(design), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

function bandsIn(value: unknown): BandWithUnit[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('likely' in value && 'result' in value) return [value as BandWithUnit];
  return Object.values(value).flatMap(bandsIn);
}
