// The working of what a textbook cycle may have beyond the plain one: pressure lost, the liquid-to-suction heat exchanger
// between its states, and everything per second.

import { furtherPropertiesWorking, internalEnergyWorking, stateWorking } from '../../matter/refrigerants/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CyclePerSecond, CyclePoint, LiquidSuctionExchange, MassFlowKey } from '../cycle-result.ts';
import { domeOf, enthalpyOf, entropyOf, placeOf, pointNamed, pointSteps, requested, type Solved } from './steps.ts';

/** The gas where superheat is counted and heat taken ends: 1, or 4′ with an exchanger. */
export function gasOutOfEvaporator(solved: Solved): CyclePoint {
  return pointNamed(solved, solved.cycle.heatExchanger === undefined ? 'compressorInlet' : 'evaporatorOutlet');
}

/** The liquid before the valve: 3, or 3′ with an exchanger. */
export function liquidIntoExpansion(solved: Solved): CyclePoint {
  return pointNamed(solved, solved.cycle.heatExchanger === undefined ? 'condenserOutlet' : 'expansionInlet');
}

/** What evaporator and condenser lose, where a pressure behind them was given. */
export function pressureLossSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  if (cycle.pressureLosses === undefined) return [];
  const ends = [
    ['suction', 'evaporating', 'suction'],
    ['liquid', 'condensing', 'liquid'],
  ] as const;
  return ends.map(([name, before, after]) => {
    const pressureOf = (level: 'evaporating' | 'condensing' | 'suction' | 'liquid'): StepInput => {
      const { saturation, prefix } = domeOf(solved, level);
      return [saturation.vapour.pressure, `${prefix}.pressure`];
    };
    const loss = cycle.pressureLosses![name];
    return workingStep(own(`pressureLosses.${name}`), 'loop.pressureLoss', loss, {
      p_in: pressureOf(before),
      p_out: pressureOf(after),
    });
  });
}

/** From 4′ and 3 to 1 and 3′: by the effectiveness, or by the temperature of the gas that leaves. */
export function exchangeSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const exchanger = cycle.heatExchanger;
  if (exchanger === undefined) return [];
  const gas = pointNamed(solved, 'evaporatorOutlet');
  const liquid = pointNamed(solved, 'condenserOutlet');
  const inlet = pointNamed(solved, 'compressorInlet');
  const feed = pointNamed(solved, 'expansionInlet');
  const heat: StepInput = [exchanger.heat, own('heatExchanger.heat')];
  const h_eo = enthalpyOf(solved, gas);
  const h_max: StepInput = [exchanger.warmestGas.enthalpy, own('heatExchanger.warmestGas.enthalpy')];
  const effectiveness: StepInput = [exchanger.effectiveness, own('heatExchanger.effectiveness')];
  const gasSide =
    exchanger.given === 'heatExchangerEffectiveness'
      ? [
          workingStep(own('heatExchanger.effectiveness'), 'loop.shareGiven', exchanger.effectiveness, {
            x_given: [exchanger.effectiveness, requested('heatExchangerEffectiveness')],
          }),
          workingStep(own('heatExchanger.heat'), 'loop.exchangedHeat', exchanger.heat, {
            epsilon: effectiveness,
            h_max,
            h_eo,
          }),
          workingStep(`${placeOf(solved, inlet)}.enthalpy`, 'loop.enthalpyAfterHeat', inlet.enthalpy, {
            h_in: h_eo,
            q: heat,
          }),
          ...pointSteps(solved, inlet, 'enthalpy'),
        ]
      : [
          workingStep(`${placeOf(solved, inlet)}.temperature`, 'loop.temperatureGiven', inlet.temperature, {
            T_given: [inlet.temperature, requested('suctionTemperatureAfterExchanger')],
          }),
          ...pointSteps(solved, inlet, 'temperature'),
          workingStep(own('heatExchanger.heat'), 'loop.exchangedHeatFromEnthalpies', exchanger.heat, {
            h_1: enthalpyOf(solved, inlet),
            h_eo,
          }),
          workingStep(own('heatExchanger.effectiveness'), 'loop.exchangerEffectiveness', exchanger.effectiveness, {
            q_x: heat,
            h_max,
            h_eo,
          }),
        ];
  return [
    ...warmestGasSteps(solved, exchanger, liquid),
    ...gasSide,
    // The liquid gives what the gas takes up.
    workingStep(`${placeOf(solved, feed)}.enthalpy`, 'loop.enthalpyAfterHeat', feed.enthalpy, {
      h_in: enthalpyOf(solved, liquid),
      q: [-exchanger.heat, heat[1]],
    }),
    ...pointSteps(solved, feed, 'enthalpy'),
  ];
}

/** Gas at the evaporator's pressure, as warm as the liquid enters. */
function warmestGasSteps(
  solved: Solved,
  { warmestGas }: LiquidSuctionExchange,
  liquid: CyclePoint,
): readonly WorkingStep[] {
  const { fluid, own, shift } = solved;
  const at = own('heatExchanger.warmestGas');
  const origins = { pressure: `${at}.pressure`, temperature: `${at}.temperature` };
  return [
    workingStep(origins.temperature, 'loop.temperatureKept', warmestGas.temperature, {
      T_same: [liquid.temperature, `${placeOf(solved, liquid)}.temperature`],
    }),
    workingStep(origins.pressure, 'loop.pressureKept', warmestGas.pressure, {
      p_in: [warmestGas.pressure, `${domeOf(solved, 'evaporating').prefix}.pressure`],
    }),
    ...stateWorking(fluid, warmestGas, at, origins, undefined, shift),
    internalEnergyWorking(warmestGas, at, origins.pressure),
    ...furtherPropertiesWorking(fluid, warmestGas, at),
  ];
}

export function exchangerExergySteps(solved: Solved, T_0: StepInput): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const lost = cycle.exergyDestruction.heatExchanger;
  if (lost === undefined) return [];
  return [
    workingStep(own('exergyDestruction.heatExchanger'), 'loop.exergyDestroyedBetweenStreams', lost, {
      T_0,
      s_gin: entropyOf(solved, pointNamed(solved, 'evaporatorOutlet')),
      s_gout: entropyOf(solved, pointNamed(solved, 'compressorInlet')),
      s_lin: entropyOf(solved, pointNamed(solved, 'condenserOutlet')),
      s_lout: entropyOf(solved, pointNamed(solved, 'expansionInlet')),
    }),
  ];
}

/** The mass flow from what was given, then all that is per kilogram times it. */
export function flowSteps(solved: Solved): readonly WorkingStep[] {
  const { cycle, own } = solved;
  const rates = cycle.perSecond;
  if (rates === undefined) return [];
  const rate = (name: string) => own(`perSecond.${name}`);
  const m: StepInput = [rates.massFlow, rate('massFlow')];
  const heats = (['heatingCapacity', 'coolingCapacity', 'heatExchangerHeat'] as const).flatMap((name) => {
    const value = rates[name];
    if (value === undefined || rates.given === name) return [];
    return [workingStep(rate(name), 'loop.heatPerSecond', value, { m, q: perKilogram(solved, name) })];
  });
  return [
    ...massFlowSteps(solved, rates, rate),
    ...heats,
    ...(rates.given === 'compressorPower'
      ? []
      : [
          workingStep(rate('compressorPower'), 'loop.shaftPower', rates.compressorPower, {
            m,
            w: perKilogram(solved, 'compressorPower'),
          }),
        ]),
    ...Object.entries(rates.exergyDestructionRate).map(([part, value]) =>
      workingStep(rate(`exergyDestructionRate.${part}`), 'loop.exergyDestructionRate', value, {
        m,
        x: [cycle.exergyDestruction[part as 'total']!, own(`exergyDestruction.${part}`)],
      }),
    ),
    workingStep(rate('inletVolumeFlow'), 'loop.inletVolumeFlow', rates.inletVolumeFlow, { m, rho_1: density(solved) }),
  ];
}

function massFlowSteps(solved: Solved, rates: CyclePerSecond, rate: (name: string) => string): readonly WorkingStep[] {
  const { given, massFlow } = rates;
  const name = rate('massFlow');
  const value = rates[given]!;
  const asked: StepInput = [value, rate(given)];
  const request: StepInput = [value, requested(given)];
  switch (given) {
    case 'massFlow':
      return [workingStep(name, 'loop.massFlowGiven', massFlow, { m_given: request })];
    case 'coolingCapacity':
    case 'heatingCapacity':
      return [
        workingStep(rate(given), 'loop.heatGiven', value, { Q_given: request }),
        workingStep(name, 'loop.massFlowFromHeat', massFlow, { Q: asked, q: perKilogram(solved, given) }),
      ];
    case 'compressorPower':
      return [
        workingStep(rate(given), 'loop.shaftPowerGiven', value, { W_given: request }),
        workingStep(name, 'loop.massFlowFromShaftPower', massFlow, { W: asked, w: perKilogram(solved, given) }),
      ];
    case 'displacement': {
      const efficiency = rates.volumetricEfficiency!;
      return [
        workingStep(rate(given), 'loop.volumeFlowGiven', value, { V_given: request }),
        workingStep(rate('volumetricEfficiency'), 'loop.shareGiven', efficiency, {
          x_given: [efficiency, requested('volumetricEfficiency')],
        }),
        workingStep(name, 'loop.massFlowFromDisplacement', massFlow, {
          V: asked,
          eta_v: [efficiency, rate('volumetricEfficiency')],
          rho_1: density(solved),
        }),
      ];
    }
  }
}

/** What a heat or a power is per kilogram. */
function perKilogram(
  { cycle, own }: Solved,
  name: Exclude<MassFlowKey, 'massFlow' | 'displacement'> | 'heatExchangerHeat',
): StepInput {
  switch (name) {
    case 'heatingCapacity':
      return [cycle.heatDelivered, own('heatDelivered')];
    case 'coolingCapacity':
      return [cycle.heatTaken, own('heatTaken')];
    case 'compressorPower':
      return [cycle.specificWork, own('specificWork')];
    case 'heatExchangerHeat':
      return [cycle.heatExchanger!.heat, own('heatExchanger.heat')];
  }
}

function density(solved: Solved): StepInput {
  const inlet = pointNamed(solved, 'compressorInlet');
  return [inlet.density, `${placeOf(solved, inlet)}.density`];
}
