// The uncertain inputs of an assessment, those of the design's fields and those inside the models in one list, and the design
// with one of them changed: what follows the changed one moves with it.

import { type Follower, type Resolution, uncertainInputs, withFollowers } from '../design/index.ts';
import type { IdentifiedMachine } from '../parts/compressor/index.ts';
import type { DoubtfulInput } from './doubt/doubt.ts';
import { engineAssumptions, type StagedDesign } from './stages/engine-assumptions.ts';
import { valueAt } from './stages/machine.ts';
import { standardTankFactors } from './stages/tank/tank-assumptions.ts';

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

/**
 * Every input whose ends differ, the design's first; a default that follows another field with its own spread only.
 * @param resolution  the design with its ranges
 * @param design      the same as the stages read it
 * @param identified  the machine, for what its points leave open and no field holds; undefined where none is asked about
 */
export function doubtfulInputs(
  resolution: Resolution,
  design: StagedDesign,
  identified?: IdentifiedMachine,
): readonly NamedInput[] {
  const fields = uncertainInputs(resolution);
  const known = new Set(fields.map(({ path }) => path));
  const open = identified?.influences.filter(({ path, estimate }) => estimate.low < estimate.high && !known.has(path));
  return [
    ...fields,
    ...(open ?? []).map(({ path, label, estimate, quantity }) => ({ path, label, estimate, quantity })),
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
  if (path.startsWith(engine)) {
    return { ...design, engine: { ...design.engine, [path.slice(engine.length)]: value } };
  }
  if (isOpen(design, path)) return { ...design, open: { ...design.open, [path]: value } };
  const { engine: values, states, described, open, wrapped } = design;
  const changed = { ...withFollowers(design, followers, path, value), engine: values, states, described, open };
  return wrapped === undefined ? changed : { ...changed, wrapped };
}

/** Whether an input of the compressor is no field of the design. */
function isOpen({ machine }: StagedDesign, path: string): boolean {
  return path.startsWith('machine.compressor.') && valueAt(machine.compressor, path) === undefined;
}
