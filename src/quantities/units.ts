// Units by family: the words people write, and the exact factors to base SI. One family holds the units of one kind of
// quantity, so that a temperature level and a temperature difference, or gauge and absolute pressure, never mix.
// Factors are exact by definition where the unit is defined so (inch, pound, US gallon, international table BTU).

export interface Unit {
  /** As printed: "°F", "BTU/h". */
  readonly label: string;
  /** Other spellings accepted; compared without spaces, dots, brackets and raised digits. */
  readonly spellings: readonly string[];
  /** SI value = (number + shift) × factor. */
  readonly factor: number;
  readonly shift: number;
  /** Counted from the local atmospheric pressure, which must then be known. */
  readonly gauge: boolean;
  /** Printed before the number, without a space: "R-6". */
  readonly prefix?: string;
}

export type UnitFamily = keyof typeof unitFamilies;

/** International table BTU [J]. */
const btu = 1055.05585262;
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const gallon = 231 * inch ** 3;
/** Standard acceleration of gravity g [m/s²]; exact by definition (CGPM 1901). */
export const standardGravity = 9.80665;
/** Pound-force per square inch [Pa]. */
const psi = (pound * standardGravity) / inch ** 2;
const fahrenheitDegree = 5 / 9;
const day = 86400;
/** A year of 8,760 hours. */
export const secondsPerYear = 365 * day;

function unit(label: string, factor: number, ...spellings: string[]): Unit {
  return { label, spellings, factor, shift: 0, gauge: false };
}

function shifted(label: string, factor: number, shift: number, ...spellings: string[]): Unit {
  return { label, spellings, factor, shift, gauge: false };
}

function gauge(label: string, factor: number, ...spellings: string[]): Unit {
  return { label, spellings, factor, shift: 0, gauge: true };
}

function prefixed(prefix: string, label: string, factor: number, ...spellings: string[]): Unit {
  return { label, spellings, factor, shift: 0, gauge: false, prefix };
}

const energyUnits = [
  unit('kWh', 3.6e6, 'kilowatt hours', 'kilowatt-hours', 'kilowatt hour'),
  unit('J', 1, 'joule', 'joules'),
  unit('kJ', 1e3),
  unit('MJ', 1e6),
  unit('GJ', 1e9),
  unit('Wh', 3600),
  unit('MWh', 3.6e9),
  unit('BTU', btu, 'BTUs'),
  unit('therm', 1e5 * btu, 'therms'),
  unit('kcal', 4186.8),
];

const durationUnits = [
  unit('s', 1, 'sec', 'second', 'seconds'),
  unit('min', 60, 'minute', 'minutes'),
  unit('h', 3600, 'hr', 'hrs', 'hour', 'hours'),
  unit('days', day, 'd', 'day'),
  unit('weeks', 7 * day, 'week', 'wk'),
  unit('years', secondsPerYear, 'a', 'year', 'yr', 'yrs', 'y'),
];

const lengthUnits = [
  unit('mm', 1e-3, 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  unit('cm', 1e-2, 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  unit('m', 1, 'metre', 'metres', 'meter', 'meters'),
  unit('µm', 1e-6, 'micron', 'microns', 'um'),
  unit('km', 1e3),
  unit('in', inch, '"', 'inch', 'inches', 'ins', '″', '′′'),
  unit('ft', foot, "'", 'foot', 'feet', '′'),
  unit('yd', 3 * foot, 'yard', 'yards'),
];

const volumeUnits = [
  unit('L', 1e-3, 'l', 'litre', 'litres', 'liter', 'liters'),
  unit('mL', 1e-6, 'ml', 'millilitre', 'millilitres'),
  unit('m³', 1, 'cubic metre', 'cubic metres', 'cubic meters', 'cbm'),
  unit('cm³', 1e-6, 'cc', 'ccm', 'cubic centimetre', 'cubic centimetres'),
  unit('mm³', 1e-9),
  unit('gal', gallon, 'gallon', 'gallons', 'US gal', 'US gallons', 'gals'),
  unit('imperial gal', 4.54609e-3, 'imp gal', 'UK gal', 'imperial gallon', 'imperial gallons'),
  unit('qt', gallon / 4, 'quart', 'quarts'),
  unit('ft³', foot ** 3, 'cu ft', 'cubic feet', 'cubic foot', 'cuft', 'cf'),
  unit('in³', inch ** 3, 'cu in', 'cubic inch', 'cubic inches', 'cuin', 'cid'),
];

const absolutePressureUnits = [
  unit('bar abs', 1e5, 'bar', 'bara', 'bar absolute'),
  unit('Pa', 1, 'Pa abs', 'Paa'),
  unit('kPa', 1e3, 'kPa abs', 'kPaa'),
  unit('MPa', 1e6, 'MPa abs'),
  unit('hPa', 100),
  unit('mbar', 100),
  unit('psia', psi, 'psi abs', 'psi absolute'),
  unit('atm', 101325),
];

const gaugePressureUnits = [
  gauge('bar gauge', 1e5, 'barg', 'bar g'),
  gauge('kPa gauge', 1e3, 'kPag', 'kPa g'),
  gauge('psig', psi, 'psi g', 'psi gauge'),
];

/** Every family of units. The first unit of each stands for the family in messages. */
export const unitFamilies = {
  temperature: [
    shifted('°C', 1, 273.15, 'C', 'degC', 'deg C', 'celsius', 'degrees C', 'degrees celsius'),
    shifted('°F', fahrenheitDegree, 459.67, 'F', 'degF', 'deg F', 'fahrenheit', 'degrees F', 'degrees fahrenheit'),
    unit('K', 1, 'kelvin', 'kelvins'),
  ],
  temperatureDifference: [
    unit('K', 1, 'kelvin', 'kelvins', '°C', 'C', 'C°', 'degC', 'deg C', 'Δ°C'),
    unit('°F', fahrenheitDegree, 'F', 'F°', 'degF', 'deg F', 'Δ°F', 'R', '°R'),
  ],
  pressure: [...absolutePressureUnits, ...gaugePressureUnits],
  gaugePressure: [
    gauge('bar gauge', 1e5, 'barg', 'bar g', 'bar'),
    gauge('kPa gauge', 1e3, 'kPag', 'kPa g', 'kPa'),
    gauge('psig', psi, 'psi g', 'psi gauge', 'psi'),
  ],
  pressureDifference: [
    unit('kPa', 1e3),
    unit('Pa', 1),
    unit('bar', 1e5),
    unit('mbar', 100),
    unit('hPa', 100),
    unit('MPa', 1e6),
    unit('psi', psi),
  ],
  length: lengthUnits,
  area: [
    unit('m²', 1, 'sqm', 'square metres', 'square meters'),
    unit('cm²', 1e-4),
    unit('mm²', 1e-6),
    unit('ft²', foot ** 2, 'sq ft', 'square feet', 'sqft'),
    unit('in²', inch ** 2, 'sq in', 'square inches', 'sqin'),
  ],
  volume: volumeUnits,
  mass: [
    unit('g', 1e-3, 'gram', 'grams'),
    unit('kg', 1, 'kilogram', 'kilograms'),
    unit('mg', 1e-6),
    unit('t', 1e3, 'tonne', 'tonnes'),
    unit('oz', pound / 16, 'ounce', 'ounces'),
    unit('lb', pound, 'lbs', 'pound', 'pounds'),
  ],
  massFlow: [
    unit('g/s', 1e-3),
    unit('kg/s', 1),
    unit('kg/min', 1 / 60),
    unit('kg/h', 1 / 3600, 'kg/hr'),
    unit('lb/min', pound / 60, 'lbs/min', 'lbm/min'),
    unit('lb/h', pound / 3600, 'lb/hr', 'lbs/h', 'lbm/h'),
  ],
  evaporation: [
    unit('L/day', 1 / day, 'L/d', 'litres a day', 'litres/day', 'liters/day', 'kg/day', 'kg/d'),
    unit('gal/day', (1e3 * gallon) / day, 'gal/d', 'gallons/day', 'gallons a day', 'gpd'),
    unit('g/h', 1e-3 / 3600),
    unit('kg/s', 1),
  ],
  power: [
    unit('W', 1, 'watt', 'watts'),
    unit('kW', 1e3, 'kilowatt', 'kilowatts'),
    unit('MW', 1e6),
    unit('mW', 1e-3),
    unit('BTU/h', btu / 3600, 'BTUH', 'BTU/hr', 'BTU per hour'),
    unit('hp', 745.69987158227, 'HP', 'horsepower'),
    unit('kcal/h', 1.163, 'kcal/hr'),
    unit(
      'tons of refrigeration',
      (12e3 * btu) / 3600,
      'ton of refrigeration',
      'refrigeration tons',
      'tons',
      'ton',
      'TR',
    ),
  ],
  energy: energyUnits,
  duration: durationUnits,
  pure: [unit('', 1)],
  fraction: [unit('%', 0.01, 'percent', 'per cent', 'pct'), unit('', 1), unit('‰', 1e-3)],
  salinity: [unit('g/kg', 1e-3, '‰', 'ppt', 'psu'), unit('%', 0.01), unit('', 1)],
  conductivity: [
    unit('W/(m K)', 1),
    unit('mW/(m K)', 1e-3),
    unit('BTU in/(h ft² °F)', (btu / 3600) * (inch / foot ** 2) * 1.8, 'BTU in/(hr ft² F)', 'BTU in/(h ft² F)'),
    unit('BTU/(h ft °F)', (btu / 3600 / foot) * 1.8, 'BTU/(hr ft F)', 'BTU/(h ft F)'),
  ],
  thermalResistance: [
    unit('m² K/W', 1, 'm² °C/W', 'K m²/W'),
    prefixed(
      'R-',
      'R (US)',
      foot ** 2 / ((btu / 3600) * 1.8),
      'h ft² °F/BTU',
      'ft² h °F/BTU',
      'ft² °F h/BTU',
      'h ft² F/BTU',
      'hr ft² F/BTU',
      'ft² h F/BTU',
      'ft² F h/BTU',
    ),
    prefixed('RSI ', 'RSI', 1),
  ],
  heatTransferCoefficient: [
    unit('W/(m² K)', 1, 'W/(m² °C)'),
    unit('BTU/(h ft² °F)', (btu / 3600 / foot ** 2) * 1.8, 'BTU/(hr ft² F)', 'BTU/(h ft² F)'),
  ],
  thermalConductance: [unit('W/K', 1, 'W/°C'), unit('BTU/(h °F)', (btu / 3600) * 1.8, 'BTU/(hr F)', 'BTU/(h F)')],
  heatFlux: [unit('W/m²', 1), unit('BTU/(h ft²)', btu / 3600 / foot ** 2, 'BTU/(hr ft²)')],
  heatCapacity: [unit('kJ/K', 1e3), unit('J/K', 1), unit('Wh/K', 3600), unit('BTU/°F', btu * 1.8, 'BTU/F')],
  density: [
    unit('kg/m³', 1),
    unit('g/cm³', 1e3),
    unit('kg/L', 1e3),
    unit('g/L', 1),
    unit('lb/ft³', pound / foot ** 3, 'lbs/ft³', 'lb/cu ft'),
  ],
  chargeDensity: [
    unit('g/m³', 1e-3),
    unit('kg/m³', 1),
    unit('lb/1000 ft³', pound / (1e3 * foot ** 3), 'lb/1000 cu ft', 'lb/kcf'),
  ],
  enthalpy: [unit('kJ/kg', 1e3), unit('J/kg', 1), unit('BTU/lb', btu / pound)],
  entropy: [
    unit('kJ/(kg K)', 1e3),
    unit('J/(kg K)', 1),
    unit('BTU/(lb °F)', (btu / pound) * 1.8, 'BTU/(lb F)', 'BTU/(lb R)'),
  ],
  speed: [
    unit('m/s', 1),
    unit('km/h', 1 / 3.6, 'kph', 'kmh'),
    unit('ft/min', foot / 60, 'fpm'),
    unit('ft/s', foot, 'fps'),
    unit('mph', 0.44704),
  ],
  frequency: [unit('rpm', 1 / 60, 'rev/min', '1/min', 'r/min'), unit('1/s', 1, 'Hz', 'rev/s', 'rps', 'r/s')],
  mainsFrequency: [unit('Hz', 1, 'hertz', '1/s', 'cps', 'cycles', 'cycles per second')],
  voltage: [unit('V', 1, 'volt', 'volts', 'VAC', 'V AC', 'V~'), unit('kV', 1e3)],
  current: [unit('A', 1, 'amp', 'amps', 'ampere', 'amperes'), unit('mA', 1e-3)],
  airChangeRate: [
    unit('/h', 1 / 3600, '1/h', 'per hour', '/hr', 'ach', 'air changes per hour', 'air changes an hour'),
    unit('/s', 1, '1/s'),
  ],
  energyPerWater: [
    unit('kWh/L', 3.6e6, 'kWh/litre', 'kWh/liter', 'kWh/kg'),
    unit('Wh/L', 3600),
    unit('kJ/kg', 1e3),
    unit('J/kg', 1),
  ],
  humidityRatio: [unit('g/kg', 1e-3), unit('kg/kg', 1, 'lb/lb'), unit('gr/lb', 1 / 7000, 'grains/lb')],
  volumeFlow: [
    unit('m³/h', 1 / 3600, 'm³/hr'),
    unit('m³/min', 1 / 60),
    unit('m³/s', 1),
    unit('cm³/s', 1e-6),
    unit('L/s', 1e-3),
    unit('L/min', 1e-3 / 60, 'lpm'),
    unit('L/h', 1e-3 / 3600, 'lph'),
    unit('ft³/min', foot ** 3 / 60, 'cfm', 'cu ft/min'),
    unit('gal/min', gallon / 60, 'gpm'),
    unit('gal/h', gallon / 3600, 'gph'),
  ],
  volumetricCapacity: [unit('kJ/m³', 1e3), unit('J/m³', 1), unit('MJ/m³', 1e6), unit('BTU/ft³', btu / foot ** 3)],
  viscosity: [unit('µPa s', 1e-6), unit('mPa s', 1e-3, 'cP'), unit('Pa s', 1)],
  /** Per energy; the currency in front is read apart, because any three letters may stand there. */
  energyPrice: energyUnits.map((entry) => unit(`/${entry.label}`, 1 / entry.factor)),
  /** The currency is read apart. */
  money: [unit('', 1)],
} as const satisfies Readonly<Record<string, readonly Unit[]>>;

/** What is compared: no spaces, dots of multiplication, brackets; raised digits lowered; "per" as a slash. */
function compactUnit(text: string): string {
  return text
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(/\bper(?!\s*cent)\b/gi, '/')
    .replace(/\^/g, '')
    .replace(/[\s·⋅*×().]/g, '');
}

const compactNames = new Map<UnitFamily, readonly (readonly [string, Unit])[]>();

function namesOf(family: UnitFamily): readonly (readonly [string, Unit])[] {
  const known = compactNames.get(family);
  if (known !== undefined) return known;
  const names = unitFamilies[family].flatMap((entry: Unit) =>
    [entry.label, ...entry.spellings].map((name) => [compactUnit(name), entry] as const),
  );
  compactNames.set(family, names);
  return names;
}

/**
 * The unit a person meant, in one family. Exact spelling first; then any letter case, except where case tells milli from
 * mega. Undefined if there is none.
 */
export function findUnit(family: UnitFamily, text: string): Unit | undefined {
  const wanted = compactUnit(text);
  const names = namesOf(family);
  const exact = names.find(([name]) => name === wanted);
  if (exact !== undefined) return exact[1];
  const lower = wanted.toLowerCase();
  const loose = names.find(([name]) => name.toLowerCase() === lower && !differsInPrefix(name, wanted));
  return loose?.[1];
}

/** All spellings of a family, compact, for suggestions. */
export function unitSpellings(family: UnitFamily): readonly string[] {
  return unitFamilies[family]
    .flatMap((entry: Unit) => [entry.label, ...entry.spellings])
    .filter((name) => name.length > 0);
}

/** mPa is not MPa. */
function differsInPrefix(left: string, right: string): boolean {
  const first = left.charAt(0);
  return first.toLowerCase() === 'm' && first !== right.charAt(0);
}
