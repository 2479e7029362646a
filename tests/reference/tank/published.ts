// Outside values for the tank, each with its source. Read by the tests and by the validation tables.

/**
 * Shah 2014, ASHRAE Transactions 120(2), SE-14-001: look-up table for undisturbed water, as transcribed in an open program.
 * Water °C, room °C at 50 % relative humidity, density difference (dry-air basis) kg/m³, evaporation kg/(m² h).
 */
export const shahTable: readonly (readonly [number, number, number, number])[] = [
  [28, 28, 0.0219, 0.136],
  [28, 29, 0.0168, 0.1171],
  [28, 30, 0.0116, 0.0968],
  [29, 28, 0.0282, 0.1651],
  [29, 29, 0.0231, 0.1463],
  [29, 30, 0.018, 0.1268],
  [30, 28, 0.0347, 0.1959],
  [30, 29, 0.0295, 0.1771],
  [30, 30, 0.0244, 0.1575],
];

/** ISO 6946: radiative coefficient of a black body, temperature °C, W/(m² K), as printed. */
export const blackBodyTable: readonly (readonly [number, number])[] = [
  [-10, 4.1],
  [0, 4.6],
  [10, 5.1],
  [20, 5.7],
  [30, 6.3],
];

/** ISO 6946: conventional surface resistances, m² K/W. */
export const conventionalSurfaceResistance = { up: 0.1, horizontal: 0.13, down: 0.17 } as const;

/** ISO 6946: resistance of sealed air layers, both faces emissivity 0.9, 10 °C (table from memory of the source), mm, m² K/W. */
export const airLayerTable: readonly (readonly [number, 'up' | 'horizontal' | 'down', number])[] = [
  [5, 'up', 0.11],
  [7, 'up', 0.13],
  [10, 'up', 0.15],
  [15, 'up', 0.16],
  [25, 'up', 0.16],
  [50, 'up', 0.16],
  [100, 'up', 0.16],
  [300, 'up', 0.16],
  [5, 'horizontal', 0.11],
  [7, 'horizontal', 0.13],
  [10, 'horizontal', 0.15],
  [15, 'horizontal', 0.17],
  [25, 'horizontal', 0.18],
  [50, 'horizontal', 0.18],
  [100, 'horizontal', 0.18],
  [300, 'horizontal', 0.18],
  [5, 'down', 0.11],
  [7, 'down', 0.13],
  [10, 'down', 0.15],
  [15, 'down', 0.17],
  [25, 'down', 0.19],
  [50, 'down', 0.21],
  [100, 'down', 0.22],
  [300, 'down', 0.23],
];
