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

/**
 * Sealed air layers with a foil of emissivity 0.05 on one face and 0.9 on the other, 10 °C, mm, m² K/W: arithmetic of the
 * constants of ISO 6946 with other software, not printed there.
 */
export const foilLayerTable: readonly (readonly [number, 'up' | 'horizontal' | 'down', number])[] = [
  [10, 'up', 0.363],
  [10, 'horizontal', 0.363],
  [10, 'down', 0.363],
  [15, 'up', 0.453],
  [15, 'horizontal', 0.52],
  [15, 'down', 0.52],
  [25, 'up', 0.453],
  [25, 'horizontal', 0.664],
  [25, 'down', 0.796],
  [50, 'up', 0.453],
  [50, 'horizontal', 0.664],
  [50, 'down', 1.323],
];

/**
 * Evaporation from 1.2 m x 0.5 m of water at 26 °C in a room of 22 °C and 50 %, 101325 Pa, kg/(m² h): arithmetic of each
 * published formula with other software. The surface length of the analogy is 0.17647 m.
 */
export const evaporationExample = {
  handbookInMovingAir: 0.2916,
  handbookAtRest: 0.2681,
  quietPoolsAtRest: 0.1972,
  shah: 0.1786,
  massTransferAnalogy: 0.166,
} as const;

/** Hollands, Raithby & Konicek 1975, layer of air heated from below: Ra, Nu, arithmetic with other software. */
export const hollandsTable: readonly (readonly [number, number])[] = [
  [1708, 1],
  [1e4, 2.39109],
  [1e5, 3.99436],
  [1e6, 6.99373],
];

/**
 * Natural convection at a pane 0.5 m high and at plates of 1.2 m x 0.5 m in air of 20 °C, W/(m² K): textbook correlations
 * (Bergman, Incropera, Dewitt & Lavine, chapter 9, constants from memory) evaluated with other software and the air of CoolProp
 * 8.0.0. The pane by Churchill & Chu 1975, equation 9.26; the plates by 0.54 Ra^(1/4) and 0.27 Ra^(1/4).
 */
export const plainPlates: readonly (readonly [string, 'up' | 'horizontal' | 'down', number])[] = [
  ['upright pane 4 K above the room', 'horizontal', 2.59],
  ['upright pane 8 K above the room', 'horizontal', 3.17],
  ['level plate 4 K above the room, heat flows up', 'up', 3.07],
  ['level plate 4 K above the room, heat flows down', 'down', 1.53],
];
