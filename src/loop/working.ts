// The working of a textbook cycle, as a student would hand it in: what was given, both levels, the states 1, 2s, 2, 3, 4 with
// every property, then work, heats and ratios, exergy, and last the heat capacities and speeds of sound of the states. Each
// number stands with its formula, the numbers put in and where they came from: other steps, or keys of the request under
// 'request'. Names follow the result object: 'cycle.points.compressorInlet.enthalpy'.

import {
  type CaloricShift,
  type DomeOrigins,
  furtherPropertiesWorking,
  internalEnergyWorking,
  type Refrigerant,
  referenceOffset,
  refrigerant,
  type Saturation,
  type StateOrigins,
  saturatedSidesWorking,
  saturationPressureWorking,
  saturationTemperatureWorking,
  stateWorking,
} from '../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import { type CheckedCycleRequest, checkTextbookCycleRequest, type TextbookCycleRequest } from './cycle-request.ts';
import type { CyclePoint, TextbookCycle } from './cycle-result.ts';
import { type CycleLevels, cycleLevels } from './cycle-states.ts';

type LevelName = keyof CycleLevels;

/** Everything the steps are made from. */
interface Solved {
  readonly asked: CheckedCycleRequest;
  readonly cycle: TextbookCycle;
  readonly fluid: Refrigerant;
  readonly levels: CycleLevels;
  readonly shift: CaloricShift;
  readonly own: (name: string) => string;
}

/**
 * Steps of a textbook cycle in the order of computing.
 * @param request  what was asked
 * @param cycle    the answer to it
 * @param prefix   put before every name: 'cycle' gives 'cycle.specificWork'
 */
export function textbookCycleWorking(
  request: TextbookCycleRequest,
  cycle: TextbookCycle,
  prefix = 'cycle',
): readonly WorkingStep[] {
  const asked = checkTextbookCycleRequest(request);
  const fluid = refrigerant(asked.refrigerant);
  const solved: Solved = {
    asked,
    cycle,
    fluid,
    levels: cycleLevels(fluid, asked),
    shift: referenceOffset(fluid, asked.referenceState),
    own: (name) => `${prefix}.${name}`,
  };
  return [
    ...levelSteps(solved),
    ...inletSteps(solved),
    ...compressionSteps(solved),
    ...liquidSteps(solved),
    ...expansionSteps(solved),
    ...resultSteps(solved),
    ...exergySteps(solved),
    ...cycle.points.flatMap((point) => furtherPropertiesWorking(fluid, point, placeOf(solved, point))),
  ];
}

function placeOf({ own }: Solved, point: CyclePoint): string {
  return own(`points.${point.name}`);
}

/** Where no pressure is lost, the ends of an exchanger share one level, under the name of the first. */
function levelName({ levels }: Solved, level: LevelName): LevelName {
  if (level === 'suction' && levels.suction === levels.evaporating) return 'evaporating';
  if (level === 'liquid' && levels.liquid === levels.condensing) return 'condensing';
  return level;
}

function domeOf(solved: Solved, level: LevelName): DomeOrigins {
  const prefix = solved.own(levelName(solved, level));
  return { saturation: solved.levels[level], prefix, temperature: `${prefix}.temperature` };
}

const levelOfPoint: Readonly<Record<CyclePoint['name'], LevelName>> = {
  compressorInlet: 'suction',
  compressorOutletIsentropic: 'condensing',
  compressorOutlet: 'condensing',
  condenserOutlet: 'liquid',
  evaporatorInlet: 'evaporating',
  evaporatorOutlet: 'evaporating',
  expansionInlet: 'liquid',
};

/** Temperature and pressure of each level, and both sides of the dome where a state lies on or in it. */
function levelSteps(solved: Solved): readonly WorkingStep[] {
  const { asked, levels, cycle, fluid, shift } = solved;
  const given: Readonly<Record<LevelName, { readonly key: string } | undefined>> = {
    evaporating: asked.evaporating,
    condensing: asked.condensing,
    suction: { key: 'suctionPressure' },
    liquid: { key: 'liquidPressure' },
  };
  return (Object.keys(given) as LevelName[])
    .filter((level) => levelName(solved, level) === level)
    .flatMap((level) => {
      const at = solved.own(level);
      const wet = cycle.points.some(
        ({ name, quality }) => quality !== null && levelName(solved, levelOfPoint[name]) === level,
      );
      const origins = { temperature: `${at}.temperature`, pressure: `${at}.pressure` };
      return [
        ...saturationSteps(fluid, levels[level], at, given[level]!.key),
        ...(wet ? saturatedSidesWorking(fluid, levels[level], at, origins, shift) : []),
      ];
    });
}

function saturationSteps(fluid: Refrigerant, saturation: Saturation, at: string, key: string): readonly WorkingStep[] {
  const { temperature, pressure } = saturation;
  const names = { temperature: `${at}.temperature`, pressure: `${at}.pressure` };
  if (key.endsWith('Pressure')) {
    return [
      workingStep(names.pressure, 'loop.pressureGiven', pressure, { p_given: [pressure, requested(key)] }),
      saturationTemperatureWorking(fluid, saturation, names.temperature, names.pressure),
    ];
  }
  return [
    workingStep(names.temperature, 'loop.temperatureGiven', temperature, { T_given: [temperature, requested(key)] }),
    saturationPressureWorking(fluid, saturation, names.pressure, names.temperature),
  ];
}

/** Name of a key of the request as an origin. */
function requested(key: string): string {
  return `request.${key}`;
}

/** Pressure of a state, what the equation gives from how it was found, and its internal energy. */
function pointSteps(
  solved: Solved,
  point: CyclePoint,
  found: 'temperature' | 'enthalpy' | 'entropy' | 'quality',
): readonly WorkingStep[] {
  const at = placeOf(solved, point);
  const dome = domeOf(solved, levelOfPoint[point.name]);
  const pressure = `${at}.pressure`;
  const origins = { pressure, [found]: `${at}.${found}` } as unknown as StateOrigins;
  return [
    workingStep(pressure, 'loop.pressureKept', point.pressure, { p_in: [point.pressure, `${dome.prefix}.pressure`] }),
    ...stateWorking(solved.fluid, point, at, origins, point.quality === null ? undefined : dome, solved.shift),
    internalEnergyWorking(point, at, pressure),
  ];
}

/** State 1: the gas by its superheat, its temperature or its quality. */
function inletSteps(solved: Solved): readonly WorkingStep[] {
  const { asked, cycle, own } = solved;
  const [inlet] = cycle.points;
  const at = placeOf(solved, inlet);
  const dome = domeOf(solved, 'suction');
  const dew = dome.saturation.vapour.temperature;
  const superheat = workingStep(own('superheat'), 'loop.superheat', cycle.superheat, {
    T: [inlet.temperature, `${at}.temperature`],
    T_dew: [dew, dome.temperature],
  });
  switch (asked.gas.key) {
    case 'superheat':
      return [
        workingStep(own('superheat'), 'loop.differenceGiven', cycle.superheat, {
          dT_given: [cycle.superheat, requested('superheat')],
        }),
        workingStep(`${at}.temperature`, 'loop.suctionTemperature', inlet.temperature, {
          T_e: [dew, dome.temperature],
          dT_sh: [cycle.superheat, own('superheat')],
        }),
        ...pointSteps(solved, inlet, 'temperature'),
      ];
    case 'suctionQuality':
      return [
        workingStep(`${at}.quality`, 'loop.shareGiven', inlet.quality!, {
          x_given: [inlet.quality!, requested('suctionQuality')],
        }),
        ...pointSteps(solved, inlet, 'quality'),
        superheat,
      ];
    default:
      return [
        workingStep(`${at}.temperature`, 'loop.temperatureGiven', inlet.temperature, {
          T_given: [inlet.temperature, requested(asked.gas.key)],
        }),
        ...pointSteps(solved, inlet, 'temperature'),
        superheat,
      ];
  }
}

/** States 2s and 2: the efficiency gave the outlet, or the outlet's temperature gave the efficiency. */
function compressionSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const [inlet, isentropic, outlet] = cycle.points;
  const enthalpyOf = (point: CyclePoint): StepInput => [point.enthalpy, `${placeOf(solved, point)}.enthalpy`];
  const at = placeOf(solved, outlet);
  const h_1 = enthalpyOf(inlet);
  const h_2s = enthalpyOf(isentropic);
  const eta_s = cycle.isentropicEfficiency;
  const efficiency = own('isentropicEfficiency');
  const withoutLosses = [
    workingStep(`${placeOf(solved, isentropic)}.entropy`, 'loop.entropyKept', isentropic.entropy, {
      s_1: [inlet.entropy, `${placeOf(solved, inlet)}.entropy`],
    }),
    ...pointSteps(solved, isentropic, 'entropy'),
  ];
  if (cycle.compressionGiven === 'dischargeTemperature') {
    return [
      ...withoutLosses,
      workingStep(`${at}.temperature`, 'loop.temperatureGiven', outlet.temperature, {
        T_given: [outlet.temperature, requested('dischargeTemperature')],
      }),
      ...pointSteps(solved, outlet, 'temperature'),
      workingStep(efficiency, 'loop.isentropicEfficiency', eta_s, { h_1, h_2s, h_2: enthalpyOf(outlet) }),
    ];
  }
  return [
    ...withoutLosses,
    workingStep(efficiency, 'loop.shareGiven', eta_s, { x_given: [eta_s, requested('isentropicEfficiency')] }),
    workingStep(`${at}.enthalpy`, 'loop.outletEnthalpy', outlet.enthalpy, { h_1, h_2s, eta_s: [eta_s, efficiency] }),
    ...pointSteps(solved, outlet, 'enthalpy'),
  ];
}

/** State 3: the liquid by its subcooling or its temperature. */
function liquidSteps(solved: Solved): readonly WorkingStep[] {
  const { asked, cycle, own } = solved;
  const liquid = cycle.points[3];
  const at = placeOf(solved, liquid);
  const dome = domeOf(solved, 'liquid');
  const T_b: StepInput = [dome.saturation.liquid.temperature, dome.temperature];
  const { subcooling } = cycle;
  if (asked.liquid.key === 'subcooling') {
    return [
      workingStep(own('subcooling'), 'loop.differenceGiven', subcooling, {
        dT_given: [subcooling, requested('subcooling')],
      }),
      workingStep(`${at}.temperature`, 'loop.liquidTemperature', liquid.temperature, {
        T_b,
        dT_sc: [subcooling, own('subcooling')],
      }),
      ...pointSteps(solved, liquid, 'temperature'),
    ];
  }
  return [
    workingStep(`${at}.temperature`, 'loop.temperatureGiven', liquid.temperature, {
      T_given: [liquid.temperature, requested('liquidTemperature')],
    }),
    ...pointSteps(solved, liquid, 'temperature'),
    workingStep(own('subcooling'), 'loop.subcooling', subcooling, {
      T_b,
      T: [liquid.temperature, `${at}.temperature`],
    }),
  ];
}

/** State 4: the valve leaves the enthalpy of the liquid as it is. */
function expansionSteps(solved: Solved): readonly WorkingStep[] {
  const [, , , liquid, expanded] = solved.cycle.points;
  return [
    workingStep(`${placeOf(solved, expanded)}.enthalpy`, 'loop.enthalpyKept', expanded.enthalpy, {
      h_in: [liquid.enthalpy, `${placeOf(solved, liquid)}.enthalpy`],
    }),
    ...pointSteps(solved, expanded, 'enthalpy'),
  ];
}

/** Work, heats, coefficients of performance and ratios. */
function resultSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const [inlet, , outlet, liquid, expanded] = cycle.points;
  const h = (point: CyclePoint): StepInput => [point.enthalpy, `${placeOf(solved, point)}.enthalpy`];
  const w: StepInput = [cycle.specificWork, own('specificWork')];
  const q_H: StepInput = [cycle.heatDelivered, own('heatDelivered')];
  const q_L: StepInput = [cycle.heatTaken, own('heatTaken')];
  return [
    workingStep(own('pressureRatio'), 'loop.pressureRatio', cycle.pressureRatio, {
      p_d: [outlet.pressure, `${placeOf(solved, outlet)}.pressure`],
      p_s: [inlet.pressure, `${placeOf(solved, inlet)}.pressure`],
    }),
    workingStep(own('specificWork'), 'loop.specificWork', cycle.specificWork, { h_2: h(outlet), h_1: h(inlet) }),
    workingStep(own('heatDelivered'), 'loop.heatDeliveredPerMass', cycle.heatDelivered, {
      h_2: h(outlet),
      h_3: h(liquid),
    }),
    workingStep(own('heatTaken'), 'loop.heatTakenPerMass', cycle.heatTaken, { h_1: h(inlet), h_4: h(expanded) }),
    workingStep(own('heatingCop'), 'loop.heatingCop', cycle.heatingCop, { q_H, w }),
    workingStep(own('coolingCop'), 'loop.coolingCop', cycle.coolingCop, { q_L, w }),
    workingStep(own('carnotHeatingCop'), 'loop.carnotHeatingCop', cycle.carnotHeatingCop, {
      T_h: [cycle.condensing.temperature, own('condensing.temperature')],
      T_c: [cycle.evaporating.temperature, own('evaporating.temperature')],
    }),
    workingStep(own('volumetricHeatingCapacity'), 'loop.volumetricHeatingCapacity', cycle.volumetricHeatingCapacity, {
      q_H,
      rho_1: [inlet.density, `${placeOf(solved, inlet)}.density`],
    }),
  ];
}

/** The bodies of the exergy account, what each part destroys, and the efficiency of the second law. */
function exergySteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const [inlet, , outlet, liquid, expanded] = cycle.points;
  const s = (point: CyclePoint): StepInput => [point.entropy, `${placeOf(solved, point)}.entropy`];
  const { exergyBasis: basis, exergyDestruction: lost } = cycle;
  const T_0: StepInput = [basis.deadState, own('exergyBasis.deadState')];
  const T_H: StepInput = [basis.sinkTemperature, own('exergyBasis.sinkTemperature')];
  const T_L: StepInput = [basis.sourceTemperature, own('exergyBasis.sourceTemperature')];
  const w: StepInput = [cycle.specificWork, own('specificWork')];
  const w_min: StepInput = [basis.minimumWork, own('exergyBasis.minimumWork')];
  const q_H: StepInput = [cycle.heatDelivered, own('heatDelivered')];
  const destroyed = (part: string) => own(`exergyDestruction.${part}`);
  return [
    ...bodySteps(solved),
    workingStep(destroyed('compressor'), 'loop.exergyDestroyedAdiabatic', lost.compressor, {
      T_0,
      s_in: s(inlet),
      s_out: s(outlet),
    }),
    workingStep(destroyed('condenser'), 'loop.exergyDestroyedWithHeat', lost.condenser, {
      T_0,
      s_in: s(outlet),
      s_out: s(liquid),
      q: q_H,
      T_body: T_H,
    }),
    workingStep(destroyed('expansion'), 'loop.exergyDestroyedAdiabatic', lost.expansion, {
      T_0,
      s_in: s(liquid),
      s_out: s(expanded),
    }),
    workingStep(destroyed('evaporator'), 'loop.exergyDestroyedWithHeat', lost.evaporator, {
      T_0,
      s_in: s(expanded),
      s_out: s(inlet),
      // Heat taken is heat given with the sign turned.
      q: [-cycle.heatTaken, own('heatTaken')],
      T_body: T_L,
    }),
    workingStep(own('exergyBasis.minimumWork'), 'loop.minimumWork', basis.minimumWork, {
      q_H,
      q_L: [cycle.heatTaken, own('heatTaken')],
      T_0,
      T_H,
      T_L,
    }),
    workingStep(destroyed('total'), 'loop.exergyDestruction', lost.total, { w, w_min }),
    workingStep(own('exergyBasis.secondLawEfficiency'), 'loop.secondLawEfficiency', basis.secondLawEfficiency, {
      w_min,
      w,
    }),
  ];
}

/** A body that was not given stands at the dead state; a dead state that was not given is the usual one. */
function bodySteps({ asked, cycle, own }: Solved): readonly WorkingStep[] {
  const { deadState } = cycle.exergyBasis;
  const dead = own('exergyBasis.deadState');
  const given = 'loop.temperatureGiven';
  return [
    workingStep(dead, given, deadState, { T_given: [deadState, requested('deadState')] }),
    ...(['sinkTemperature', 'sourceTemperature'] as const).map((key) => {
      const value = cycle.exergyBasis[key];
      return asked[key] === undefined
        ? workingStep(own(`exergyBasis.${key}`), 'loop.temperatureKept', value, { T_same: [value, dead] })
        : workingStep(own(`exergyBasis.${key}`), given, value, { T_given: [value, requested(key)] });
    }),
  ];
}
