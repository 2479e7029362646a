// How much of a board the last inch earns: the board of a measure in growing thickness on the tank as it is, with a plain heater.

import { account, annuityFactor, insulationOnlyEnergies, usualMeasures } from '../../../accounts/index.ts';
import { material } from '../../../matter/materials/index.ts';
import type { Measure, Stack } from '../../../tank/index.ts';
import type { OfferedMeasure } from '../../stages/wrapping/offered.ts';
import type { HeaterPrices, WrappedStates } from '../../stages/wrapping/states.ts';
import type { BoardPoint, LastInchCurve } from './answer.ts';

const inch = 0.0254;
/** Points to an inch, and inches in all. */
const perInch = 5;
const inches = 4;

type Layers = Extract<Measure, { readonly kind: 'outside' }>;

interface Reckoned {
  readonly load: number;
  readonly heatNeeded: number;
  readonly runningCost: number;
}

export interface InchTerms extends HeaterPrices {
  readonly discountRate: number;
  readonly years: number;
}

/** Null for a measure that is no board. */
export function lastInchCurve(offered: OfferedMeasure, states: WrappedStates, terms: InchTerms): LastInchCurve | null {
  const { measure, sheet, area, kind } = offered;
  if ((kind !== 'board' && kind !== 'mat') || measure?.kind !== 'outside' || sheet === null || area === null)
    return null;
  const { perVolume, source } = volumePrice(offered, sheet.material);
  const worth = annuityFactor(terms.discountRate, terms.years);
  const all = Array.from({ length: perInch * inches + 1 }, (_, index) =>
    reckon(states, thickened(measure, (index * inch) / perInch), terms),
  );
  const points = all.map(({ load, heatNeeded, runningCost }, index): BoardPoint => {
    const before = all[index - perInch];
    const saved = before === undefined ? 0 : before.runningCost - runningCost;
    return {
      thickness: (index * inch) / perInch,
      load,
      heatNeeded,
      netSaving: all[0]!.runningCost - runningCost,
      lastInch:
        before === undefined
          ? null
          : {
              loadSaved: before.load - load,
              heatSaved: before.heatNeeded - heatNeeded,
              netSaving: saved,
              worth: saved * worth,
              cost: perVolume * area * inch,
            },
    };
  });
  const worthwhile = points.filter(({ lastInch }) => lastInch !== null && lastInch.worth >= lastInch.cost);
  return {
    id: offered.id,
    name: offered.name,
    material: sheet.material,
    materialLabel: material(sheet.material).label,
    area,
    costPerVolume: perVolume,
    costSource: source,
    points,
    worthUpTo: worthwhile.at(-1)?.thickness ?? null,
    chosen: sheet.thickness,
  };
}

function reckon(states: WrappedStates, measure: Layers | null, { prices, heater }: InchTerms): Reckoned {
  const { year, spell } = states.under(measure === null ? [] : [measure]);
  const { runningCost } = account(insulationOnlyEnergies(year), heater, prices);
  return { load: spell.load, heatNeeded: year.energies.heatNeeded, runningCost };
}

/** The measure with its board so thick; null for none at all. */
function thickened(measure: Layers, thickness: number): Layers | null {
  const board = measure.stack.at(-1);
  if (thickness === 0 || board?.kind !== 'solid') return null;
  const stack: Stack = [...measure.stack.slice(0, -1), { ...board, thickness }];
  return { ...measure, stack };
}

/** Price of board by volume [money/m³]: that of the measure, else of a usual board of the same material, else of any. */
function volumePrice({ usual }: OfferedMeasure, name: string): { readonly perVolume: number; readonly source: string } {
  const boards = usualMeasures.measures.filter(({ cost }) => cost.perVolume !== undefined);
  const own = usual?.cost.perVolume === undefined ? undefined : usual;
  const same = own ?? boards.find(({ work }) => 'material' in work && work.material === name) ?? boards[0]!;
  return { perVolume: same.cost.perVolume!.likely, source: usualMeasures.source };
}
