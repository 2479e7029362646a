// Values that no machine of the described size can have, refused before anything is fitted: more flow than the displacement
// sweeps, less power than isentropic compression takes.

import { NoSolutionError } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { hermeticParameters } from '../hermetic/parameters.ts';
import { fromScale, parameterScales } from './coordinates.ts';
import type { MachineDescription } from './evidence.ts';
import type { PreparedPoint } from './points.ts';
import type { Prior } from './priors.ts';

/** So many σ beyond its likely value a displacement counts as excluded. */
const excludedAt = 3;

/**
 * @throws NoSolutionError 'moreThanSwept' with the largest possible value, 'belowIsentropic' with the least possible power
 */
export function requirePossiblePoints(
  description: MachineDescription,
  prior: Prior,
  points: readonly PreparedPoint[],
): void {
  const displacement = largestDisplacement(prior);
  for (const point of points) {
    requireSwept(description, point, displacement);
    requireIsentropic(description, point);
  }
}

function largestDisplacement({ centre, spread, values }: Prior): number {
  const index = hermeticParameters.indexOf('displacement');
  if (spread[index] === 0) return values[index]!;
  return fromScale(parameterScales.displacement, centre[index]! + excludedAt * spread[index]!);
}

/** Flow [kg/s] that the point says at least: low ends of flow or capacity and of the factor of its series. */
function leastFlow(description: MachineDescription, { evidence, refrigeratingEffect }: PreparedPoint) {
  const factor = seriesFactor(description, evidence.series, 'flowFactor');
  const { massFlow, capacity } = evidence.given;
  const told = [
    massFlow === undefined ? undefined : { name: 'massFlow' as const, flow: massFlow.low * factor.low },
    capacity === undefined
      ? undefined
      : { name: 'capacity' as const, flow: (capacity.low * factor.low) / refrigeratingEffect },
  ];
  return told.filter((each) => each !== undefined);
}

function seriesFactor(description: MachineDescription, path: string | undefined, name: 'flowFactor' | 'powerFactor') {
  const found = description.series.find((series) => series.path === path);
  return found?.[name] ?? ({ low: 1, likely: 1, high: 1 } satisfies Pick<Estimate, 'low' | 'likely' | 'high'>);
}

function requireSwept(description: MachineDescription, point: PreparedPoint, displacement: number): void {
  const { evidence, conditions, refrigeratingEffect } = point;
  const largest = displacement * evidence.supply.frequency * conditions.suction.density;
  for (const { name, flow } of leastFlow(description, point)) {
    if (flow <= largest) continue;
    const most =
      name === 'capacity' ? `${(largest * refrigeratingEffect).toPrecision(3)} W` : `${largest.toPrecision(3)} kg/s`;
    throw new NoSolutionError(
      `${evidence.path}.${name}: takes more gas than ${displacement.toPrecision(3)} m³ sweep at ${evidence.supply.frequency} Hz.`,
      `at most ${most} with every stroke filled: check ${sizeToCheck(description)}, the unit, the fluid and the temperatures it holds at`,
      'moreThanSwept',
    );
  }
}

/** Where the displacement comes from. */
function sizeToCheck({ prior }: MachineDescription): string {
  return prior.displacement.estimate.origin === 'typed'
    ? 'the displacement'
    : 'what tells the size (the appliance, the dome, or a displacement where it is known)';
}

function requireIsentropic(description: MachineDescription, point: PreparedPoint): void {
  const { evidence, isentropicWork } = point;
  const { power } = evidence.given;
  if (power === undefined) return;
  const most = power.high * seriesFactor(description, evidence.series, 'powerFactor').high;
  for (const { name, flow } of leastFlow(description, point)) {
    const least = flow * isentropicWork;
    if (most >= least) continue;
    throw new NoSolutionError(
      `${evidence.path}.power: less than isentropic compression of the stated ${name === 'capacity' ? 'capacity' : 'mass flow'} takes.`,
      `at least ${least.toPrecision(3)} W at these temperatures: check the units, and that power is electric`,
      'belowIsentropic',
    );
  }
}
