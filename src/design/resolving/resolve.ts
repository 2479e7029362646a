// Document -> resolved design: every number an Estimate in base SI, typed or assumed, every choice made; and the list of what
// was assumed, each with the words of its source. No physics: a default that depends on other fields comes from defaults.ts.

import type { Estimate, QuantityName } from '../../quantities/index.ts';
import { fieldRecord, fullLabel } from '../field-records.ts';
import { type Assumption, estimatesIn, type ResolvedDesign } from '../plain.ts';
import type { DesignDocument } from '../schema/design.ts';
import { type Followed, usualLoopPump, usualSalinity } from './defaults.ts';
import { type Follower, ownSpread } from './followers.ts';
import { resolveExchangers, resolveMachine, resolveSafeguards } from './machine.ts';
import { resolvePlace, resolveRoom, resolveSource } from './place.ts';
import { Resolver } from './resolver.ts';
import { resolveLoad } from './tank.ts';
import { resolveWrapping } from './wrapping.ts';

export interface Resolution {
  readonly design: ResolvedDesign;
  /** What was not given, part by part; of a machine its mains first, from which others follow. */
  readonly assumptions: readonly Assumption[];
  /** Which of the assumptions follow another field, and how. */
  readonly followers: readonly Follower[];
}

/** A number of the design that may be varied by itself. */
export interface UncertainInput {
  readonly path: string;
  readonly label: string;
  readonly quantity: QuantityName;
  /** Between which ends; of a follower its own spread only. */
  readonly estimate: Estimate;
}

/** Fills a valid document in. @throws InputError only for a document that was never checked. */
export function resolveDesign(document: DesignDocument): Resolution {
  const take = new Resolver(document);
  const place = resolvePlace(take, document);
  const electricity = take.quantity('prices.electricity');
  const room = resolveRoom(take, { path: 'prices.electricity', estimate: electricity });
  const tank = resolveTank(take, { path: 'room.temperature', estimate: room.temperature });
  const wrapping = resolveWrapping(take);
  const source = resolveSource(take);
  const machine = resolveMachine(take, document);
  const exchangers = resolveExchangers(take);
  const power = {
    fan: take.quantity('power.fan'),
    loopPump: take.quantity('power.loopPump', () => usualLoopPump(exchangers.condenserArrangement)),
    controls: take.quantity('power.controls'),
    crankcaseHeater: take.quantity('power.crankcaseHeater'),
  };
  const safeguards = resolveSafeguards(take, exchangers.wettedMetal);
  const prices = resolvePrices(take, document, electricity);
  const design = {
    name: document.name,
    place,
    room,
    tank,
    wrapping,
    source,
    machine,
    exchangers,
    power,
    safeguards,
    prices,
  };
  return { design, assumptions: take.assumptions, followers: take.followers };
}

/**
 * Every number of a resolved design whose ends differ, with its label. A default that follows another field is listed with
 * its own spread, and only where it has one: the rest of its range is the followed field's, which is varied as itself.
 */
export function uncertainInputs({ design, followers }: Resolution): readonly UncertainInput[] {
  const byPath = new Map(followers.map((follower) => [follower.path, follower]));
  const likely = new Map(estimatesIn(design).map(({ path, estimate }) => [path, estimate.likely]));
  return estimatesIn(design).flatMap(({ path, estimate }) => {
    const follower = byPath.get(path);
    const varied = follower === undefined ? estimate : ownSpread(follower, estimate, likely.get(follower.follows)!);
    if (varied.low >= varied.high) return [];
    const record = fieldRecord(path);
    return [{ path, label: fullLabel(record!), quantity: record!.quantity!, estimate: varied }];
  });
}

function resolveTank(take: Resolver, room: Followed): ResolvedDesign['tank'] {
  const waterTemperature = take.quantity('tank.waterTemperature');
  const water = take.choice<'fresh' | 'sea'>('tank.water');
  return {
    waterTemperature,
    water,
    salinity: take.quantity('tank.salinity', () => usualSalinity(water)),
    livestock: take.choice('tank.livestock'),
    load: resolveLoad(take, { room, water: { path: 'tank.waterTemperature', estimate: waterTemperature } }),
  };
}

function resolvePrices(take: Resolver, { prices }: DesignDocument, electricity: Estimate): ResolvedDesign['prices'] {
  return {
    currency: prices.currency,
    electricity,
    loopParts: take.quantity('prices.loopParts'),
    heater: take.quantity('prices.heater'),
    certifiedHeatPump: take.quantity('prices.certifiedHeatPump'),
    certifiedCop: take.quantity('prices.certifiedCop'),
    life: take.quantity('prices.life'),
    discountRate: take.quantity('prices.discountRate'),
  };
}
