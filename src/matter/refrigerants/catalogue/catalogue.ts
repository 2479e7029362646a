// What is known about a refrigerant apart from its thermodynamics: safety class, limits in air, climate and ozone figures,
// boiling and critical point, oils, use, law. Each field names its source; a source that was not read itself may warn, never
// clear. The file holds a fact as [value, key of its source, note or nothing], so that a page can carry all fluids.

import data from '../../../../data/refrigerants/catalogue.json';
import { DataError } from '../../../numerics/index.ts';
import { refrigerantName } from '../names.ts';

export type SafetyClass = 'A1' | 'A2' | 'A2L' | 'A3' | 'B1' | 'B2' | 'B2L' | 'B3';
export type Oil = 'mineral' | 'alkylbenzene' | 'polyolester' | 'polyvinylether' | 'polyalkyleneglycol';

/** A metal of which parts of a circuit are made; copper stands for its alloys too. */
export type AttackedMetal = 'copper' | 'zinc';

/** Where a field was read. */
export interface FieldSource {
  readonly source: string;
  /** Read in the source or an open transcription of it; false: from memory or common practice, may warn but never clear. */
  readonly confirmed: boolean;
  readonly note?: string;
}

export interface CatalogueEntry {
  readonly name: string;
  /** Of the molecule: 'CH2FCF3'; null for a blend. */
  readonly formula: string | null;
  /** Family of the molecule: 'hydrocarbon'. */
  readonly kind: string;
  /** Shares by mass of a blend's components, by name; they sum to 1. Null for a single substance. */
  readonly composition: Readonly<Record<string, number>> | null;
  readonly safetyClass: SafetyClass;
  /** LFL [kg/m³], the lowest of the sources; null where the fluid does not burn in air at room conditions. */
  readonly lowerFlammabilityLimit: number | null;
  /** PL [kg/m³] of EN 378; null where unknown. */
  readonly practicalLimit: number | null;
  /** ATEL/ODL [kg/m³] of EN 378, for breathing; null where unknown. */
  readonly toxicityLimit: number | null;
  /** GWP over 100 years, kg of CO₂ per kg, and the report it stands in. */
  readonly globalWarmingPotential: { readonly value: number | null; readonly report: string };
  /** The same in a later report. */
  readonly laterGlobalWarmingPotential: { readonly value: number | null; readonly report: string };
  /** ODP, R11 = 1. */
  readonly ozoneDepletionPotential: number | null;
  /** Bubble temperature at 101325 Pa [K]; null for a fluid that has no liquid there. */
  readonly normalBoilingPoint: number | null;
  /** Dew less bubble temperature at 101325 Pa [K], 0 for a single substance; null for a fluid that has no liquid there. */
  readonly glide: number | null;
  /** Temperature [K] and pressure [Pa]. */
  readonly criticalPoint: { readonly temperature: number; readonly pressure: number };
  /** None for a fluid whose machines run without oil. */
  readonly usualOils: readonly Oil[];
  /** Metals of a circuit that it attacks; empty where nothing of the kind is known. */
  readonly metalsAttacked: readonly AttackedMetal[];
  /** Machines it was or is used in, for people. */
  readonly usedIn: string;
  /** Sentences for people; they end with advice to check locally. */
  readonly legalStatus: string;
  /** Origin of each of the fields above. */
  readonly sources: Readonly<Record<CatalogueField, FieldSource>>;
}

const fields = [
  'safetyClass',
  'lowerFlammabilityLimit',
  'practicalLimit',
  'toxicityLimit',
  'globalWarmingPotential',
  'laterGlobalWarmingPotential',
  'ozoneDepletionPotential',
  'normalBoilingPoint',
  'glide',
  'criticalPoint',
  'usualOils',
  'metalsAttacked',
  'usedIn',
  'legalStatus',
] as const;
export type CatalogueField = (typeof fields)[number];

const plainFields: readonly string[] = ['formula', 'kind', 'composition'];
const file = 'data/refrigerants/catalogue.json';
const classes: readonly string[] = ['A1', 'A2', 'A2L', 'A3', 'B1', 'B2', 'B2L', 'B3'];
const oils: readonly string[] = ['mineral', 'alkylbenzene', 'polyolester', 'polyvinylether', 'polyalkyleneglycol'];
const metals: readonly string[] = ['copper', 'zinc'];

interface Rule {
  readonly check: (value: unknown) => boolean;
  readonly rule: string;
}

const positiveRule: Rule = { check: positiveOrNull, rule: 'a number above 0, or null' };
const nonNegativeRule: Rule = { check: nonNegativeOrNull, rule: 'a number, 0 or above, or null' };
const textRule: Rule = { check: isText, rule: 'a text that is not empty' };

const rules: Readonly<Record<CatalogueField, Rule>> = {
  safetyClass: { check: (value) => classes.includes(value as string), rule: `one of ${classes.join(', ')}` },
  lowerFlammabilityLimit: positiveRule,
  practicalLimit: positiveRule,
  toxicityLimit: positiveRule,
  globalWarmingPotential: nonNegativeRule,
  laterGlobalWarmingPotential: nonNegativeRule,
  ozoneDepletionPotential: nonNegativeRule,
  normalBoilingPoint: positiveRule,
  glide: nonNegativeRule,
  criticalPoint: { check: isCriticalPoint, rule: 'temperature and pressure, both numbers above 0, and nothing else' },
  usualOils: listRule(oils),
  metalsAttacked: listRule(metals),
  usedIn: textRule,
  legalStatus: { check: isText, rule: 'a key of legalTexts' },
};

/**
 * The catalogue's entry of a refrigerant.
 * @param name  as for refrigerantName()
 * @throws InputError on an unknown name; DataError if the entry is broken
 */
export function catalogueEntry(name: string): CatalogueEntry {
  return checkedEntry(data, refrigerantName(name));
}

/** The entry out of a catalogue of any content, checked field by field. @throws DataError naming the path and the rule */
export function checkedEntry(catalogue: unknown, name: string): CatalogueEntry {
  const root = asRecord(catalogue, 'catalogue');
  const path = `fluids.${name}`;
  const entry = asRecord(asRecord(root.fluids, 'fluids')[name], path);
  for (const key of Object.keys(entry)) {
    if (!plainFields.includes(key) && !(fields as readonly string[]).includes(key)) {
      throw new DataError(file, `${path}.${key}`, 'is not a known field');
    }
  }
  if (!isText(entry.kind)) throw new DataError(file, `${path}.kind`, `must be ${textRule.rule}`);
  const composition = checkedComposition(entry.composition, `${path}.composition`);
  if (composition === null ? !isText(entry.formula) : entry.formula !== null) {
    throw new DataError(file, `${path}.formula`, 'must be a text for a single substance, and null for a blend');
  }
  const values: Partial<Record<CatalogueField, unknown>> = {};
  const sources: Partial<Record<CatalogueField, FieldSource>> = {};
  for (const field of fields) {
    const fact = checkedFact(entry[field], rules[field], root.sources, `${path}.${field}`);
    values[field] = fact.value;
    sources[field] = fact.source;
  }
  const legalText = asRecord(root.legalTexts, 'legalTexts')[String(values.legalStatus)];
  if (!isText(legalText)) throw new DataError(file, `${path}.legalStatus[0]`, `must be ${rules.legalStatus.rule}`);
  const isFlammable = ['2', '3'].includes(String(values.safetyClass).charAt(1));
  if (isFlammable !== (values.lowerFlammabilityLimit !== null)) {
    const rule = 'must be a number for classes 2L, 2 and 3, and null for class 1';
    throw new DataError(file, `${path}.lowerFlammabilityLimit[0]`, rule);
  }
  const origin = sources as Record<CatalogueField, FieldSource>;
  const potential = (field: 'globalWarmingPotential' | 'laterGlobalWarmingPotential') => ({
    value: values[field] as number | null,
    report: origin[field].source,
  });
  return {
    name,
    formula: entry.formula as string | null,
    kind: entry.kind,
    composition,
    safetyClass: values.safetyClass as SafetyClass,
    lowerFlammabilityLimit: values.lowerFlammabilityLimit as number | null,
    practicalLimit: values.practicalLimit as number | null,
    toxicityLimit: values.toxicityLimit as number | null,
    globalWarmingPotential: potential('globalWarmingPotential'),
    laterGlobalWarmingPotential: potential('laterGlobalWarmingPotential'),
    ozoneDepletionPotential: values.ozoneDepletionPotential as number | null,
    normalBoilingPoint: values.normalBoilingPoint as number | null,
    glide: values.glide as number | null,
    criticalPoint: values.criticalPoint as CatalogueEntry['criticalPoint'],
    usualOils: values.usualOils as readonly Oil[],
    metalsAttacked: values.metalsAttacked as readonly AttackedMetal[],
    usedIn: values.usedIn as string,
    legalStatus: legalText,
    sources: origin,
  };
}

interface Fact {
  readonly value: unknown;
  readonly source: FieldSource;
}

/** One fact, with its source written out. @throws DataError naming the part that is broken: 0 value, 1 source, 2 note */
function checkedFact(fact: unknown, { check, rule }: Rule, knownSources: unknown, path: string): Fact {
  if (!Array.isArray(fact) || fact.length < 2 || fact.length > 3) {
    throw new DataError(file, path, 'must be a list of a value, the key of its source and perhaps a note');
  }
  const [value, key, note] = fact as readonly unknown[];
  if (!check(value)) throw new DataError(file, `${path}[0]`, `must be ${rule}`);
  const sources = asRecord(knownSources, 'sources');
  if (!isText(key) || !Object.hasOwn(sources, key)) {
    throw new DataError(file, `${path}[1]`, 'must be a key of sources');
  }
  const { text, confirmed } = asRecord(sources[key], `sources.${key}`);
  if (!isText(text)) throw new DataError(file, `sources.${key}.text`, `must be ${textRule.rule}`);
  if (typeof confirmed !== 'boolean') throw new DataError(file, `sources.${key}.confirmed`, 'must be true or false');
  if (fact.length === 2) return { value, source: { source: text, confirmed } };
  if (!isText(note)) throw new DataError(file, `${path}[2]`, `must be ${textRule.rule}`);
  return { value, source: { source: text, confirmed, note } };
}

function checkedComposition(value: unknown, path: string): CatalogueEntry['composition'] {
  if (value === undefined) return null;
  const shares = asRecord(value, path);
  let sum = 0;
  for (const [name, share] of Object.entries(shares)) {
    if (typeof share !== 'number' || !(share > 0)) throw new DataError(file, `${path}.${name}`, 'must be above 0');
    sum += share;
  }
  if (!(Math.abs(sum - 1) < 1e-9)) throw new DataError(file, path, 'must sum to 1');
  return shares as Readonly<Record<string, number>>;
}

function asRecord(value: unknown, path: string): Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new DataError(file, path, 'must be an object');
  }
  return value as Record<string, unknown>;
}

function listRule(known: readonly string[]): Rule {
  return {
    check: (value) => Array.isArray(value) && value.every((each) => known.includes(each)),
    rule: `a list out of ${known.join(', ')}`,
  };
}

function isText(value: unknown): value is string {
  return typeof value === 'string' && value.trim() !== '';
}

function positiveOrNull(value: unknown): boolean {
  return value === null || (typeof value === 'number' && Number.isFinite(value) && value > 0);
}

function nonNegativeOrNull(value: unknown): boolean {
  return value === null || (typeof value === 'number' && Number.isFinite(value) && value >= 0);
}

function isCriticalPoint(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || Object.keys(value).length !== 2) return false;
  const { temperature, pressure } = value as Record<string, unknown>;
  return [temperature, pressure].every((number) => number !== null && positiveOrNull(number));
}
