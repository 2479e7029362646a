// A tank with measures applied: of a measured one only the water can become cooler, of a built one every part. A measure that
// changes nothing says why.

import { emissivityLimits } from '../../matter/materials/index.ts';
import { InputError, requirePositive, requireWithin } from '../../numerics/index.ts';
import { builtTankModel } from '../built-model.ts';
import type { BuiltTank } from '../built-tank.ts';
import type { MeasuredTank } from '../description.ts';
import type { Measure, MeasureOutcome, NoEffect } from './measure.ts';
import { changedOnly, partsOf } from './outcomes.ts';

type AnyTank = BuiltTank | MeasuredTank;

export interface WrappedTank<Tank extends AnyTank> {
  readonly tank: Tank;
  /** [K] */
  readonly waterTemperature: number;
  /** One for each measure, in the order of the list. */
  readonly outcomes: readonly MeasureOutcome[];
}

/**
 * The tank and its water temperature with the measures applied, and what became of each.
 * @param tank              as it stands
 * @param waterTemperature  T_w [K]
 * @param measures          any number; the tank stays as it is where there are none
 * @throws InputError naming the measure whose numbers cannot be
 */
export function applyMeasures<Tank extends AnyTank>(
  tank: Tank,
  waterTemperature: number,
  measures: readonly Measure[],
): WrappedTank<Tank> {
  measures.forEach(checkMeasure);
  if (tank.kind === 'measured') return applyToMeasured(tank, waterTemperature, measures);
  const wrapped = builtTankModel().applyToBuilt(tank, waterTemperature, measures);
  // A built tank stays one, whichever of the two the caller handed in.
  return { ...wrapped, tank: wrapped.tank as Tank };
}

/** Only its water can become cooler: what it is made of is not known. */
function applyToMeasured<Tank>(
  tank: Tank,
  waterTemperature: number,
  measures: readonly Measure[],
): { tank: Tank; waterTemperature: number; outcomes: readonly MeasureOutcome[] } {
  const coolers = measures.filter((measure) => measure.kind === 'cooler');
  return {
    tank,
    waterTemperature: coolers.reduce((temperature, { by }) => temperature - by, waterTemperature),
    outcomes: measures.map((measure) =>
      measure.kind === 'cooler'
        ? changedOnly({ part: 'waterTemperature' })
        : {
            changed: [],
            unchanged: partsOf(measure).map((part): NoEffect => ({ part, reason: 'sizesUnknown' })),
          },
    ),
  };
}

function checkMeasure(measure: Measure, index: number): void {
  const path = `measures.${index}`;
  switch (measure.kind) {
    case 'lid':
      requireWithin(`${path}.openShare`, measure.openShare, 0, 1);
      return;
    case 'outside':
      requireWithin(`${path}.emissivity`, measure.emissivity, emissivityLimits.min, emissivityLimits.max);
      if (measure.panels.length === 0) throw new InputError(`${path}.panels`, 0, 'at least one panel', 'noSuchPart');
      return;
    case 'cooler':
      requirePositive(`${path}.by`, measure.by);
      return;
    case 'nightCover':
      requireWithin(`${path}.openShare`, measure.openShare, 0, 1);
      requireWithin(`${path}.share`, measure.share, 0, 1);
      return;
    case 'calmerSurface':
      return;
  }
}
