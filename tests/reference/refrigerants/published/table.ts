// How a printed table of a paper is written down here, and how our own numbers are read beside it. A row is kept as it was
// printed, so that the tolerance follows from its digits.

import {
  type ReferenceStateName,
  type Refrigerant,
  referenceOffset,
  refrigerant,
  type State,
  saturationAtTemperature,
  stateAt,
} from '../../../../src/matter/refrigerants/index.ts';

/** A number is held to units of the last printed digit, or to a share of the printed value where a sentence says why. */
export type Tolerance = { readonly units: number } | { readonly relative: number } | { readonly absolute: number };

export interface PublishedTable {
  readonly fluid: string;
  /** 'Table 8, saturation'. */
  readonly title: string;
  /** Author, year, journal, page. */
  readonly source: string;
  /** What the first numbers of a row are. */
  readonly given: keyof typeof askers;
  /** What the others are. */
  readonly columns: readonly Column[];
  readonly rows: readonly string[];
  /** Default: one unit of the last printed digit. */
  readonly tolerance?: Tolerance;
  readonly columnTolerance?: { readonly [column in Column]?: Tolerance };
  /** Where enthalpy and entropy of the table count from. Default: 200 kJ/kg and 1 kJ/(kg K) at 0 °C. */
  readonly zero?: keyof typeof zeros;
  /** Why a tolerance is wider than the printed digits. */
  readonly reason?: string;
}

/** One printed number beside ours. */
export interface PublishedValue {
  readonly table: PublishedTable;
  /** The given numbers with their units. */
  readonly where: string;
  readonly column: Column;
  readonly printed: string;
  readonly ours: number;
  readonly tolerance: Tolerance;
}

interface Point {
  readonly fluid: Refrigerant;
  /** One phase: the state. On the dome: the same as `liquid`. */
  readonly state: State;
  readonly liquid: State;
  readonly vapour: State;
  /** What to add to our enthalpy and entropy [J/kg, J/(kg K)]. */
  readonly zero: { readonly enthalpy: number; readonly entropy: number };
}

type Sides = Pick<Point, 'state' | 'liquid' | 'vapour'>;

const single = (state: State): Sides => ({ state, liquid: state, vapour: state });
const dome = (fluid: Refrigerant, temperature: number): Sides => {
  const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
  return { state: liquid, liquid, vapour };
};

/** From the given numbers of a row to states; `units` in words, one for each number. */
const askers = {
  saturationKelvin: { units: ['K'], ask: (fluid: Refrigerant, [T]: Given) => dome(fluid, T) },
  saturationCelsius: { units: ['°C'], ask: (fluid: Refrigerant, [t]: Given) => dome(fluid, t + 273.15) },
  kelvinMegapascal: {
    units: ['K', 'MPa'],
    ask: (fluid: Refrigerant, [T, p]: Given) => single(stateAt(fluid, { temperature: T, pressure: p * 1e6 })),
  },
  celsiusKilopascal: {
    units: ['°C', 'kPa'],
    ask: (fluid: Refrigerant, [t, p]: Given) => single(stateAt(fluid, { temperature: t + 273.15, pressure: p * 1e3 })),
  },
  kelvinDensity: {
    units: ['K', 'kg/m³'],
    ask: (fluid: Refrigerant, [T, density]: Given) => single(stateAt(fluid, { temperature: T, density })),
  },
  kelvinMolarDensity: {
    units: ['K', 'mol/dm³'],
    ask: (fluid: Refrigerant, [T, density]: Given) =>
      single(stateAt(fluid, { temperature: T, density: density * 1e3 * fluid.molarMass })),
  },
  pascal: {
    units: ['Pa'],
    ask: (fluid: Refrigerant, [pressure]: Given) => {
      const liquid = stateAt(fluid, { pressure, quality: 0 });
      return { state: liquid, liquid, vapour: stateAt(fluid, { pressure, quality: 1 }) };
    },
  },
} as const;

type Given = readonly [number, number];

/** Zeros of enthalpy and entropy that papers count from. */
const zeros = {
  iir: (fluid: Refrigerant) => offset(fluid, 'iir'),
  normalBoilingPoint: (fluid: Refrigerant) => offset(fluid, 'normalBoilingPoint'),
  /** Internal energy and entropy 0 in the saturated liquid at the triple point: the release on water. */
  triplePointLiquid: (fluid: Refrigerant) => {
    const { liquid } = saturationAtTemperature(fluid, fluid.triplePoint.temperature);
    return { enthalpy: -liquid.internalEnergy, entropy: -liquid.entropy };
  },
  /** The ideal gas at 298.15 K of the isobutane paper: one constant from the zero at the normal boiling point [J/kg]. */
  idealGas298Isobutane: (fluid: Refrigerant) => {
    const { enthalpy, entropy } = offset(fluid, 'normalBoilingPoint');
    return { enthalpy: enthalpy - 428.17e3, entropy: entropy - 1.618e3 };
  },
} as const;

function offset(fluid: Refrigerant, name: ReferenceStateName) {
  return referenceOffset(fluid, name);
}

const value = (number: number | null): number => {
  if (number === null) throw new Error('no number where the table has one');
  return number;
};

/** Columns by the letters and units of the papers; ′ saturated liquid, ″ saturated vapour. */
export const readings = {
  'p [MPa]': ({ state }: Point) => state.pressure / 1e6,
  'p [kPa]': ({ state }: Point) => state.pressure / 1e3,
  'p′ [MPa]': ({ liquid }: Point) => liquid.pressure / 1e6,
  'p″ [MPa]': ({ vapour }: Point) => vapour.pressure / 1e6,
  't′ [°C]': ({ liquid }: Point) => liquid.temperature - 273.15,
  't″ [°C]': ({ vapour }: Point) => vapour.temperature - 273.15,
  'ρ [kg/m³]': ({ state }: Point) => state.density,
  'ρ′ [kg/m³]': ({ liquid }: Point) => liquid.density,
  'ρ″ [kg/m³]': ({ vapour }: Point) => vapour.density,
  'v″ [m³/kg]': ({ vapour }: Point) => 1 / vapour.density,
  'h [kJ/kg]': ({ state, zero }: Point) => (state.enthalpy + zero.enthalpy) / 1e3,
  'h′ [kJ/kg]': ({ liquid, zero }: Point) => (liquid.enthalpy + zero.enthalpy) / 1e3,
  'h″ [kJ/kg]': ({ vapour, zero }: Point) => (vapour.enthalpy + zero.enthalpy) / 1e3,
  's [kJ/(kg K)]': ({ state, zero }: Point) => (state.entropy + zero.entropy) / 1e3,
  's′ [kJ/(kg K)]': ({ liquid, zero }: Point) => (liquid.entropy + zero.entropy) / 1e3,
  's″ [kJ/(kg K)]': ({ vapour, zero }: Point) => (vapour.entropy + zero.entropy) / 1e3,
  'cv [kJ/(kg K)]': ({ state }: Point) => value(state.cv) / 1e3,
  'cp [kJ/(kg K)]': ({ state }: Point) => value(state.cp) / 1e3,
  'cp′ [kJ/(kg K)]': ({ liquid }: Point) => value(liquid.cp) / 1e3,
  'cp″ [kJ/(kg K)]': ({ vapour }: Point) => value(vapour.cp) / 1e3,
  'cv [J/(mol K)]': ({ state, fluid }: Point) => value(state.cv) * fluid.molarMass,
  'cp [J/(mol K)]': ({ state, fluid }: Point) => value(state.cp) * fluid.molarMass,
  'w [m/s]': ({ state }: Point) => value(state.soundSpeed),
  'w′ [m/s]': ({ liquid }: Point) => value(liquid.soundSpeed),
  'w″ [m/s]': ({ vapour }: Point) => value(vapour.soundSpeed),
} as const;
export type Column = keyof typeof readings;

/** Every number of a table beside ours. @throws if a row has not as many numbers as the table has columns */
export function valuesOf(table: PublishedTable): readonly PublishedValue[] {
  const fluid = refrigerant(table.fluid);
  const zero = zeros[table.zero ?? 'iir'](fluid);
  const { units, ask } = askers[table.given];
  return table.rows.flatMap((row) => {
    const printed = row.split(/\s+/);
    const given = printed.slice(0, units.length);
    if (printed.length !== units.length + table.columns.length) throw new Error(`${table.title}: "${row}"`);
    const point = { fluid, zero, ...ask(fluid, given.map(Number) as unknown as Given) };
    return table.columns.map((column, k) => ({
      table,
      where: given.map((number, index) => `${number} ${units[index]}`).join(', '),
      column,
      printed: printed[units.length + k]!,
      ours: readings[column](point),
      tolerance: table.columnTolerance?.[column] ?? table.tolerance ?? { units: 1 },
    }));
  });
}

/** The largest difference a tolerance lets pass, in the unit of the column. */
export function allowed(tolerance: Tolerance, printed: string): number {
  if ('absolute' in tolerance) return tolerance.absolute;
  if ('relative' in tolerance) return tolerance.relative * Math.abs(Number(printed));
  const [mantissa, exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa!.split('.')[1]?.length ?? 0;
  return tolerance.units * 10 ** (Number(exponent) - decimals) * 1.0001;
}
