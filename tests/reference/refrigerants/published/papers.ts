// Saturation and single-phase rows printed in the papers of the equations themselves.

import type { PublishedTable } from './table.ts';

const tillnerRoth = 'R. Tillner-Roth, H. D. Baehr (1994), J. Phys. Chem. Ref. Data 23, 657';
const buecker = 'D. Buecker, W. Wagner (2006), J. Phys. Chem. Ref. Data 35, 929';
const yokozeki = 'R. Tillner-Roth, A. Yokozeki (1997), J. Phys. Chem. Ref. Data 26, 1273';
const caloric = ['h′ [kJ/kg]', 'h″ [kJ/kg]', 's′ [kJ/(kg K)]', 's″ [kJ/(kg K)]'] as const;
const further = ['cp′ [kJ/(kg K)]', 'cp″ [kJ/(kg K)]', 'w′ [m/s]', 'w″ [m/s]'] as const;

const table46 = {
  fluid: 'R600a',
  source: buecker,
  given: 'saturationKelvin',
  columns: ['p′ [MPa]', 'ρ′ [kg/m³]', 'ρ″ [kg/m³]', ...caloric, ...further],
} as const;

export const paperTables: readonly PublishedTable[] = [
  {
    fluid: 'R134a',
    title: 'Table 8, saturation',
    source: tillnerRoth,
    given: 'saturationKelvin',
    columns: ['p′ [MPa]', 'ρ′ [kg/m³]', 'ρ″ [kg/m³]', ...caloric, ...further],
    rows: [
      '200 0.00631 1510.5 0.38977 107.39 353.06 0.6073 1.8356 1.2058 0.6586 967.61 135.98',
      '250 0.11561 1367.9 5.9546 169.57 384.60 0.8841 1.7443 1.2865 0.8044 728.39 145.98',
      '300 0.70282 1199.7 34.193 237.19 413.27 1.1287 1.7156 1.4324 1.0438 497.89 143.88',
    ],
  },
  {
    fluid: 'R134a',
    title: 'Table 9, one phase',
    source: tillnerRoth,
    given: 'kelvinMegapascal',
    columns: ['ρ [kg/m³]', 'h [kJ/kg]', 's [kJ/(kg K)]', 'cv [kJ/(kg K)]', 'cp [kJ/(kg K)]', 'w [m/s]'],
    rows: [
      '265 0.2 9.9171 394.26 1.7396 0.7324 0.8523 147.61',
      '310 1 1160.4 251.72 1.1755 0.9288 1.4795 452.15',
      '345 2 102.38 434.73 1.7164 0.9701 1.4224 131.78',
    ],
  },
  {
    ...table46,
    title: 'Table 46, saturation, its own zero (ideal gas at 298.15 K)',
    zero: 'idealGas298Isobutane',
    rows: [
      '200 0.003814 657.706 0.13378 -556.44 -142.03 -2.175 -0.103 1.968 1.241 1389.12 179.38',
      '300 0.37000 548.32 9.6096 -338.17 -11.29 -1.299 -0.209 2.442 1.810 810.25 197.74',
      '400 3.1856 341.03 118.39 -36.27 81.59 -0.459 -0.164 6.349 7.555 184.38 128.90',
    ],
  },
  {
    ...table46,
    title: 'Table 46, saturation, moved by 428.17 kJ/kg and 1.618 kJ/(kg K) to the zero at the normal boiling point',
    zero: 'normalBoilingPoint',
    columns: caloric,
    rows: ['200 -128.27 286.14 -0.557 1.515', '300 90.00 416.88 0.319 1.409', '400 391.90 509.76 1.159 1.454'],
  },
  {
    fluid: 'R32',
    title: 'Table 12, saturation',
    source: yokozeki,
    given: 'saturationCelsius',
    columns: ['p [kPa]', 'ρ′ [kg/m³]', 'ρ″ [kg/m³]', ...caloric],
    rows: [
      '-50 110.14 1208.4 3.2316 117.22 497.27 0.6683 2.3714',
      '0 813.10 1055.3 22.091 200.00 515.30 1.0000 2.1543',
    ],
  },
  {
    fluid: 'R32',
    title: 'Table 14, one phase',
    source: yokozeki,
    given: 'celsiusKilopascal',
    columns: ['ρ [kg/m³]', 'h [kJ/kg]', 's [kJ/(kg K)]'],
    rows: ['0 200 4.7455 536.37 2.4378', '105 500 8.4945 627.61 2.5771'],
  },
  {
    fluid: 'R125',
    title: 'Table 9, saturation',
    source: 'E. W. Lemmon, R. T Jacobsen (2005), J. Phys. Chem. Ref. Data 34, 69',
    given: 'saturationCelsius',
    columns: ['p′ [MPa]', 'ρ′ [kg/m³]', 'ρ″ [kg/m³]', ...caloric, ...further],
    rows: ['0 0.67052 1319.8 42.070 200 333.16 1.0 1.4875 1.255 0.8797 448.0 125.8'],
  },
  {
    fluid: 'R152a',
    title: 'saturation by another equation',
    source: 'R. Krauss, V. C. Weiss, T. A. Edison, J. V. Sengers, K. Stephan (1996), Int. J. Thermophys. 17, 731',
    given: 'saturationKelvin',
    columns: ['p′ [MPa]', 'ρ′ [kg/m³]', 'ρ″ [kg/m³]'],
    rows: ['280 0.33558 943.16 10.550'],
    columnTolerance: {
      'p′ [MPa]': { relative: 7e-4 },
      'ρ′ [kg/m³]': { relative: 4e-4 },
      'ρ″ [kg/m³]': { relative: 4e-3 },
    },
    reason: 'Two equations for this fluid: the one used here (Outcalt & McLinden 1996) differs that much at 280 K',
  },
];
