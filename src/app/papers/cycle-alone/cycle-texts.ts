// The textbook cycle's fields as a person filled them: texts with units, kept with the browser; each way to change them; and
// the request of plain numbers that they make.

import type { TextbookCycle, TextbookCycleRequest } from '../../../loop/index.ts';
import type { ReferenceStateName } from '../../../matter/refrigerants/index.ts';
import { type QuantityName, readQuantity, type UnitView } from '../../../quantities/index.ts';
import type { CycleOffer } from '../../worker/cycle-offer.ts';
import {
  allCycleFields,
  type ChosenField,
  type CycleField,
  type CycleKey,
  chosenGroups,
  cycleFacts,
  exchangerFields,
  referenceNames,
  typed,
} from './cycle-fields.ts';

export interface CycleTexts {
  readonly refrigerant: string;
  readonly referenceState: ReferenceStateName;
  /** Only those that are given. */
  readonly numbers: Readonly<Partial<Record<CycleKey, string>>>;
}

/** One cycle, or two laid over one another. */
export interface CyclePair {
  readonly first: CycleTexts;
  readonly second: CycleTexts | undefined;
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

export function hasExchanger({ numbers }: CycleTexts): boolean {
  return exchangerFields.some(({ key }) => numbers[key] !== undefined);
}

/** The ways to give each fact that there are for these texts. */
function waysOf(fact: readonly CycleField[], texts: CycleTexts): readonly CycleField[] {
  const without = hasExchanger(texts) ? 'withoutExchanger' : 'withExchanger';
  return fact.filter(({ only }) => only !== without);
}

/** The field given for each fact. */
export function givenFields(texts: CycleTexts): readonly CycleField[] {
  return cycleFacts.map((fact) => fact.find(({ key }) => texts.numbers[key] !== undefined) ?? fact[0]);
}

/** The other ways to give the same fact. */
export function partnersOf({ key }: CycleField, texts: CycleTexts): readonly CycleField[] {
  const fact = cycleFacts.find((fields) => fields.some((field) => field.key === key)) ?? [];
  return waysOf(fact, texts).filter((field) => field.key !== key);
}

/** The same fact by a partner, at the value it has in the cycle, so that nothing else changes. */
export function givenByPartner(
  texts: CycleTexts,
  [field, partner]: readonly [CycleField, CycleField],
  cycle: TextbookCycle,
  view: UnitView,
): CycleTexts {
  const { [field.key]: _, ...rest } = texts.numbers;
  const digits = partner.quantity === 'temperature' ? 4 : 5;
  const text = typed(partner.valueIn(cycle), partner.quantity, view, digits);
  return { ...texts, numbers: { ...rest, [partner.key]: text } };
}

/** With the temperatures offered, in place of levels however given. */
export function withLevels(texts: CycleTexts, { evaporating, condensing }: CycleOffer): CycleTexts {
  const numbers: Partial<Record<CycleKey, string>> = { ...texts.numbers };
  if (evaporating !== undefined) {
    delete numbers.evaporatingPressure;
    numbers.evaporating = evaporating;
  }
  if (condensing !== undefined) {
    delete numbers.condensingPressure;
    numbers.condensing = condensing;
  }
  return { ...texts, numbers };
}

/** 'condensing 25 °C' */
export function sayOffer({ evaporating, condensing }: CycleOffer): string {
  const levels = [evaporating && `evaporating ${evaporating}`, condensing && `condensing ${condensing}`];
  return levels.filter(Boolean).join(' and ');
}

/** Whether no number was typed or changed since the page began. */
export function isAsStarted({ numbers }: CycleTexts, view: UnitView): boolean {
  const start = startTexts(view).numbers;
  const keys = new Set([...Object.keys(start), ...Object.keys(numbers)] as CycleKey[]);
  return [...keys].every((key) => numbers[key] === start[key]);
}

/** The text with one number changed; an empty one is not given. */
export function withNumber(texts: CycleTexts, key: CycleKey, text: string): CycleTexts {
  const { [key]: _, ...rest } = texts.numbers;
  return { ...texts, numbers: text.trim() === '' ? rest : { ...rest, [key]: text } };
}

/** The field given of a group of which at most one is; undefined where none is. */
export function chosenOf(group: keyof typeof chosenGroups, { numbers }: CycleTexts): ChosenField | undefined {
  return chosenGroups[group].find(({ key }) => numbers[key] !== undefined);
}

/** Another field of a group, or none. What has a meaning only beside the one before goes with it. */
export function withChosen(
  texts: CycleTexts,
  group: keyof typeof chosenGroups,
  key: string,
  start: (field: ChosenField) => string,
): CycleTexts {
  const numbers: Partial<Record<CycleKey, string>> = { ...texts.numbers };
  for (const field of chosenGroups[group]) delete numbers[field.key];
  const field = chosenGroups[group].find((each) => each.key === key);
  if (field !== undefined) numbers[field.key] = start(field);
  if (numbers.displacement === undefined) delete numbers.volumetricEfficiency;
  return withGasWhereItIsGiven({ ...texts, numbers });
}

/** With an exchanger the gas is given where it leaves the evaporator, without one where the compressor draws it in. */
function withGasWhereItIsGiven(texts: CycleTexts): CycleTexts {
  const { suctionTemperature, evaporatorOutletTemperature, suctionQuality, ...rest } = texts.numbers;
  const temperature = suctionTemperature ?? evaporatorOutletTemperature;
  if (suctionQuality !== undefined) {
    // Wet gas into an exchanger is not computed: it begins dry.
    return hasExchanger(texts) ? { ...texts, numbers: { ...rest, superheat: '0 K' } } : texts;
  }
  if (temperature === undefined) return texts;
  const key = hasExchanger(texts) ? 'evaporatorOutletTemperature' : 'suctionTemperature';
  return { ...texts, numbers: { ...rest, [key]: temperature } };
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
  if (!read.ok) return { ok: false, message: `“${text}” was not understood. Expected ${read.problem.expected}.` };
  const { low, likely, high } = read.estimate;
  if (low < high) return { ok: false, message: 'A textbook cycle takes one value, not a range.' };
  return { ok: true, value: likely };
}

export function cycleRequest({ refrigerant, referenceState, numbers }: CycleTexts): TextbookCycleRequest | undefined {
  const request: Record<string, unknown> = { refrigerant, referenceState };
  for (const { key, quantity } of allCycleFields) {
    const text = numbers[key];
    if (text === undefined) continue;
    const read = readOne(text, quantity);
    if (!read.ok) return undefined;
    request[key] = read.value;
  }
  return request as unknown as TextbookCycleRequest;
}

export function keptText(pair: CyclePair): string {
  return JSON.stringify(pair);
}

/** What the browser kept; undefined where nothing usable was kept. A text of one cycle only, as once kept, still reads. */
export function readKept(text: string | undefined): CyclePair | undefined {
  if (text === undefined) return undefined;
  try {
    const kept = JSON.parse(text) as Partial<CyclePair> & CycleTexts;
    const first = usable(kept.first ?? kept);
    if (first === undefined) return undefined;
    return { first, second: kept.second ? usable(kept.second) : undefined };
  } catch {
    return undefined;
  }
}

function usable({ refrigerant, referenceState, numbers }: CycleTexts): CycleTexts | undefined {
  const texts: CycleTexts = { refrigerant: String(refrigerant), referenceState, numbers: { ...numbers } };
  const given = (fields: readonly { readonly key: CycleKey }[]) =>
    fields.filter(({ key }) => texts.numbers[key] !== undefined).length;
  const isWhole = cycleFacts.every((fact) => given(waysOf(fact, texts)) === 1 && given(fact) === 1);
  const isKnown = referenceNames.includes(referenceState);
  return isWhole && isKnown && cycleRequest(texts) !== undefined ? texts : undefined;
}
