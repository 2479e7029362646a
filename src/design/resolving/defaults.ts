// Defaults that depend on other fields, as estimates: the coldest room from the usual one, the charge from
// the appliance. Defaults that are constants stand as text on the schema. Sources in words beside each.

import {
  applianceClass,
  applianceClasses,
  applianceRanges,
  type SourcedEstimate,
} from '../../parts/compressor/index.ts';
import type { Band, Estimate } from '../../quantities/index.ts';
import { surfaceMethods } from '../../tank/index.ts';
import type { ApplicationName } from '../plain.ts';
import { practice } from '../schema/field.ts';
import { type Following, followed } from './followers.ts';

/** An assumed estimate with the words of its source. */
export interface SourcedDefault {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly source: string;
  /** Which field it follows and how; absent where it stands by itself. */
  readonly following?: Following;
}

/** A field that others may follow. */
export interface Followed {
  readonly path: string;
  readonly estimate: Estimate;
}

/** The followed estimate moved by a difference with its own range; both ranges add. */
export function movedBy(field: Followed, own: Band, source: string): SourcedDefault {
  return follow(field, 'difference', own, source);
}

/** The followed estimate times a factor with its own range. Neither is negative. */
export function timesBy(field: Followed, own: Band, source: string): SourcedDefault {
  return follow(field, 'ratio', own, source);
}

/** The same value and range, for a field that is taken to be equal to another. */
export function sameAs(field: Followed, source: string): SourcedDefault {
  return movedBy(field, { low: 0, likely: 0, high: 0 }, source);
}

function follow({ path, estimate }: Followed, by: Following['by'], own: Band, source: string): SourcedDefault {
  return {
    low: followed(by, estimate.low, own.low),
    likely: followed(by, estimate.likely, own.likely),
    high: followed(by, estimate.high, own.high),
    source,
    following: { follows: path, by, own },
  };
}

/** Usual summer temperature of the room: 25 °C (23 to 28), and no end below the usual temperature. */
export function warmestRoom(usual: Estimate): SourcedDefault {
  const atLeast = (temperature: number) => Math.max(temperature, usual.likely);
  return { low: atLeast(296.15), likely: atLeast(298.15), high: atLeast(301.15), source: practice };
}

/** Sea water as the ocean's; fresh water without salt. */
export function usualSalinity(water: 'fresh' | 'sea'): SourcedDefault {
  const value = water === 'sea' ? 0.035 : 0;
  return { low: value, likely: value, high: value, source: water === 'sea' ? 'ocean water' : 'fresh water' };
}

export function usualLidThickness(material: string): SourcedDefault {
  return material === 'polycarbonateTwinWall' || material === 'pvcFoamBoard'
    ? { low: 0.006, likely: 0.01, high: 0.016, source: practice }
    : { low: 0.003, likely: 0.004, high: 0.006, source: practice };
}

export function usualEvaporationFactor(surface: 'still' | 'rippled' | 'rough'): SourcedDefault {
  const { factor } = surfaceMethods[surface];
  return { ...factor, source: `spread of published evaporation methods for a ${surface} surface` };
}

export function usualCondenserApproach(arrangement: 'intermediateLoop' | 'coilInTank'): SourcedDefault {
  return arrangement === 'intermediateLoop'
    ? { low: 7, likely: 10, high: 14, source: `${practice}, for a water loop between refrigerant and tank` }
    : { low: 4, likely: 6, high: 9, source: `${practice}, for a coil in the tank` };
}

export function usualLoopPump(arrangement: 'intermediateLoop' | 'coilInTank'): SourcedDefault {
  return arrangement === 'intermediateLoop'
    ? { low: 3, likely: 5, high: 10, source: practice }
    : { low: 0, likely: 0, high: 0, source: 'a coil in the tank has no loop pump' };
}

/**
 * Refrigerant in the circuit as built [kg]: of the appliance where it is known and was built for that fluid; else the span over
 * the appliance classes of that level built for it, over all of them where the level has none.
 */
export function usualCharge(madeFor: string, application: ApplicationName, appliance?: string): SourcedDefault {
  const ofFluid = applianceClasses.filter(({ fluids }) => fluids.includes(madeFor));
  if (ofFluid.some(({ name }) => name === appliance)) {
    const { charge } = applianceRanges(appliance!, madeFor);
    return withWords(charge, `${applianceClass(appliance!).title} as built for ${madeFor}`);
  }
  const ofLevel = ofFluid.filter((entry) => entry.application === application);
  const charges = (ofLevel.length > 0 ? ofLevel : ofFluid).map(({ name }) => applianceRanges(name, madeFor).charge);
  return {
    low: Math.min(...charges.map(({ low }) => low)),
    likely: charges.reduce((sum, { likely }) => sum + likely, 0) / charges.length,
    high: Math.max(...charges.map(({ high }) => high)),
    source: `span of the appliances known here that were built for ${madeFor}: ${charges[0]!.source}`,
  };
}

function withWords({ low, likely, high, source }: SourcedEstimate, words: string): SourcedDefault {
  return { low, likely, high, source: `${words}: ${source}` };
}
