// The part of a comparison that needs no loop: what the catalogue knows of a fluid, what product standards set for a charge
// of it, and whether it belongs into this machine. Figures that follow from a charge are withheld where something must not
// be built; limits of concentration stay, since they are the reason.

import {
  cautionFluid,
  chargeFactors,
  chargeVolumes,
  floorReleaseHeight,
  isFlammable,
  leakLimit,
  smallestFloorArea,
  smallestRoomVolume,
} from '../../../cautions/index.ts';
import {
  type CatalogueEntry,
  type CatalogueField,
  catalogueEntry,
  unconfirmedOf,
} from '../../../matter/refrigerants/index.ts';
import { type Band, type QuantityName, type WorkingStep, workingStep } from '../../../quantities/index.ts';
import { bandWithUnit } from '../../answers/pieces.ts';
import type { ChargeFigures, ComparedFacts, SourcedFact, StandardAmounts } from './comparison.ts';

/**
 * The catalogue's facts of a fluid.
 * @param fluid    its name
 * @param madeFor  the fluid the compressor was made for, for the oil; null without a machine
 */
export function comparedFacts(fluid: string, madeFor: string | null): ComparedFacts {
  const entry = catalogueEntry(fluid);
  const fact = <Value>(field: CatalogueField, value: Value): SourcedFact<Value> => {
    const { source, confirmed, note } = entry.sources[field];
    return { value, source, confirmed, note: note ?? null };
  };
  return {
    unconfirmed: unconfirmedOf(entry),
    legalStatus: fact('legalStatus', entry.legalStatus),
    safetyClass: fact('safetyClass', entry.safetyClass),
    lowerFlammabilityLimit: fact('lowerFlammabilityLimit', entry.lowerFlammabilityLimit),
    leakLimit: leakLimitFact(entry),
    usualOils: fact('usualOils', entry.usualOils),
    oilSuitsMachine: madeFor === null ? null : sharesOil(entry, catalogueEntry(madeFor)),
    ozoneDepletionPotential: fact('ozoneDepletionPotential', entry.ozoneDepletionPotential),
    globalWarmingPotential: fact('globalWarmingPotential', entry.globalWarmingPotential.value),
    laterGlobalWarmingPotential: fact('laterGlobalWarmingPotential', entry.laterGlobalWarmingPotential.value),
  };
}

/**
 * The smallest of practical limit, limit for breathing and a fifth of the flammability limit, with the source of the one it
 * is. One from memory that is larger changes nothing; whether the fluid burns must be confirmed in any case.
 */
function leakLimitFact(entry: CatalogueEntry): SourcedFact<number | null> {
  const { practicalLimit, toxicityLimit, lowerFlammabilityLimit } = entry.sources;
  const value = leakLimit(cautionFluid(entry));
  const [words, origin] =
    value === entry.practicalLimit
      ? (['practical limit', practicalLimit] as const)
      : value === entry.toxicityLimit
        ? (['limit for breathing', toxicityLimit] as const)
        : (['20 % of the flammability limit', lowerFlammabilityLimit] as const);
  return {
    value,
    source: `${words}: ${origin.source}`,
    confirmed: origin.confirmed && lowerFlammabilityLimit.confirmed,
    note: null,
  };
}

function sharesOil(entry: CatalogueEntry, machine: CatalogueEntry): boolean {
  return entry.usualOils.some((oil) => machine.usualOils.includes(oil));
}

/** A charge and the fluid it is the charge of. */
export interface KnownCharge {
  readonly fluid: string;
  readonly charge: Band;
}

/**
 * What follows from the charge, and its steps.
 * @param fluid   the column's fluid
 * @param known   charge of the design; undefined without a design
 * @param isStop  whether something about this fluid in this machine must not be built
 */
export function chargeFigures(
  fluid: string,
  known: KnownCharge | undefined,
  isStop: boolean,
): { readonly figures: ChargeFigures; readonly workings: readonly WorkingStep[] } {
  if (isStop) return { figures: { kind: 'withheld' }, workings: [] };
  const burning = cautionFluid(catalogueEntry(fluid));
  const limit = leakLimit(burning);
  const flammabilityLimit = isFlammable(burning) ? burning.lowerFlammabilityLimit : null;
  const amounts = flammabilityLimit === null ? null : standardAmounts(flammabilityLimit, burning.safetyClass);
  const amountSteps =
    flammabilityLimit === null || amounts === null
      ? []
      : stepsOfAmounts(amounts, flammabilityLimit, burning.safetyClass);
  if (known === undefined || known.fluid !== fluid) {
    return { figures: { kind: 'unknown', chargeOf: known?.fluid ?? null, amounts }, workings: amountSteps };
  }
  const { charge } = known;
  const over = (name: string, quantity: QuantityName, compute: (mass: number) => number) =>
    bandWithUnit(name, quantity, {
      low: compute(charge.low),
      likely: compute(charge.likely),
      high: compute(charge.high),
    });
  const floor =
    flammabilityLimit === null
      ? null
      : over('charge.smallestFloorArea', 'area', (mass) =>
          smallestFloorArea(mass, flammabilityLimit, floorReleaseHeight),
        );
  const volume =
    limit === null ? null : over('charge.smallestRoomVolume', 'volume', (mass) => smallestRoomVolume(mass, limit));
  const m: readonly [number, string] = [charge.likely, 'machine.charge'];
  return {
    figures: {
      kind: 'shown',
      amounts,
      charge: bandWithUnit('machine.charge', 'mass', charge),
      smallestFloorArea: floor,
      smallestRoomVolume: volume,
    },
    workings: [
      ...amountSteps,
      ...(floor === null || flammabilityLimit === null
        ? []
        : [
            workingStep(floor.result, 'cautions.smallestFloorArea', floor.likely, {
              m,
              LFL: [flammabilityLimit],
              h_0: [floorReleaseHeight],
            }),
          ]),
      ...(volume === null || limit === null
        ? []
        : [workingStep(volume.result, 'cautions.smallestRoomVolume', volume.likely, { m, c_max: [limit] })]),
    ],
  };
}

function standardAmounts(flammabilityLimit: number, safetyClass: string): StandardAmounts {
  const { m1, m2, m3 } = chargeFactors(flammabilityLimit, safetyClass);
  const exactly = (name: string, value: number) =>
    bandWithUnit(`charge.${name}`, 'mass', { low: value, likely: value, high: value });
  return { m1: exactly('m1', m1), m2: exactly('m2', m2), m3: exactly('m3', m3) };
}

function stepsOfAmounts(
  amounts: StandardAmounts,
  flammabilityLimit: number,
  safetyClass: string,
): readonly WorkingStep[] {
  const volumes = safetyClass.endsWith('2L') ? chargeVolumes.mildlyFlammable : chargeVolumes.flammable;
  return (['m1', 'm2', 'm3'] as const).map((name) =>
    workingStep(amounts[name].result, 'cautions.chargeAtFlammabilityLimit', amounts[name].likely, {
      V: [volumes[name]],
      LFL: [flammabilityLimit],
    }),
  );
}
