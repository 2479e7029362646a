// A machine's flow and power at a place with their bands, by the rule the assessment combines ranges with: each input alone to
// its ends, upward and downward moves added as squares.

import {
  type Refrigerant,
  saturationAtDewTemperature,
  stateInLoop,
} from '../../../../src/matter/refrigerants/index.ts';
import {
  compressorWith,
  type HermeticCompressor,
  type HermeticPoint,
  hermeticPoint,
  type IdentifiedMachine,
  modelDoubt,
  type Supply,
} from '../../../../src/parts/compressor/index.ts';
import type { Band } from '../../../../src/quantities/index.ts';

/** Temperatures in K. */
export interface TestedPlace {
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number;
  readonly surroundings: number;
  readonly supply: Supply;
}

/** The bare model. */
export function modelAt(compressor: HermeticCompressor, fluid: Refrigerant, place: TestedPlace): HermeticPoint {
  const { evaporating, condensing, returnGas, surroundings, supply } = place;
  const { pressure } = saturationAtDewTemperature(fluid, evaporating).vapour;
  const suction = stateInLoop(fluid, { pressure, temperature: returnGas });
  const dischargePressure = saturationAtDewTemperature(fluid, condensing).vapour.pressure;
  return hermeticPoint(compressor, fluid, { suction, dischargePressure, surroundings, supply });
}

export interface Predicted {
  readonly massFlow: Band;
  readonly power: Band;
}

interface Values {
  readonly massFlow: number;
  readonly power: number;
}

export function predictedAt(identified: IdentifiedMachine, fluid: Refrigerant, place: TestedPlace): Predicted {
  const doubtOf = (compressor: HermeticCompressor) =>
    modelDoubt(identified, compressor, { ...place, fluid: fluid.name });
  const valuesOf = (compressor: HermeticCompressor): Values => {
    const { massFlow, power } = modelAt(compressor, fluid, place);
    const { flow, power: ofPower } = doubtOf(compressor);
    return { massFlow: massFlow * (1 + flow.correction), power: power * (1 + ofPower.correction) };
  };
  const likely = valuesOf(identified.compressor);
  const moves = identified.influences.map(({ path, estimate }) =>
    [estimate.low, estimate.high].map((value) => valuesOf(compressorWith(identified, { [path]: value }))),
  );
  const { flow, power } = doubtOf(identified.compressor);
  const model = modelAt(identified.compressor, fluid, place);
  return {
    massFlow: banded(likely.massFlow, moves.map(endsOf('massFlow')), flow.halfWidth * model.massFlow),
    power: banded(likely.power, moves.map(endsOf('power')), power.halfWidth * model.power),
  };
}

function endsOf(name: keyof Values) {
  return (ends: readonly Values[]) => ends.map((values) => values[name]);
}

/** JCGM 100:2008, 5.1.2, equation (10). */
function banded(likely: number, moves: readonly (readonly number[])[], halfWidth: number): Band {
  let [up, down] = [halfWidth ** 2, halfWidth ** 2];
  for (const ends of moves) {
    const changes = ends.map((value) => value - likely);
    up += Math.max(0, ...changes) ** 2;
    down += Math.min(0, ...changes) ** 2;
  }
  return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up) };
}
