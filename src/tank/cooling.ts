// How fast the water cools when nothing heats it: time constant, and the time to fall by some kelvins with the loss falling as
// the water cools. Heater, pumps and lights are off; room, outdoors and ground stay as they are. The heat capacity is that of
// the water alone: glass, sand, rock and the stand store heat too, so a real tank cools rather slower than this says.

import { ConvergenceError, requireFinite, requirePositive } from '../numerics/index.ts';
import type { TankConditions, TankDescription } from './description.ts';
import { tankHeatOf } from './tank-heat.ts';
import { tankLoad } from './tank-load.ts';

/**
 * Time constant τ of a tank: how long it would take to the temperature at which it loses nothing, kept at the rate of now.
 *     τ = C / UA
 * @param capacity     C [J/K], of the water
 * @param conductance  UA [W/K], change of the loss per kelvin of water temperature, > 0
 * @returns            τ [s]
 * @throws InputError unless both are above 0
 * Validity: a loss that is linear in the water temperature; evaporation bends it, so τ grows as the water cools.
 * Source: lumped heat capacity, any textbook of heat transfer. Worked value: 200 kg · 4182 J/(kg K), 8 W/K → 29.042 h.
 */
export function timeConstant(capacity: number, conductance: number): number {
  requirePositive('capacity', capacity);
  requirePositive('conductance', conductance);
  return capacity / conductance;
}

/**
 * Time t for the water to fall by some kelvins where the loss is linear in its temperature.
 *     t = −(C / UA) ln(1 − UA ΔT / Q)
 * @param capacity     C [J/K]
 * @param conductance  UA [W/K], > 0
 * @param loss         Q [W], at the start
 * @param fall         ΔT [K], > 0
 * @returns            t [s]; null where the water comes to rest before, UA ΔT ≥ Q
 * @throws InputError unless capacity, conductance and fall are above 0
 * Source: lumped heat capacity, T = T_a + (T_0 − T_a) exp(−t/τ) with T_0 − T_a = Q/UA.
 * Worked value: 200 kg · 4182 J/(kg K), 8 W/K, 64 W (26 °C in 18 °C), 2 K → 8.355 h.
 */
export function fallTimeLinear(capacity: number, conductance: number, loss: number, fall: number): number | null {
  requireFinite('loss', loss);
  requirePositive('fall', fall);
  const share = (conductance * fall) / loss;
  if (loss <= 0 || share >= 1) return null;
  return -timeConstant(capacity, conductance) * Math.log(1 - share);
}

/**
 * Time t for the water to fall by some kelvins, from the mean loss on the way.
 *     t = C ΔT / Q_m,  1/Q_m = (1/ΔT) ∫ dT / Q(T)
 * @param capacity  C [J/K]
 * @param fall      ΔT [K]
 * @param meanLoss  Q_m [W], harmonic mean of the loss over the temperatures passed, > 0
 * @returns         t [s]
 * Source: energy balance C dT/dt = −Q(T). Worked value: 200 kg · 4182 J/(kg K), 2 K, 55.61 W → 8.355 h.
 */
export function fallTime(capacity: number, fall: number, meanLoss: number): number {
  return (capacity * fall) / meanLoss;
}

/**
 * Time for the water to fall by some kelvins while heater, pumps and lights are off.
 * @param tank        the tank
 * @param conditions  water at the start, and what lies around it, which stays as it is
 * @param fall        ΔT [K], > 0
 * @returns           [s]; null where the water never falls so far, or into ice
 * @throws InputError unless `fall` is above 0; whatever the load of the tank throws
 * Method: the load is computed anew at every temperature asked for (meanLoss); constant heat capacity, of the water alone.
 */
export function timeToFall(tank: TankDescription, conditions: TankConditions, fall: number): number | null {
  const [only] = timesToFall(tank, conditions, [fall]);
  return only!;
}

/** The same for several falls, each adding to the one before: in rising order. */
export function timesToFall(
  tank: TankDescription,
  conditions: TankConditions,
  falls: readonly number[],
): readonly (number | null)[] {
  const start = conditions.waterTemperature;
  const { heatCapacity } = tankLoad(tank, conditions);
  const heat = tankHeatOf(tank);
  const lossAt = (waterTemperature: number) => heat({ ...conditions, waterTemperature }).loss;
  return timesAlong(heatCapacity, lossAt, start, falls);
}

/** Fresh water freezes here [K]; the tank model ends. */
const freezing = 273.15;

/**
 * Times along one curve of cooling.
 * @param capacity  C [J/K]
 * @param lossAt    Q(T) [W] at a water temperature [K]
 * @param start     T_0 [K]
 * @param falls     ΔT [K], in rising order, > 0
 * @returns         [s] for each; null from the first that is never reached
 */
export function timesAlong(
  capacity: number,
  lossAt: (waterTemperature: number) => number,
  start: number,
  falls: readonly number[],
): readonly (number | null)[] {
  let from = start;
  let time: number | null = 0;
  return falls.map((fall) => {
    requirePositive('fall', fall);
    const to = start - fall;
    const mean: number | null = time === null || to < freezing ? null : meanLoss(lossAt, from, to);
    time = time === null || mean === null ? null : time + fallTime(capacity, from - to, mean);
    from = to;
    return time;
  });
}

/** Nodes and weights of the quadrature of Gauss and Legendre of three points, on 0 to 1. */
const nodes = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const weights = [5 / 18, 8 / 18, 5 / 18] as const;

/** A stretch over which the loss falls to less than this share of itself is halved; the quadrature errs by 1e-5 at most then. */
const steepest = 0.6;

/** So often halved that the loss is nothing but rounding. */
const mostHalvings = 60;

/**
 * Harmonic mean of the loss over the temperatures from `from` down to `to`.
 *     1/Q_m = (1/(T_1 − T_2)) ∫ dT / Q(T)
 * @returns [W]; null where the loss is not above 0 all the way
 * @throws ConvergenceError for a loss that nears 0 over ever shorter stretches
 * Accuracy: 1e-5 for a loss that falls smoothly. Source: three-point quadrature of Gauss and Legendre on halved stretches.
 */
export function meanLoss(lossAt: (waterTemperature: number) => number, from: number, to: number): number | null {
  const reciprocal = meanReciprocal(lossAt, [from, lossAt(from)], [to, lossAt(to)], 0);
  return reciprocal === null ? null : 1 / reciprocal;
}

type Point = readonly [temperature: number, loss: number];

function meanReciprocal(lossAt: (temperature: number) => number, from: Point, to: Point, depth: number): number | null {
  if (!(from[1] > 0 && to[1] > 0)) return null;
  if (to[1] >= steepest * from[1]) {
    let mean = 0;
    for (const [index, node] of nodes.entries()) {
      const loss = lossAt(from[0] + (to[0] - from[0]) * node);
      if (!(loss > 0)) return null;
      mean += weights[index]! / loss;
    }
    return mean;
  }
  if (depth === mostHalvings) throw new ConvergenceError('time to cool', depth, [from[0], to[0]], to[1]);
  const middle = (from[0] + to[0]) / 2;
  const between: Point = [middle, lossAt(middle)];
  const upper = meanReciprocal(lossAt, from, between, depth + 1);
  const lower = upper === null ? null : meanReciprocal(lossAt, between, to, depth + 1);
  return upper === null || lower === null ? null : (upper + lower) / 2;
}
