// A running point measured at home: thermometers clamped on the pipes, and a plug-in watt meter or a clamp ammeter. No flow is
// measured; it follows from the machine and its energy balance. What a clamp may read wrong becomes doubt of what was metered.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import { InputError, requirePositive } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import { requireSupply, type Supply } from '../hermetic/parameters.ts';
import type { EvidencePoint } from '../identification/evidence.ts';
import { requireSaturatedLevel } from '../saturated-level.ts';
import { clampError, clampSensitivities, dischargeLag } from './clamps.ts';

/** Watts as a meter shows them, or amps and volts with the range the power factor may have: their product alone is no power. */
export type BenchMeter =
  | { readonly kind: 'watts'; readonly power: Estimate }
  | {
      readonly kind: 'ampsAndVolts';
      readonly current: Estimate;
      readonly voltage: Estimate;
      readonly powerFactor: Estimate;
    };

/** Temperatures [K] with what the reading itself leaves open; the error of the clamp is added here. */
export interface BenchMeasurement {
  /** 'machine.compressor.bench.0' */
  readonly path: string;
  readonly label: string;
  /** On a pipe with boiling and one with condensing fluid: taken as dew temperatures. */
  readonly evaporating: Estimate;
  readonly condensing: Estimate;
  /** On the suction line at the shell. */
  readonly suction: Estimate;
  /** On the discharge line at the shell. */
  readonly discharge?: Estimate | undefined;
  readonly liquid: Estimate;
  /** Of the air around the shell. */
  readonly surroundings: Estimate;
  readonly meter: BenchMeter;
  /** Mains; amps and volts bring their own voltage. */
  readonly supply: Supply;
}

/** P [W] = V I cos φ. */
export function powerOfCurrent(voltage: number, current: number, powerFactor: number): number {
  return voltage * current * powerFactor;
}

/**
 * The measurement as evidence: power, current where it was read, discharge temperature where it was.
 * @param fluid     refrigerant in it
 * @param measured  see BenchMeasurement
 * @throws InputError at a value that is none: 'powerFactorNeeded' without a power factor from above 0 to 1; 'noLift' where
 *         condensing is not above evaporating; OutOfModelError 'outsideFluid' at a level where the fluid neither boils nor condenses
 * Pitfall: a blend with glide boils and condenses at no one temperature; its readings are taken as those of the dew side.
 * Source: sums of squares of independent doubts, JCGM 100; amounts of the clamps are own judgement.
 */
export function benchPoint(fluid: Refrigerant, measured: BenchMeasurement): EvidencePoint {
  const { path, label, evaporating, condensing, suction, liquid, surroundings } = measured;
  requireSaturatedLevel(fluid, `${path}.evaporating`, evaporating.likely);
  requireSaturatedLevel(fluid, `${path}.condensing`, condensing.likely);
  if (!(evaporating.likely < condensing.likely)) {
    const expected = `a temperature below condensing, ${condensing.likely} K`;
    throw new InputError(`${path}.evaporating`, evaporating.likely, expected, 'noLift');
  }
  const moves = clampSensitivities(fluid, evaporating.likely, condensing.likely, suction.likely);
  const levels = { evaporating: levelDoubt(evaporating), condensing: levelDoubt(condensing) };
  const doubtOf = (of: { readonly evaporating: number; readonly condensing: number }) =>
    Math.hypot(of.evaporating * levels.evaporating, of.condensing * levels.condensing);
  const { supply, power, current } = metered(measured);
  return {
    path,
    label,
    evaporating: evaporating.likely,
    condensing: condensing.likely,
    returnGas: suction.likely,
    liquid: liquid.likely,
    surroundings: surroundings.likely,
    supply,
    given: {
      power: widenedByFactor(power, doubtOf(moves.power)),
      ...(current === undefined ? {} : { current: widenedByFactor(current, doubtOf(moves.power)) }),
      ...(measured.discharge === undefined
        ? {}
        : { dischargeTemperature: dischargeGas(measured.discharge, doubtOf(moves.dischargeTemperature)) }),
    },
  };
}

/** Half width [K] of a level: of the reading and of the clamp. */
function levelDoubt({ low, high }: Estimate): number {
  return Math.hypot((high - low) / 2, clampError);
}

function metered({ path, meter, supply }: BenchMeasurement): {
  readonly supply: Supply;
  readonly power: Estimate;
  readonly current: Estimate | undefined;
} {
  if (meter.kind === 'watts') {
    requireSupply(`${path}.supply`, supply);
    requireReading(`${path}.meter.power`, meter.power);
    return { supply, power: meter.power, current: undefined };
  }
  const { current, voltage, powerFactor } = meter;
  requireReading(`${path}.meter.current`, current);
  requireReading(`${path}.meter.voltage`, voltage);
  if (!(powerFactor.low > 0 && powerFactor.high <= 1)) {
    const expected = 'a range above 0 and up to 1; of such motors often 0.5 to 0.9, and only a watt meter tells';
    throw new InputError(
      `${path}.meter.powerFactor`,
      `${powerFactor.low} to ${powerFactor.high}`,
      expected,
      'powerFactorNeeded',
    );
  }
  const atMains = { frequency: supply.frequency, voltage: voltage.likely };
  requireSupply(`${path}.supply`, atMains);
  return { supply: atMains, power: product(voltage, current, powerFactor), current };
}

function requireReading(path: string, { low, likely, high }: Estimate): void {
  requirePositive(path, low);
  requirePositive(path, high);
  if (!(low <= likely && likely <= high)) throw new InputError(path, likely, `a value within ${low} and ${high}`);
}

/** Factors known independently: their distances to the ends add as squares, on a scale of logarithms. */
function product(voltage: Estimate, current: Estimate, powerFactor: Estimate): Estimate {
  const factors = [voltage, current, powerFactor];
  const likely = powerOfCurrent(voltage.likely, current.likely, powerFactor.likely);
  const down = Math.hypot(...factors.map((each) => Math.log(each.likely / each.low)));
  const up = Math.hypot(...factors.map((each) => Math.log(each.high / each.likely)));
  return { low: likely * Math.exp(-down), likely, high: likely * Math.exp(up), origin: 'measured' };
}

/** Both ends further off by a doubt of the logarithm, added as squares. */
function widenedByFactor({ low, likely, high, origin }: Estimate, doubt: number): Estimate {
  return {
    low: likely * Math.exp(-Math.hypot(Math.log(likely / low), doubt)),
    likely,
    high: likely * Math.exp(Math.hypot(Math.log(high / likely), doubt)),
    origin,
  };
}

/** Of the gas [K]: hotter than the pipe, and as doubtful as the levels between which it was made. */
function dischargeGas({ low, likely, high, origin }: Estimate, doubt: number): Estimate {
  const down = Math.hypot(likely - low, dischargeLag.likely - dischargeLag.low, doubt);
  const up = Math.hypot(high - likely, dischargeLag.high - dischargeLag.likely, doubt);
  const gas = likely + dischargeLag.likely;
  return { low: gas - down, likely: gas, high: gas + up, origin };
}
