// Outside values of fresh and sea water at 101325 Pa, each with its source. Read by the tests and by the validation tables.

export interface WaterRow {
  readonly celsius: number;
  readonly density: number;
  readonly heatCapacity: number;
  readonly viscosity: number;
  readonly conductivity: number;
  readonly expansion: number;
  readonly prandtl: number;
}

/**
 * Fresh water: IAPWS R6-95(2018), viscosity R12-08, conductivity R15-11, evaluated with the open library CoolProp 8.0.0.
 * SI: kg/m³, J/(kg K), Pa s, W/(m K), 1/K.
 */
export const freshWater: readonly WaterRow[] = (
  [
    [5, 999.9666, 4205.04, 1.518173e-3, 0.56779, 1.60418e-5, 11.2435],
    [15, 999.1026, 4188.46, 1.137568e-3, 0.5888, 1.50843e-4, 8.0921],
    [20, 998.2072, 4184.05, 1.001596e-3, 0.59801, 2.06806e-4, 7.0078],
    [25, 997.0476, 4181.31, 8.900225e-4, 0.60652, 2.57289e-4, 6.1358],
    [30, 995.6495, 4179.82, 7.972218e-4, 0.61439, 3.03377e-4, 5.4236],
    [40, 992.2164, 4179.41, 6.527287e-4, 0.62849, 3.85479e-4, 4.3406],
  ] as const
).map(([celsius, density, heatCapacity, viscosity, conductivity, expansion, prandtl]) => ({
  celsius,
  density,
  heatCapacity,
  viscosity,
  conductivity,
  expansion,
  prandtl,
}));

/** Sea water, IAPWS R13-08 (2008): °C, S kg/kg, kg/m³, J/(kg K). */
export const iapwsSeaWater: readonly (readonly [number, number, number, number])[] = [
  [25, 0.035, 1023.21954, 3999.7675],
  [25, 0.03516504, 1023.34362, 3998.9678],
  [10, 0.035, 1026.82585, 3990.9524],
  [0, 0.03516504, 1028.1072, 3986.48579],
];

/**
 * International equation of state of sea water EOS-80 (UNESCO technical papers in marine science 44, 1983), practical
 * salinity 35, that is 35.16504 g/kg: °C, kg/m³, 1/K. The densities at 5 and 25 °C are the paper's own check values (from
 * memory, given by its equation), the expansion is the slope of that equation.
 */
export const unescoSeaWater: readonly (readonly [number, number, number])[] = [
  [5, 1027.67547, 1.136e-4],
  [15, 1025.97275, 2.1414e-4],
  [25, 1023.34306, 2.9698e-4],
  [30, 1021.72864, 3.3413e-4],
];

/**
 * Sea water of 35 g/kg: specific heat, viscosity, conductivity as the fluid file MITSW of the open library CoolProp 8.0.0 has
 * them, a fit of its own to the property routines of Sharqawy et al.: °C, J/(kg K), Pa s, W/(m K).
 */
export const fittedSeaWater: readonly (readonly [number, number, number, number])[] = [
  [5, 3993.431, 1.623007e-3, 0.578036],
  [15, 3997.58, 1.230703e-3, 0.594139],
  [25, 4001.29, 9.642258e-4, 0.608736],
  [35, 4004.853, 7.778941e-4, 0.621868],
];
