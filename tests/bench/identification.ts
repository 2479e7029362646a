// What identifying a machine costs: from one rating, from thirty points of flow, power and current, from tables of states and from
// the equation; and what its doubt at one running point does. Each call has other given values.

import {
  refrigerant,
  saturationAtDewTemperature,
  stateInLoop,
  tabulated,
} from '../../src/matter/refrigerants/index.ts';
import {
  compressorWith,
  type EvidencePoint,
  hermeticParameters,
  hermeticPoint,
  identifyMachine,
  type MachineDescription,
  machinePrior,
  modelDoubt,
} from '../../src/parts/compressor/index.ts';
import type { Estimate } from '../../src/quantities/index.ts';
import type { BenchCase } from './cases.ts';

const supply = { frequency: 50, voltage: 230 };
const exact = refrigerant('R134a');
const inTables = tabulated(exact);
const inputs = 16;

function about(likely: number, share: number): Estimate {
  return { low: likely * (1 - share), likely, high: likely * (1 + share), origin: 'nameplate' };
}

function described(fluid: MachineDescription['fluid'], points: readonly EvidencePoint[]): MachineDescription {
  const ranges = machinePrior({ madeFor: 'R134a', application: 'low', frequency: supply.frequency });
  const prior = Object.fromEntries(
    hermeticParameters.map((name) => [
      name,
      { path: `machine.compressor.${name}`, label: String(name), estimate: ranges[name] },
    ]),
  ) as unknown as MachineDescription['prior'];
  return { fluid, ratedSupply: supply, prior, points, series: [] };
}

function pointAt(index: number, evaporating: number, condensing: number, given: EvidencePoint['given']): EvidencePoint {
  return {
    path: `machine.compressor.points.${index}`,
    label: `point ${index + 1}`,
    evaporating,
    condensing,
    returnGas: 305.35,
    liquid: Math.min(305.35, condensing),
    surroundings: 305.35,
    supply,
    given,
  };
}

function rating(fluid: MachineDescription['fluid'], index: number): MachineDescription {
  const given = { capacity: about(140 + 2 * index, 0.05), power: about(115, 0.05) };
  return described(fluid, [pointAt(0, 249.85, 327.55, given)]);
}

/** Thirty points of one machine, whose values stray a little. */
function thirty(fluid: MachineDescription['fluid'], index: number): MachineDescription {
  const { compressor } = identifyMachine(rating(inTables, index));
  const points = Array.from({ length: 30 }, (_, number): EvidencePoint => {
    const bare = pointAt(number, 238.15 + 5 * (number % 6), 308.15 + 5 * Math.floor(number / 6), {});
    const { pressure } = saturationAtDewTemperature(inTables, bare.evaporating).vapour;
    const suction = stateInLoop(inTables, { pressure, temperature: bare.returnGas });
    const dischargePressure = saturationAtDewTemperature(inTables, bare.condensing).vapour.pressure;
    const { surroundings } = bare;
    const at = hermeticPoint(compressor, inTables, { suction, dischargePressure, surroundings, supply });
    const stray = 1 + 0.02 * Math.sin(7 * number + index);
    const given = {
      massFlow: about(at.massFlow * stray, 0.02),
      power: about(at.power / stray, 0.02),
      current: about(at.current, 0.03),
    };
    return { ...bare, given };
  });
  return described(fluid, points);
}

function inTurn(descriptions: readonly MachineDescription[]): (index: number) => number {
  return (index) => identifyMachine(descriptions[index % descriptions.length]!).compressor.displacement * 1e6;
}

function each(make: (index: number) => MachineDescription): readonly MachineDescription[] {
  return Array.from({ length: inputs }, (_, index) => make(index));
}

export const identificationCases: readonly BenchCase[] = [
  {
    id: 'compressor.identifyRating',
    title: 'a machine identified from one rating, states from tables',
    budget: 0.02,
    judged: 'median',
    prepare: () => inTurn(each((index) => rating(inTables, index))),
  },
  {
    id: 'compressor.identifyThirty',
    title: 'a machine identified from 30 points of flow, power and current, states from tables',
    budget: 0.2,
    judged: 'median',
    prepare: () => inTurn(each((index) => thirty(inTables, index))),
  },
  {
    id: 'compressor.identifyThirtyExact',
    title: 'the same from 30 points, states from the equation',
    budget: undefined,
    judged: 'median',
    prepare: () => inTurn(each((index) => thirty(exact, index))),
  },
  {
    id: 'compressor.modelDoubt',
    title: 'doubt of a machine known from 30 points, at one running point, one of its inputs moved',
    budget: 20e-6,
    judged: 'median',
    prepare: () => {
      const identified = identifyMachine(thirty(inTables, 0));
      const { path, estimate } = identified.influences[0]!;
      const machine = compressorWith(identified, { [path]: estimate.high });
      return (index) => {
        const at = { fluid: 'R134a', evaporating: 250 + (index % 64) / 4, condensing: 315, supply };
        return modelDoubt(identified, machine, at).flow.halfWidth;
      };
    },
  },
];
