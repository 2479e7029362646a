// Machine, exchangers and safeguards of a document -> resolved.

import type { ApplicationName, ResolvedDesign } from '../plain.ts';
import type { DesignDocument } from '../schema/design.ts';
import {
  type CompressorDescription,
  usualApplication,
  usualCharge,
  usualCompressor,
  usualCondenserApproach,
  usualDisplacement,
} from './defaults.ts';
import type { Resolver } from './resolver.ts';

export function resolveMachine(take: Resolver, document: DesignDocument): ResolvedDesign['machine'] {
  const described = document.machine.compressor;
  const application: ApplicationName = usualApplication(described);
  return {
    refrigerant: take.choice<string>('machine.refrigerant'),
    compressor: resolveCompressor(take, described),
    application: take.choice('machine.application', {
      name: application,
      source: 'follows from the description of the compressor',
    }),
    shellPlace: take.choice('machine.shellPlace'),
    enclosure: resolveEnclosure(take),
    sunkenPlace: resolveSunkenPlace(take),
    charge: take.quantity('machine.charge', () => usualCharge(described)),
    forFlammables: take.choice('machine.forFlammables'),
  };
}

function resolveCompressor(take: Resolver, described: CompressorDescription): ResolvedDesign['machine']['compressor'] {
  const path = 'machine.compressor';
  const usual = usualCompressor(described);
  const { kind, madeFor } = described;
  const details = () => ({
    speed: take.quantity(`${path}.speed`, () => usual.speed),
    clearanceRatio: take.quantity(`${path}.clearanceRatio`, () => usual.clearanceRatio),
    reexpansionExponent: take.quantity(`${path}.reexpansionExponent`, () => usual.reexpansionExponent),
    fillingFactor: take.quantity(`${path}.fillingFactor`, () => usual.fillingFactor),
    frictionPressure: take.quantity(`${path}.frictionPressure`, () => usual.frictionPressure),
    shellHeatShare: take.quantity(`${path}.shellHeatShare`, () => usual.shellHeatShare),
  });
  const compressionEfficiency = () => take.quantity(`${path}.compressionEfficiency`, () => usual.compressionEfficiency);
  switch (kind) {
    case 'salvaged': {
      const { appliance } = described;
      const displacement = take.quantity(`${path}.displacement`, () => usualDisplacement(appliance, madeFor));
      return { kind, madeFor, appliance, displacement, ...details(), compressionEfficiency: compressionEfficiency() };
    }
    case 'displacement': {
      const { application } = described;
      const displacement = take.quantity(`${path}.displacement`);
      return { kind, madeFor, displacement, application, ...details(), compressionEfficiency: compressionEfficiency() };
    }
    case 'rating': {
      const { ratingPoint } = described;
      const capacity = take.quantity(`${path}.capacity`);
      const power = take.quantity(`${path}.power`);
      return { kind, madeFor, ratingPoint, capacity, power, ...details() };
    }
  }
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
  };
}
