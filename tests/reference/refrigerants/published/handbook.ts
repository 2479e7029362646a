// Saturation rows of a handbook, from memory of it; rows computed with a general-purpose library for fluids of which no printed
// row was at hand; normal boiling points.

import type { PublishedTable } from './table.ts';

const handbook = {
  source: 'ASHRAE Handbook, Fundamentals, chapter 30, saturation table, from memory of the source',
  given: 'saturationCelsius',
  columns: ['p′ [MPa]', 'ρ′ [kg/m³]', 'v″ [m³/kg]', 'h′ [kJ/kg]', 'h″ [kJ/kg]', 's′ [kJ/(kg K)]', 's″ [kJ/(kg K)]'],
} as const;

const computed = {
  source: 'CoolProp 8.0.0; computed, not printed',
  title: 'saturation, computed',
  given: 'saturationCelsius',
} as const;
const computedColumns = ['p′ [MPa]', 'ρ′ [kg/m³]', 'v″ [m³/kg]', 'h′ [kJ/kg]', 'h″ [kJ/kg]', 's″ [kJ/(kg K)]'] as const;
const blendColumns = [
  'p′ [MPa]',
  'p″ [MPa]',
  'ρ′ [kg/m³]',
  'v″ [m³/kg]',
  'h′ [kJ/kg]',
  'h″ [kJ/kg]',
  's″ [kJ/(kg K)]',
] as const;

export const handbookTables: readonly PublishedTable[] = [
  {
    ...handbook,
    fluid: 'R134a',
    title: 'saturation table',
    rows: [
      '-20 0.13273 1358.3 0.14739 173.64 386.55 0.9002 1.7413',
      '0 0.29280 1294.8 0.06931 200.00 398.60 1.0000 1.7271',
      '40 1.0166 1146.7 0.01997 256.41 419.43 1.1905 1.7111',
    ],
  },
  {
    ...handbook,
    fluid: 'R22',
    title: 'saturation table',
    rows: ['0 0.49811 1281.5 0.04714 200.00 405.05 1.0000 1.7507'],
    tolerance: { units: 4 },
    columnTolerance: { 'p′ [MPa]': { relative: 3e-4 } },
    reason: 'Another equation in that table: pressure 2.5e-4, v″ 8e-4 away',
  },
  {
    ...handbook,
    fluid: 'R744',
    title: 'saturation table',
    rows: ['0 3.4851 927.43 0.01024 200.00 430.89 1.0000 1.8453'],
  },
  {
    ...handbook,
    fluid: 'R717',
    title: 'saturation table',
    rows: ['0 0.42938 638.57 0.28930 200.00 1462.2 1.0000 5.6210'],
    tolerance: { relative: 5e-4 },
    reason: 'An older equation in that table: pressure 3.1e-4, h″ 0.43 kJ/kg away',
  },
  {
    ...computed,
    fluid: 'R290',
    columns: computedColumns,
    rows: ['0 0.47446 528.59 0.09661 200 574.87 2.37238', '40 1.36942 467.46 0.03315 307.15 614.21 2.33993'],
  },
  {
    ...computed,
    fluid: 'R600a',
    columns: computedColumns,
    rows: ['0 0.15696 580.58 0.23491 200 554.34 2.29723', '40 0.53121 531.19 0.07317 296.28 607.80 2.32106'],
  },
  {
    ...computed,
    fluid: 'R404A',
    columns: blendColumns,
    rows: ['0 0.61018 0.60027 1149.98 0.03283 200 365.82 1.60776'],
  },
  {
    ...computed,
    fluid: 'R407C',
    columns: blendColumns,
    rows: ['0 0.56789 0.46072 1236.18 0.05078 200 409.38 1.77598'],
  },
  {
    ...computed,
    fluid: 'R410A',
    columns: blendColumns,
    rows: ['0 0.80071 0.79808 1169.95 0.03271 200 421.39 1.81058'],
  },
  {
    ...computed,
    fluid: 'R507A',
    columns: blendColumns,
    rows: ['0 0.62439 0.62397 1156.26 0.03101 200 362.06 1.59333'],
  },
];

/** Normal boiling points [°C], of blends bubble and dew. */
const boilingPoints: Readonly<Record<string, string>> = {
  R134a: '-26.07',
  R600a: '-11.75',
  R600: '-0.49',
  R290: '-42.11',
  R1270: '-47.62',
  R12: '-29.75',
  R22: '-40.81',
  R32: '-51.65',
  R125: '-48.09',
  R143a: '-47.24',
  R152a: '-24.02',
  R1234yf: '-29.46',
  'R1234ze(E)': '-18.97',
  R717: '-33.32',
  R245fa: '15.05',
  R142b: '-9.12',
  R124: '-11.96',
  R227ea: '-16.34',
  R236fa: '-1.49',
  R404A: '-46.22 -45.47',
  R407C: '-43.63 -36.63',
  R410A: '-51.44 -51.36',
  R507A: '-46.74 -46.74',
};

export const boilingPointTables: readonly PublishedTable[] = Object.entries(boilingPoints).map(([fluid, printed]) => ({
  fluid,
  title: 'normal boiling point',
  source: 'CoolProp 8.0.0 on the equation of the paper; computed, not printed',
  given: 'pascal',
  columns: printed.includes(' ') ? ['t′ [°C]', 't″ [°C]'] : ['t′ [°C]'],
  rows: [`101325 ${printed}`],
}));
