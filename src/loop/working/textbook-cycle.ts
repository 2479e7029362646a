// The working of a textbook cycle, as a student would hand it in: what was given, both levels, the states 1, 2s, 2, 3, 4 with
// every property (with a heat exchanger 4′, 3, 1, 2s, 2, 3′, 4), then work, heats and ratios, exergy, and last the heat capacities and speeds of sound of the states. Each
// number stands with its formula, the numbers put in and where they came from: other steps, or keys of the request under
// 'request'. Names follow the result object: 'cycle.points.compressorInlet.enthalpy'.

import {
  furtherPropertiesWorking,
  glideWorking,
  type Refrigerant,
  referenceOffset,
  refrigerant,
  type Saturation,
  saturatedSidesWorking,
  saturationPressureWorking,
  saturationTemperatureWorking,
} from '../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { checkTextbookCycleRequest, type TextbookCycleRequest } from '../cycle-request.ts';
import type { CyclePoint, TextbookCycle } from '../cycle-result.ts';
import { cycleLevels } from '../cycle-states.ts';
import {
  exchangerExergySteps,
  exchangeSteps,
  flowSteps,
  gasOutOfEvaporator,
  liquidIntoExpansion,
  pressureLossSteps,
} from './exchange-and-flow.ts';
import {
  domeOf,
  enthalpyOf,
  entropyOf,
  isBlend,
  type LevelName,
  levelName,
  levelOfPoint,
  placeOf,
  pointSteps,
  requested,
  type Solved,
} from './steps.ts';

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
    ...pressureLossSteps(solved),
    ...gasSteps(solved),
    ...(cycle.heatExchanger === undefined
      ? [...compressionSteps(solved), ...liquidSteps(solved)]
      : [...liquidSteps(solved), ...exchangeSteps(solved), ...compressionSteps(solved)]),
    ...expansionSteps(solved),
    ...resultSteps(solved),
    ...exergySteps(solved),
    ...flowSteps(solved),
    ...cycle.points.flatMap((point) => furtherPropertiesWorking(fluid, point, placeOf(solved, point))),
  ];
}

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
      const origins = { ...domeOf(solved, level), pressure: `${at}.pressure` };
      return [
        ...saturationSteps(fluid, levels[level], at, given[level]!.key),
        ...glideSteps(fluid, levels[level], at),
        ...(wet ? saturatedSidesWorking(fluid, levels[level], at, origins, shift) : []),
      ];
    });
}

function saturationSteps(fluid: Refrigerant, saturation: Saturation, at: string, key: string): readonly WorkingStep[] {
  const { temperature, pressure } = saturation.vapour;
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

/** Of a blend: the bubble temperature at the pressure of a level, and the glide there. */
function glideSteps(fluid: Refrigerant, saturation: Saturation, at: string): readonly WorkingStep[] {
  if (!isBlend(fluid)) return [];
  const names = { dew: `${at}.temperature`, bubble: `${at}.bubbleTemperature` };
  return [
    saturationTemperatureWorking(fluid, saturation, names.bubble, `${at}.pressure`, 'bubble'),
    glideWorking(saturation, `${at}.glide`, names),
  ];
}

/** State 1, with a heat exchanger 4′: the gas by its superheat, its temperature or its quality. */
function gasSteps(solved: Solved): readonly WorkingStep[] {
  const { asked, cycle, own } = solved;
  const gas = gasOutOfEvaporator(solved);
  const at = placeOf(solved, gas);
  const dome = domeOf(solved, levelOfPoint[gas.name]);
  const dew = dome.saturation.vapour.temperature;
  // Wet gas has no superheat: its vapour counts as gas at its dew temperature.
  const isWet = gas.quality !== null;
  const superheat = workingStep(own('superheat'), 'loop.superheat', cycle.superheat, {
    T: isWet ? [dew, dome.temperature] : [gas.temperature, `${at}.temperature`],
    T_dew: [dew, dome.temperature],
  });
  switch (asked.gas.key) {
    case 'superheat':
      return [
        workingStep(own('superheat'), 'loop.differenceGiven', cycle.superheat, {
          dT_given: [cycle.superheat, requested('superheat')],
        }),
        workingStep(`${at}.temperature`, 'loop.suctionTemperature', gas.temperature, {
          T_e: [dew, dome.temperature],
          dT_sh: [cycle.superheat, own('superheat')],
        }),
        ...pointSteps(solved, gas, 'temperature'),
      ];
    case 'suctionQuality':
      return [
        workingStep(`${at}.quality`, 'loop.shareGiven', gas.quality!, {
          x_given: [gas.quality!, requested('suctionQuality')],
        }),
        ...pointSteps(solved, gas, 'quality'),
        superheat,
      ];
    default:
      return [
        workingStep(`${at}.temperature`, 'loop.temperatureGiven', gas.temperature, {
          T_given: [gas.temperature, requested(asked.gas.key)],
        }),
        ...pointSteps(solved, gas, 'temperature'),
        superheat,
      ];
  }
}

/** States 2s and 2: the efficiency gave the outlet, or the outlet's temperature gave the efficiency. */
function compressionSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const [inlet, isentropic, outlet] = cycle.points;
  const h = (point: CyclePoint) => enthalpyOf(solved, point);
  const at = placeOf(solved, outlet);
  const h_1 = h(inlet);
  const h_2s = h(isentropic);
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
      workingStep(efficiency, 'loop.isentropicEfficiency', eta_s, { h_1, h_2s, h_2: h(outlet) }),
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
  const T_b: StepInput = [dome.saturation.liquid.temperature, dome.bubbleTemperature ?? dome.temperature];
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
  const expanded = solved.cycle.points[4];
  return [
    workingStep(`${placeOf(solved, expanded)}.enthalpy`, 'loop.enthalpyKept', expanded.enthalpy, {
      h_in: enthalpyOf(solved, liquidIntoExpansion(solved)),
    }),
    ...pointSteps(solved, expanded, 'enthalpy'),
  ];
}

/** Work, heats, coefficients of performance and ratios. */
function resultSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const [inlet, , outlet, liquid, expanded] = cycle.points;
  const h = (point: CyclePoint) => enthalpyOf(solved, point);
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
    cycle.heatExchanger === undefined
      ? workingStep(own('heatTaken'), 'loop.heatTakenPerMass', cycle.heatTaken, { h_1: h(inlet), h_4: h(expanded) })
      : workingStep(own('heatTaken'), 'loop.heatTakenWithExchanger', cycle.heatTaken, {
          h_eo: h(gasOutOfEvaporator(solved)),
          h_4: h(expanded),
        }),
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
  const s = (point: CyclePoint) => entropyOf(solved, point);
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
      s_in: s(liquidIntoExpansion(solved)),
      s_out: s(expanded),
    }),
    workingStep(destroyed('evaporator'), 'loop.exergyDestroyedWithHeat', lost.evaporator, {
      T_0,
      s_in: s(expanded),
      s_out: s(gasOutOfEvaporator(solved)),
      // Heat taken is heat given with the sign turned.
      q: [-cycle.heatTaken, own('heatTaken')],
      T_body: T_L,
    }),
    ...exchangerExergySteps(solved, T_0),
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
