// Several refrigerants in the textbook cycle, side by side, without a machine: the same dew temperatures, superheat,
// subcooling and isentropic efficiency for all. Plain values without ranges; work on the gas, not electricity.
// Leaves out: that a compressor's efficiency changes with fluid and pressure ratio; everything a machine has of its own.

import { caution } from '../../cautions/index.ts';
import {
  checkTextbookCycleRequest,
  gaugePressureOf,
  relativeVolumeDrawn,
  type TextbookCycle,
  type TextbookCycleRequest,
  temperatureLift,
  textbookCycle,
  textbookCycleWorking,
} from '../../loop/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { type QuantityName, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { bandWithUnit, loopPoints } from '../answers/pieces.ts';
import { type EngineError, refusalOf } from '../from-design.ts';
import type { ComparisonColumn, ComparisonRow, RefrigerantComparison, RowGroup } from './comparison/comparison.ts';
import { chargeFigures, comparedFacts } from './comparison/facts.ts';
import { comparedFluids } from './comparison/fluids.ts';
import { liftAndGaugeSteps, type TracedLevel } from './comparison/lift-and-gauge-steps.ts';

/** Temperatures in K, pressure in Pa. */
export interface TextbookComparisonRequest {
  /** Dew temperatures. */
  readonly evaporating: number;
  readonly condensing: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly isentropicEfficiency: number;
  /** Air pressure from which gauge pressures count. */
  readonly atmosphericPressure: number;
}

/** A row with what it is read from and the name of its step. */
interface TextbookValue extends ComparisonRow {
  readonly result: string;
  readonly read: (cycle: TextbookCycle, context: TextbookContext) => number;
}

interface TextbookContext {
  readonly atmosphericPressure: number;
  /** Volumetric heating capacity of the first fluid that has a cycle [J/m³]. */
  readonly firstCapacity: number;
}

const values: readonly TextbookValue[] = [
  level('evaporating', 'temperature', 'evaporating, dew'),
  level('evaporating', 'pressure', 'evaporating pressure, absolute'),
  row('pressures', 'evaporatingGaugePressure', 'evaporating pressure, gauge', 'gaugePressure', (cycle, context) =>
    gaugePressureOf(cycle.evaporating.pressure, context.atmosphericPressure),
  ),
  level('condensing', 'temperature', 'condensing, dew'),
  level('condensing', 'pressure', 'condensing pressure, absolute'),
  row('pressures', 'condensingGaugePressure', 'condensing pressure, gauge', 'gaugePressure', (cycle, context) =>
    gaugePressureOf(cycle.condensing.pressure, context.atmosphericPressure),
  ),
  glide('evaporating', 'glide while boiling, dew less bubble'),
  glide('condensing', 'glide while condensing, dew less bubble'),
  row('lift', 'temperatureLift', 'temperature lift', 'temperatureDifference', (cycle) =>
    temperatureLift(cycle.condensing.temperature, cycle.evaporating.temperature),
  ),
  row('lift', 'pressureRatio', 'pressure ratio', 'ratio', (cycle) => cycle.pressureRatio),
  {
    ...row('lift', 'dischargeTemperature', 'discharge gas', 'temperature', (cycle) => cycle.points[2].temperature),
    result: 'cycle.points.compressorOutlet.temperature',
  },
  row('heat', 'heatDelivered', 'heat given, per mass', 'enthalpy', (cycle) => cycle.heatDelivered),
  row('heat', 'specificWork', 'work on the gas, per mass', 'enthalpy', (cycle) => cycle.specificWork),
  row('heat', 'heatingCop', 'heating COP of the textbook cycle', 'ratio', (cycle) => cycle.heatingCop),
  row('heat', 'volumetricHeatingCapacity', 'heat per volume of gas drawn in', 'volumetricCapacity', (cycle) => {
    return cycle.volumetricHeatingCapacity;
  }),
  row(
    'heat',
    'relativeVolumeDrawn',
    'volume drawn in for the same heat, the first fluid’s is 1',
    'ratio',
    (cycle, { firstCapacity }) => relativeVolumeDrawn(firstCapacity, cycle.volumetricHeatingCapacity),
  ),
];

/**
 * Compares refrigerants in the textbook cycle.
 * @param fluids   two to five names, each once
 * @param request  what all of them share
 * @returns        the comparison; a fluid without a cycle says why in its own column
 * @throws InputError for fluids that cannot be compared, see comparedFluids, and for numbers that no fluid could have, see
 *         checkTextbookCycleRequest
 */
export function compareTextbookCycles(
  fluids: readonly string[],
  request: TextbookComparisonRequest,
): RefrigerantComparison {
  const { atmosphericPressure, evaporating, condensing, superheat, subcooling, isentropicEfficiency } = request;
  const names = comparedFluids(fluids);
  checkTextbookCycleRequest(askedOf(names[0]!, request));
  const attempts = names.map((fluid) => ({ fluid, attempt: cycleOf(fluid, request) }));
  const first = attempts.flatMap(({ attempt }) => (attempt.ok ? [attempt.cycle] : []))[0];
  const context = { atmosphericPressure, firstCapacity: first?.volumetricHeatingCapacity ?? Number.NaN };
  return {
    comparisonVersion: 1,
    caution,
    basis: 'textbook',
    designName: null,
    designFluid: null,
    madeFor: null,
    conditions: {
      sourceTemperature: null,
      waterTemperature: null,
      evaporatingTemperature: evaporating,
      condensingTemperature: condensing,
      superheat,
      subcooling,
      atmosphericPressure,
      displacement: null,
      isentropicEfficiency,
      heat: null,
    },
    rows: values.map(({ name, label, quantity, group }) => ({ name, label, quantity, group })),
    columns: attempts.map(({ fluid, attempt }) => columnOf(fluid, attempt, context)),
    differences: [],
  };
}

type Attempt =
  | { readonly ok: true; readonly asked: TextbookCycleRequest; readonly cycle: TextbookCycle }
  | { readonly ok: false; readonly error: EngineError };

function askedOf(fluid: string, request: TextbookComparisonRequest): TextbookCycleRequest {
  const { evaporating, condensing, superheat, subcooling, isentropicEfficiency } = request;
  return { refrigerant: fluid, evaporating, condensing, superheat, subcooling, isentropicEfficiency };
}

function cycleOf(fluid: string, request: TextbookComparisonRequest): Attempt {
  const asked = askedOf(fluid, request);
  try {
    return { ok: true, asked, cycle: textbookCycle(asked) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return { ok: false, error: refusalOf(error).error };
  }
}

function columnOf(fluid: string, attempt: Attempt, context: TextbookContext): ComparisonColumn {
  const charge = chargeFigures(fluid, undefined, false);
  const shared = {
    fluid,
    standing: 'noMachine',
    reason: null,
    stops: [],
    facts: comparedFacts(fluid, null),
    charge: charge.figures,
  } as const;
  if (!attempt.ok) return { ...shared, cycle: attempt, workings: charge.workings };
  const { asked, cycle } = attempt;
  const numbers = values.map(({ name, result, quantity, read }) => {
    const value = read(cycle, context);
    return [name, bandWithUnit(result, quantity, { low: value, likely: value, high: value })] as const;
  });
  return {
    ...shared,
    cycle: {
      ok: true,
      values: Object.fromEntries(numbers),
      points: loopPoints(cycle.points),
      unanswered: [],
    },
    workings: [...textbookCycleWorking(asked, cycle), ...stepsOf(cycle, context), ...charge.workings],
  };
}

/** Lift, gauge pressures and the volume beside the first fluid's; the rest is the cycle's own working. */
function stepsOf(
  cycle: TextbookCycle,
  { atmosphericPressure, firstCapacity }: TextbookContext,
): readonly WorkingStep[] {
  const { volumetricHeatingCapacity: own } = cycle;
  const tracedLevel = (side: 'evaporating' | 'condensing'): TracedLevel => ({
    temperature: [cycle[side].temperature, `cycle.${side}.temperature`],
    pressure: [cycle[side].pressure, `cycle.${side}.pressure`],
    noGlide: cycle[side].glide === undefined ? `cycle.${side}.glide` : undefined,
  });
  const atmosphere = [atmosphericPressure, 'surroundings.atmosphericPressure'] as const;
  return [
    ...liftAndGaugeSteps('cycle', tracedLevel('evaporating'), tracedLevel('condensing'), atmosphere),
    workingStep('cycle.relativeVolumeDrawn', 'loop.relativeVolumeDrawn', relativeVolumeDrawn(firstCapacity, own), {
      q_v0: [firstCapacity, 'volumetric heating capacity of the first fluid'],
      q_v: [own, 'cycle.volumetricHeatingCapacity'],
    }),
  ];
}

/** A dew temperature or its pressure, under the name it has in the cycle. */
function level(side: 'evaporating' | 'condensing', kind: 'temperature' | 'pressure', label: string): TextbookValue {
  const name = `${side}${kind === 'temperature' ? 'Temperature' : 'Pressure'}`;
  return { ...row('pressures', name, label, kind, (cycle) => cycle[side][kind]), result: `cycle.${side}.${kind}` };
}

/** How far a blend's dew lies above its bubble temperature at one pressure; 0 for a single substance. */
function glide(side: 'evaporating' | 'condensing', label: string): TextbookValue {
  const read: TextbookValue['read'] = (cycle) => cycle[side].glide ?? 0;
  return {
    ...row('pressures', `${side}Glide`, label, 'temperatureDifference', read),
    result: `cycle.${side}.glide`,
  };
}

function row(
  group: RowGroup,
  name: string,
  label: string,
  quantity: QuantityName,
  read: TextbookValue['read'],
): TextbookValue {
  return { name, label, quantity, group, result: `cycle.${name}`, read };
}
