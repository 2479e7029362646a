// Finds the running point: passes through the machine until nothing moves, by Newton's method on the four unknowns of a pass.

import type { Refrigerant, State } from '../../../matter/refrigerants/index.ts';
import { ConvergenceError, NoSolutionError, OutOfModelError } from '../../../numerics/index.ts';
import { firstGuess } from './first-guess.ts';
import type { HermeticCompressor } from './parameters.ts';
import { type Pass, passThrough, type Running, type RunningConditions, runningOf, type Unknowns } from './pass.ts';
import { type Change, responseOf } from './response.ts';

/** The pass at which nothing moved, and how many it took. */
export interface Settled {
  readonly pass: Pass;
  readonly iterations: number;
}

/** Change over a pass, relative, below which a point is settled. */
const tolerance = 1e-10;
/** Change of everything else below which a flow that still wants past its bound is refused. */
const refusalTolerance = 1e-6;
const mostPasses = 60;
/** Steps that may be taken back halfway before a refusal stands. */
const mostRetreats = 8;
/** The gas may not lose more than this share of its pressure in the suction path. */
const largestSuctionLoss = 0.5;
/** Of the swept flow: below it there is none. */
const leastFlow = 1e-4;

/**
 * @param compressor  the machine
 * @param fluid       refrigerant in it
 * @param at          where it runs
 * @param isentropic  state at discharge pressure and the entropy of the suction gas
 * @throws NoSolutionError 'noFlow', 'chokedSuction'; ConvergenceError; what the refrigerant's equation throws
 */
export function settledPass(
  compressor: HermeticCompressor,
  fluid: Refrigerant,
  at: RunningConditions,
  isentropic: State,
): Settled {
  const running = runningOf(compressor, fluid, at);
  const most = chokingFlow(compressor, at);
  const least = leastFlow * at.suction.density * compressor.displacement * at.supply.frequency;
  let unknowns = below(most, firstGuess(running, isentropic));
  let before: Pass | undefined;
  let residual = Number.POSITIVE_INFINITY;
  let retreats = 0;
  for (let iterations = 1; iterations <= mostPasses; iterations++) {
    const pass = passOrRefusal(running, unknowns);
    if (pass instanceof OutOfModelError) {
      if (before === undefined || retreats === mostRetreats) throw pass;
      unknowns = midway(before.from, unknowns);
      retreats++;
      continue;
    }
    const isChoked = pass.from.massFlow >= most && pass.image.massFlow >= most;
    residual = moved(pass, isChoked);
    if (isChoked && residual < refusalTolerance) throw choked(at.suction.pressure);
    if (residual < tolerance) return { pass, iterations };
    if (pass.image.massFlow > 0) {
      unknowns = below(most, stepped(running, pass, before, isChoked));
      before = pass;
    } else {
      if (pass.from.massFlow < least) throw noFlow(at);
      unknowns = { ...pass.from, massFlow: pass.from.massFlow / 2 };
    }
  }
  throw new ConvergenceError('running point', mostPasses, [at.suction.pressure, at.dischargePressure], residual);
}

/** A pass, or what the refrigerant's equation refuses on its way: a step may have gone too far. */
function passOrRefusal(running: Running, unknowns: Unknowns): Pass | OutOfModelError {
  try {
    return passThrough(running, unknowns);
  } catch (error) {
    if (error instanceof OutOfModelError) return error;
    throw error;
  }
}

function midway(one: Unknowns, other: Unknowns): Unknowns {
  return {
    wallTemperature: (one.wallTemperature + other.wallTemperature) / 2,
    massFlow: (one.massFlow + other.massFlow) / 2,
    compressedEnthalpy: (one.compressedEnthalpy + other.compressedEnthalpy) / 2,
    compressedDensity: (one.compressedDensity + other.compressedDensity) / 2,
  };
}

/** Flow at which the suction path takes `largestSuctionLoss` of the pressure [kg/s]; infinite where it takes nothing. */
function chokingFlow(compressor: HermeticCompressor, { suction }: RunningConditions): number {
  const { displacement, ratedSupply, suctionVelocity } = compressor;
  const velocity = Math.sqrt((2 * largestSuctionLoss * suction.pressure) / suction.density);
  return (velocity / suctionVelocity) * suction.density * displacement * ratedSupply.frequency;
}

function below(mostFlow: number, unknowns: Unknowns): Unknowns {
  return unknowns.massFlow <= mostFlow ? unknowns : { ...unknowns, massFlow: mostFlow };
}

/** Largest relative change over a pass; that of a choked flow counts as none. */
function moved({ from, image }: Pass, isChoked: boolean): number {
  return Math.max(
    Math.abs(image.wallTemperature / from.wallTemperature - 1),
    isChoked ? 0 : Math.abs(image.massFlow / from.massFlow - 1),
    Math.abs(image.compressedEnthalpy / from.compressedEnthalpy - 1),
    Math.abs(image.compressedDensity / from.compressedDensity - 1),
  );
}

/** Newton's step x + (1 − ∂image/∂x)⁻¹ (image − x). */
function stepped(running: Running, pass: Pass, before: Pass | undefined, isChoked: boolean): Unknowns {
  const { from, image } = pass;
  const response = responseOf(running, pass, before);
  const system = new Float64Array(size * (size + 1));
  for (let column = 0; column < size; column++) {
    const answer = response(directions[column]!);
    for (let row = 0; row < size; row++) {
      system[row * (size + 1) + column] = directions[column]![row]! - answer[row]!;
    }
  }
  system[4] = image.massFlow - from.massFlow;
  system[9] = image.compressedEnthalpy - from.compressedEnthalpy;
  system[14] = image.compressedDensity - from.compressedDensity;
  system[19] = image.wallTemperature - from.wallTemperature;
  // A flow held at its bound does not move, and nothing follows from its wanting to.
  if (isChoked) system.set([1, 0, 0, 0, 0]);
  const [flow, enthalpy, density, wall] = solved(system);
  // Further than that the slopes say nothing.
  const share = Math.min(
    1,
    (largestWarming * from.wallTemperature) / Math.abs(wall),
    (largestChange * from.massFlow) / Math.abs(flow),
    (largestChange * from.compressedDensity) / Math.abs(density),
  );
  return {
    wallTemperature: from.wallTemperature + share * wall,
    massFlow: from.massFlow + share * flow,
    compressedEnthalpy: from.compressedEnthalpy + share * enthalpy,
    compressedDensity: from.compressedDensity + share * density,
  };
}

/** Longest step of the wall, and of flow and density, relative. */
const largestWarming = 0.15;
const largestChange = 0.5;

const size = 4;
const directions: readonly Change[] = [
  [1, 0, 0, 0],
  [0, 1, 0, 0],
  [0, 0, 1, 0],
  [0, 0, 0, 1],
];

/**
 * Elimination in the order given. A pivot, 1 less what an unknown brings back of itself, is held above `leastPivot`: where a
 * machine heats itself nearly without end the step then still goes the way the pass went.
 */
function solved(system: Float64Array): Change {
  const wide = size + 1;
  for (let pivot = 0; pivot < size; pivot++) {
    const held = Math.max(leastPivot, system[pivot * wide + pivot]!);
    for (let column = pivot + 1; column < wide; column++) system[pivot * wide + column]! /= held;
    for (let row = pivot + 1; row < size; row++) {
      const factor = system[row * wide + pivot]!;
      for (let column = pivot + 1; column < wide; column++) {
        system[row * wide + column]! -= factor * system[pivot * wide + column]!;
      }
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    for (let column = row + 1; column < size; column++) {
      system[row * wide + size]! -= system[row * wide + column]! * system[column * wide + size]!;
    }
  }
  return [system[4]!, system[9]!, system[14]!, system[19]!];
}

const leastPivot = 0.05;

function noFlow({ suction, dischargePressure }: RunningConditions): NoSolutionError {
  const ratio = (dischargePressure / suction.pressure).toPrecision(4);
  return new NoSolutionError(
    `At a pressure ratio of ${ratio} what re-expands and leaks fills the whole stroke: no flow.`,
    'a lower pressure ratio, a smaller clearance or less leakage',
    'noFlow',
  );
}

function choked(pressure: number): NoSolutionError {
  return new NoSolutionError(
    `The suction path would take more than half of the suction pressure of ${pressure.toPrecision(4)} Pa.`,
    'less flow, or a wider suction path',
    'chokedSuction',
  );
}
