// The states of a textbook cycle from a checked request: pressures at both ends of evaporator and condenser, the gas and
// the liquid, the exchanger between them, compression and expansion. Whatever cannot be is refused by the key to blame.

import {
  type Refrigerant,
  type Saturation,
  type State,
  saturationAtDewTemperature,
  saturationAtPressure,
  stateInLoop,
} from '../matter/refrigerants/index.ts';
import { InputError, OutOfModelError } from '../numerics/index.ts';
import type { CheckedCycleRequest, ExchangerKey, GasKey, Given } from './cycle-request.ts';
import { enthalpyDifference, isentropicEfficiency, outletEnthalpyFromEfficiency } from './energy.ts';
import { enthalpyAfterHeat, exchangedHeat, exchangerEffectiveness } from './liquid-suction-exchange.ts';
import { onTheLine } from './on-the-line.ts';

/** Pressures nearer to each other than this share are one: beyond it lies the rounding of a saturation pressure. */
const samePressure = 1e-9;

/** The dome at the four pressures of a cycle, both sides at that one pressure; where no pressure is lost, two and two are the same. */
export interface CycleLevels {
  /** At the evaporator inlet. */
  readonly evaporating: Saturation;
  /** At the compressor outlet. */
  readonly condensing: Saturation;
  /** At the compressor inlet. */
  readonly suction: Saturation;
  /** At the condenser outlet. */
  readonly liquid: Saturation;
}

export interface ExchangeStates {
  readonly evaporatorOutlet: State;
  readonly expansionInlet: State;
  /** Gas at the evaporator's pressure, as warm as the liquid enters: more it cannot take up. */
  readonly warmestGas: State;
  readonly effectiveness: number;
  /** q [J/kg]. */
  readonly heat: number;
}

export interface CycleStates {
  readonly inlet: State;
  readonly isentropic: State;
  readonly outlet: State;
  readonly liquid: State;
  readonly expanded: State;
  readonly efficiency: number;
  readonly exchange: ExchangeStates | undefined;
}

/** @throws InputError or OutOfModelError naming the key of the pressure or temperature that cannot be. */
export function cycleLevels(fluid: Refrigerant, asked: CheckedCycleRequest): CycleLevels {
  const { evaporating, condensing } = asked;
  refuseAboveCritical(fluid, asked);
  const low = naming(evaporating.key, () =>
    evaporating.key === 'evaporating'
      ? saturationAtDewTemperature(fluid, evaporating.value)
      : saturationAtPressure(fluid, evaporating.value),
  );
  const high = naming(condensing.key, () =>
    condensing.key === 'condensing'
      ? saturationAtDewTemperature(fluid, condensing.value)
      : saturationAtPressure(fluid, condensing.value),
  );
  if (!(high.vapour.pressure > low.vapour.pressure)) {
    const expected = `above the evaporator's ${low.vapour.temperature} K, ${low.vapour.pressure} Pa`;
    throw new InputError(condensing.key, condensing.value, expected, 'condensingBelowEvaporating');
  }
  return {
    evaporating: low,
    condensing: high,
    suction: afterLoss(fluid, 'suctionPressure', asked.suctionPressure, low),
    liquid: liquidLevel(fluid, asked.liquidPressure, low, high),
  };
}

function refuseAboveCritical(fluid: Refrigerant, { evaporating, condensing }: CheckedCycleRequest): void {
  const { critical, limits } = fluid;
  const code = 'condensingAboveCritical';
  if (condensing.key === 'condensing' && condensing.value >= critical.temperature) {
    const { temperatureMin } = limits;
    throw new OutOfModelError('condensing', condensing.value, 'K', temperatureMin, critical.temperature, code);
  }
  if (condensing.key === 'condensingPressure' && condensing.value >= critical.pressure) {
    throw new OutOfModelError('condensingPressure', condensing.value, 'Pa', 0, critical.pressure, code);
  }
  if (evaporating.key === 'evaporating' && evaporating.value >= critical.temperature) {
    const expected = `below the critical temperature, ${critical.temperature} K`;
    throw new InputError('evaporating', evaporating.value, expected);
  }
  if (evaporating.key === 'evaporatingPressure' && evaporating.value >= critical.pressure) {
    const expected = `below the critical pressure, ${critical.pressure} Pa`;
    throw new InputError('evaporatingPressure', evaporating.value, expected);
  }
}

/** The dome at the end of an exchanger whose refrigerant loses pressure on its way; the same where nothing is lost. */
function afterLoss(
  fluid: Refrigerant,
  key: 'suctionPressure' | 'liquidPressure',
  pressure: number | undefined,
  before: Saturation,
): Saturation {
  if (pressure === undefined || Math.abs(pressure / before.vapour.pressure - 1) <= samePressure) return before;
  if (pressure > before.vapour.pressure) {
    const where = key === 'suctionPressure' ? 'evaporator' : 'condenser';
    const expected = `at most the ${where}'s ${before.vapour.pressure} Pa, since pressure falls along the flow`;
    throw new InputError(key, pressure, expected, 'pressureRises');
  }
  return naming(key, () => saturationAtPressure(fluid, pressure));
}

function liquidLevel(fluid: Refrigerant, pressure: number | undefined, low: Saturation, high: Saturation): Saturation {
  if (pressure !== undefined && !(pressure > low.vapour.pressure)) {
    const expected = `above the evaporator's ${low.vapour.pressure} Pa: without a fall of pressure nothing flows through the valve`;
    throw new InputError('liquidPressure', pressure, expected, 'liquidPressureBelowEvaporating');
  }
  return afterLoss(fluid, 'liquidPressure', pressure, high);
}

/** @throws InputError or OutOfModelError naming the key, or the point of the cycle, that cannot be. */
export function cycleStates(fluid: Refrigerant, asked: CheckedCycleRequest, levels: CycleLevels): CycleStates {
  const { exchanger } = asked;
  const liquid = condenserOutlet(fluid, asked, levels.liquid);
  const gas = gasGiven(fluid, asked.gas, exchanger === undefined ? levels.suction : levels.evaporating);
  const exchange = exchanger && exchangeStates(fluid, exchanger, gas, liquid, levels);
  const inlet = exchange?.inlet ?? gas;
  const pressure = levels.condensing.vapour.pressure;
  const isentropic = naming('compressorOutletIsentropic', () =>
    stateInLoop(fluid, { pressure, entropy: inlet.entropy }),
  );
  const { outlet, efficiency } = compressorOutlet(fluid, asked, levels.condensing, inlet, isentropic);
  const enthalpy = (exchange?.expansionInlet ?? liquid).enthalpy;
  const expanded = naming('evaporatorInlet', () =>
    stateInLoop(fluid, { pressure: levels.evaporating.vapour.pressure, enthalpy }),
  );
  return { inlet, isentropic, outlet, liquid, expanded, efficiency, exchange };
}

/** The gas by its superheat, temperature or quality, at the pressure where it was given. */
function gasGiven(fluid: Refrigerant, { key, value }: Given<GasKey>, { vapour }: Saturation): State {
  const { pressure } = vapour;
  if (key === 'suctionQuality') {
    return value === 1 ? vapour : naming(key, () => stateInLoop(fluid, { pressure, quality: value }));
  }
  const dew = vapour.temperature;
  const temperature = key === 'superheat' ? dew + value : value;
  if (Math.abs(temperature - dew) <= onTheLine) return vapour;
  if (temperature < dew) {
    const expected = `at least the dew temperature there, ${dew} K`;
    throw new InputError(key, value, expected, 'suctionBelowEvaporating');
  }
  return naming(key, () => stateInLoop(fluid, { temperature, pressure }));
}

function condenserOutlet(fluid: Refrigerant, { liquid }: CheckedCycleRequest, level: Saturation): State {
  const bubble = level.liquid.temperature;
  const temperature = liquid.key === 'subcooling' ? bubble - liquid.value : liquid.value;
  if (Math.abs(temperature - bubble) <= onTheLine) return level.liquid;
  if (temperature > bubble) {
    const expected = `at most the condensing bubble temperature, ${bubble} K`;
    throw new InputError(liquid.key, liquid.value, expected, 'liquidAboveCondensing');
  }
  if (!(temperature >= fluid.limits.temperatureMin)) {
    const { temperatureMin } = fluid.limits;
    throw new InputError(liquid.key, liquid.value, `a liquid of at least ${temperatureMin} K, here ${temperature} K`);
  }
  return naming(liquid.key, () => stateInLoop(fluid, { temperature, pressure: level.vapour.pressure }));
}

/** The gas takes up what the liquid gives; what pressure is lost on the way to the compressor is lost by then. */
function exchangeStates(
  fluid: Refrigerant,
  { key, value }: Given<ExchangerKey>,
  gas: State,
  liquid: State,
  levels: CycleLevels,
): ExchangeStates & { readonly inlet: State } {
  const { pressure } = levels.suction.vapour;
  if (!(liquid.temperature > gas.temperature + onTheLine)) {
    const expected = `no heat exchanger here, or a liquid warmer than the gas out of the evaporator: the liquid is at ${liquid.temperature} K, the gas at ${gas.temperature} K`;
    throw new InputError(key, value, expected, 'liquidColderThanSuction');
  }
  const warmestGiven = { pressure: levels.evaporating.vapour.pressure, temperature: liquid.temperature };
  const warmestGas = naming(key, () => stateInLoop(fluid, warmestGiven));
  const inlet =
    key === 'heatExchangerEffectiveness'
      ? withEnthalpy(
          fluid,
          key,
          pressure,
          enthalpyAfterHeat(gas.enthalpy, exchangedHeat(value, warmestGas.enthalpy, gas.enthalpy)),
        )
      : gasAfterExchanger(fluid, value, levels.suction);
  const heat = inlet === undefined ? 0 : enthalpyDifference(inlet.enthalpy, gas.enthalpy);
  if (inlet === undefined || !(heat > 0) || inlet.enthalpy > warmestGas.enthalpy) {
    const expected = `a gas warmed in the exchanger: above the ${gas.temperature} K it leaves the evaporator with and at most the liquid's ${liquid.temperature} K`;
    throw new InputError(key, value, expected, 'exchangerOutOfReach');
  }
  const expansionInlet = withEnthalpy(
    fluid,
    'expansionInlet',
    liquid.pressure,
    enthalpyAfterHeat(liquid.enthalpy, -heat),
  );
  if (expansionInlet.temperature < gas.temperature) {
    const expected = `less heat: the liquid would leave at ${expansionInlet.temperature} K, colder than the gas that cools it, ${gas.temperature} K`;
    throw new InputError(key, value, expected, 'exchangerOutOfReach');
  }
  const effectiveness =
    key === 'heatExchangerEffectiveness' ? value : exchangerEffectiveness(heat, warmestGas.enthalpy, gas.enthalpy);
  return { inlet, evaporatorOutlet: gas, expansionInlet, warmestGas, effectiveness, heat };
}

/** Undefined where such gas would be wet. */
function gasAfterExchanger(fluid: Refrigerant, temperature: number, suction: Saturation): State | undefined {
  if (temperature <= suction.vapour.temperature + onTheLine) return undefined;
  const { pressure } = suction.vapour;
  return naming('suctionTemperatureAfterExchanger', () => stateInLoop(fluid, { temperature, pressure }));
}

/** The enthalpy stands in the state as it was asked for, not as the flash gives it back: so that heats close. */
function withEnthalpy(fluid: Refrigerant, step: string, pressure: number, enthalpy: number): State {
  return { ...naming(step, () => stateInLoop(fluid, { pressure, enthalpy })), enthalpy };
}

function compressorOutlet(
  fluid: Refrigerant,
  { compression }: CheckedCycleRequest,
  condensing: Saturation,
  inlet: State,
  isentropic: State,
): { readonly outlet: State; readonly efficiency: number } {
  const { pressure } = condensing.vapour;
  if (compression.key === 'isentropicEfficiency') {
    const efficiency = compression.value;
    const enthalpy = outletEnthalpyFromEfficiency(inlet.enthalpy, isentropic.enthalpy, efficiency);
    if (!Number.isFinite(enthalpy)) {
      throw new InputError(
        compression.key,
        efficiency,
        'an efficiency that leaves the work on the gas a finite number',
      );
    }
    const outlet =
      efficiency === 1 ? isentropic : naming('compressorOutlet', () => stateInLoop(fluid, { pressure, enthalpy }));
    return { outlet, efficiency };
  }
  const outlet = outletFromTemperature(fluid, compression.value, condensing, isentropic);
  return { outlet, efficiency: isentropicEfficiency(inlet.enthalpy, isentropic.enthalpy, outlet.enthalpy) };
}

function outletFromTemperature(
  fluid: Refrigerant,
  temperature: number,
  condensing: Saturation,
  isentropic: State,
): State {
  const expected = `a gas at least as hot as without losses, ${isentropic.temperature} K`;
  const refuse = () => new InputError('dischargeTemperature', temperature, expected, 'dischargeBelowIsentropic');
  if (temperature < isentropic.temperature - onTheLine) throw refuse();
  if (Math.abs(temperature - condensing.vapour.temperature) <= onTheLine) {
    // Wet without losses: the temperature alone does not say how wet the real gas is, unless it is on the line itself.
    throw new InputError('dischargeTemperature', temperature, 'a temperature above the dew line', 'saturatedPair');
  }
  if (Math.abs(temperature - isentropic.temperature) <= onTheLine) return isentropic;
  const outlet = naming('dischargeTemperature', () =>
    stateInLoop(fluid, { temperature, pressure: condensing.vapour.pressure }),
  );
  if (outlet.enthalpy < isentropic.enthalpy) throw refuse();
  return outlet;
}

/** Runs one step of the cycle so that an error of the equation of state names the step it came from. */
function naming<Result>(step: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (error instanceof OutOfModelError) {
      const { quantity, value, unit, low, high, code } = error;
      throw new OutOfModelError(`${step}: ${quantity}`, value, unit, low, high, code);
    }
    if (error instanceof InputError) {
      throw new InputError(`${step}: ${error.path}`, error.received, error.expected, error.code);
    }
    throw error;
  }
}
