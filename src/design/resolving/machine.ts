// Machine, exchangers and safeguards of a document -> resolved.

import type { Estimate } from '../../quantities/index.ts';
import type { ApplicationName, ResolvedDesign } from '../plain.ts';
import type { SupplyOf } from '../plain-machine.ts';
import type { DesignDocument } from '../schema/design.ts';
import { resolveCompressor } from './compressor.ts';
import { type SourcedDefault, usualCharge, usualCondenserApproach } from './defaults.ts';
import { describeMachine, type MainsDefault } from './machine-origin.ts';
import type { Resolver } from './resolver.ts';

export function resolveMachine(take: Resolver, document: DesignDocument): ResolvedDesign['machine'] {
  const described = describeMachine(document);
  const { appliance, madeFor } = described.origin;
  const supply = resolveSupplyHere(take, described.supply);
  return {
    refrigerant: take.choice<string>('machine.refrigerant', {
      name: madeFor,
      source: 'a compressor belongs to the refrigerant it was made for',
    }),
    compressor: resolveCompressor(take, described, supply),
    application: take.choice<ApplicationName>('machine.application', described.application),
    count: take.quantity('machine.count'),
    supply,
    shellPlace: take.choice('machine.shellPlace'),
    enclosure: resolveEnclosure(take),
    sunkenPlace: resolveSunkenPlace(take),
    charge: take.quantity('machine.charge', () => usualCharge(madeFor, described.application.name, appliance)),
    forFlammables: take.choice('machine.forFlammables'),
  };
}

/** The voltage of a socket may be a twentieth off its nominal value, either way. */
const voltageSpread = 0.05;

function resolveSupplyHere(take: Resolver, usual: MainsDefault): SupplyOf<Estimate> {
  const { frequency, frequencySource, voltage, voltageSource } = usual;
  return {
    frequency: take.quantity('machine.supply.frequency', () => around(frequency, 0, frequencySource)),
    voltage: take.quantity('machine.supply.voltage', () => around(voltage, voltageSpread, voltageSource)),
  };
}

function around(likely: number, spread: number, source: string): SourcedDefault {
  return { low: likely * (1 - spread), likely, high: likely * (1 + spread), source };
}

function resolveEnclosure(take: Resolver): ResolvedDesign['machine']['enclosure'] {
  const kind = take.choice<'openRoom' | 'closedCabinet' | 'hood'>('machine.enclosure.kind');
  return kind === 'openRoom' ? { kind } : { kind, volume: take.quantity('machine.enclosure.volume') };
}

function resolveSunkenPlace(take: Resolver): ResolvedDesign['machine']['sunkenPlace'] {
  const kind = take.choice<'unknown' | 'none' | 'pit'>('machine.sunkenPlace.kind');
  return kind === 'pit' ? { kind, volume: take.quantity('machine.sunkenPlace.volume') } : { kind };
}

export function resolveSafeguards(take: Resolver, wettedMetal: string): ResolvedDesign['safeguards'] {
  type Safeguards = ResolvedDesign['safeguards'];
  const choice = <Name extends keyof Safeguards>(name: Name, matters = true) =>
    take.choice<Safeguards[Name]>(`safeguards.${name}`, undefined, matters);
  return {
    overTemperatureCutOut: choice('overTemperatureCutOut'),
    residualCurrentProtection: choice('residualCurrentProtection'),
    airPumpIntake: choice('airPumpIntake'),
    sockets: choice('sockets'),
    dripLoops: choice('dripLoops'),
    machineLevel: choice('machineLevel'),
    metalEarthed: choice('metalEarthed', wettedMetal !== 'polymer'),
  };
}

export function resolveExchangers(take: Resolver): ResolvedDesign['exchangers'] {
  const evaporatorApproach = take.quantity('exchangers.evaporatorApproach');
  const suctionPressureLimit = take.quantityIfGiven('exchangers.suctionPressureLimit');
  const condenserArrangement = take.choice<'intermediateLoop' | 'coilInTank'>('exchangers.condenserArrangement');
  return {
    evaporatorApproach,
    condenserApproach: take.quantity('exchangers.condenserApproach', () =>
      usualCondenserApproach(condenserArrangement),
    ),
    condenserArrangement,
    wettedMetal: take.choice('exchangers.wettedMetal'),
    tubeDiameter: take.quantity('exchangers.tubeDiameter'),
    superheat: take.quantity('exchangers.superheat'),
    subcooling: take.quantity('exchangers.subcooling'),
    airSpeed: take.quantity('exchangers.airSpeed'),
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
  };
}
