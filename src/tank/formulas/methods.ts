// The formula records of the other ways to the evaporation of a surface: the analogy of heat and mass transfer, pools, moving air.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  massTransferCoefficient,
  sherwoodHorizontalSurface,
  surfaceLength,
  surfaceRayleighNumber,
} from '../water-surface/mass-transfer.ts';
import { quietCoefficientSmith1993, quietInMovingAir } from '../water-surface/pools.ts';

const file = 'src/tank/water-surface/mass-transfer.ts';
const poolsFile = 'src/tank/water-surface/pools.ts';
const L: FormulaSymbol = { meaning: 'area over perimeter', unit: 'm', quantity: 'length' };
const D: FormulaSymbol = { meaning: 'diffusivity of vapour in air', unit: 'm²/s' };
const Ra: FormulaSymbol = { meaning: 'Rayleigh number of mass transfer, signed', unit: '1' };
const coefficient = (meaning: string): FormulaSymbol => ({ meaning, unit: 'kg/(s m² Pa)' });
const density = (meaning: string): FormulaSymbol => ({ meaning, unit: 'kg/m³', quantity: 'density' });

export const methodFormulas: readonly Formula[] = [
  {
    id: 'tank.surfaceLength',
    title: 'Characteristic length of a water surface',
    result: { symbol: 'L', ...L },
    expression: 'A / P',
    symbols: {
      A: { meaning: 'water surface', unit: 'm²', quantity: 'area' },
      P: { meaning: 'its perimeter', unit: 'm', quantity: 'length' },
    },
    source: 'Goldstein, Sparrow & Jones, Int. J. Heat Mass Transfer 16 (1973) 1025 (from memory of textbooks)',
    validity: 'horizontal plates',
    file,
    compute: (v) => surfaceLength(v.A!, v.P!),
    examples: [
      { A: 0.6, P: 3.4 },
      { A: 1.1, P: 4.3 },
    ],
  },
  {
    id: 'tank.surfaceRayleigh',
    title: 'Rayleigh number of mass transfer over a water surface',
    result: { symbol: 'Ra', ...Ra },
    expression: '9.80665 * (rho_r - rho_w) * L^3 / (mu * D)',
    symbols: {
      rho_r: density('density of the room’s air'),
      rho_w: density('density of the damp air at the water'),
      L,
      mu: { meaning: 'dynamic viscosity of air', unit: 'Pa s' },
      D,
    },
    source: 'definition; positive where the air at the water is lighter',
    validity: 'any',
    file,
    compute: (v) => surfaceRayleighNumber(v.rho_w!, v.rho_r!, v.L!, v.mu!, v.D!),
    examples: [
      { rho_r: 1.191, rho_w: 1.165, L: 0.176, mu: 1.83e-5, D: 2.48e-5 },
      { rho_r: 1.149, rho_w: 1.171, L: 0.22, mu: 1.86e-5, D: 2.52e-5 },
    ],
  },
  {
    id: 'tank.sherwoodSurface',
    title: 'Sherwood number of a horizontal water surface',
    result: { symbol: 'Sh', meaning: 'Sherwood number', unit: '1' },
    expression: 'max(2 / pi, Ra > 0 ? max(0.54 * Ra^0.25, 0.15 * cbrt(Ra)) : 0.27 * abs(Ra)^0.25)',
    symbols: { Ra },
    source:
      'laws of a horizontal plate, McAdams 1954, Goldstein & Lau 1983, in Incropera & DeWitt (from memory); below, a disk set into a plane',
    validity: '|Ra| 1e4 to 1e11; 20 %',
    file,
    compute: (v) => sherwoodHorizontalSurface(v.Ra!),
    examples: [{ Ra: 2.9e6 }, { Ra: 4.1e7 }, { Ra: -8.3e5 }],
  },
  {
    id: 'tank.massTransferCoefficient',
    title: 'Evaporation coefficient of still water by analogy with heat transfer',
    result: { symbol: 'K_m', ...coefficient('evaporation per area and vapour pressure difference') },
    expression: 'Sh * D / (L * (287.042 / 0.621945) * T_m)',
    symbols: {
      Sh: { meaning: 'Sherwood number', unit: '1' },
      D,
      L,
      T_m: { meaning: 'mean temperature of water and room', unit: 'K', quantity: 'temperature' },
    },
    source: 'definition of the Sherwood number',
    validity: 'still room air',
    file,
    compute: (v) => massTransferCoefficient(v.Sh!, v.D!, v.L!, v.T_m!),
    examples: [
      { Sh: 22.4, D: 2.49e-5, L: 0.176, T_m: 297.2 },
      { Sh: 48.1, D: 2.41e-5, L: 0.31, T_m: 293.6 },
    ],
  },
  {
    id: 'tank.quietPoolCoefficient',
    title: 'Evaporation coefficient of undisturbed pools',
    result: { symbol: 'K_s', ...coefficient('evaporation per area and vapour pressure difference') },
    expression: '0.74 * K_a',
    symbols: { K_a: coefficient('coefficient of active water at the same air speed') },
    source: 'Smith, Löf & Jones, ASHRAE Transactions 99 (1993) (read in summaries)',
    validity: 'indoor and outdoor pools',
    file: poolsFile,
    compute: (v) => quietCoefficientSmith1993(v.K_a!),
    examples: [{ K_a: 3.97e-8 }, { K_a: 4.61e-8 }],
  },
  {
    id: 'tank.quietInMovingAir',
    title: 'Evaporation coefficient of undisturbed water in moving air',
    result: { symbol: 'K_v', ...coefficient('evaporation per area and vapour pressure difference') },
    expression: 'K_q + 0.74 * 0.0782 * max(0, v - 0.1) / h_fg',
    symbols: {
      K_q: coefficient('coefficient of undisturbed water in still air'),
      v: { meaning: 'air speed over the surface', unit: 'm/s' },
      h_fg: { meaning: 'latent heat of evaporation', unit: 'J/kg' },
    },
    source: 'own simplification with the wind’s term of Smith, Löf & Jones 1993 (read in summaries)',
    validity: 'air speed up to about 2 m/s; nothing is added up to 0.1 m/s',
    file: poolsFile,
    compute: (v) => quietInMovingAir(v.K_q!, v.v!, v.h_fg!),
    examples: [
      { K_q: 2.43e-8, v: 0.34, h_fg: 2.4394e6 },
      { K_q: 2.1e-8, v: 0.05, h_fg: 2.4412e6 },
    ],
  },
];
