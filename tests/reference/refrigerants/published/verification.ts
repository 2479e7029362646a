// Rows that papers print for checking computer programs: temperature and density to pressure, heat capacities, speed of sound.

import type { PublishedTable } from './table.ts';

const iapws = 'IAPWS R6-95(2018), revised release on the properties of ordinary water';
const bothEnds = [
  'p′ [MPa]',
  'ρ′ [kg/m³]',
  'ρ″ [kg/m³]',
  'h′ [kJ/kg]',
  'h″ [kJ/kg]',
  's′ [kJ/(kg K)]',
  's″ [kJ/(kg K)]',
] as const;
const molar = ['p [MPa]', 'cv [J/(mol K)]', 'cp [J/(mol K)]', 'w [m/s]'] as const;

export const verificationTables: readonly PublishedTable[] = [
  {
    fluid: 'R718',
    title: 'Table 7, one phase',
    source: iapws,
    given: 'kelvinDensity',
    columns: ['p [MPa]', 'cv [kJ/(kg K)]', 'w [m/s]', 's [kJ/(kg K)]'],
    zero: 'triplePointLiquid',
    rows: [
      '300 996.5560 0.0992418352 4.13018112 1501.51914 0.393062643',
      '300 1005.308 20.0022515 4.06798347 1534.92501 0.387405401',
      '500 0.4350000 0.0999679423 1.50817541 548.314253 7.94488271',
      '500 4.532000 0.999938125 1.66991025 535.739001 6.82502725',
      '500 838.0250 10.0003858 3.22106219 1271.28441 2.56690919',
      '500 1084.564 700.000405 3.07437693 2412.00877 2.03237509',
      '647 358.0000 22.0384756 6.18315728 252.145078 4.32092307',
      '900 0.2410000 0.100062559 1.75890657 724.027147 9.16653194',
      '900 870.7690 700.000006 2.66422350 2019.33608 4.17223802',
    ],
  },
  {
    fluid: 'R718',
    title: 'Table 8, saturation',
    source: iapws,
    given: 'saturationKelvin',
    columns: bothEnds,
    zero: 'triplePointLiquid',
    rows: [
      '275 0.000698451167 999.887406 0.00550664919 7.75972201 2504.28995 0.0283094670 9.10660121',
      '450 0.932203564 890.341250 4.81200360 749.161585 2774.41078 2.10865845 6.60921221',
    ],
    tolerance: { relative: 1e-8 },
    reason: 'Saturation printed to nine digits; the solution of the equilibrium may differ in the last',
  },
  {
    fluid: 'R290',
    title: 'check values of the equation',
    source: 'E. W. Lemmon, M. O. McLinden, W. Wagner (2009), J. Chem. Eng. Data 54, 3141',
    given: 'kelvinMolarDensity',
    columns: molar,
    rows: [
      '200 14 2.3795138 61.078424 93.475362 1381.9552',
      '300 12 19.053797 73.972542 108.61529 958.40520',
      '300 0.4 0.84694991 69.021875 85.753997 221.88959',
      '400 5 6.6462840 97.017439 271.07044 194.65847',
      '369.9 5 4.2519399 117.71621 753625.00 130.89800',
    ],
    tolerance: { relative: 1e-7 },
    reason: 'Printed to eight digits, computed there with a gas constant of seven',
  },
  {
    fluid: 'R125',
    title: 'Table 12, check values of the equation',
    source: 'E. W. Lemmon, R. T Jacobsen (2005), J. Phys. Chem. Ref. Data 34, 69',
    given: 'kelvinMolarDensity',
    columns: molar,
    rows: [
      '200 14 42.302520 85.816305 123.53641 968.67194',
      '300 10 2.9023498 99.919660 164.16914 345.91235',
      '300 0.7 1.3245058 94.823171 124.96009 120.56007',
      '400 5.0 9.0495658 114.41819 198.11792 151.53060',
    ],
    tolerance: { relative: 2e-7 },
    columnTolerance: { 'cv [J/(mol K)]': { relative: 1e-6 }, 'cp [J/(mol K)]': { relative: 1e-6 } },
    reason: 'The exported constants of the ideal gas are rounded: both heat capacities lie 3e-7 to 5e-7 high',
  },
  {
    fluid: 'R1234yf',
    title: 'Table 7, check values of the equation',
    source: 'E. W. Lemmon, R. Akasaka (2022), Int. J. Thermophys. 43, 119',
    given: 'kelvinMolarDensity',
    columns: molar,
    rows: [
      '280 11 28.95760 101.930 139.307 738.905',
      '280 0.1 0.2185345 91.3497 102.623 141.882',
      '340 8 2.309798 113.805 195.748 265.888',
    ],
  },
  {
    fluid: 'R717',
    title: 'coding of the second Gaussian terms',
    source:
      'CoolProp 8.0.0 on the equation of K. Gao, J. Wu, I. H. Bell, A. H. Harvey, E. W. Lemmon (2023), J. Phys. Chem. Ref. Data 52, 013102; computed, not printed there',
    given: 'kelvinMolarDensity',
    columns: ['p [MPa]', 'w [m/s]', 'cv [J/(mol K)]', 'cp [J/(mol K)]'],
    rows: ['420 9 13.1677121 347.209304 54.6368856 301.994833'],
  },
];
