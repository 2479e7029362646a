// A tank with any set of measures through a year: what it needs, and its account with a plain heater. Sets that were asked for
// before are remembered, since orders of measures are looked for by trying sets.

import {
  type Account,
  type AccountPrices,
  account,
  insulationOnlyEnergies,
  purchaseWithHeater,
} from '../../../accounts/index.ts';
import {
  applyMeasures,
  type BareTankHeat,
  type Measure,
  type MeasureOutcome,
  type TankConditions,
  type TankDescription,
} from '../../../tank/index.ts';
import type { Year } from '../../../year/index.ts';
import { type PlantParts, yearOf } from '../plant.ts';
import { remembered } from '../remembered.ts';
import type { SurroundingsResult } from '../surroundings/surroundings.ts';
import { type TankSlice, tankDescription } from '../tank/tank.ts';
import { type Moments, momentsOf, monthHeats, wrappedHeat } from './heats.ts';
import { applies, type OfferedMeasure, type OfferSlice, offeredMeasures } from './offered.ts';

/** What the states of a tank are reckoned from. */
export interface WrappingSubject {
  /** Carried by its meter where one was adopted. */
  readonly tank: TankSlice;
  readonly offer: OfferSlice;
  readonly surroundings: SurroundingsResult;
  readonly hardware: PlantParts;
  /** Of a dehumidifier in the room [J/kg of water]; null in a room without one. */
  readonly dryingEnergy: number | null;
}

/** The tank with one set of measures. */
export interface WrappedYear {
  readonly heats: readonly BareTankHeat[];
  /** With a plain heater. */
  readonly year: Year;
  /** Of the measures together [money]. */
  readonly cost: number;
}

/** Prices, and that of the plain heater itself. */
export interface HeaterPrices {
  readonly prices: AccountPrices;
  readonly heater: number;
}

/** The account of a wrapped tank with a plain heater. */
export function wrappedAccount({ year, cost }: WrappedYear, { prices, heater }: HeaterPrices): Account {
  return account(insulationOnlyEnergies(year), purchaseWithHeater(cost, heater), prices);
}

export class WrappedStates {
  readonly offered: readonly OfferedMeasure[];
  readonly #subject: WrappingSubject;
  readonly #moments: Moments;
  readonly #described: TankDescription;
  readonly #byId: ReadonlyMap<string, OfferedMeasure>;
  readonly #years = new Map<string, Omit<WrappedYear, 'cost'>>();
  readonly #spells = new Map<string, BareTankHeat>();
  #applicable: readonly OfferedMeasure[] | undefined;

  constructor(subject: WrappingSubject) {
    const { tank, offer, surroundings } = subject;
    const described = tankDescription(tank);
    this.#described = described;
    this.#subject = subject;
    this.#moments = momentsOf(tank, surroundings);
    this.offered = offeredMeasures(offer, described);
    this.#byId = new Map(this.offered.map((each) => [each.id, each]));
  }

  /** Those of the offered that change something by themselves; variations of an input, which know their set, never ask. */
  get applicable(): readonly OfferedMeasure[] {
    const { waterTemperature } = this.#subject.tank.tank;
    this.#applicable ??= this.offered.filter((each) => applies(each, this.#described, waterTemperature));
    return this.#applicable;
  }

  /** Of a dehumidifier in the room [J/kg of water]; null in a room without one. */
  get dryingEnergy(): number | null {
    return this.#subject.dryingEnergy;
  }

  /** The year with the measures of these names. */
  yearWith(ids: readonly string[]): WrappedYear {
    const taken = this.#effective(ids);
    const { heats, year } = remembered(this.#years, keyOf(taken), () => {
      const monthly = monthHeats(this.#heat(this.#measures(taken)), this.#moments);
      return { heats: monthly, year: heaterYear(monthly, this.#subject) };
    });
    return { heats, year, cost: this.costOf(ids) };
  }

  /** Its account with a plain heater. */
  accountWith(ids: readonly string[], prices: HeaterPrices): Account {
    return wrappedAccount(this.yearWith(ids), prices);
  }

  /** The coldest spell with the measures of these names. */
  spellWith(ids: readonly string[]): BareTankHeat {
    const taken = this.#effective(ids);
    return remembered(this.#spells, keyOf(taken), () => this.#heat(this.#measures(taken))(this.#moments.spell));
  }

  /** The year and the coldest spell under measures of one's own making; remembered by nobody. */
  under(measures: readonly Measure[]): Pick<WrappedYear, 'heats' | 'year'> & { readonly spell: BareTankHeat } {
    const heat = this.#heat(measures);
    const heats = monthHeats(heat, this.#moments);
    return { heats, year: heaterYear(heats, this.#subject), spell: heat(this.#moments.spell) };
  }

  /** What becomes of the measures of these names, one for each. */
  outcomesOf(ids: readonly string[]): readonly MeasureOutcome[] {
    return applyMeasures(this.#described, this.#subject.tank.tank.waterTemperature, this.#measures(ids)).outcomes;
  }

  /** Those that change something beside the others: a lid under a better one leaves the tank as it is. */
  #effective(ids: readonly string[]): readonly string[] {
    const taken = ids.filter((id) => this.#byId.get(id)?.measure != null);
    const outcomes = this.outcomesOf(taken);
    return taken.filter((_, index) => outcomes[index]!.changed.length > 0);
  }

  /** Of measures together [money]. */
  costOf(ids: readonly string[]): number {
    return ids.reduce((sum, id) => sum + this.#byId.get(id)!.cost.likely, 0);
  }

  /** The tank with measures at any moment. */
  #heat(measures: readonly Measure[]): (conditions: TankConditions) => BareTankHeat {
    return wrappedHeat(this.#described, this.#subject.tank.tank.waterTemperature, measures);
  }

  #measures(ids: readonly string[]): readonly Measure[] {
    return ids.flatMap((id) => this.#byId.get(id)?.measure ?? []);
  }
}

function heaterYear(
  heats: readonly BareTankHeat[],
  { surroundings: { months }, hardware, dryingEnergy }: WrappingSubject,
): Year {
  return yearOf(
    months,
    heats,
    months.map(() => null),
    hardware,
    dryingEnergy,
  );
}

/** Sets of the same measures have one key, whatever their order. */
function keyOf(ids: readonly string[]): string {
  return [...ids].sort().join(' ');
}
