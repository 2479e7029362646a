// Formula records of what a textbook cycle may have beyond the plain one: liquid-to-suction heat exchanger, pressure lost,
// and the flow per second; each computed by the very function the engine runs.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { inletVolumeFlow, massFlowFromDisplacement, massFlowFromPower, ratePerSecond } from '../cycle-flow.ts';
import { enthalpyDifference, pressureLoss } from '../energy.ts';
import {
  enthalpyAfterHeat,
  exchangedHeat,
  exchangerEffectiveness,
  exergyDestroyedBetweenStreams,
} from '../liquid-suction-exchange.ts';

const energyFile = 'src/loop/energy.ts';
const exchangeFile = 'src/loop/liquid-suction-exchange.ts';
const flowFile = 'src/loop/cycle-flow.ts';
const steadyFlow =
  'steady-flow energy equation, as in Çengel & Boles, Thermodynamics, 8th ed., chapter 5 (from memory)';
const effectivenessSource =
  'definition of effectiveness, W. M. Kays & A. L. London, Compact Heat Exchangers (from memory), counted on enthalpy';
const steady = 'steady flow; kinetic and potential energy neglected';
const adiabatic = 'steady; no heat to the outside; dry gas out of the evaporator, colder than the liquid';

const enthalpy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/kg' });
const entropy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/(kg K)' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const effectiveness: FormulaSymbol = {
  meaning: 'effectiveness of the heat exchanger, on enthalpy',
  unit: '1',
  quantity: 'ratio',
};
const exchanged = enthalpy('heat from the liquid to the suction gas');
const warmest = enthalpy(
  'enthalpy of the gas if it left as warm as the liquid enters, at the pressure of the evaporator',
);
const evaporatorOutlet = enthalpy('enthalpy at the evaporator outlet');
const flow: FormulaSymbol = { meaning: 'mass flow of refrigerant', unit: 'kg/s', quantity: 'massFlow' };
const inletDensity: FormulaSymbol = { meaning: 'density at the compressor inlet', unit: 'kg/m³', quantity: 'density' };
const heat: FormulaSymbol = { meaning: 'heat per second', unit: 'W', quantity: 'power' };
const shaftPower: FormulaSymbol = {
  meaning: 'power of the shaft into the gas, not electricity',
  unit: 'W',
  quantity: 'electricPower',
};

const exchangerFormulas: readonly Formula[] = [
  {
    id: 'loop.exchangedHeat',
    title: 'Heat exchanged between liquid and suction gas',
    result: { symbol: 'q_x', ...exchanged },
    expression: 'epsilon * (h_max - h_eo)',
    symbols: { epsilon: effectiveness, h_max: warmest, h_eo: evaporatorOutlet },
    source: effectivenessSource,
    validity: adiabatic,
    file: exchangeFile,
    compute: ({ epsilon, h_max, h_eo }) => exchangedHeat(epsilon!, h_max!, h_eo!),
    examples: [
      { epsilon: 0.6, h_max: 435_858, h_eo: 392_666 },
      { epsilon: 0.35, h_max: 612e3, h_eo: 561e3 },
    ],
  },
  {
    id: 'loop.exchangerEffectiveness',
    title: 'Effectiveness of the exchanger between liquid and suction gas',
    result: { symbol: 'epsilon', ...effectiveness },
    expression: 'q_x / (h_max - h_eo)',
    symbols: { q_x: exchanged, h_max: warmest, h_eo: evaporatorOutlet },
    source: effectivenessSource,
    validity: adiabatic,
    file: exchangeFile,
    compute: ({ q_x, h_max, h_eo }) => exchangerEffectiveness(q_x!, h_max!, h_eo!),
    examples: [
      { q_x: 25_915, h_max: 435_858, h_eo: 392_666 },
      { q_x: 17_850, h_max: 612e3, h_eo: 561e3 },
    ],
  },
  {
    id: 'loop.enthalpyAfterHeat',
    title: 'Enthalpy of a stream after the exchanger',
    result: { symbol: 'h_out', ...enthalpy('enthalpy after the exchanger') },
    expression: 'h_in + q',
    symbols: {
      h_in: enthalpy('enthalpy before the exchanger'),
      q: enthalpy('heat taken up; negative where it is given'),
    },
    source: steadyFlow,
    validity: steady,
    file: exchangeFile,
    compute: ({ h_in, q }) => enthalpyAfterHeat(h_in!, q!),
    examples: [
      { h_in: 392_666, q: 25_915 },
      { h_in: 256_409, q: -25_915 },
    ],
  },
  {
    id: 'loop.exchangedHeatFromEnthalpies',
    title: 'Heat taken up by the suction gas',
    result: { symbol: 'q_x', ...exchanged },
    expression: 'h_1 - h_eo',
    symbols: { h_1: enthalpy('enthalpy at the compressor inlet'), h_eo: evaporatorOutlet },
    source: steadyFlow,
    validity: steady,
    file: energyFile,
    compute: ({ h_1, h_eo }) => enthalpyDifference(h_1!, h_eo!),
    examples: [
      { h_1: 418_580, h_eo: 392_665 },
      { h_1: 579e3, h_eo: 561e3 },
    ],
  },
  {
    id: 'loop.heatTakenWithExchanger',
    title: 'Heat into the refrigerant in the evaporator per kilogram, with a heat exchanger behind it',
    result: { symbol: 'q_L', ...enthalpy('heat taken per kilogram') },
    expression: 'h_eo - h_4',
    symbols: { h_eo: evaporatorOutlet, h_4: enthalpy('enthalpy at the evaporator inlet') },
    source: steadyFlow,
    validity: `${steady}; what the gas takes up in the exchanger is not taken from the source`,
    file: energyFile,
    compute: ({ h_eo, h_4 }) => enthalpyDifference(h_eo!, h_4!),
    examples: [
      { h_eo: 392_665, h_4: 230_494 },
      { h_eo: 561e3, h_4: 281e3 },
    ],
  },
  {
    id: 'loop.exergyDestroyedBetweenStreams',
    title: 'Exergy destroyed between two streams that exchange heat (heat exchanger)',
    result: { symbol: 'x', ...enthalpy('exergy destroyed per kilogram') },
    expression: 'T_0 * ((s_gout - s_gin) + (s_lout - s_lin))',
    symbols: {
      T_0: { meaning: 'dead state', unit: 'K', quantity: 'temperature' },
      s_gin: entropy('entropy of the gas before'),
      s_gout: entropy('entropy of the gas after'),
      s_lin: entropy('entropy of the liquid before'),
      s_lout: entropy('entropy of the liquid after'),
    },
    source:
      'entropy balance of an adiabatic exchanger, Çengel & Boles, Thermodynamics, 8th ed., chapter 8 (from memory)',
    validity: 'steady; no heat to the outside; the same flow on both sides',
    file: exchangeFile,
    compute: ({ T_0, s_gin, s_gout, s_lin, s_lout }) =>
      exergyDestroyedBetweenStreams(T_0!, [s_gin!, s_gout!], [s_lin!, s_lout!]),
    examples: [
      { T_0: 298.15, s_gin: 1733, s_gout: 1825, s_lin: 1190, s_lout: 1106 },
      { T_0: 285, s_gin: 2370, s_gout: 2430, s_lin: 1350, s_lout: 1296 },
    ],
  },
];

const flowFormulas: readonly Formula[] = [
  {
    id: 'loop.pressureLoss',
    title: 'Pressure lost along the flow',
    result: { symbol: 'dp', meaning: 'pressure lost', unit: 'Pa', quantity: 'pressureDifference' },
    expression: 'p_in - p_out',
    symbols: { p_in: pascal('pressure before, absolute'), p_out: pascal('pressure after, absolute') },
    source: 'definition',
    validity: 'absolute pressures',
    file: energyFile,
    compute: ({ p_in, p_out }) => pressureLoss(p_in!, p_out!),
    examples: [
      { p_in: 150e3, p_out: 140e3 },
      { p_in: 8e5, p_out: 7.2e5 },
    ],
  },
  {
    id: 'loop.massFlowFromHeat',
    title: 'Mass flow from a heat per second',
    result: { symbol: 'm', ...flow },
    expression: 'Q / q',
    symbols: { Q: heat, q: enthalpy('the same heat per kilogram') },
    source: steadyFlow,
    validity: steady,
    file: flowFile,
    compute: ({ Q, q }) => massFlowFromPower(Q!, q!),
    examples: [
      { Q: 7180, q: 143_600 },
      { Q: 350, q: 267e3 },
    ],
  },
  {
    id: 'loop.massFlowFromShaftPower',
    title: 'Mass flow from the power of the shaft',
    result: { symbol: 'm', ...flow },
    expression: 'W / w',
    symbols: { W: shaftPower, w: enthalpy('specific work') },
    source: steadyFlow,
    validity: `${steady}; adiabatic compressor`,
    file: flowFile,
    compute: ({ W, w }) => massFlowFromPower(W!, w!),
    examples: [
      { W: 1811, w: 36_230 },
      { W: 96, w: 79_500 },
    ],
  },
  {
    id: 'loop.massFlowFromDisplacement',
    title: 'Mass flow that a displacement draws in',
    result: { symbol: 'm', ...flow },
    expression: 'V * eta_v * rho_1',
    symbols: {
      V: { meaning: 'volume swept per second', unit: 'm³/s', quantity: 'volumeFlow' },
      eta_v: { meaning: 'volumetric efficiency', unit: '1', quantity: 'fraction' },
      rho_1: inletDensity,
    },
    source: 'definition of volumetric efficiency',
    validity: 'volumetric efficiency above 0, at most 1',
    file: flowFile,
    compute: ({ V, eta_v, rho_1 }) => massFlowFromDisplacement(V!, eta_v!, rho_1!),
    examples: [
      { V: 0.005, eta_v: 0.8, rho_1: 7 },
      { V: 3.1e-4, eta_v: 0.65, rho_1: 3.4 },
    ],
  },
  {
    id: 'loop.heatPerSecond',
    title: 'Heat per second',
    result: { symbol: 'Q', ...heat },
    expression: 'm * q',
    symbols: { m: flow, q: enthalpy('heat per kilogram') },
    source: steadyFlow,
    validity: steady,
    file: flowFile,
    compute: ({ m, q }) => ratePerSecond(m!, q!),
    examples: [
      { m: 0.05, q: 143_600 },
      { m: 0.0013, q: 267e3 },
    ],
  },
  {
    id: 'loop.shaftPower',
    title: 'Power of the shaft into the gas',
    result: { symbol: 'W', ...shaftPower },
    expression: 'm * w',
    symbols: { m: flow, w: enthalpy('specific work') },
    source: steadyFlow,
    validity: `${steady}; adiabatic compressor`,
    file: flowFile,
    compute: ({ m, w }) => ratePerSecond(m!, w!),
    examples: [
      { m: 0.05, w: 36_230 },
      { m: 0.0013, w: 79_500 },
    ],
  },
  {
    id: 'loop.exergyDestructionRate',
    title: 'Exergy destroyed per second',
    result: { symbol: 'W_lost', meaning: 'work lost per second', unit: 'W', quantity: 'electricPower' },
    expression: 'm * x',
    symbols: { m: flow, x: enthalpy('exergy destroyed per kilogram') },
    source: 'definition',
    validity: 'steady flow',
    file: flowFile,
    compute: ({ m, x }) => ratePerSecond(m!, x!),
    examples: [
      { m: 0.05, x: 8120 },
      { m: 0.0013, x: 22e3 },
    ],
  },
  {
    id: 'loop.inletVolumeFlow',
    title: 'Volume of gas into the compressor per second',
    result: { symbol: 'V_1', meaning: 'volume flow at the compressor inlet', unit: 'm³/s', quantity: 'volumeFlow' },
    expression: 'm / rho_1',
    symbols: { m: flow, rho_1: inletDensity },
    source: 'definition of density',
    validity: 'flow and density above 0',
    file: flowFile,
    compute: ({ m, rho_1 }) => inletVolumeFlow(m!, rho_1!),
    examples: [
      { m: 0.05, rho_1: 7 },
      { m: 0.0013, rho_1: 3.4 },
    ],
  },
];

export const exchangeAndFlowFormulas: readonly Formula[] = [...exchangerFormulas, ...flowFormulas];
