// Other refrigerants in the same machine, in the coldest spell of the design: what they would do to flow, power, pressures and motor,
// and why not to. For study only, but for the fluid it was made for.

import {
  type CatalogueEntry,
  catalogueEntry,
  hasCoefficientFile,
  isStudyOnly,
  type Oil,
} from '../../../matter/refrigerants/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import { compressorFluids, modelDoubt, oilChoices, usualOil } from '../../../parts/compressor/index.ts';
import { listed, type QuantityName } from '../../../quantities/index.ts';
import { bandWithUnit } from '../../answers/pieces.ts';
import type { StagedDesign } from '../../stages/engine-assumptions.ts';
import { exactStates } from '../../stages/states.ts';
import { fluidFindings } from '../fluid-findings.ts';
import type { CompatibilityFact, OtherFluid } from './answer.ts';
import type { LimitsOfMachine } from './limits.ts';
import { type LoopRun, type MachineSubject, settledAt } from './subject.ts';
import { type Variants, variedNumbers } from './variants.ts';

/**
 * The fluid the machine was made for, the one of the design, and others that such machines are built for as far as their equations
 * are at hand.
 */
export function otherFluids(
  subject: Pick<MachineSubject, 'design' | 'results'>,
  variants: Variants<LoopRun>,
  envelope: LimitsOfMachine,
): readonly OtherFluid[] {
  const { refrigerant, compressor } = subject.design.machine;
  const others = compressorFluids.filter(hasCoefficientFile);
  const names = [...new Set([compressor.madeFor, refrigerant, ...others])];
  return names.map((fluid) => ({
    ...factsOf(subject.design, fluid),
    point: pointOn(subject, variants, envelope, fluid),
  }));
}

function factsOf(design: StagedDesign, fluid: string): Omit<OtherFluid, 'point'> {
  const { machine } = design;
  const { madeFor } = machine.compressor;
  const entry = catalogueEntry(fluid);
  const isMadeFor = fluid === madeFor;
  return {
    fluid,
    safetyClass: entry.safetyClass,
    isMadeFor,
    forStudyOnly: !isMadeFor || isStudyOnly(fluid),
    stops: fluidFindings(design, fluid).filter(({ severity }) => severity === 'stop'),
    oil: oilOf(entry, machine.compressor.oil, madeFor),
    materials: materialsOf(entry, madeFor),
  };
}

/** Whether the oil that is, or usually is, in the machine suits the fluid. */
function oilOf(entry: CatalogueEntry, oil: Oil | 'unknown', madeFor: string): CompatibilityFact {
  const { source } = entry.sources.usualOils;
  const usual = listed(entry.usualOils.map(oilTitle), 'or');
  if (entry.name === madeFor) return { suits: 'yes', words: `Made for it; usually with ${usual}.`, source };
  const inIt = oil === 'unknown' ? usualOil(madeFor) : [oil];
  const suiting = inIt.filter((each) => entry.usualOils.includes(each));
  const filled = `${oil === 'unknown' ? 'usually filled' : 'filled'} with ${listed(inIt.map(oilTitle), 'or')}`;
  const words = `${entry.name} is usual with ${usual}; this machine is ${filled}.`;
  if (suiting.length === 0) return { suits: 'no', words: `${words} The oil would not come back to the dome.`, source };
  return suiting.length === inIt.length
    ? { suits: 'yes', words, source }
    : { suits: 'unknown', words: `${words} Which oil it is decides.`, source };
}

function oilTitle(oil: Oil): string {
  return oilChoices.find(({ name }) => name === oil)!.title;
}

/** Nothing but what is known to attack it: seals and winding varnish are matched to the fluid by their maker. */
function materialsOf({ name, metalsAttacked, sources }: CatalogueEntry, madeFor: string): CompatibilityFact {
  const { source } = sources.metalsAttacked;
  if (metalsAttacked.length > 0) {
    return {
      suits: 'no',
      words: `${name} attacks ${listed(metalsAttacked)}, of which windings and tubes are made.`,
      source,
    };
  }
  if (name === madeFor) return { suits: 'yes', words: 'Its parts were made for it.', source };
  const words =
    'No metal of the circuit is known to be attacked. Seals, winding varnish and drier were chosen for another fluid, and only their maker knows.';
  return { suits: 'unknown', words, source };
}

const numbers = {
  capacity: 'power',
  heat: 'power',
  power: 'electricPower',
  cop: 'ratio',
  current: 'current',
  motorLoad: 'fraction',
  dischargeTemperature: 'temperature',
  massFlow: 'massFlow',
  evaporatingPressure: 'pressure',
  condensingPressure: 'pressure',
  pressureRatio: 'ratio',
} as const satisfies Readonly<Record<string, QuantityName>>;

type NumberName = keyof typeof numbers;

function pointOn(
  { results, design }: Pick<MachineSubject, 'design' | 'results'>,
  variants: Variants<LoopRun>,
  envelope: LimitsOfMachine,
  fluid: string,
): OtherFluid['point'] {
  try {
    const point = settledAt(onFluid(variants.likely, fluid), null);
    const { bands } = variedNumbers(variants, (run) => numbersOf(onFluid(run, fluid)));
    const { compressor } = variants.likely.compressor;
    const doubt = modelDoubt(results.identified, compressor, {
      fluid,
      evaporating: point.evaporating.temperature,
      condensing: point.condensing.temperature,
      supply: design.machine.supply,
    });
    const told = Object.entries(numbers).map(([name, quantity]) => {
      return [name, bandWithUnit(`otherFluids.${fluid}.${name}`, quantity, bands[name as NumberName])] as const;
    });
    const bandsTold = Object.fromEntries(told) as Record<NumberName, ReturnType<typeof bandWithUnit>>;
    return { ok: true, ...bandsTold, passed: envelope.passed(point), doubt: doubt.reasons };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return { ok: false, code: error.code, message: error.message };
  }
}

/** States of another fluid from its equation: a table would take longer to make than the few points asked of it. */
function onFluid(run: LoopRun, refrigerant: string): LoopRun {
  const { slice } = run;
  const states = refrigerant === slice.refrigerant ? slice.states : exactStates;
  return { ...run, slice: { ...slice, refrigerant, states } };
}

function numbersOf(run: LoopRun): Readonly<Record<NumberName, number>> {
  const point = settledAt(run, null);
  return {
    capacity: point.heatTaken,
    heat: point.heatDelivered,
    power: point.compressorPower,
    cop: point.compressorCop,
    current: point.compressor.current,
    motorLoad: point.compressor.motor.load,
    dischargeTemperature: point.dischargeTemperature,
    massFlow: point.massFlow,
    evaporatingPressure: point.evaporating.pressure,
    condensingPressure: point.condensing.pressure,
    pressureRatio: point.pressureRatio,
  };
}
