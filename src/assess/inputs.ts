// The uncertain inputs of an assessment, those of the design's fields and those inside the models in one list, and the design
// with one of them changed: what follows the changed one moves with it.

import { type Follower, type Resolution, uncertainInputs, withFollowers } from '../design/index.ts';
import type { DoubtfulInput } from './doubt/doubt.ts';
import { engineAssumptions, type StagedDesign } from './stages/engine-assumptions.ts';
import { standardTankFactors } from './stages/tank-assumptions.ts';

/** Paths of the assumptions inside the models begin with this. */
const engine = 'engine.';

/** Of tank, place and room what no heat balance of the tank reads. */
const unreadByTank = ['tank.livestock', 'place.region', 'room.height'];

/** Whether the heat balance of the tank, in one room or another, may read the value at this path. */
export function isTankInput(path: string): boolean {
  if (path.startsWith(engine)) return Object.hasOwn(standardTankFactors, path.slice(engine.length));
  return ['tank.', 'place.', 'room.'].some((part) => path.startsWith(part)) && !unreadByTank.includes(path);
}

/** An uncertain input and the quantity it is of. */
export interface NamedInput extends DoubtfulInput {
  readonly quantity: string;
}

/** Every input whose ends differ, the design's first; a default that follows another field with its own spread only. */
export function doubtfulInputs(resolution: Resolution, design: StagedDesign): readonly NamedInput[] {
  return [
    ...uncertainInputs(resolution),
    ...engineAssumptions(design).map(({ key, label, estimate, quantity }) => {
      return { path: `${engine}${key}`, label, estimate, quantity };
    }),
  ];
}

/** The design with one input changed, and with it the defaults that follow it. */
export function withInput(
  design: StagedDesign,
  followers: readonly Follower[],
  path: string,
  value: number,
): StagedDesign {
  if (!path.startsWith(engine)) {
    const { engine: values, states, wrapped } = design;
    const changed = { ...withFollowers(design, followers, path, value), engine: values, states };
    return wrapped === undefined ? changed : { ...changed, wrapped };
  }
  return { ...design, engine: { ...design.engine, [path.slice(engine.length)]: value } };
}
