// The numbers of a comparison in a machine: which rows a basis has, what each is read from, and under which name its step
// stands in the working.

import {
  enthalpyDifference,
  gaugePressureOf,
  type OperatingPoint,
  temperatureLift,
  volumetricHeatingCapacity,
} from '../../../loop/index.ts';
import { displacementOfSize, shellConductanceOfSize } from '../../../parts/compressor/index.ts';
import { type QuantityName, type WorkingStep, workingStep } from '../../../quantities/index.ts';
import { requiredRunning } from '../../answers/values.ts';
import type { StageResults } from '../../stages/index.ts';
import { numberOrigins } from '../../working/identified.ts';
import type { ComparisonRow, MachineBasis, RowGroup } from './comparison.ts';
import { liftAndGaugeSteps, type TracedLevel } from './lift-and-gauge-steps.ts';

/**
 * What one run gives: the stages on the column's fluid; where heat is matched the loop is that of the machine of the size it takes, and
 * beside it stands the loop on the design's own fluid.
 */
export interface ComparedRun {
  readonly results: ComparedStages;
  /** Only where heat is matched. */
  readonly own?: OperatingPoint;
  /** Of the machine over the one there is; 1 unless heat is matched. */
  readonly size: number;
}

/** The stages that a comparison reads, in their order. */
export const comparedStages = [
  'surroundings',
  'tank',
  'identified',
  'compressor',
  'operating',
  'hardware',
  'plant',
] as const;

export type ComparedStages = Pick<StageResults, (typeof comparedStages)[number]>;

/** A row and where its number comes from. */
export interface ComparedValue extends ComparisonRow {
  /** Name of its step in the working. */
  readonly result: string;
  readonly read: (run: ComparedRun) => number;
}

const atmosphere = 'surroundings.atmosphericPressure';

const ofTheLoop: readonly ComparedValue[] = [
  row('pressures', 'evaporatingTemperature', 'evaporating, dew', 'temperature', ({ results }) => {
    return results.operating.evaporating.temperature;
  }),
  row('pressures', 'evaporatingPressure', 'evaporating pressure, absolute', 'pressure', ({ results }) => {
    return results.operating.evaporating.pressure;
  }),
  row('pressures', 'evaporatingGaugePressure', 'evaporating pressure, gauge', 'gaugePressure', ({ results }) =>
    gaugePressureOf(results.operating.evaporating.pressure, results.surroundings.atmosphericPressure),
  ),
  row(
    'pressures',
    'evaporatingGlide',
    'glide while boiling, dew less bubble',
    'temperatureDifference',
    ({ results }) => {
      return results.operating.evaporating.glide;
    },
  ),
  row('pressures', 'condensingTemperature', 'condensing, dew', 'temperature', ({ results }) => {
    return results.operating.condensing.temperature;
  }),
  row('pressures', 'condensingPressure', 'condensing pressure, absolute', 'pressure', ({ results }) => {
    return results.operating.condensing.pressure;
  }),
  row('pressures', 'condensingGaugePressure', 'condensing pressure, gauge', 'gaugePressure', ({ results }) =>
    gaugePressureOf(results.operating.condensing.pressure, results.surroundings.atmosphericPressure),
  ),
  row(
    'pressures',
    'condensingGlide',
    'glide while condensing, dew less bubble',
    'temperatureDifference',
    ({ results }) => {
      return results.operating.condensing.glide;
    },
  ),
  row('lift', 'temperatureLift', 'temperature lift', 'temperatureDifference', ({ results }) =>
    temperatureLift(results.operating.condensing.temperature, results.operating.evaporating.temperature),
  ),
  {
    ...row('lift', 'pressureRatio', 'pressure ratio', 'ratio', ({ results }) => results.operating.pressureRatio),
    result: 'operating.compressor.pressureRatio',
  },
  row('lift', 'dischargeTemperature', 'discharge gas', 'temperature', ({ results }) => {
    return results.operating.dischargeTemperature;
  }),
];

const compressorCop = row('heat', 'compressorCop', 'COP of the compressor', 'ratio', ({ results }) => {
  return results.operating.compressorCop;
});

const perVolume = row(
  'heat',
  'volumetricHeatingCapacity',
  'heat per volume of gas drawn in',
  'volumetricCapacity',
  ({ results }) => capacityPerVolume(results.operating),
);

/** How hard the motor works for it. */
const motorLoad: ComparedValue = {
  ...row('heat', 'motorLoad', 'load of the motor, over its best load', 'fraction', ({ results }) => {
    return results.operating.compressor.motor.load;
  }),
  result: 'operating.compressor.motor.load',
};

const withThisDisplacement: readonly ComparedValue[] = [
  {
    ...row('heat', 'heat', 'heat out of the condenser', 'power', ({ results }) => results.operating.heatDelivered),
    result: 'operating.heatDelivered',
  },
  {
    ...row('heat', 'power', 'electricity of the compressor', 'electricPower', ({ results }) => {
      return results.operating.compressorPower;
    }),
    result: 'operating.compressor.power',
  },
  {
    ...row('heat', 'current', 'current of the compressor', 'current', ({ results }) => {
      return results.operating.compressor.current;
    }),
    result: 'operating.compressor.current',
  },
  motorLoad,
];

const withDisplacementNeeded: readonly ComparedValue[] = [
  // Every fluid is brought to the heat of the design's own.
  {
    ...row('heat', 'heat', 'heat out of the condenser', 'power', (run) => ownLoop(run).heatDelivered),
    result: 'own.heatDelivered',
  },
  {
    ...row('heat', 'displacementNeeded', 'displacement needed for it', 'displacement', displacementNeeded),
    result: 'scaled.displacement',
  },
  {
    ...row('heat', 'power', 'electricity of the compressor', 'electricPower', ({ results }) => {
      return results.operating.compressorPower;
    }),
    result: 'operating.compressor.power',
  },
  motorLoad,
];

const ofThePlant: readonly ComparedValue[] = [
  {
    ...row('heat', 'heatReachingWater', 'heat to the water', 'power', ({ results }) =>
      requiredRunning(results.plant.heatReachingWaterRunning),
    ),
    result: 'plant.heatReachingWater',
  },
  {
    ...row('heat', 'systemPower', 'electricity, all of it', 'electricPower', ({ results }) =>
      requiredRunning(results.plant.systemPowerRunning),
    ),
    result: 'plant.systemPower',
  },
  {
    ...row('heat', 'systemCop', 'COP of the system', 'ratio', ({ results }) =>
      requiredRunning(results.plant.systemCop),
    ),
    result: 'plant.systemCop',
  },
];

const byBasis: Readonly<Record<MachineBasis, readonly ComparedValue[]>> = {
  sameDome: [...ofTheLoop, ...withThisDisplacement, compressorCop, perVolume],
  sameHeat: [...ofTheLoop, ...withDisplacementNeeded, compressorCop, perVolume],
  sameParts: [...ofTheLoop, ...withThisDisplacement, compressorCop, ...ofThePlant, perVolume],
};

/** The rows of numbers of a basis, in the order they are shown. */
export function comparedValues(basis: MachineBasis): readonly ComparedValue[] {
  return byBasis[basis];
}

/** Rows of which a difference between two fluids is told; temperatures are what the bases hold. */
const toldApart = [
  'evaporatingPressure',
  'condensingPressure',
  'pressureRatio',
  'dischargeTemperature',
  'heat',
  'displacementNeeded',
  'power',
  'current',
  'motorLoad',
  'compressorCop',
  'volumetricHeatingCapacity',
];

/** Whether the row's difference between two fluids is told on that basis: not what the basis itself makes equal. */
export function isToldApart(basis: MachineBasis, name: string): boolean {
  return toldApart.includes(name) && !(basis === 'sameHeat' && name === 'heat');
}

/** The steps that follow the loop's own: lift, gauge pressures, heat per volume, and what heat of another size needs. */
export function comparedSteps(basis: MachineBasis, { results, size }: ComparedRun): readonly WorkingStep[] {
  const { operating, compressor, surroundings } = results;
  const [inlet, , outlet, liquid] = operating.points;
  const perMass = enthalpyDifference(outlet.enthalpy, liquid.enthalpy);
  const level = (side: 'evaporating' | 'condensing'): TracedLevel => ({
    temperature: [operating[side].temperature, `operating.${side}Temperature`],
    pressure: [operating[side].pressure, `operating.${side}Pressure`],
    noGlide: operating[side].glide === 0 ? `operating.${side}Glide` : undefined,
  });
  const steps = [
    ...liftAndGaugeSteps('operating', level('evaporating'), level('condensing'), [
      surroundings.atmosphericPressure,
      atmosphere,
    ]),
    workingStep('operating.heatDeliveredPerMass', 'loop.heatDeliveredPerMass', perMass, {
      h_2: [outlet.enthalpy, 'operating.compressor.dischargeEnthalpy'],
      h_3: [liquid.enthalpy, `operating.points.${liquid.name}.enthalpy`],
    }),
    workingStep('operating.volumetricHeatingCapacity', 'loop.volumetricHeatingCapacity', capacityPerVolume(operating), {
      q_H: [perMass, 'operating.heatDeliveredPerMass'],
      rho_1: [inlet.density, `operating.points.${inlet.name}.density`],
    }),
  ];
  return basis === 'sameHeat' ? [...sizeSteps(compressor, size), ...steps] : steps;
}

/** Names of the steps that give the numbers of a machine of another size. */
export const sizedNumbers = {
  displacement: 'scaled.displacement',
  shellConductance: 'scaled.shellConductance',
} as const;

function sizeSteps({ compressor, identified }: StageResults['compressor'], size: number): readonly WorkingStep[] {
  const { displacement, shellConductance } = compressor;
  const origins = numberOrigins({ identified });
  return [
    workingStep(sizedNumbers.displacement, 'compressor.displacementOfSize', displacementOfSize(size, displacement), {
      n: [size],
      V_d: [displacement, origins.displacement],
    }),
    workingStep(
      sizedNumbers.shellConductance,
      'compressor.shellConductanceOfSize',
      shellConductanceOfSize(size, shellConductance),
      { n: [size], UA: [shellConductance, origins.shellConductance] },
    ),
  ];
}

function capacityPerVolume({ points: [inlet, , outlet, liquid] }: OperatingPoint): number {
  return volumetricHeatingCapacity(enthalpyDifference(outlet.enthalpy, liquid.enthalpy), inlet.density);
}

function displacementNeeded({ results, size }: ComparedRun): number {
  return displacementOfSize(size, results.compressor.compressor.displacement);
}

function ownLoop({ own }: ComparedRun): OperatingPoint {
  if (own === undefined) throw new Error('the loop on the design’s own fluid was not computed');
  return own;
}

function row(
  group: RowGroup,
  name: string,
  label: string,
  quantity: QuantityName,
  read: ComparedValue['read'],
): ComparedValue {
  return { name, label, quantity, group, result: `operating.${name}`, read };
}
