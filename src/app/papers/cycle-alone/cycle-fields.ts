// What the textbook cycle is asked with: five facts, each given by one of two partners, and a few more that are rarely
// changed. Texts as people write them, kept with the browser; a request of plain numbers out of them.

import type { TextbookCycle, TextbookCycleRequest } from '../../../loop/index.ts';
import type { ReferenceStateName } from '../../../matter/refrigerants/index.ts';
import { type QuantityName, readQuantity, sayQuantity, type UnitView } from '../../../quantities/index.ts';

export type CycleKey = Exclude<keyof TextbookCycleRequest, 'refrigerant' | 'referenceState'>;

export interface CycleField {
  readonly key: CycleKey;
  readonly label: string;
  readonly help: string;
  readonly quantity: QuantityName;
  /** What the fact is called in "give the pressure instead". */
  readonly called: string;
  /** Its value in a cycle that was computed. */
  readonly valueIn: (cycle: TextbookCycle) => number;
}

/** Each fact by the partner it starts with and the one that may replace it. */
export const cyclePairs: readonly (readonly [CycleField, CycleField])[] = [
  [
    {
      key: 'evaporating',
      label: 'Evaporating temperature',
      help: 'Temperature of the vapour as the last liquid boils away (dew point).',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.evaporating.temperature,
    },
    {
      key: 'evaporatingPressure',
      label: 'Evaporating pressure',
      help: 'Absolute, such as 2.9 bar abs or 42 psia. Gauge pressures are counted from one standard atmosphere.',
      quantity: 'pressure',
      called: 'pressure',
      valueIn: (cycle) => cycle.evaporating.pressure,
    },
  ],
  [
    {
      key: 'condensing',
      label: 'Condensing temperature',
      help: 'Temperature of the vapour as the first liquid forms (dew point).',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.condensing.temperature,
    },
    {
      key: 'condensingPressure',
      label: 'Condensing pressure',
      help: 'Absolute, such as 10 bar abs or 147 psia. Gauge pressures are counted from one standard atmosphere.',
      quantity: 'pressure',
      called: 'pressure',
      valueIn: (cycle) => cycle.condensing.pressure,
    },
  ],
  [
    {
      key: 'superheat',
      label: 'Superheat',
      help: 'How much warmer the gas enters the compressor than the evaporating temperature; 0 is dry saturated vapour. All of it is gained in the evaporator.',
      quantity: 'temperatureDifference',
      called: 'superheat',
      valueIn: (cycle) => cycle.superheat,
    },
    {
      key: 'suctionTemperature',
      label: 'Suction temperature',
      help: 'Of the gas into the compressor; not below evaporating.',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.points[0].temperature,
    },
  ],
  [
    {
      key: 'subcooling',
      label: 'Subcooling',
      help: 'How much colder the liquid leaves the condenser than it boils at that pressure; 0 is saturated liquid.',
      quantity: 'temperatureDifference',
      called: 'subcooling',
      valueIn: (cycle) => cycle.subcooling,
    },
    {
      key: 'liquidTemperature',
      label: 'Liquid temperature',
      help: 'Of the liquid out of the condenser; not above condensing.',
      quantity: 'temperature',
      called: 'temperature',
      valueIn: (cycle) => cycle.points[3].temperature,
    },
  ],
  [
    {
      key: 'isentropicEfficiency',
      label: 'Isentropic efficiency',
      help: 'Work of a loss-free compressor over the work done on the gas: (h2s − h1)/(h2 − h1).',
      quantity: 'fraction',
      called: 'efficiency',
      valueIn: (cycle) => cycle.isentropicEfficiency,
    },
    {
      key: 'dischargeTemperature',
      label: 'Discharge temperature',
      help: 'Of the gas out of the compressor; the efficiency follows from it.',
      quantity: 'temperature',
      called: 'discharge temperature',
      valueIn: (cycle) => cycle.points[2].temperature,
    },
  ],
];

/** May stay empty. */
export const moreCycleFields: readonly (Pick<CycleField, 'key' | 'label' | 'help' | 'quantity'> & {
  readonly assumed: (view: UnitView) => string;
})[] = [
  {
    key: 'deadState',
    label: 'Dead state',
    help: 'Temperature at which heat can do no work; for the account of losses.',
    quantity: 'temperature',
    assumed: (view) => `assumed: ${sayQuantity(298.15, 'temperature', view)}`,
  },
  {
    key: 'sinkTemperature',
    label: 'What is heated',
    help: 'Temperature of the body the condenser gives its heat to.',
    quantity: 'temperature',
    assumed: () => 'assumed: as the dead state',
  },
  {
    key: 'sourceTemperature',
    label: 'What is cooled',
    help: 'Temperature of the body the evaporator takes its heat from.',
    quantity: 'temperature',
    assumed: () => 'assumed: as the dead state',
  },
];

export interface CycleTexts {
  readonly refrigerant: string;
  readonly referenceState: ReferenceStateName;
  /** Only the partners that are given. */
  readonly numbers: Readonly<Partial<Record<CycleKey, string>>>;
}

/** Round in the units of the view. */
export function startTexts(view: UnitView): CycleTexts {
  const us = view === 'us';
  return {
    refrigerant: 'R134a',
    referenceState: 'iir',
    numbers: {
      evaporating: us ? '30 °F' : '0 °C',
      condensing: us ? '105 °F' : '40 °C',
      superheat: us ? '9 °F' : '5 K',
      subcooling: us ? '5 °F' : '3 K',
      isentropicEfficiency: '70 %',
    },
  };
}

/** The partner given for each fact. */
export function givenFields({ numbers }: CycleTexts): readonly CycleField[] {
  return cyclePairs.map(([first, second]) => (numbers[second.key] === undefined ? first : second));
}

export function partnerOf({ key }: CycleField): CycleField {
  const pair = cyclePairs.find((both) => both.some((field) => field.key === key))!;
  return pair[0].key === key ? pair[1] : pair[0];
}

/** The same fact by its partner, at the value it has in the cycle, so that nothing else changes. */
export function givenByPartner(texts: CycleTexts, field: CycleField, cycle: TextbookCycle, view: UnitView): CycleTexts {
  const partner = partnerOf(field);
  const { [field.key]: _, ...rest } = texts.numbers;
  const digits = partner.quantity === 'temperature' ? 4 : 5;
  const text = sayQuantity(partner.valueIn(cycle), partner.quantity, view, digits);
  return { ...texts, numbers: { ...rest, [partner.key]: text.replaceAll(/[\u00a0\u202f]/g, ' ') } };
}

/** The text with one number changed; an empty one is not given. */
export function withNumber(texts: CycleTexts, key: CycleKey, text: string): CycleTexts {
  const { [key]: _, ...rest } = texts.numbers;
  return { ...texts, numbers: text.trim() === '' ? rest : { ...rest, [key]: text } };
}

/** What gauge pressures are counted from: a textbook cycle stands at no place [Pa]. */
const standardAtmosphere = 101_325;

/** One value in base SI, or what is wrong with the text. */
export function readOne(
  text: string,
  quantity: QuantityName,
): { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string } {
  if (text.trim() === '') return { ok: false, message: 'A textbook cycle needs a value here.' };
  const read = readQuantity(text, quantity, { atmosphericPressure: standardAtmosphere });
  if (!read.ok) return { ok: false, message: `“${text}” was not understood; write ${read.problem.expected}.` };
  const { low, likely, high } = read.estimate;
  if (low < high) return { ok: false, message: 'A textbook cycle takes one value, not a range.' };
  return { ok: true, value: likely };
}

export function cycleRequest({ refrigerant, referenceState, numbers }: CycleTexts): TextbookCycleRequest | undefined {
  const request: Record<string, unknown> = { refrigerant, referenceState };
  const quantities = [...cyclePairs.flat(), ...moreCycleFields];
  for (const { key, quantity } of quantities) {
    const text = numbers[key];
    if (text === undefined) continue;
    const read = readOne(text, quantity);
    if (!read.ok) return undefined;
    request[key] = read.value;
  }
  return request as unknown as TextbookCycleRequest;
}

export function keptText(texts: CycleTexts): string {
  return JSON.stringify(texts);
}

/** Texts kept by the browser; undefined where nothing usable was kept. */
export function readKept(text: string | undefined): CycleTexts | undefined {
  if (text === undefined) return undefined;
  try {
    const { refrigerant, referenceState, numbers } = JSON.parse(text) as CycleTexts;
    const texts: CycleTexts = { refrigerant: String(refrigerant), referenceState, numbers: { ...numbers } };
    const isWhole = cyclePairs.every(
      ([first, second]) => (texts.numbers[first.key] === undefined) !== (texts.numbers[second.key] === undefined),
    );
    const isKnown = ['iir', 'ashrae', 'normalBoilingPoint'].includes(referenceState);
    return isWhole && isKnown && cycleRequest(texts) !== undefined ? texts : undefined;
  } catch {
    return undefined;
  }
}
