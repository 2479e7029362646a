// The ranges a machine has before anything of it was measured. Put through the model at the rating point usual for its
// application, the likely machine must show what small machines show: volumetric efficiency 0.55 to 0.85 and overall efficiency
// 0.35 to 0.60 of hermetic reciprocating machines, 0.85 to 0.95 and 0.50 to 0.68 of rolling pistons, shell heat 30 to 60 % of
// the input of small domes in still air, 5 to 15 % of rolling pistons: typical ranges, from memory of handbooks, so this is
// a check of plausibility and not of truth. The published R600a calorimeter rows (F. Fortkamp 2022) are the check from outside.

import { describe, expect, test } from 'vitest';
import { refrigerant, saturationAtDewTemperature, stateAt } from '../../../../src/matter/refrigerants/index.ts';
import {
  applianceClasses,
  type HermeticParameter,
  type HermeticPoint,
  hermeticParameters,
  hermeticPoint,
  type MachinePrior,
  machinePrior,
  ratingConditions,
} from '../../../../src/parts/compressor/index.ts';
import type { Band } from '../../../../src/quantities/index.ts';
import dataSet from '../../../reference/parts/compressor-r600a.json';
import { condensing, displacement, kelvin, returnGas, rows } from '../../../reference/parts/data-set.ts';

const usualPoint = { low: 'ashraeLow', medium: 'cecomafMedium', high: 'ashraeHigh' } as const;
const pairs = applianceClasses.flatMap((entry) => entry.fluids.map((fluid) => [entry.name, fluid, entry] as const));

interface Conditions {
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number;
  readonly surroundings: number;
}

describe('reference: machines at their usual rating point', () => {
  test.each(pairs)('%s for %s', (name, madeFor, { application }) => {
    const { evaporating, condensing, returnGas } = ratingConditions(usualPoint[application]);
    const at = { evaporating, condensing, returnGas, surroundings: returnGas };
    const { volumetric, overall, shellShare } = shown(
      machinePrior({ appliance: name, madeFor, frequency: 50 }),
      madeFor,
      at,
    );
    const isRotary = name === 'roomAirConditioner' || name === 'tumbleDryer';
    const isEither = name === 'dehumidifier';
    const typical: Readonly<Record<'volumetric' | 'overall' | 'shellShare', readonly [number, number]>> = {
      volumetric: isRotary ? [0.85, 0.95] : isEither ? [0.55, 0.95] : [0.55, 0.85],
      overall: isRotary ? [0.5, 0.68] : isEither ? [0.35, 0.68] : [0.35, 0.6],
      shellShare: isRotary ? [0.05, 0.15] : isEither ? [0.05, 0.6] : [0.2, 0.6],
    };
    expectWithin(volumetric.likely, typical.volumetric);
    expectWithin(overall.likely, typical.overall);
    expectWithin(shellShare.likely, typical.shellShare);
    // One efficiency at one point cannot fill a range that covers all pressure ratios: its band ends near the ends that it can
    // reach there, and is never narrower than a third of the range.
    // Clearances that published curves of commercial machines tell lie above those of handbooks: at the pressure ratio of a rating
    // point their volumetric efficiency falls further below the typical range than the other two.
    for (const [band, range, below] of [
      [volumetric, typical.volumetric, 0.22],
      [overall, typical.overall, 0.15],
      [shellShare, typical.shellShare, 0.15],
    ] as const) {
      const [low, high] = range;
      expect(band.high - band.low).toBeGreaterThan((high - low) / 3);
      expect(band.low).toBeGreaterThan(low - below);
      expect(band.high).toBeLessThan(high + 0.1);
    }
    expectSpans(overall, typical.overall, isEither ? 0.08 : 0.06);
  });
});

test('reference: the published R600a rows lie in the band of a chest freezer’s machine of that displacement at 60 Hz', () => {
  const prior = machinePrior({ appliance: 'chestFreezer', madeFor: 'R600a', frequency: 60 });
  const swept = {
    low: displacement,
    likely: displacement,
    high: displacement,
    origin: 'nameplate',
    source: 'sheet',
  } as const;
  const lines: string[] = [];
  for (const row of rows) {
    const at = { evaporating: row.evaporating, condensing, returnGas, surroundings: returnGas };
    const { flow, power } = shown({ ...prior, displacement: swept }, dataSet.refrigerant, at, 60);
    lines.push(
      `${(row.evaporating - 273.15).toFixed(0)} °C: flow ${said(flow, row.massFlow)}, power ${said(power, row.power)}`,
    );
    expectWithin(row.massFlow, [flow.low, flow.high]);
    expectWithin(row.power, [power.low, power.high]);
  }
  console.log('R600a rows over the likely machine of their class, with its band:', lines.join('; '));
});

describe('law: what is known narrows, what is not widens', () => {
  const base = { madeFor: 'R600a', frequency: 50 } as const;
  const freezer = machinePrior({ ...base, appliance: 'chestFreezer' });

  test('a machine of no known origin spans every class', () => {
    const any = machinePrior(base);
    for (const { name, fluids } of applianceClasses) {
      if (!fluids.includes('R600a')) continue;
      const prior = machinePrior({ ...base, appliance: name });
      for (const key of ['displacement', 'clearanceRatio', 'suctionVelocity', 'motorPressure'] as const) {
        expect(any[key].low).toBeLessThanOrEqual(prior[key].low);
        expect(any[key].high).toBeGreaterThanOrEqual(prior[key].high);
      }
    }
  });

  test('a told dome narrows displacement and shell, and a taller one moves both up', () => {
    const dome = (height: number) =>
      machinePrior({ ...base, appliance: 'chestFreezer', domeHeight: about(height), domeDiameter: about(0.15) });
    expect(width(dome(0.17).displacement)).toBeLessThan(width(freezer.displacement));
    expect(width(dome(0.17).shellConductance)).toBeLessThan(width(freezer.shellConductance));
    expect(dome(0.2).displacement.likely).toBeGreaterThan(dome(0.17).displacement.likely);
    expect(dome(0.2).shellConductance.likely).toBeGreaterThan(dome(0.17).shellConductance.likely);
    // π · 0.15 · (0.17 + 0.0375) = 0.09778 m², at 11 W/(m² K).
    expect(dome(0.17).shellConductance.likely).toBeCloseTo(1.0756, 4);
  });

  test('a dome far too large for its class is not averaged away: both are spanned', () => {
    const { displacement } = machinePrior({
      ...base,
      appliance: 'householdRefrigerator',
      domeHeight: about(0.5),
      domeDiameter: about(0.35),
    });
    const ofClass = machinePrior({ ...base, appliance: 'householdRefrigerator' }).displacement;
    expect(displacement.low).toBe(ofClass.low);
    expect(displacement.high).toBeGreaterThan(5 * ofClass.high);
  });

  test('an older motor is a poorer one, and a told start type goes before the year', () => {
    const motor = (low: number, high: number, startType?: 'runCapacitor') =>
      machinePrior({ ...base, appliance: 'chestFreezer', year: { low, likely: low, high }, startType }).motorEfficiency;
    expect(motor(1975, 1980).likely).toBeLessThan(motor(2015, 2020).likely);
    expect(width(motor(1975, 2020))).toBeGreaterThan(width(motor(1975, 1980)));
    expect(motor(1975, 1980, 'runCapacitor')).toEqual(motor(2015, 2020, 'runCapacitor'));
  });

  test('a told application goes before that of the appliance; a rolling piston stays one', () => {
    const cooler = (application?: 'low') => machinePrior({ ...base, appliance: 'bottleCooler', application });
    expect(cooler('low').motorPressure.likely).toBeLessThan(cooler().motorPressure.likely);
    expect(cooler('low').displacement).toEqual(cooler().displacement);
    const dryer = (application?: 'low') =>
      machinePrior({ madeFor: 'R290', frequency: 50, appliance: 'tumbleDryer', application });
    expect(dryer('low')).toEqual(dryer());
  });

  test('velocities go with the frequency, pressures with the fluid', () => {
    const other = machinePrior({ ...base, appliance: 'chestFreezer', frequency: 60 });
    expect(other.suctionVelocity.likely / freezer.suctionVelocity.likely).toBeCloseTo(1.2, 12);
    expect(other.slip.likely).toBeGreaterThan(freezer.slip.likely);
    const r134a = machinePrior({ ...base, madeFor: 'R134a', appliance: 'chestFreezer' });
    const atForty = (fluid: string) => saturationAtDewTemperature(refrigerant(fluid), kelvin(40)).vapour.pressure;
    expect(r134a.motorPressure.likely / freezer.motorPressure.likely).toBeCloseTo(
      atForty('R134a') / atForty('R600a'),
      4,
    );
  });

  test('an electronic drive hardly slips', () => {
    const drive = machinePrior({ ...base, appliance: 'chestFreezer', startType: 'inverter' });
    expect(drive.slip.high).toBeLessThan(freezer.slip.low);
  });
});

describe('refusals', () => {
  test.each([
    [{ appliance: 'toaster', madeFor: 'R134a', frequency: 50 }, 'unknownAppliance'],
    [{ madeFor: 'R744', frequency: 50 }, 'fluidWithoutMachines'],
    [{ madeFor: 'R134a', frequency: 0 }, 'badInput'],
  ])('%j', (origin, code) => {
    expect(() => machinePrior(origin)).toThrow(expect.objectContaining({ code }));
  });
});

interface Shown {
  readonly flow: Band;
  readonly power: Band;
  readonly volumetric: Band;
  readonly overall: Band;
  readonly shellShare: Band;
}

/** Bands of a machine's answers: each number alone at its ends, the changes combined by the root of their squares. */
function shown(prior: MachinePrior, madeFor: string, at: Conditions, frequency = 50): Shown {
  const likely = Object.fromEntries(hermeticParameters.map((key) => [key, prior[key].likely])) as Numbers;
  const base = pointOf(likely, madeFor, at, frequency);
  const moved = hermeticParameters.flatMap((key) =>
    ([prior[key].low, prior[key].high] as const).map((end) => ({
      key,
      point: pointOf({ ...likely, [key]: end }, madeFor, at, frequency),
    })),
  );
  const band = (read: (point: HermeticPoint) => number): Band => {
    const value = read(base);
    const changes = hermeticParameters.map((key) =>
      moved.filter((each) => each.key === key).map(({ point }) => read(point) - value),
    );
    const down = Math.hypot(...changes.map((pair) => Math.min(0, ...pair)));
    const up = Math.hypot(...changes.map((pair) => Math.max(0, ...pair)));
    return { low: value - down, likely: value, high: value + up };
  };
  return {
    flow: band(({ massFlow }) => massFlow),
    power: band(({ power }) => power),
    volumetric: band(({ volumetricEfficiency }) => volumetricEfficiency),
    overall: band(({ overallEfficiency }) => overallEfficiency),
    shellShare: band(({ shellHeat, power }) => shellHeat / power),
  };
}

type Numbers = Readonly<Record<HermeticParameter, number>>;

function pointOf(numbers: Numbers, madeFor: string, at: Conditions, frequency: number): HermeticPoint {
  const fluid = refrigerant(madeFor);
  const pressure = saturationAtDewTemperature(fluid, at.evaporating).vapour.pressure;
  const supply = { frequency, voltage: 230 };
  return hermeticPoint({ ...numbers, ratedSupply: supply }, fluid, {
    suction: stateAt(fluid, { temperature: at.returnGas, pressure }),
    dischargePressure: saturationAtDewTemperature(fluid, at.condensing).vapour.pressure,
    surroundings: at.surroundings,
    supply,
  });
}

function expectWithin(value: number, [low, high]: readonly [number, number]): void {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}

function expectSpans(band: Band, [low, high]: readonly [number, number], within: number): void {
  expect(Math.abs(band.low - low)).toBeLessThan(within);
  expect(Math.abs(band.high - high)).toBeLessThan(within);
}

function about(value: number): Band {
  return { low: value * 0.97, likely: value, high: value * 1.03 };
}

function width({ low, high }: Band): number {
  return Math.log(high / low);
}

function said({ low, likely, high }: Band, given: number): string {
  const percent = (value: number) => `${((value / given - 1) * 100).toFixed(0)}`;
  return `${percent(likely)} % (${percent(low)} to ${percent(high)} %)`;
}
