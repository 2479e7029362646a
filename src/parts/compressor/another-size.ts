// A machine of the same kind and another size: displacement and motor in proportion, the surface of the shell as the two-thirds
// power of the volume; what is given as an intensity (velocities, transfer units, pressures, shares) stays. Leaves out that a
// larger machine of the same kind is usually a little better.

import { ConvergenceError, NoSolutionError, requirePositive } from '../../numerics/index.ts';
import type { RunningMachine } from './running.ts';

/**
 * The machine so many times as large. What its points tell of the model holds for it as it does for the machine they are of.
 * @param machine  as it runs
 * @param size     n [-], > 0; 1 the same machine
 * @throws InputError unless n is a finite number above 0
 * Source: geometric similarity, own judgement.
 */
export function ofAnotherSize(machine: RunningMachine, size: number): RunningMachine {
  requirePositive('size', size);
  const { compressor, known } = machine;
  return {
    ...machine,
    compressor: {
      ...compressor,
      displacement: displacementOfSize(size, compressor.displacement),
      shellConductance: shellConductanceOfSize(size, compressor.shellConductance),
    },
    known: known && { ...known, measured: known.measured ?? compressor },
  };
}

/** Displacement V [m³] = n V_d. Source: definition of the size. */
export function displacementOfSize(size: number, displacement: number): number {
  return size * displacement;
}

/** Conductance of the shell UA′ [W/K] = n^(2/3) UA. Source: surface of bodies alike, own judgement. Worked value: 1.2, 1.4 → 1.581 W/K. */
export function shellConductanceOfSize(size: number, shellConductance: number): number {
  return size ** (2 / 3) * shellConductance;
}

/** How many times as large, or as small, a machine may be and still be called one of its kind [-]. */
const mostTimes = 8;
/** The heat is met this closely, relative. */
const heatTolerance = 1e-10;
const mostTries = 20;

/**
 * Size n [-] with which the heat is the wanted one, by secants of ln Q over ln n: nearly straight, since only shell and leakage do not
 * grow in proportion.
 * @param heatAt  Q(n) [W], growing with n; may throw where such a machine has no running point
 * @param wanted  Q_w [W], > 0
 * @param heat    Q(1) [W], > 0
 * @returns       n with Q(n) = Q_w within 1e-10 of it
 * @throws NoSolutionError 'noSuchSize' where it would be more than 8 times as large or as small; ConvergenceError; what heatAt throws
 * Worked value: Q(n) = 300 n^0.97 W, 450 W → 1.5189.
 */
export function sizeForHeat(heatAt: (size: number) => number, wanted: number, heat: number): number {
  requirePositive('wanted', wanted);
  requirePositive('heat', heat);
  let [size, miss] = [1, Math.log(heat / wanted)];
  let slope = 1;
  for (let tries = 0; tries < mostTries; tries++) {
    if (Math.abs(miss) <= heatTolerance) return size;
    const next = size * Math.exp(-miss / slope);
    if (!(next <= mostTimes && next >= 1 / mostTimes)) throw noSuchSize(next);
    const nextMiss = Math.log(heatAt(next) / wanted);
    slope = (nextMiss - miss) / Math.log(next / size);
    [size, miss] = [next, nextMiss];
  }
  throw new ConvergenceError('size of the machine', mostTries, [size], miss, [1 / mostTimes, mostTimes]);
}

function noSuchSize(size: number): NoSolutionError {
  const message = `That heat asks for a machine ${size.toPrecision(3)} times the size of this one: another kind of machine.`;
  return new NoSolutionError(message, `1/${mostTimes} to ${mostTimes} times the size`, 'noSuchSize');
}
