// The machine with some inputs away from their likely values, by the linear response of the identification.

import { InputError } from '../../../numerics/index.ts';
import { type HermeticCompressor, hermeticParameters } from '../hermetic/parameters.ts';
import { dimensions, fromScale, onScale, parameterScales } from './coordinates.ts';
import type { IdentifiedMachine, Influence } from './identified.ts';

/**
 * The machine that the identification would find with these inputs where they are, to first order.
 * @param identified  as identified with every input at its likely value
 * @param values      by path of the influence, in its own unit; those left out are at their likely values
 * @returns           the machine; identified.compressor itself where nothing is moved
 * @throws InputError for a value that is none of its quantity
 * Pitfall: exact for a linear problem; for values far outside the stated ends identify anew.
 */
export function compressorWith(
  identified: IdentifiedMachine,
  values: Readonly<Record<string, number>>,
): HermeticCompressor {
  const moved = new Float64Array(dimensions);
  let isMoved = false;
  for (const influence of identified.influences) {
    const value = values[influence.path];
    if (value === undefined || value === influence.estimate.likely) continue;
    isMoved = true;
    addMovement(moved, influence, value);
  }
  if (!isMoved) return identified.compressor;
  const { prior, compressor, deviations } = identified;
  const numbers: Record<string, number> = {};
  hermeticParameters.forEach((name, index) => {
    const spread = prior.spread[index]!;
    numbers[name] =
      spread === 0
        ? compressor[name]
        : fromScale(parameterScales[name], prior.centre[index]! + spread * deviations[index]! + moved[index]!);
  });
  return { ...compressor, ...numbers };
}

function addMovement(moved: Float64Array, influence: Influence, value: number): void {
  const { path, scale, estimate, atLow, atHigh } = influence;
  if (!Number.isFinite(value)) throw new InputError(path, value, 'a finite number');
  const at = onScale(scale, value, path) - onScale(scale, estimate.likely, path);
  const isHigh = at > 0 ? estimate.high > estimate.likely : !(estimate.low < estimate.likely);
  const end = isHigh ? estimate.high : estimate.low;
  const share = at / (onScale(scale, end, path) - onScale(scale, estimate.likely, path));
  const towards = isHigh ? atHigh : atLow;
  for (let number = 0; number < dimensions; number++) moved[number]! += share * towards[number]!;
}
