// The engine's budgets and the work that is measured against each. Inputs change from call to call, so that nothing
// remembered from the call before helps more than it does in real use. A part that does not exist is said to be missing.

import demo from '../../data/designs/reef-in-the-study.json?raw';
import '../../src/matter/every-refrigerant/index.ts';
import '../../src/assess/every-tank/index.ts';
import '../../src/assess/every-machine/index.ts';
import { Assessor, assessDesign } from '../../src/assess/index.ts';
import { type OperatingPointInput, operatingPoint, textbookCycle } from '../../src/loop/index.ts';
import { refrigerant, saturationAtTemperature, stateAt, tabulated } from '../../src/matter/refrigerants/index.ts';
import { type RunningMachine, runningPoint } from '../../src/parts/compressor/index.ts';
import { type RectangularTank, rectangularTank, tankLoad } from '../../src/tank/index.ts';
import { compressorDataCases } from './compressor-data.ts';
import { identificationCases } from './identification.ts';
import { refrigerantCases } from './refrigerants.ts';
import { wrappingCases } from './wrapping.ts';

export interface BenchCase {
  readonly id: string;
  readonly title: string;
  /** Seconds, bytes, or how many in a second. */
  readonly budget: number | undefined;
  /** Which of the measured values is held against the budget. */
  readonly judged: 'median' | 'percentile95';
  /** Measured only when its name was asked for. */
  readonly isDetail?: true;
  /** Told as how many of them in a second; so is the budget, which is then the least. */
  readonly isRate?: true;
  /** Memory in place of time [bytes]. */
  readonly bytes?: () => number;
  /** Prepares and returns the work; undefined where the program has no such part yet. */
  readonly prepare: (() => (index: number) => number) | undefined;
}

const fluid = refrigerant('R134a');

/** Inputs are prepared beforehand and taken in turn. */
const inputs = 64;

function each<T>(make: (share: number) => T): readonly T[] {
  return Array.from({ length: inputs }, (_, i) => make(i / (inputs - 1)));
}

function inTurn<T>(given: readonly T[], work: (input: T) => number): (index: number) => number {
  return (index) => work(given[index % given.length]!);
}

/** Superheated vapour and liquid in turn, as pressure with enthalpy and entropy. */
function singlePhasePoints() {
  return each((share) => {
    const liquid = Math.round(share * (inputs - 1)) % 2 === 0;
    const temperature = liquid ? 270 + 40 * share : 300 + 60 * share;
    return stateAt(fluid, { temperature, pressure: liquid ? 1.5e6 : 2e5 });
  });
}

/** Invented; nothing known of it but its numbers. */
const machine: RunningMachine = {
  compressor: {
    displacement: 6e-6,
    clearanceRatio: 0.025,
    suctionVelocity: 14,
    dischargeVelocity: 60,
    suctionHeatingUnits: 0.5,
    dischargeCoolingUnits: 0.4,
    leakageRatio: 4e-5,
    proportionalLoss: 0.08,
    frictionPressure: 25e3,
    motorEfficiency: 0.76,
    motorPressure: 3.5e5,
    slip: 0.03,
    powerFactor: 0.75,
    shellConductance: 1.8,
    ratedSupply: { frequency: 50, voltage: 230 },
  },
  surroundings: 293.15,
  supply: { frequency: 50, voltage: 230 },
  known: null,
};

function loopAt(sourceTemperature: number, waterTemperature: number, of = fluid): OperatingPointInput {
  return {
    fluid: of,
    machine,
    sourceTemperature,
    waterTemperature,
    evaporatorApproach: 10,
    condenserApproach: 10,
    superheat: 6,
    subcooling: 3,
  };
}

const tank: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.46,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.9 },
  insulation: { back: { conductivity: 0.035, thickness: 0.03 } },
  surface: 'rippled',
  lid: 'tight',
  lidLayer: { conductivity: 1, thickness: 0.004 },
  pumpHeat: 10,
  lightHeat: 5,
};
const built = rectangularTank(tank);

function editedDemos(): readonly string[] {
  const design = JSON.parse(demo) as { tank: { waterTemperature: string } };
  return each((share) => {
    const waterTemperature = `${(24 + 2 * ((share * 37) % 1)).toFixed(2)} °C`;
    return JSON.stringify({ ...design, tank: { ...design.tank, waterTemperature } });
  });
}

function likelyHeat(outcome: ReturnType<typeof assessDesign>): number {
  return outcome.ok ? outcome.assessment.heatDelivered.likely : Number.NaN;
}

export const engineCases: readonly BenchCase[] = [
  {
    id: 'refrigerants.equation',
    title: 'one evaluation of an equation of state with all first and second derivatives',
    budget: 1e-6,
    judged: 'median',
    prepare: () =>
      inTurn(
        singlePhasePoints(),
        ({ temperature, density }) => fluid.equation.at(temperature, density).pressure + fluid.equation.enthalpy,
      ),
  },
  {
    id: 'refrigerants.pressureEnthalpy',
    title: 'exact (p,h) flash, single phase',
    budget: 10e-6,
    judged: 'median',
    prepare: () =>
      inTurn(singlePhasePoints(), ({ pressure, enthalpy }) => stateAt(fluid, { pressure, enthalpy }).temperature),
  },
  {
    id: 'refrigerants.pressureEntropy',
    title: 'exact (p,s) flash, single phase',
    budget: 10e-6,
    judged: 'median',
    prepare: () =>
      inTurn(singlePhasePoints(), ({ pressure, entropy }) => stateAt(fluid, { pressure, entropy }).temperature),
  },
  {
    id: 'refrigerants.saturation',
    title: "saturation at a temperature by Maxwell's conditions",
    budget: undefined,
    judged: 'median',
    prepare: () =>
      inTurn(
        each((share) => 240 + 100 * share),
        (temperature) => saturationAtTemperature(fluid, temperature).vapour.pressure,
      ),
  },
  {
    id: 'refrigerants.table',
    title: 'table look-up of T, ρ, s from (p,h)',
    budget: 0.3e-6,
    judged: 'median',
    prepare: () => {
      const { table } = tabulated(fluid).table;
      return inTurn(singlePhasePoints(), ({ pressure, enthalpy }) => {
        table.lookUp(pressure, enthalpy);
        return table.found[0]! + table.found[1]! + table.found[2]!;
      });
    },
  },
  ...refrigerantCases,
  {
    id: 'loop.textbookCycle',
    title: 'textbook cycle',
    budget: 40e-6,
    judged: 'median',
    prepare: () =>
      inTurn(
        each((share) => ({
          refrigerant: 'R134a',
          evaporating: 253.15 + 25 * share,
          condensing: 303.15 + 25 * share,
          superheat: 5,
          subcooling: 5,
          isentropicEfficiency: 0.6,
        })),
        (request) => textbookCycle(request).heatingCop,
      ),
  },
  {
    id: 'tank.load',
    title: 'tank load',
    budget: 0.3e-3,
    judged: 'median',
    prepare: () =>
      inTurn(
        each((share) => ({
          waterTemperature: 297.15 + 4 * share,
          roomTemperature: 288.15 + 6 * share,
          roomRelativeHumidity: 0.5,
          atmosphericPressure: 101325,
        })),
        (conditions) => tankLoad(built, conditions).load,
      ),
  },
  ...wrappingCases,
  ...compressorDataCases,
  ...identificationCases,
  {
    id: 'loop.operatingPointCold',
    title: 'operating point of real parts, cold',
    budget: 5e-3,
    judged: 'median',
    prepare: () =>
      inTurn(
        each((share) => loopAt(283.15 + 12 * ((share * 37) % 1), 296.15 + 6 * ((share * 23) % 1))),
        (input) => operatingPoint(input).heatDelivered,
      ),
  },
  {
    id: 'loop.operatingPointTables',
    title: 'operating point of real parts, with tables',
    budget: 50e-6,
    judged: 'median',
    prepare: () => {
      const table = tabulated(fluid);
      return inTurn(
        each((share) => loopAt(283.15 + 12 * ((share * 37) % 1), 296.15 + 6 * ((share * 23) % 1), table)),
        (input) => operatingPoint(input).heatDelivered,
      );
    },
  },
  {
    id: 'compressor.runningPointTables',
    title: 'running point of a machine, with tables',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const table = tabulated(fluid);
      const ends = each((share) => {
        const pressure = saturationAtTemperature(fluid, 258.15 + 25 * ((share * 37) % 1)).vapour.pressure;
        return {
          suction: stateAt(fluid, { temperature: 295, pressure }),
          dischargePressure: saturationAtTemperature(fluid, 308.15 + 15 * ((share * 23) % 1)).vapour.pressure,
        };
      });
      return inTurn(ends, (at) => runningPoint(machine, table, at).power);
    },
  },
  {
    id: 'loop.operatingPointNeighbour',
    title: 'operating point of real parts, beside the one before',
    budget: 2e-3,
    judged: 'median',
    prepare: () =>
      inTurn(
        each((share) => loopAt(290.15 + 0.5 * share, 298.15)),
        (input) => operatingPoint(input).heatDelivered,
      ),
  },
  {
    id: 'loop.map',
    title: 'map, 150 points, each solved by itself',
    budget: 0.3,
    judged: 'median',
    prepare: () => () => {
      let sum = 0;
      for (let i = 0; i < 15; i++) {
        for (let j = 0; j < 10; j++) sum += operatingPoint(loopAt(281.15 + i, 295.15 + 0.7 * j)).heatDelivered;
      }
      return sum;
    },
  },
  {
    id: 'assess.whole',
    title: 'a whole assessment with all its ranges, nothing remembered',
    budget: undefined,
    judged: 'median',
    prepare: () => inTurn(editedDemos(), (text) => likelyHeat(assessDesign(text, 'metric'))),
  },
  {
    id: 'assess.edit',
    title: 'the assessment again after the water temperature was edited',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const assessor = new Assessor();
      return inTurn(editedDemos(), (text) => likelyHeat(assessor.assess(text, 'metric')));
    },
  },
  {
    id: 'year.hours',
    title: 'a year of 8,760 hours, load map and loop map in hand',
    budget: 50e-3,
    judged: 'median',
    prepare: undefined,
  },
];
