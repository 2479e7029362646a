// Version 1 -> 2. A compressor was described in one of three ways, by numbers of a simpler model. Now it is described by
// whatever is known of it. What the present model has no place for is left out, and told.

import { readQuantity } from '../../quantities/index.ts';
import type { DesignNotice } from '../notices.ts';
import type { Part } from '../paths.ts';
import type { Migrated } from './migrations.ts';

const path = 'machine.compressor';

/** Numbers of the former model without an equal, and why. */
const withoutEqual: Readonly<Record<string, string>> = {
  reexpansionExponent: 'how the gas left in the clearance expands follows from the fluid now',
  fillingFactor: 'warm gas, valves and leakage are computed one by one now',
  shellHeatShare: 'the heat of the shell follows from the air around it now',
  compressionEfficiency: 'losses are computed one by one now',
};

/** Fields that each kind had beside those that stay where they are. */
const movedFields: Readonly<Record<string, readonly string[]>> = {
  salvaged: ['speed'],
  displacement: ['speed', 'application'],
  rating: ['speed', 'ratingPoint', 'capacity', 'power'],
};

export function machineByWhatIsKnown(document: Part): Migrated {
  const { machine } = document;
  const former = isPart(machine) ? machine.compressor : undefined;
  // Anything else was no version 1 either: what is wrong with it is told when it is checked.
  if (!isPart(machine) || !isPart(former)) return { document, notices: [] };
  const kind = String(former.kind);
  const moved = movedFields[kind];
  if (moved === undefined) return { document, notices: [] };
  const isKept = (name: string) => name !== 'kind' && !moved.includes(name) && !(name in withoutEqual);
  const kept = Object.fromEntries(Object.entries(former).filter(([name]) => isKept(name)));
  const turned = slipFrom(former.speed);
  const levelled = applicationFrom(machine, kind === 'displacement' ? former.application : undefined);
  const compressor = { ...kept, ...(kind === 'rating' ? { ratings: [ratingFrom(former)] } : {}), ...turned.compressor };
  const leftOut = Object.keys(withoutEqual).filter((name) => name in former);
  return {
    document: { ...document, machine: { ...levelled.machine, compressor, ...turned.machine } },
    notices: [
      ...leftOut.map((name) => notice('leftOut', name, former[name], withoutEqual[name]!)),
      ...turned.notices,
      ...levelled.notices,
    ],
  };
}

function ratingFrom({ ratingPoint, capacity, power }: Part): Part {
  return {
    at: { kind: 'named', ...(ratingPoint === undefined ? {} : { point: ratingPoint }) },
    ...(capacity === undefined ? {} : { capacity }),
    ...(power === undefined ? {} : { power }),
  };
}

/** What the machine was made for stood beside its displacement; that of the machine went before it. */
function applicationFrom(machine: Part, application: unknown) {
  const isTold = application !== undefined;
  if (!isTold || machine.application === undefined) {
    return { machine: isTold ? { ...machine, application } : machine, notices: [] };
  }
  if (machine.application === application) return { machine, notices: [] };
  const now = `machine.application says ${String(machine.application)}, and a machine is made for one level`;
  return { machine, notices: [notice('leftOut', 'application', application, now)] };
}

interface Turned {
  readonly compressor: Part;
  readonly machine: Part;
  readonly notices: readonly DesignNotice[];
}

/** Of a two-pole motor the speed is told by the slip now, behind mains of 50 or 60 Hz. */
function slipFrom(speed: unknown): Turned {
  if (speed === undefined) return { compressor: {}, machine: {}, notices: [] };
  const read = typeof speed === 'string' ? readQuantity(speed, 'frequency') : undefined;
  const mains = read?.ok === true && read.estimate.likely > 50 ? 60 : 50;
  if (read?.ok !== true || read.estimate.high > mains || read.estimate.low < leastSpeed * mains) {
    const now =
      'no two-pole motor turns like that on mains of 50 or 60 Hz, and its speed follows from mains and load now';
    return { compressor: {}, machine: {}, notices: [notice('leftOut', 'speed', speed, now)] };
  }
  const { low, likely, high } = read.estimate;
  const [least, usual, most] = [high, likely, low].map((turns) => Number((100 * (1 - turns / mains)).toPrecision(4)));
  const slip = least === most ? `${usual} %` : `${usual} % (${least} to ${most})`;
  const frequency = `${mains} Hz`;
  return {
    compressor: { nameplate: { frequency }, slip },
    machine: { supply: { frequency } },
    notices: [notice('readAs', 'speed', speed, `a slip of ${slip} behind mains of ${frequency}`)],
  };
}

/** Share of the speed of the field below which no motor runs for long. */
const leastSpeed = 0.85;

function notice(code: DesignNotice['code'], name: string, received: unknown, now: string): DesignNotice {
  return { code, path: `${path}.${name}`, received: String(received).slice(0, 60), now };
}

function isPart(value: unknown): value is Part {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
