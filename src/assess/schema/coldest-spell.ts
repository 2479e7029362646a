// The coldest spell in the published answer: where the loop settles, and what flows where.

import { z } from 'zod';
import { band, bandWithUnit, si, text } from './values.ts';

const loopPoint = z.strictObject({
  name: text('stable name of the point of the loop'),
  temperature: si('[K]'),
  pressure: si('absolute [Pa]'),
  enthalpy: si('[J/kg], 200 kJ/kg in saturated liquid at 0 °C'),
  entropy: si('[J/(kg K)], 1 kJ/(kg K) in saturated liquid at 0 °C'),
  density: si('[kg/m³]'),
  quality: z.number().nullable().describe('mass of vapour by mass; null outside the dome'),
});

const limitFields = {
  limit: text(
    'stable name: evaporatingHighest, evaporatingLowest, condensingContinuous, dischargeHighest, pressureRatioHighest, suctionPressureHighest, wallHighest, currentContinuous, motorLoadHighest, …',
  ),
  label: text('the same in words'),
  quantity: z
    .enum(['temperature', 'ratio', 'pressure', 'current', 'fraction', 'temperatureDifference'])
    .describe('what value and bound are numbers of'),
  value: si('where the machine is'),
  bound: si('the limit'),
  margin: si('distance left, in the same unit; negative once passed'),
  passed: z.boolean(),
};

export const limitMargin = z.strictObject(limitFields);

export const limitAnswer = z.strictObject({
  ...limitFields,
  stays: z.enum(['below', 'above']).describe('on which side of it the machine is meant to stay'),
  weight: z.enum(['caution', 'highest']).describe('caution: doubt begins here; highest: not to be passed'),
  source: text('where it was read'),
});

export const operating = z
  .strictObject({
    refrigerant: text('the fluid it is computed on'),
    sourceTemperature: si('[K]'),
    waterTemperature: si('[K]'),
    atmosphericPressure: bandWithUnit('air pressure of the place, from which gauge pressures count [Pa]'),
    evaporatingTemperature: bandWithUnit('dew temperature [K]'),
    condensingTemperature: bandWithUnit('dew temperature [K]'),
    blend: z
      .strictObject({
        evaporatingBubbleTemperature: bandWithUnit('[K]'),
        evaporatingGlide: bandWithUnit('dew less bubble temperature [K]'),
        condensingBubbleTemperature: bandWithUnit('[K]; the approach to the water counts from it'),
        condensingGlide: bandWithUnit('dew less bubble temperature [K]'),
      })
      .nullable()
      .describe('null for a single substance, which boils and condenses at one temperature'),
    evaporatingPressure: bandWithUnit('absolute [Pa]'),
    condensingPressure: bandWithUnit('absolute [Pa]'),
    dischargeTemperature: bandWithUnit('discharge gas, in the line behind the compressor [K]'),
    pressureRatio: bandWithUnit('condensing by evaporating pressure'),
    massFlow: bandWithUnit('refrigerant [kg/s]'),
    volumetricEfficiency: bandWithUnit('gas drawn in by gas swept'),
    overallEfficiency: bandWithUnit('isentropic work by electricity of the compressor'),
    shellHeat: bandWithUnit('given off by the compressor’s shell while it runs [W]'),
    points: z.array(loopPoint).describe('likely values'),
    limits: z.array(limitMargin).describe('limits usual for such a machine, the nearest first'),
  })
  .describe('where the loop of one machine settles at the coldest spell');

export const operatingMoment = z.strictObject({
  when: z
    .enum(['coldestSpell', 'usual', 'warmestMonth'])
    .describe('usual: the middle of winter; warmestMonth: the warmest one in which the machine has something to do'),
  sourceTemperature: si('[K]'),
  evaporatingTemperature: si('dew temperature [K]'),
  condensingTemperature: si('dew temperature [K]'),
  evaporatingPressure: si('absolute [Pa]'),
  condensingPressure: si('absolute [Pa]'),
  dischargeTemperature: si('discharge gas [K]'),
  compressorPower: si('electricity of the compressor, of one machine [W]'),
  heatDelivered: si('reaches the water while all machines run [W]'),
  load: si('heat the tank needs [W]'),
});

export const sizing = z
  .strictObject({
    condenser: z.strictObject({
      approach: si('condensing (bubble) temperature less water temperature [K]'),
      coilLength: bandWithUnit('of the tube in the tank [m]'),
      coilArea: bandWithUnit('outer [m²]'),
      tubeDiameter: si('outer [m]'),
      leavesOut: text('what the model leaves out'),
    }),
    evaporator: z.strictObject({
      approach: si('source temperature less evaporating (dew) temperature [K]'),
      faceArea: bandWithUnit('[m²]'),
      airFlow: bandWithUnit('[m³/s]'),
      leavesOut: text('what the model leaves out'),
    }),
  })
  .describe('exchangers that the temperature differences imply, for one machine');

export const flows = z
  .strictObject({
    heatTaken: si('from the source [W]'),
    compressorPower: si('[W]'),
    fanPower: si('[W]'),
    loopPumpPower: si('[W]'),
    controlsPower: si('[W]'),
    shellHeat: si('given off by the compressor’s shell [W]'),
    delivered: si('reaches the water while the machine runs [W]'),
    runFraction: si('share of the time it runs; 1 means that it cannot stop'),
    backup: si('left to a backup heater [W]'),
    paths: z.array(z.strictObject({ path: z.string(), label: z.string(), heat: si('[W]') })),
    ranges: z
      .strictObject({ heatTaken: band, electricity: band, delivered: band, backup: band })
      .describe('means over the spell [W]; electricity holds that of the backup heater and what pumps and lights give'),
  })
  .describe('heat and electricity of the coldest spell with all machines running, likely values');
