// Machines and conditions for the tests of the hermetic machine; invented.

import fc from 'fast-check';
import { refrigerant, saturationAtDewTemperature, stateInLoop } from '../../../../src/matter/refrigerants/index.ts';
import type { HermeticCompressor, RunningConditions } from '../../../../src/parts/compressor/index.ts';

export const machine: HermeticCompressor = {
  displacement: 8e-6,
  clearanceRatio: 0.025,
  suctionVelocity: 20,
  dischargeVelocity: 90,
  suctionHeatingUnits: 0.6,
  dischargeCoolingUnits: 0.3,
  leakageRatio: 4e-5,
  proportionalLoss: 0.1,
  frictionPressure: 25e3,
  motorEfficiency: 0.75,
  motorPressure: 3e5,
  slip: 0.035,
  powerFactor: 0.7,
  shellConductance: 1.8,
  ratedSupply: { frequency: 50, voltage: 230 },
};

/** Nothing lost on the way of the gas but what clearance takes. */
export const tight: HermeticCompressor = {
  ...machine,
  suctionVelocity: 0,
  dischargeVelocity: 0,
  suctionHeatingUnits: 0,
  dischargeCoolingUnits: 0,
  leakageRatio: 0,
  slip: 0,
  // Its wall touches no gas; whatever the motor loses is to leave.
  shellConductance: 50,
};

export interface Levels {
  /** Dew temperatures [K]. */
  readonly evaporating: number;
  readonly condensing: number;
  /** 0 is saturated vapour [K]. */
  readonly superheat: number;
}

export function conditions(
  name: string,
  { evaporating, condensing, superheat }: Levels,
  further: Partial<Pick<RunningConditions, 'surroundings' | 'supply'>> = {},
) {
  const fluid = refrigerant(name);
  const { vapour } = saturationAtDewTemperature(fluid, evaporating);
  const temperature = evaporating + superheat;
  const suction = superheat === 0 ? vapour : stateInLoop(fluid, { temperature, pressure: vapour.pressure });
  const dischargePressure = saturationAtDewTemperature(fluid, condensing).vapour.pressure;
  const supply = { frequency: 50, voltage: 230 };
  return { fluid, at: { suction, dischargePressure, surroundings: 295, supply, ...further } };
}

export const usual: Levels = { evaporating: 263, condensing: 313, superheat: 10 };

/** Pure and blended, of high and low pressure, carbon dioxide below its critical point. */
export const fluids = [
  'R134a',
  'R600a',
  'R290',
  'R12',
  'R22',
  'R32',
  'R404A',
  'R407C',
  'R410A',
  'R717',
  'R1234yf',
  'R744',
];

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any machine on any fluid between any two levels that both have; motor and bearings in proportion to the fluid's pressure. */
export const anyRun = fc
  .record({
    name: fc.constantFrom(...fluids),
    evaporating: between(240, 290),
    lift: between(5, 60),
    superheat: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 4, arbitrary: between(0.5, 40) }),
    surroundings: between(255, 315),
    frequency: between(45, 65),
    voltage: between(205, 250),
    numbers: fc.record({
      displacement: between(2e-6, 5e-5),
      clearanceRatio: between(0.005, 0.06),
      suctionVelocity: between(0, 45),
      dischargeVelocity: between(0, 200),
      suctionHeatingUnits: between(0, 1.2),
      dischargeCoolingUnits: between(0, 1.2),
      leakageRatio: between(0, 2e-4),
      proportionalLoss: between(0, 0.25),
      motorEfficiency: between(0.5, 0.9),
      slip: between(0, 0.06),
      powerFactor: between(0.5, 0.99),
      shellConductance: between(0.3, 6),
    }),
    friction: between(0.005, 0.05),
    motor: between(0.2, 0.8),
  })
  .map(({ name, evaporating, lift, superheat, surroundings, frequency, voltage, numbers, friction, motor }) => {
    const { critical } = refrigerant(name);
    const low = Math.min(evaporating, 0.85 * critical.temperature);
    const condensing = Math.min(low + lift, 0.97 * critical.temperature);
    const run = conditions(
      name,
      { evaporating: low, condensing, superheat },
      {
        surroundings,
        supply: { frequency, voltage },
      },
    );
    const { dischargePressure } = run.at;
    const compressor = {
      ...machine,
      ...numbers,
      frictionPressure: friction * dischargePressure,
      motorPressure: motor * dischargePressure,
    };
    return { ...run, compressor };
  });
