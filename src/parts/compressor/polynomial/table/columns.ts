// Columns of a pasted table by the words and units of their headers: "Te [°C]", "evap. °F", "Q (W)", "capacity BTU/h". Words and
// abbreviations are those of the trade; a unit that is missing is asked for, never assumed.

import { findUnit, nearestWord, type Unit } from '../../../../quantities/index.ts';

/** What a column of a table may hold. */
const tableQuantities = [
  'evaporating',
  'condensing',
  'capacity',
  'power',
  'massFlow',
  'current',
  'returnGas',
  'superheat',
  'liquid',
  'subcooling',
  'dischargeTemperature',
] as const;

export type TableQuantity = (typeof tableQuantities)[number];

/** Units of a column, by the family its quantity is written in. */
type ColumnFamily = 'temperature' | 'temperatureDifference' | 'power' | 'massFlow' | 'current';

interface ColumnWords {
  readonly family: ColumnFamily;
  /** As told to people; the first is the one proposed. */
  readonly words: readonly string[];
  /** Abbreviations whose letter case tells them apart ("P", "t0"), compared to the letter. */
  readonly abbreviations: readonly string[];
}

const columnWords: Readonly<Record<TableQuantity, ColumnWords>> = {
  evaporating: {
    family: 'temperature',
    words: [
      'evaporating temperature',
      'evaporating',
      'evaporation temperature',
      'evaporation',
      'evaporator',
      'evap',
      'saturated suction temperature',
      'saturated suction',
      'suction dew',
      'sst',
    ],
    abbreviations: [
      'Te',
      'te',
      'TE',
      'T_e',
      't_e',
      'To',
      'to',
      't0',
      'T0',
      't_0',
      'T_0',
      't_o',
      'T_o',
      'T_evap',
      't_evap',
      'Tevap',
      'tevap',
    ],
  },
  condensing: {
    family: 'temperature',
    words: [
      'condensing temperature',
      'condensing',
      'condensation temperature',
      'condensation',
      'condenser',
      'cond',
      'saturated discharge temperature',
      'saturated discharge',
      'discharge dew',
      'sdt',
      'saturated condensing temperature',
      'saturated condensing',
      'sct',
    ],
    abbreviations: ['Tc', 'tc', 'TC', 'T_c', 't_c', 'T_cond', 't_cond', 'Tcond', 'tcond'],
  },
  capacity: {
    family: 'power',
    words: ['refrigerating capacity', 'refrigeration capacity', 'cooling capacity', 'capacity', 'cap'],
    abbreviations: ['Q', 'Qe', 'Q_e', 'Qo', 'Q_o', 'Q0', 'Q_0'],
  },
  power: {
    family: 'power',
    words: ['power consumption', 'power input', 'electric power', 'input power', 'power', 'input', 'watts'],
    abbreviations: ['P', 'Pe', 'P_e', 'Pel', 'P_el', 'W'],
  },
  massFlow: {
    family: 'massFlow',
    words: ['mass flow rate', 'mass flow', 'massflow', 'refrigerant flow', 'flow rate', 'flow'],
    abbreviations: ['m', 'ṁ', 'm_dot', 'mdot', 'MF'],
  },
  current: { family: 'current', words: ['current', 'amperes', 'amps'], abbreviations: ['I'] },
  returnGas: {
    family: 'temperature',
    words: ['return gas temperature', 'return gas', 'suction gas temperature', 'suction gas', 'rgt'],
    abbreviations: ['Tsuc', 'tsuc', 'T_suc', 't_suc', 'T1', 't1', 'T_1', 't_1'],
  },
  superheat: { family: 'temperatureDifference', words: ['superheat', 'sh'], abbreviations: ['SH'] },
  liquid: {
    family: 'temperature',
    words: ['liquid temperature', 'liquid line', 'liquid'],
    abbreviations: ['Tliq', 'tliq', 'T_liq', 't_liq', 'Tl', 'tl', 'T_l', 't_l'],
  },
  subcooling: { family: 'temperatureDifference', words: ['subcooling', 'sub-cooling', 'sc'], abbreviations: ['SC'] },
  dischargeTemperature: {
    family: 'temperature',
    words: ['discharge temperature', 'discharge gas temperature', 'discharge gas', 'discharge line', 'discharge'],
    abbreviations: ['Td', 'td', 'T_d', 't_d', 'Tdis', 'T_dis', 't_dis', 'T2', 't2', 'T_2', 't_2'],
  },
};

/** Columns that tables often have and that hold nothing a machine is identified by. */
const passedOver = ['cop', 'eer', 'no', 'nr', '#', 'point', 'row', 'remark', 'remarks', 'comment', 'note', 'notes'];

/** Units told to people, by family. */
const unitWords: Readonly<Record<ColumnFamily, string>> = {
  temperature: '°C, °F or K',
  temperatureDifference: 'K or °F',
  power: 'W, kW or BTU/h',
  massFlow: 'kg/h, g/s, kg/s or lb/h',
  current: 'A or mA',
};

const ampere: Unit = { label: 'A', spellings: ['amp', 'amps', 'ampere', 'amperes'], factor: 1, shift: 0, gauge: false };
const milliampere: Unit = { label: 'mA', spellings: [], factor: 1e-3, shift: 0, gauge: false };

/** A header as understood. */
export type HeaderReading =
  | { readonly kind: 'column'; readonly quantity: TableQuantity; readonly unitText: string }
  | { readonly kind: 'passedOver' }
  | { readonly kind: 'unknown'; readonly nearest: string | undefined };

/** No header is longer; what is, is not looked through for names. */
const longestHeader = 80;

/** The column that a header names, with what it says of its unit. */
export function readHeader(text: string): HeaderReading {
  const plain = text.replace(/\s+/g, ' ').trim();
  if (plain.length > longestHeader) return { kind: 'unknown', nearest: undefined };
  const found = leadingName(plain);
  if (found !== undefined) {
    return { kind: 'column', quantity: found.quantity, unitText: bareUnit(plain.slice(found.length)) };
  }
  if (passedOver.includes(plainWord(plain))) return { kind: 'passedOver' };
  return { kind: 'unknown', nearest: nearestWord(plainWord(plain), everyWord) };
}

/** The unit of a column. Undefined for a text that is none of its units. */
export function columnUnit(quantity: TableQuantity, unitText: string): Unit | undefined {
  const { family } = columnWords[quantity];
  if (family !== 'current') return findUnit(family, unitText.replace(/\.$/, ''));
  const wanted = unitText.replace(/\.$/, '');
  if (wanted === milliampere.label) return milliampere;
  return [ampere.label, ...ampere.spellings].some((word) => word.toLowerCase() === wanted.toLowerCase())
    ? ampere
    : undefined;
}

/** "evaporating °C, °F or K". */
export function acceptedUnits(quantity: TableQuantity): string {
  return unitWords[columnWords[quantity].family];
}

/** What headers are accepted, as a sentence part. */
export const acceptedHeaders =
  'a first line that names the columns with their units, such as "Te [°C]; Tc [°C]; Q [W]; P [W]": evaporating (Te), condensing (Tc), capacity (Q), power (P), mass flow (m), current (I), return gas, superheat, liquid, subcooling, discharge temperature; levels as temperatures, since pressures (gauge or absolute) are not read';

/** A unit without brackets and what separates it from its name. */
export function bareUnit(text: string): string {
  const bare = text
    .replace(/^[\s.,:;/_-]+/, '')
    .replace(/^in\s+/i, '')
    .trim();
  const bracketed = /^[[({](.*)[\])}]$/.exec(bare);
  return (bracketed?.[1] ?? bare).trim();
}

const names: readonly { readonly quantity: TableQuantity; readonly name: string; readonly isWord: boolean }[] = (
  Object.entries(columnWords) as [TableQuantity, ColumnWords][]
)
  .flatMap(([quantity, { words, abbreviations }]) => [
    ...words.map((name) => ({ quantity, name, isWord: true })),
    ...abbreviations.map((name) => ({ quantity, name, isWord: false })),
  ])
  .sort((a, b) => b.name.length - a.name.length);

const everyWord = names.filter(({ isWord }) => isWord).map(({ name }) => name);

/** What may stand between name and unit: "evap. temp. (dew)". */
const qualifier = /^[\s.]*(?:temp(?:erature)?\b\.?)?\s*(?:\(?dew(?: point)?\b\)?)?/i;

/** The longest name a text begins with, followed by no further letter or digit. */
export function leadingName(text: string): { readonly quantity: TableQuantity; readonly length: number } | undefined {
  const lower = text.toLowerCase();
  for (const { quantity, name, isWord } of names) {
    if (!(isWord ? lower : text).startsWith(name)) continue;
    const rest = text.slice(name.length);
    if (/^[\p{L}\p{N}_]/u.test(rest)) continue;
    return { quantity, length: name.length + (qualifier.exec(rest)?.[0].length ?? 0) };
  }
  return undefined;
}

function plainWord(text: string): string {
  return text
    .toLowerCase()
    .replace(/[[({].*$/, '')
    .replace(/[.:]+$/, '')
    .trim();
}
