// This loop against each other way of keeping the tank warm: by how much a year it costs more or less, with both accounts
// varied together; what it would cost to be wrong either way; and at which price of house heat and which COP over the year the two
// would cost the same.

import type { ScenarioId } from '../../accounts/index.ts';
import { quantityRecord } from '../../quantities/index.ts';
import { type Bands, bandOf } from '../answers/pieces.ts';
import type { BreakEven, LoopAgainst } from '../assessment/assessment.ts';
import type { Doubt } from '../doubt/doubt.ts';
import type { StageResults } from '../stages/index.ts';
import { scenarioLabel } from '../wording/labels.ts';
import { crossingOf } from './crossing.ts';

/** The ends of a range of prices are looked for up to this many times the price of electricity and the likely break-even. */
const furthestPrice = 100;

/** The lowest COP over the year worth asking about is that of a plain heater. The ends of a range are looked for down to a tenth. */
const lowestCop = 1;
const lowestCopSearched = 0.1;

/** One for each other scenario, in the order of the accounts. */
export function loopAgainst({ accounts: { accounts, prices, season } }: StageResults, doubt: Doubt, bands: Bands) {
  const others = accounts.filter(({ scenario }) => scenario !== 'thisLoop');
  const least = Math.min(...others.map(({ annualCost }) => annualCost));
  return others.map(({ scenario, annualCost }): LoopAgainst => {
    const lifeCost = bandOf(bands, `accounts.against.${scenario}.lifeCost`);
    return {
      against: scenario as LoopAgainst['against'],
      label: scenarioLabel(scenario),
      isCheapest: annualCost === least,
      lifeCost,
      ifBuilt: Math.max(0, lifeCost.high),
      ifNotBuilt: Math.max(0, -lifeCost.low),
      houseHeatPrice: breakEvenPrice(doubt, scenario, prices.electricity),
      seasonCop: season === null ? null : breakEvenSeasonCop(doubt, scenario),
    };
  });
}

/** The cost of the loop less that of the other falls by the difference of their room heats with every unit of the price. */
function breakEvenPrice(doubt: Doubt, scenario: ScenarioId, electricity: number): BreakEven {
  const name = (part: string) => `accounts.against.${scenario}.${part}`;
  const line = { at0: name('costWithoutHouseHeat'), slope: name('roomHeat'), sign: -1 } as const;
  const even = doubt.bands[line.at0]!.likely / doubt.bands[line.slope]!.likely;
  const searchedTo = furthestPrice * Math.max(electricity, Number.isFinite(even) ? Math.abs(even) : 0);
  const { loopCostsLess, at } = crossingOf(doubt, line, { from: 0, to: Number.POSITIVE_INFINITY, searchedTo });
  const unit = quantityRecord('energyPrice').unit;
  return { loopCostsLess, at: at && { ...at, unit, result: name('houseHeatPrice') } };
}

/** The cost is linear in the electricity per heat, 1/COP. */
function breakEvenSeasonCop(doubt: Doubt, scenario: ScenarioId): BreakEven {
  const name = (part: string) => `accounts.against.${scenario}.${part}`;
  const line = { at0: name('costWithoutElectricity'), slope: 'accounts.thisLoop.costAtCopOne', sign: 1 } as const;
  const { loopCostsLess, at } = crossingOf(doubt, line, {
    from: 0,
    to: 1 / lowestCop,
    searchedTo: 1 / lowestCopSearched,
  });
  if (at === null || at.likely === 0) return { loopCostsLess, at: null };
  const inverse = (value: number | null) => (value === null || value === 0 ? null : 1 / value);
  const sides = { below: 'above', above: 'below', always: 'always', never: 'never' } as const;
  return {
    loopCostsLess: sides[loopCostsLess],
    at: {
      low: inverse(at.high),
      likely: 1 / at.likely,
      high: inverse(at.low),
      unit: quantityRecord('ratio').unit,
      result: name('seasonCop'),
    },
  };
}
