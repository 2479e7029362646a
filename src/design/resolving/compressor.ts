// The compressor of a document -> resolved: the ranges of its numbers, and every rating, coefficient, table and measurement.

import { catalogueEntry } from '../../matter/refrigerants/index.ts';
import { InputError } from '../../numerics/index.ts';
import {
  applianceClass,
  type HermeticParameter,
  hermeticParameters,
  machinePrior,
  type StartType,
} from '../../parts/compressor/index.ts';
import type { Estimate } from '../../quantities/index.ts';
import { readCoefficients } from '../checks/coefficients-text.ts';
import type {
  BenchOf,
  CoefficientSetOf,
  CompressorOf,
  LiquidBasisOf,
  OilName,
  PointTableOf,
  RatingOf,
  SaturationName,
  Span,
  SuctionBasisOf,
  SupplyOf,
} from '../plain-machine.ts';
import type { SourcedDefault } from './defaults.ts';
import { resolveItems } from './items.ts';
import { type DescribedMachine, compressorPath as path } from './machine-origin.ts';
import type { Resolver } from './resolver.ts';

/** One value with the words of its source. */
export function exactly(value: number, source: string): SourcedDefault {
  return { low: value, likely: value, high: value, source };
}

export function resolveCompressor(
  take: Resolver,
  described: DescribedMachine,
  here: SupplyOf<Estimate>,
): CompressorOf<Estimate> {
  const appliance = take.text(`${path}.appliance`);
  const madeFor = take.choice<string>(`${path}.madeFor`, described.madeFor);
  const year = take.quantityIfGiven(`${path}.year`);
  const nameplate = resolveNameplate(take, described, here);
  const isBlend = catalogueEntry(madeFor).composition !== null;
  return {
    madeFor,
    ...(appliance === undefined ? {} : { appliance }),
    ...(year === undefined ? {} : { years: spanOf(year) }),
    startType: take.choice<StartType>(`${path}.nameplate.startType`),
    oil: take.choice<OilName>(`${path}.nameplate.oil`),
    ...resolveNumbers(take, described, nameplate.frequency.likely),
    nameplate,
    ratings: resolveItems(take, `${path}.ratings`, (item) => resolveRating(take, item, nameplate)),
    coefficients: resolveItems(take, `${path}.coefficients`, (item) => resolveSet(take, item, nameplate, isBlend)),
    tables: resolveItems(take, `${path}.tables`, (item) => resolveTable(take, item, nameplate, isBlend)),
    bench: resolveItems(take, `${path}.bench`, (item) => resolveBench(take, item, here)),
  };
}

type Numbers = Readonly<Record<HermeticParameter, Estimate>>;

function resolveNumbers(take: Resolver, { origin }: DescribedMachine, frequency: number): Numbers {
  const usual = machinePrior({ ...origin, frequency });
  const { appliance, madeFor } = origin;
  const whose = appliance === undefined ? 'machines' : `a ${applianceClass(appliance).title}`;
  const numbers = hermeticParameters.map((name) => {
    const { low, likely, high, source } = usual[name];
    const words = name === 'displacement' ? `${whose} made for ${madeFor}: ${source}` : source;
    return [name, take.quantity(`${path}.${name}`, () => ({ low, likely, high, source: words }))] as const;
  });
  return Object.fromEntries(numbers) as Numbers;
}

function resolveNameplate(
  take: Resolver,
  { statedFrequency }: DescribedMachine,
  here: SupplyOf<Estimate>,
): CompressorOf<Estimate>['nameplate'] {
  const plate = `${path}.nameplate`;
  const asHere = 'taken to be made for the mains it runs on';
  const ratedCurrent = take.quantityIfGiven(`${plate}.ratedCurrent`);
  const lockedRotorCurrent = take.quantityIfGiven(`${plate}.lockedRotorCurrent`);
  const power = take.quantityIfGiven(`${plate}.power`);
  const horsepower = take.text(`${plate}.horsepower`);
  return {
    voltage: take.quantity(`${plate}.voltage`, () => exactly(here.voltage.likely, asHere)),
    frequency: take.quantity(`${plate}.frequency`, () =>
      statedFrequency === undefined
        ? exactly(here.frequency.likely, asHere)
        : exactly(statedFrequency, 'the first frequency that is stated for it'),
    ),
    ...(ratedCurrent === undefined ? {} : { ratedCurrent }),
    ...(lockedRotorCurrent === undefined ? {} : { lockedRotorCurrent }),
    ...(power === undefined ? {} : { power }),
    ...(horsepower === undefined ? {} : { horsepower }),
  };
}

/** Mains that a rating or a measurement holds for: as typed, or those of `others`. */
function resolveSupply(
  take: Resolver,
  item: string,
  { frequency, voltage }: SupplyOf<Estimate>,
  source: string,
): SupplyOf<Estimate> {
  return {
    frequency: take.quantity(`${item}.frequency`, () => exactly(frequency.likely, source)),
    voltage: take.quantity(`${item}.voltage`, () => exactly(voltage.likely, source)),
  };
}

const ofPlate = 'taken to hold for the mains the machine was made for';

function resolveRating(take: Resolver, item: string, nameplate: SupplyOf<Estimate>): RatingOf<Estimate> {
  const capacity = take.quantityIfGiven(`${item}.capacity`);
  const power = take.quantityIfGiven(`${item}.power`);
  const current = take.quantityIfGiven(`${item}.current`);
  return {
    at: resolveConditions(take, `${item}.at`),
    ...(capacity === undefined ? {} : { capacity }),
    ...(power === undefined ? {} : { power }),
    ...(current === undefined ? {} : { current }),
    ...resolveSupply(take, item, nameplate, ofPlate),
  };
}

function resolveConditions(take: Resolver, at: string): RatingOf<Estimate>['at'] {
  const kind = take.choice<'named' | 'conditions'>(`${at}.kind`);
  if (kind === 'named') return { kind, point: take.choice<string>(`${at}.point`) };
  return {
    kind,
    evaporating: take.quantity(`${at}.evaporating`),
    condensing: take.quantity(`${at}.condensing`),
    returnGas: take.quantity(`${at}.returnGas`),
    liquid: take.quantity(`${at}.liquid`),
  };
}

function resolveSet(
  take: Resolver,
  item: string,
  nameplate: SupplyOf<Estimate>,
  isBlend: boolean,
): CoefficientSetOf<Estimate> {
  const values = readCoefficients(take.text(`${item}.values`)!);
  if (!values.ok) {
    const { code, received, expected } = values.problem;
    throw new InputError(`${item}.values`, received, expected, code);
  }
  const liquid = resolveLiquid(take, `${item}.basis.liquid`);
  return {
    of: take.choice(`${item}.of`),
    values: values.numbers,
    temperatureUnit: take.choice(`${item}.temperatureUnit`),
    unit: take.choice(`${item}.unit`),
    basis: {
      suction: resolveSuction(take, `${item}.basis.suction`)!,
      ...(liquid === undefined ? {} : { liquid }),
      saturation: resolveSaturation(take, item, isBlend),
    },
    evaporatingRange: spanOf(take.quantity(`${item}.evaporatingRange`)),
    condensingRange: spanOf(take.quantity(`${item}.condensingRange`)),
    ...resolveSupply(take, item, nameplate, ofPlate),
  };
}

function resolveTable(
  take: Resolver,
  item: string,
  nameplate: SupplyOf<Estimate>,
  isBlend: boolean,
): PointTableOf<Estimate> {
  const suction = resolveSuction(take, `${item}.basis.suction`);
  const liquid = resolveLiquid(take, `${item}.basis.liquid`);
  return {
    table: take.text(`${item}.table`)!,
    basis: {
      ...(suction === undefined ? {} : { suction }),
      ...(liquid === undefined ? {} : { liquid }),
      saturation: resolveSaturation(take, item, isBlend),
    },
    ...resolveSupply(take, item, nameplate, ofPlate),
    flowTolerance: take.quantity(`${item}.flowTolerance`),
    powerTolerance: take.quantity(`${item}.powerTolerance`),
  };
}

function resolveSuction(take: Resolver, part: string): SuctionBasisOf<Estimate> | undefined {
  if (!take.hasPart(part)) return undefined;
  const kind = take.choice<'superheat' | 'returnGas'>(`${part}.kind`);
  return kind === 'superheat'
    ? { kind, superheat: take.quantity(`${part}.superheat`) }
    : { kind, returnGas: take.quantity(`${part}.returnGas`) };
}

function resolveLiquid(take: Resolver, part: string): LiquidBasisOf<Estimate> | undefined {
  if (!take.hasPart(part)) return undefined;
  const kind = take.choice<'subcooling' | 'temperature'>(`${part}.kind`);
  return kind === 'subcooling'
    ? { kind, subcooling: take.quantity(`${part}.subcooling`) }
    : { kind, temperature: take.quantity(`${part}.temperature`) };
}

function resolveSaturation(take: Resolver, item: string, isBlend: boolean): SaturationName {
  return take.choice<SaturationName>(`${item}.basis.saturation`, undefined, isBlend);
}

function resolveBench(take: Resolver, item: string, here: SupplyOf<Estimate>): BenchOf<Estimate> {
  const discharge = take.quantityIfGiven(`${item}.discharge`);
  return {
    evaporating: take.quantity(`${item}.evaporating`),
    condensing: take.quantity(`${item}.condensing`),
    suction: take.quantity(`${item}.suction`),
    ...(discharge === undefined ? {} : { discharge }),
    liquid: take.quantity(`${item}.liquid`),
    surroundings: take.quantity(`${item}.surroundings`),
    meter: resolveMeter(take, `${item}.meter`),
    ...resolveSupply(take, item, here, 'taken to be measured on the mains here'),
  };
}

function resolveMeter(take: Resolver, part: string): BenchOf<Estimate>['meter'] {
  const kind = take.choice<'watts' | 'ampsAndVolts'>(`${part}.kind`);
  if (kind === 'watts') return { kind, power: take.quantity(`${part}.power`) };
  return { kind, current: take.quantity(`${part}.current`), powerFactor: take.quantity(`${part}.powerFactor`) };
}

function spanOf({ low, high }: Estimate): Span {
  return { from: low, to: high };
}
