// The steps behind the comparison of this loop with one other scenario. The steps of the two accounts and of the year are
// taken to exist. Results: 'accounts.against.<other>.lifeCost', '.houseHeatPrice', '.seasonCop'.

import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import { shareOfEnergy, shareStep, sumStep, type Year } from '../year/index.ts';
import type { Account, AccountPrices } from './account.ts';
import { breakEvenCop, breakEvenHouseHeat, type LoopElectricity, lifeCostDifference } from './compare.ts';

/** What the COP over the year of the loop is compared by; null where no heat is needed. */
export interface LoopSeason {
  readonly cop: number;
  readonly electricity: LoopElectricity;
  readonly sourceIsTankRoom: boolean;
  readonly costAtCopOne: number;
}

/** Step of the loop's cost at a coefficient of performance of 1, with the electricity it counts by parts of the year. */
export function costAtCopOneWorking(season: LoopSeason, year: Year, prices: AccountPrices): readonly WorkingStep[] {
  const { electricity, sourceIsTankRoom } = season;
  const parts: readonly WorkingStep[] = sourceIsTankRoom ? partSteps(year, electricity) : [];
  const ofPart = (value: number, name: string): StepInput => (sourceIsTankRoom ? [value, name] : [0]);
  return [
    ...parts,
    workingStep('accounts.thisLoop.costAtCopOne', 'accounts.costAtCopOne', season.costAtCopOne, {
      COP: [season.cop, 'year.seasonCop'],
      p: [prices.electricity, 'prices.electricity'],
      E: [electricity.total, 'accounts.thisLoop.electricity'],
      s: [sourceIsTankRoom ? 1 : 0, 'source.kind'],
      p_h: [prices.houseHeat, 'room.houseHeatPrice'],
      E_h: ofPart(electricity.whileHeated, 'accounts.thisLoop.electricityWhileHeated'),
      cooled: [prices.roomCooledInSummer ? 1 : 0, 'room.cooledInSummer'],
      E_s: ofPart(electricity.inSummer, 'accounts.thisLoop.electricityInSummer'),
      COP_cool: [prices.roomCoolingCop],
    }),
  ];
}

/**
 * The comparison with one other scenario.
 * @param loop    account of this loop
 * @param other   account of the other
 * @param prices  as both were made with
 * @param season  undefined where the loop has no COP over the year
 */
export function compareWorking(
  loop: Account,
  other: Account,
  prices: AccountPrices,
  season: LoopSeason | undefined,
): readonly WorkingStep[] {
  const own = (name: string) => `accounts.against.${other.scenario}.${name}`;
  const more = lifeCostDifference(loop.annualCost, other.annualCost);
  const dA: StepInput = [more, own('lifeCost')];
  const [Q_loop, Q_other] = [loop.energies.roomHeatHeated, other.energies.roomHeatHeated];
  const steps = [
    workingStep(own('lifeCost'), 'accounts.lifeCostDifference', more, {
      A_loop: [loop.annualCost, 'accounts.thisLoop.annualCost'],
      A_other: [other.annualCost, `accounts.${other.scenario}.annualCost`],
    }),
  ];
  if (Q_loop !== Q_other) {
    const price = breakEvenHouseHeat(prices.houseHeat, more, Q_loop, Q_other);
    steps.push(
      workingStep(own('houseHeatPrice'), 'accounts.breakEvenHouseHeat', price, {
        p: [prices.houseHeat, 'room.houseHeatPrice'],
        dA,
        Q_loop: [Q_loop, 'accounts.thisLoop.roomHeat'],
        Q_other: [Q_other, `accounts.${other.scenario}.roomHeat`],
      }),
    );
  }
  if (season !== undefined && season.costAtCopOne / season.cop !== more) {
    steps.push(
      workingStep(own('seasonCop'), 'accounts.breakEvenCop', breakEvenCop(season.costAtCopOne, season.cop, more), {
        G: [season.costAtCopOne, 'accounts.thisLoop.costAtCopOne'],
        COP: [season.cop, 'year.seasonCop'],
        dA,
      }),
    );
  }
  return steps;
}

function partSteps(year: Year, { whileHeated, inSummer }: LoopElectricity): readonly WorkingStep[] {
  const parts = [
    ['electricityWhileHeated', 'heatedShare', whileHeated],
    ['electricityInSummer', 'summerShare', inSummer],
  ] as const;
  return parts.flatMap(([name, part, total]) => {
    const at = (month: string) => `accounts.thisLoop.${month}.${name}`;
    return [
      ...year.months.map((month) =>
        shareStep(at(month.conditions.month), month, part, [
          month.energies.electricity.total,
          `year.${month.conditions.month}.energies.electricity`,
        ]),
      ),
      sumStep(`accounts.thisLoop.${name}`, total, year, ({ conditions, energies }) => [
        shareOfEnergy(conditions[part], energies.electricity.total),
        at(conditions.month),
      ]),
    ];
  });
}
