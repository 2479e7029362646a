// The formula records of the water properties.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  latentHeat,
  vapourPressureFactor,
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from './properties.ts';

const T: FormulaSymbol = { meaning: 'temperature of the water', unit: 'K', quantity: 'temperature' };
const S: FormulaSymbol = { meaning: 'salinity, salt per sea water', unit: 'kg/kg', quantity: 'salinity' };
const sharqawy =
  'Sharqawy, Lienhard & Zubair, Desalination and Water Treatment 16 (2010) 354 (equation numbers from memory)';
const validity = '0 to 100 °C, salinity 0 to 0.12';
const file = 'src/matter/water/properties.ts';
const examples = [
  { T: 298.15, S: 0.035 },
  { T: 301.4, S: 0.018 },
  { T: 291.7, S: 0.0005 },
];

export const waterFormulas: readonly Formula[] = [
  {
    id: 'water.density',
    title: 'Density of fresh or sea water',
    result: { symbol: 'rho', meaning: 'density', unit: 'kg/m³', quantity: 'density' },
    expression:
      '999.9 + 2.034e-2*(T-273.15) - 6.162e-3*(T-273.15)^2 + 2.261e-5*(T-273.15)^3 - 4.657e-8*(T-273.15)^4 + 802.0*S - 2.001*S*(T-273.15) + 1.677e-2*S*(T-273.15)^2 - 3.060e-5*S*(T-273.15)^3 - 1.613e-5*S^2*(T-273.15)^2',
    symbols: { T, S },
    source: `${sharqawy}, equation 8`,
    validity,
    file,
    compute: (v) => waterDensity(v.T!, v.S!),
    examples,
  },
  {
    id: 'water.heatCapacity',
    title: 'Specific heat of fresh or sea water',
    result: { symbol: 'c_p', meaning: 'specific heat at constant pressure', unit: 'J/(kg K)' },
    expression:
      '1000*((5.328 - 9.76e-2*(1000*S) + 4.04e-4*(1000*S)^2) + (-6.913e-3 + 7.351e-4*(1000*S) - 3.15e-6*(1000*S)^2)*T + (9.6e-6 - 1.927e-6*(1000*S) + 8.23e-9*(1000*S)^2)*T^2 + (2.5e-9 + 1.666e-9*(1000*S) - 7.125e-12*(1000*S)^2)*T^3)',
    symbols: { T, S },
    source: `${sharqawy}, equation 9, after Jamieson et al. 1969 (constants from memory of the source)`,
    validity,
    file,
    compute: (v) => waterHeatCapacity(v.T!, v.S!),
    examples,
  },
  {
    id: 'water.latentHeat',
    title: 'Latent heat of evaporation of water',
    result: { symbol: 'h_fg', meaning: 'heat drawn per kg evaporated', unit: 'J/kg' },
    expression: '2.501e6 - 2.369e3*(T-273.15) + 2.678e-1*(T-273.15)^2 - 8.103e-3*(T-273.15)^3 - 2.079e-5*(T-273.15)^4',
    symbols: { T },
    source: `${sharqawy}, equation 54 (constants from memory of the source)`,
    validity: '0 to 100 °C',
    file,
    compute: (v) => latentHeat(v.T!),
    examples: [{ T: 299.15 }, { T: 303.4 }],
  },
  {
    id: 'water.vapourPressureFactor',
    title: 'Vapour pressure over salt water relative to pure water',
    result: { symbol: 'a_w', meaning: 'ratio of vapour pressures', unit: '1' },
    expression: '1/(1 + 0.57357*S/(1 - S))',
    symbols: { S },
    source: `${sharqawy}, Raoult's law`,
    validity: 'salinity 0 to 0.12',
    file,
    compute: (v) => vapourPressureFactor(v.S!),
    examples: [{ S: 0.035 }, { S: 0.012 }],
  },
  {
    id: 'water.viscosity',
    title: 'Dynamic viscosity of fresh or sea water',
    result: { symbol: 'mu', meaning: 'dynamic viscosity', unit: 'Pa s' },
    expression:
      '(4.2844e-5 + 1/(0.157*(T-273.15+64.993)^2 - 91.296))*(1 + (1.541 + 1.998e-2*(T-273.15) - 9.52e-5*(T-273.15)^2)*S + (7.974 - 7.561e-2*(T-273.15) + 4.724e-4*(T-273.15)^2)*S^2)',
    symbols: { T, S },
    source: `${sharqawy}, equations 22 and 23`,
    validity,
    file,
    compute: (v) => waterViscosity(v.T!, v.S!),
    examples,
  },
  {
    id: 'water.conductivity',
    title: 'Thermal conductivity of fresh or sea water',
    result: { symbol: 'k', meaning: 'thermal conductivity', unit: 'W/(m K)' },
    expression:
      '(240 + 0.0002*(1000*S))*10^(0.434*(2.3 - (343.5 + 0.037*(1000*S))/T)*(1 - T/(647 + 0.03*(1000*S)))^0.333)/1000',
    symbols: { T, S },
    source: `${sharqawy}, equation 13, after Jamieson & Tudhope 1970 (constants from memory of the source)`,
    validity,
    file,
    compute: (v) => waterConductivity(v.T!, v.S!),
    examples,
  },
  {
    id: 'water.expansion',
    title: 'Thermal expansion of fresh or sea water',
    result: { symbol: 'beta', meaning: 'relative growth of volume per kelvin', unit: '1/K' },
    expression:
      '-(2.034e-2 - 2*6.162e-3*(T-273.15) + 3*2.261e-5*(T-273.15)^2 - 4*4.657e-8*(T-273.15)^3 - 2.001*S + 2*1.677e-2*S*(T-273.15) - 3*3.060e-5*S*(T-273.15)^2 - 2*1.613e-5*S^2*(T-273.15))/(999.9 + 2.034e-2*(T-273.15) - 6.162e-3*(T-273.15)^2 + 2.261e-5*(T-273.15)^3 - 4.657e-8*(T-273.15)^4 + 802.0*S - 2.001*S*(T-273.15) + 1.677e-2*S*(T-273.15)^2 - 3.060e-5*S*(T-273.15)^3 - 1.613e-5*S^2*(T-273.15)^2)',
    symbols: { T, S },
    source: `derivative of the density fit of ${sharqawy}, equation 8`,
    validity,
    file,
    compute: (v) => waterExpansion(v.T!, v.S!),
    examples,
  },
];
