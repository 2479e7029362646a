// Printed values of viscosity, thermal conductivity and surface tension, from the papers and releases of the correlations.

import type { StateInput } from '../../../../src/matter/refrigerants/index.ts';

export interface PublishedTransport {
  readonly fluid: string;
  readonly given: StateInput;
  readonly where: string;
  readonly property: 'viscosity' | 'conductivity' | 'surfaceTension';
  /** As printed, in µPa s, mW/(m K) or mN/m. */
  readonly printed: number;
  readonly source: string;
  /** What our value may be off, as a share. */
  readonly tolerance: number;
  readonly reason?: string;
}

const huber2003 = 'Huber, Laesecke & Perkins (2003), Ind. Eng. Chem. Res. 42, 3163';
const mclinden2000 = 'McLinden, Klein & Perkins (2000), Int. J. Refrigeration 23, 43';
const vogel2000 = 'Vogel, Kuechenmeister & Bich (2000), Int. J. Thermophys. 21, 343';
const vogel1998 = 'Vogel and others (1998), J. Phys. Chem. Ref. Data 27, 947';
const huber2006 = 'Huber & Laesecke (2006), Ind. Eng. Chem. Res. 45, 4447';
const krauss1996 = 'Krauss and others (1996), Int. J. Thermophys. 17, 731';
const older = 'The paper used an older equation of state';
const estimate =
  'The viscosity of this fluid is an estimate by residual entropy; the paper is a correlation of measurements';

const at = (temperature: number, density: number) => ({
  given: { temperature, density },
  where: `${temperature} K, ${Number(density.toPrecision(6))} kg/m³`,
});
/** By molar density [mol/dm³] and molar mass [g/mol]. */
const molar = (temperature: number, molarDensity: number, molarMass: number) => ({
  given: { temperature, density: molarDensity * molarMass },
  where: `${temperature} K, ${molarDensity} mol/dm³`,
});
const liquid = (temperature: number) => ({
  given: { temperature, quality: 0 },
  where: `${temperature} K, saturated liquid`,
});
const vapour = (temperature: number) => ({
  given: { temperature, quality: 1 },
  where: `${temperature} K, saturated vapour`,
});

const water = { fluid: 'R718' } as const;
const waterViscosity = {
  ...water,
  property: 'viscosity',
  source: 'IAPWS R12-08, Table 4',
  tolerance: 5e-8,
} as const;
const waterConductivity = {
  ...water,
  property: 'conductivity',
  source: 'IAPWS R15-11, Tables 4 and 5',
  tolerance: 5e-9,
} as const;
const waterTension = {
  ...water,
  property: 'surfaceTension',
  source: 'IAPWS R1-76(2014), Table 1',
  tolerance: 7e-5,
} as const;

export const publishedTransport: readonly PublishedTransport[] = [
  { ...waterViscosity, ...at(298.15, 998), printed: 889.7351 },
  { ...waterViscosity, ...at(373.15, 1000), printed: 307.883622 },
  { ...waterViscosity, ...at(433.15, 1), printed: 14.538324 },
  { ...waterConductivity, ...at(298.15, 998), printed: 607.712868 },
  // Printed for density 0.
  { ...waterConductivity, ...at(298.15, 1e-9), printed: 18.4341883 },
  { ...waterConductivity, ...at(647.35, 222), printed: 367.787459 },
  { ...waterTension, ...liquid(283.15), printed: 74.22 },
  { ...waterTension, ...liquid(293.15), printed: 72.74 },
  { ...waterTension, ...liquid(303.15), printed: 71.19 },
  { ...waterTension, ...liquid(313.15), printed: 69.6 },
  { fluid: 'R134a', ...liquid(185), property: 'viscosity', printed: 1269.84, source: huber2003, tolerance: 3e-5 },
  { fluid: 'R134a', ...liquid(360), property: 'viscosity', printed: 78.146, source: huber2003, tolerance: 3e-5 },
  { fluid: 'R134a', ...vapour(360), property: 'viscosity', printed: 17.1403, source: huber2003, tolerance: 3e-5 },
  { fluid: 'R134a', ...liquid(330), property: 'conductivity', printed: 67.4643, source: mclinden2000, tolerance: 8e-5 },
  { fluid: 'R134a', ...vapour(240), property: 'conductivity', printed: 8.73242, source: mclinden2000, tolerance: 8e-5 },
  { fluid: 'R600a', ...liquid(120), property: 'viscosity', printed: 6055.8, source: vogel2000, tolerance: 1e-5 },
  { fluid: 'R600a', ...vapour(400), property: 'viscosity', printed: 14.761, source: vogel2000, tolerance: 5e-6 },
  {
    fluid: 'R600a',
    ...at(390, 387.095),
    property: 'conductivity',
    printed: 63.039,
    source: 'Perkins (2002), J. Chem. Eng. Data 47, 1272',
    tolerance: 2.5e-4,
    reason: older,
  },
  {
    fluid: 'R290',
    ...molar(280, 11.78, 44.0956),
    property: 'viscosity',
    printed: 117.4,
    source: vogel1998,
    tolerance: 1.1e-3,
    reason: older,
  },
  {
    fluid: 'R290',
    ...molar(600, 10.03, 44.0956),
    property: 'viscosity',
    printed: 73.92,
    source: vogel1998,
    tolerance: 1.1e-3,
    reason: older,
  },
  {
    fluid: 'R290',
    ...liquid(368),
    property: 'conductivity',
    printed: 72.8215,
    source: 'Marsh, Perkins & Ramires (2002), J. Chem. Eng. Data 47, 932',
    tolerance: 5e-4,
    reason: older,
  },
  {
    fluid: 'R125',
    ...molar(300, 10.597, 120.0214),
    property: 'viscosity',
    printed: 177.37,
    source: huber2006,
    tolerance: 1e-4,
  },
  {
    fluid: 'R125',
    ...molar(400, 0.030631, 120.0214),
    property: 'viscosity',
    printed: 17.07,
    source: huber2006,
    tolerance: 2e-5,
  },
  {
    fluid: 'R744',
    ...at(300, 65),
    property: 'viscosity',
    printed: 15.563,
    source: 'Laesecke & Muzny (2017), J. Phys. Chem. Ref. Data 46, 013107',
    tolerance: 1e-6,
  },
  {
    fluid: 'R744',
    ...at(250, 1058),
    property: 'conductivity',
    printed: 140,
    source: 'Huber and others (2016), J. Phys. Chem. Ref. Data 45, 013102',
    tolerance: 3e-5,
  },
  {
    fluid: 'R152a',
    ...liquid(280),
    property: 'viscosity',
    printed: 198.1,
    source: krauss1996,
    tolerance: 0.009,
    reason: estimate,
  },
  {
    fluid: 'R152a',
    ...liquid(240),
    property: 'viscosity',
    printed: 364.8,
    source: krauss1996,
    tolerance: 0.091,
    reason: estimate,
  },
  {
    fluid: 'R152a',
    ...vapour(280),
    property: 'viscosity',
    printed: 9.606,
    source: krauss1996,
    tolerance: 0.091,
    reason: estimate,
  },
  { fluid: 'R152a', ...liquid(280), property: 'conductivity', printed: 109, source: krauss1996, tolerance: 0.003 },
];

/** From SI to the unit of a printed value. */
export const printedUnits = {
  viscosity: { factor: 1e6, unit: 'µPa s' },
  conductivity: { factor: 1e3, unit: 'mW/(m K)' },
  surfaceTension: { factor: 1e3, unit: 'mN/m' },
} as const;
