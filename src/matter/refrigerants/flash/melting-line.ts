// Where a liquid becomes solid: pressure over temperature along the melting line, part by part (each part belongs to one
// kind of crystal), and the check that a state lies on the liquid side. The equations of state would describe a liquid
// beyond it without complaint. Fluids without a published line have their lowest temperature as the only limit.

import { DataError, OutOfModelError } from '../../../numerics/index.ts';
import type { MeltingLinePart } from '../equation/fluid-data.ts';
import type { Refrigerant } from '../types.ts';

/** A liquid may be this much colder than the line before it is refused [K]; the published lines are not closer to the truth. */
export const MELTING_TOLERANCE = 1e-3;

/** What a search for the temperature stops at, relative. */
const NARROWEST = 1e-15;

/**
 * Melting pressure p on one part of a line.
 *     power:            p₀ + a ((T/T₀)^t − 1)
 *     powersOfRatio:    p₀ (1 + Σ aᵢ ((T/T₀)^tᵢ − 1))
 *     powersOfDistance: p₀ (1 + Σ aᵢ (T/T₀ − 1)^tᵢ)
 * @param part         coefficients, with T₀ [K] and p₀ [Pa]
 * @param temperature  T [K], between the ends of the part
 * @returns            p [Pa]
 * Source: F. E. Simon, G. Glatzel (1929), Z. anorg. allg. Chem. 178, 309, and its extensions; coefficients from the fluid's
 * own paper; water: IAPWS R14-08(2011).
 * Worked value: water, ice VI, 320 K → 1356 MPa.
 */
function meltingPartPressure(part: MeltingLinePart, temperature: number): number {
  const { form, startTemperature, startPressure, a, t } = part;
  const ratio = temperature / startTemperature;
  let sum = 0;
  for (let k = 0; k < a.length; k++) {
    sum += a[k]! * (form === 'powersOfDistance' ? (ratio - 1) ** t[k]! : ratio ** t[k]! - 1);
  }
  return form === 'power' ? startPressure + sum : startPressure * (1 + sum);
}

/** Melting pressure p [Pa] at T [K] on the rising part there; undefined without a line, or where it has no such part. */
export function meltingPressure({ meltingLine }: Refrigerant, temperature: number): number | undefined {
  const part = meltingLine?.parts.find((each) => temperature >= each.from && temperature <= each.to && isRising(each));
  return part === undefined ? undefined : meltingPartPressure(part, temperature);
}

/**
 * Melting temperature T at a pressure, on the first part that rises with temperature and reaches that pressure. A part
 * serves down to its T₀, also where it is published from a higher temperature on.
 * @param fluid     the fluid
 * @param pressure  p [Pa]
 * @returns         T [K]; undefined without a line, or where no rising part has this pressure: below that of the triple
 *                  point, and for water below 208.6 MPa, where ice is lighter than water and melts below the triple point
 * Worked value: R744 at 100 MPa → 236.03 K.
 */
export function meltingTemperature(fluid: Refrigerant, pressure: number): number | undefined {
  const part = risingParts(fluid).find((each) => {
    return pressure >= meltingPartPressure(each, coldEnd(each)) && pressure <= meltingPartPressure(each, each.to);
  });
  if (part === undefined) return undefined;
  let low = coldEnd(part);
  let high = part.to;
  while (high - low > NARROWEST * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (meltingPartPressure(part, middle) < pressure) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Refuses a state of one phase that is colder than the melting temperature at its pressure by more than 0.001 K.
 * @throws OutOfModelError 'frozen' naming the melting temperature
 */
export function requireMolten(fluid: Refrigerant, temperature: number, pressure: number): void {
  const { meltingLine, limits } = fluid;
  if (meltingLine === undefined) return;
  // The pressure of the line costs less than its temperature, and is lower than almost no state's.
  const line = meltingPressure(fluid, temperature + MELTING_TOLERANCE);
  if (line === undefined || pressure <= line) return;
  const melting = meltingTemperature(fluid, pressure);
  if (melting === undefined || temperature >= melting - MELTING_TOLERANCE) return;
  const reason = `below its melting temperature at ${pressure} Pa the fluid is solid`;
  throw new OutOfModelError('temperature', temperature, 'K', melting, limits.temperatureMax, 'frozen', reason);
}

/** Every pressure of the fluid's range must lie on its line: nothing is known of the solid beyond the last part. */
export function checkMeltingLine(fluid: Refrigerant, file: string): void {
  const { meltingLine, limits } = fluid;
  if (meltingLine === undefined) return;
  meltingLine.parts.forEach((part, index) => {
    const path = `fluid.meltingLine.parts[${index}]`;
    if (part.from >= part.to) throw new DataError(file, `${path}.to`, 'must lie above its own lower end');
    const after = meltingLine.parts[index + 1];
    if (isRising(part) && after !== undefined && after.from !== part.to) {
      throw new DataError(file, `${path}.to`, 'must be where the next part begins');
    }
  });
  if (!risingParts(fluid).some((part) => meltingPartPressure(part, part.to) >= limits.pressureMax)) {
    throw new DataError(file, 'fluid.meltingLine', 'must reach the largest pressure of the equation');
  }
}

function risingParts({ meltingLine }: Refrigerant): readonly MeltingLinePart[] {
  return (meltingLine?.parts ?? []).filter(isRising);
}

function isRising(part: MeltingLinePart): boolean {
  return meltingPartPressure(part, part.to) > meltingPartPressure(part, part.from);
}

function coldEnd({ from, startTemperature }: MeltingLinePart): number {
  return Math.min(from, startTemperature);
}
