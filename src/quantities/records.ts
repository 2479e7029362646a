// The one table of quantities: name, symbol, SI unit, description, the family of units people write it in, and how it is
// printed in the metric and the US view. Units, ranges and wording elsewhere refer to it by name. No physics here.
import { InputError } from '../numerics/index.ts';
import { type Unit, type UnitFamily, unitFamilies } from './units.ts';

export type UnitView = 'metric' | 'us';

/** A unit of a view and the size [SI] below which it is used; the last of a list has no upper end. */
interface ViewStep {
  readonly unit: string;
  readonly below: number;
}

export interface QuantityRecord {
  readonly name: QuantityName;
  /** The field's symbol. */
  readonly symbol: string;
  /** Base SI unit; "1" for a pure number. */
  readonly unit: string;
  readonly description: string;
  readonly family: UnitFamily;
  /** 'positive' excludes zero, 'nonNegative' includes it. */
  readonly sign: 'any' | 'nonNegative' | 'positive';
  /** True where a bare number says enough. */
  readonly bare: boolean;
  /** Significant digits printed unless asked otherwise; for temperature levels decimals plus two. */
  readonly digits: number;
  /** What a person may write, as shown in messages. */
  readonly examples: readonly [string, string];
  /** Units by size, smallest first; `chart` names the one unit of axes and tables. */
  readonly view: Readonly<Record<UnitView, { readonly steps: readonly ViewStep[]; readonly chart: string }>>;
}

interface RecordInput {
  readonly family: UnitFamily;
  readonly symbol: string;
  readonly unit: string;
  readonly description: string;
  readonly metric: readonly (string | number)[];
  readonly us?: readonly (string | number)[];
  readonly chart?: readonly [string, string];
  readonly examples: readonly [string, string];
  readonly sign?: QuantityRecord['sign'];
  readonly bare?: boolean;
  readonly digits?: number;
}

/** `metric` and `us`: unit, size below which it serves [SI], next unit, …, last unit. */
const inputs = {
  temperature: {
    ...of('temperature', 'T', 'K', 'temperature'),
    metric: ['°C'],
    us: ['°F'],
    examples: ['26.5 °C', '79 °F'],
    sign: 'positive',
  },
  temperatureDifference: {
    ...of('temperatureDifference', 'ΔT', 'K', 'difference of two temperatures'),
    metric: ['K'],
    us: ['°F'],
    examples: ['7 to 9 K', '10 °F'],
    sign: 'any',
    digits: 2,
  },
  pressure: {
    ...of('pressure', 'p', 'Pa', 'absolute pressure'),
    metric: ['bar abs'],
    us: ['psia'],
    examples: ['2.3 bar', '13 psig'],
    sign: 'positive',
  },
  gaugePressure: {
    ...of('gaugePressure', 'p_g', 'Pa', 'pressure above the local atmosphere'),
    metric: ['bar gauge'],
    us: ['psig'],
    examples: ['1.3 bar gauge', '13 psig'],
    sign: 'any',
  },
  pressureDifference: {
    ...of('pressureDifference', 'Δp', 'Pa', 'difference of two pressures'),
    metric: ['kPa', 1e5, 'bar'],
    us: ['psi'],
    chart: ['kPa', 'psi'],
    examples: ['60 kPa', '9 psi'],
    sign: 'any',
  },
  length: {
    ...of('length', 'l', 'm', 'length'),
    metric: ['mm', 0.1, 'cm', 2, 'm'],
    us: ['in', 2, 'ft'],
    chart: ['cm', 'in'],
    examples: ['12 mm', '5/8 in'],
  },
  altitude: {
    ...of('length', 'z', 'm', 'height above the sea'),
    metric: ['m'],
    us: ['ft'],
    examples: ['200 m', '650 ft'],
    sign: 'any',
    digits: 2,
  },
  area: {
    ...of('area', 'A', 'm²', 'area'),
    metric: ['cm²', 0.01, 'm²'],
    us: ['in²', 0.02, 'ft²'],
    chart: ['m²', 'ft²'],
    examples: ['0.6 m2', '6 ft2'],
  },
  volume: {
    ...of('volume', 'V', 'm³', 'volume'),
    metric: ['mL', 1e-3, 'L', 2, 'm³'],
    us: ['gal', 2, 'ft³'],
    chart: ['L', 'gal'],
    examples: ['200 L', '120 gal'],
  },
  displacement: {
    ...of('volume', 'V_d', 'm³', 'volume swept per revolution'),
    metric: ['cm³'],
    us: ['in³'],
    examples: ['6.5 cm3', '0.4 in3'],
  },
  mass: {
    ...of('mass', 'm', 'kg', 'mass'),
    metric: ['g', 1, 'kg'],
    us: ['oz', 0.45359237, 'lb'],
    chart: ['kg', 'lb'],
    examples: ['85 g', '3 oz'],
  },
  massFlow: {
    ...of('massFlow', 'ṁ', 'kg/s', 'mass flow'),
    metric: ['g/s', 0.1, 'kg/s'],
    us: ['lb/h'],
    chart: ['g/s', 'lb/h'],
    examples: ['1.2 g/s', '9 lb/h'],
    digits: 2,
  },
  evaporation: {
    ...of('evaporation', 'ṁ_ev', 'kg/s', 'water that evaporates, a litre counted as a kilogram'),
    metric: ['L/day'],
    us: ['gal/day'],
    examples: ['1.5 L/day', '0.4 gal/day'],
    digits: 2,
  },
  power: {
    ...of('power', 'Q̇', 'W', 'heat flow'),
    metric: ['W', 1e4, 'kW'],
    us: ['BTU/h'],
    chart: ['W', 'BTU/h'],
    examples: ['90 W ± 10 %', '350 BTU/h'],
    sign: 'any',
    digits: 2,
  },
  electricPower: {
    ...of('power', 'P', 'W', 'electric power'),
    metric: ['W', 1e4, 'kW'],
    us: ['W', 1e4, 'kW'],
    chart: ['W', 'W'],
    examples: ['8 W', '90 W ± 10 %'],
    digits: 2,
  },
  energy: {
    ...of('energy', 'E', 'J', 'energy'),
    metric: ['kWh'],
    examples: ['38 kWh', '0.13 MWh'],
    sign: 'any',
    digits: 2,
  },
  duration: {
    ...of('duration', 't', 's', 'duration'),
    metric: ['s', 120, 'min', 7200, 'h', 259200, 'days', 5e7, 'years'],
    chart: ['h', 'h'],
    examples: ['7 days', '1 week'],
  },
  energyPrice: {
    ...of('energyPrice', 'c_E', '1/J', 'price per energy'),
    metric: ['/kWh'],
    examples: ['0.32 EUR/kWh', '18 ct/kWh'],
  },
  money: {
    ...of('money', 'C', '1', 'money, in the currency of the design'),
    metric: [''],
    examples: ['250', '250 EUR'],
    sign: 'any',
    bare: true,
    digits: 2,
  },
  fraction: {
    ...of('fraction', 'φ', '1', 'share of a whole'),
    metric: ['%'],
    examples: ['50 %', '0.35 to 0.5'],
    bare: true,
    digits: 2,
  },
  ratio: {
    ...of('pure', 'r', '1', 'ratio of two like quantities'),
    metric: [''],
    examples: ['3.2', '3 to 4'],
    bare: true,
    digits: 2,
  },
  count: { ...of('pure', 'n', '1', 'count'), metric: [''], examples: ['7', '5 to 8'], bare: true, digits: 2 },
  salinity: {
    ...of('salinity', 'S', '1', 'mass of salt per mass of water'),
    metric: ['g/kg'],
    examples: ['35 g/kg', '35 ppt'],
  },
  conductivity: {
    ...of('conductivity', 'k', 'W/(m K)', 'thermal conductivity'),
    metric: ['W/(m K)'],
    us: ['BTU in/(h ft² °F)'],
    examples: ['0.035 W/(m K)', '0.25 BTU in/(h ft2 °F)'],
  },
  thermalResistance: {
    ...of('thermalResistance', 'R', 'm² K/W', 'thermal resistance of an area'),
    metric: ['m² K/W'],
    us: ['R (US)'],
    examples: ['1.1 m2 K/W', 'R-6'],
    digits: 2,
  },
  surfaceResistance: {
    ...of('thermalResistance', 'R_f', 'm² K/W', 'thermal resistance of a deposit or surface'),
    metric: ['m² K/W'],
    examples: ['0.00015 m2 K/W', '0.0001 to 0.0002 m2 K/W'],
    digits: 2,
  },
  heatTransferCoefficient: {
    ...of('heatTransferCoefficient', 'h', 'W/(m² K)', 'heat transfer coefficient'),
    metric: ['W/(m² K)'],
    us: ['BTU/(h ft² °F)'],
    examples: ['8 W/(m2 K)', '1.4 BTU/(h ft2 °F)'],
    digits: 2,
  },
  thermalConductance: {
    ...of('thermalConductance', 'UA', 'W/K', 'heat flow per difference of temperature'),
    metric: ['W/K'],
    us: ['BTU/(h °F)'],
    examples: ['8 W/K', '15 BTU/(h °F)'],
    digits: 2,
  },
  heatFlux: {
    ...of('heatFlux', 'q', 'W/m²', 'heat flow per area'),
    metric: ['W/m²'],
    us: ['BTU/(h ft²)'],
    examples: ['60 W/m2', '20 BTU/(h ft2)'],
    sign: 'any',
    digits: 2,
  },
  heatCapacity: {
    ...of('heatCapacity', 'C_p', 'J/K', 'heat per change of temperature'),
    metric: ['kJ/K'],
    us: ['BTU/°F'],
    examples: ['840 kJ/K', '440 BTU/°F'],
    digits: 2,
  },
  density: {
    ...of('density', 'ρ', 'kg/m³', 'density'),
    metric: ['kg/m³'],
    us: ['lb/ft³'],
    examples: ['1.2 kg/m3', '62 lb/ft3'],
  },
  chargeDensity: {
    ...of('chargeDensity', 'm/V', 'kg/m³', 'mass of refrigerant per volume of air'),
    metric: ['g/m³'],
    us: ['lb/1000 ft³'],
    examples: ['38 g/m3', '2.4 lb/1000 ft3'],
    digits: 2,
  },
  enthalpy: {
    ...of('enthalpy', 'h', 'J/kg', 'specific enthalpy or energy'),
    metric: ['kJ/kg'],
    us: ['BTU/lb'],
    examples: ['400 kJ/kg', '172 BTU/lb'],
    sign: 'any',
    digits: 4,
  },
  entropy: {
    ...of('entropy', 's', 'J/(kg K)', 'specific entropy or heat capacity'),
    metric: ['kJ/(kg K)'],
    us: ['BTU/(lb °F)'],
    examples: ['1.75 kJ/(kg K)', '0.42 BTU/(lb °F)'],
    sign: 'any',
    digits: 4,
  },
  speed: {
    ...of('speed', 'v', 'm/s', 'speed'),
    metric: ['m/s'],
    us: ['ft/min'],
    examples: ['1.5 m/s', '300 ft/min'],
    digits: 2,
  },
  frequency: {
    ...of('frequency', 'N', '1/s', 'revolutions per time'),
    metric: ['rpm'],
    examples: ['2900 rpm', '49 1/s'],
  },
  mainsFrequency: {
    ...of('mainsFrequency', 'f', '1/s', 'frequency of the mains'),
    metric: ['Hz'],
    examples: ['50 Hz', '60 Hz'],
    sign: 'positive',
  },
  voltage: {
    ...of('voltage', 'V', 'V', 'voltage'),
    metric: ['V'],
    examples: ['230 V', '110 to 120 V'],
    sign: 'positive',
  },
  current: {
    ...of('current', 'I', 'A', 'electric current'),
    metric: ['A'],
    examples: ['0.8 A', '1.1 to 1.3 A'],
    digits: 2,
  },
  powerFactor: {
    ...of('fraction', 'cos φ', '1', 'watts over volts times amps'),
    metric: [''],
    examples: ['0.75', '0.6 to 0.9'],
    bare: true,
    digits: 2,
  },
  calendarYear: {
    ...of('pure', 'a', 'year', 'calendar year'),
    metric: [''],
    examples: ['1998', '1995 to 2005'],
    bare: true,
    digits: 4,
  },
  humidityRatio: {
    ...of('humidityRatio', 'W', '1', 'water vapour per dry air, by mass'),
    metric: ['g/kg'],
    us: ['gr/lb'],
    examples: ['8 g/kg', '56 gr/lb'],
    digits: 2,
  },
  volumeFlow: {
    ...of('volumeFlow', 'V̇', 'm³/s', 'volume flow of a gas'),
    metric: ['m³/h'],
    us: ['ft³/min'],
    examples: ['120 m3/h', '70 cfm'],
    digits: 2,
  },
  waterFlow: {
    ...of('volumeFlow', 'V̇_w', 'm³/s', 'volume flow of water'),
    metric: ['L/min'],
    us: ['gal/min'],
    examples: ['5 L/min', '1.3 gpm'],
    digits: 2,
  },
  volumetricCapacity: {
    ...of('volumetricCapacity', 'q_v', 'J/m³', 'heat per volume of gas drawn in'),
    metric: ['kJ/m³'],
    us: ['BTU/ft³'],
    examples: ['2200 kJ/m3', '59 BTU/ft3'],
  },
  viscosity: {
    ...of('viscosity', 'µ', 'Pa s', 'dynamic viscosity'),
    metric: ['µPa s'],
    examples: ['12 µPa s', '0.2 mPa s'],
  },
  airChangeRate: {
    ...of('airChangeRate', 'n', 'changes/s', 'how often the air of a room is replaced'),
    metric: ['/h'],
    examples: ['0.5 /h', '0.3 to 1 per hour'],
    digits: 2,
  },
  energyPerWater: {
    ...of('energyPerWater', 'e_w', 'J/kg water', 'energy for a mass of water, a litre counted as a kilogram'),
    metric: ['kWh/L'],
    examples: ['0.45 kWh/L', '0.3 to 0.6 kWh/L'],
    digits: 2,
  },
} as const satisfies Readonly<Record<string, RecordInput>>;

export type QuantityName = keyof typeof inputs;

export const quantityRecords: Readonly<Record<QuantityName, QuantityRecord>> = Object.fromEntries(
  Object.entries(inputs as Readonly<Record<string, RecordInput>>).map(([name, input]) => [
    name,
    recordFrom(name as QuantityName, input),
  ]),
) as Readonly<Record<QuantityName, QuantityRecord>>;

export function isQuantityName(name: string): name is QuantityName {
  return Object.hasOwn(inputs, name);
}

/** The record of a quantity. @throws InputError 'unknownQuantity' for any other name. */
export function quantityRecord(name: string): QuantityRecord {
  if (!isQuantityName(name)) {
    throw new InputError('quantity', name, `one of ${Object.keys(inputs).join(', ')}`, 'unknownQuantity');
  }
  return quantityRecords[name];
}

/** The unit for a value of that size [SI]. */
export function viewUnit(record: QuantityRecord, view: UnitView, value: number): Unit {
  const size = Math.abs(value);
  const step = record.view[view].steps.find(({ below }) => size < below)!;
  return unitOf(record.family, step.unit);
}

/** The one unit of axes and tables. */
export function chartUnit(record: QuantityRecord, view: UnitView): Unit {
  return unitOf(record.family, record.view[view].chart);
}

function unitOf(family: UnitFamily, label: string): Unit {
  const found = unitFamilies[family].find((entry: Unit) => entry.label === label);
  if (found !== undefined) return found;
  throw new InputError('unit', label, `a unit of the family ${family}`);
}

function of(family: UnitFamily, symbol: string, unit: string, description: string) {
  return { family, symbol, unit, description };
}

function recordFrom(name: QuantityName, input: RecordInput): QuantityRecord {
  const { family, symbol, unit, description, examples } = input;
  const us = input.us ?? input.metric;
  return {
    name,
    symbol,
    unit,
    description,
    family,
    sign: input.sign ?? 'nonNegative',
    bare: input.bare ?? false,
    digits: input.digits ?? 3,
    examples,
    view: {
      metric: { steps: stepsFrom(input.metric), chart: input.chart?.[0] ?? String(input.metric[0]) },
      us: { steps: stepsFrom(us), chart: input.chart?.[1] ?? String(us[0]) },
    },
  };
}

function stepsFrom(list: readonly (string | number)[]): readonly ViewStep[] {
  const steps: ViewStep[] = [];
  for (let index = 0; index < list.length; index += 2) {
    steps.push({ unit: String(list[index]), below: Number(list[index + 1] ?? Number.POSITIVE_INFINITY) });
  }
  return steps;
}
