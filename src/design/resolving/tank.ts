// The tank of a document -> resolved: its load by measurement, or by its sizes (sized-tank.ts), which are read where a design has
// them: that part is handed over (assess/every-tank/).

import type { ResolvedDesign } from '../plain.ts';
import { type Followed, sameAs } from './defaults.ts';
import type { Resolver } from './resolver.ts';
import type { resolveSizedLoad } from './sized-tank.ts';

type Load = ResolvedDesign['tank']['load'];

const load = 'tank.load';

/** What the resolved load may follow. */
export interface LoadSurroundings {
  readonly room: Followed;
  readonly water: Followed;
}

let sizedLoad: typeof resolveSizedLoad | undefined;

export function addSizedLoads(resolve: typeof resolveSizedLoad): void {
  sizedLoad = resolve;
}

/** @throws Error where the load is by sizes and what reads them was not handed over: a fault of the program, not of the design */
export function resolveLoad(take: Resolver, around: LoadSurroundings): Load {
  const kind = take.choice<Load['kind']>(`${load}.kind`);
  if (kind === 'measured') return resolveMeasured(take, around);
  if (sizedLoad === undefined) throw new Error('what reads the sizes of tanks was not handed over: addSizedLoads');
  return sizedLoad(take, around, kind);
}

function resolveMeasured(take: Resolver, around: LoadSurroundings): Extract<Load, { readonly kind: 'measured' }> {
  return {
    kind: 'measured',
    ...resolveMeasurement(take, load, around),
    volume: take.quantity(`${load}.volume`),
    evaporationShare: take.quantity(`${load}.evaporationShare`),
    ...resolveGains(take),
  };
}

/** What a heater used, and how warm room and water were. */
export function resolveMeasurement(take: Resolver, path: string, { room, water }: LoadSurroundings) {
  const measured = 'taken to be as usual while it was measured';
  return {
    energy: take.quantity(`${path}.energy`),
    duration: take.quantity(`${path}.duration`),
    roomTemperature: take.quantity(`${path}.roomTemperature`, () => sameAs(room, measured)),
    waterTemperature: take.quantity(`${path}.waterTemperature`, () => sameAs(water, measured)),
  };
}

/** What stays in the water of pumps and lights. */
export function resolveGains(take: Resolver) {
  const pumpPower = take.quantity(`${load}.pumpPower`);
  const lightPower = take.quantity(`${load}.lightPower`);
  const hasLight = lightPower.high > 0;
  return {
    pumpPower,
    pumpShareToWater: take.quantity(`${load}.pumpShareToWater`, undefined, pumpPower.high > 0),
    lightPower,
    lightHours: take.quantity(`${load}.lightHours`, undefined, hasLight),
    lightShareToWater: take.quantity(`${load}.lightShareToWater`, undefined, hasLight),
  };
}
