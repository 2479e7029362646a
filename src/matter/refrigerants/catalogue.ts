// What is known about a refrigerant apart from its thermodynamics: safety class, limits in air, climate and ozone figures,
// oils, law. Each field says where it was read and whether it was confirmed: a field that was not may warn, never clear.

import data from '../../../data/refrigerants/catalogue.json';
import { DataError } from '../../numerics/index.ts';
import { refrigerantName } from './names.ts';

export type SafetyClass = 'A1' | 'A2' | 'A2L' | 'A3' | 'B1' | 'B2' | 'B2L' | 'B3';
export type Oil = 'mineral' | 'alkylbenzene' | 'polyolester' | 'polyvinylether' | 'polyalkyleneglycol';

/** Where a field was read. */
export interface FieldSource {
  readonly source: string;
  /** Read in the source or an open transcription of it; false: from memory or common practice, may warn but never clear. */
  readonly confirmed: boolean;
  readonly note?: string;
}

export interface CatalogueEntry {
  readonly name: string;
  readonly formula: string;
  /** Family of the molecule: 'hydrocarbon'. */
  readonly kind: string;
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
  readonly usualOils: readonly Oil[];
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
  'usualOils',
  'legalStatus',
] as const;
export type CatalogueField = (typeof fields)[number];

const file = 'data/refrigerants/catalogue.json';
const classes: readonly string[] = ['A1', 'A2', 'A2L', 'A3', 'B1', 'B2', 'B2L', 'B3'];
const oils: readonly string[] = ['mineral', 'alkylbenzene', 'polyolester', 'polyvinylether', 'polyalkyleneglycol'];

const rules: Readonly<Record<CatalogueField, { check: (value: unknown) => boolean; rule: string }>> = {
  safetyClass: { check: (value) => classes.includes(value as string), rule: `one of ${classes.join(', ')}` },
  lowerFlammabilityLimit: { check: positiveOrNull, rule: 'a number above 0, or null' },
  practicalLimit: { check: positiveOrNull, rule: 'a number above 0, or null' },
  toxicityLimit: { check: positiveOrNull, rule: 'a number above 0, or null' },
  globalWarmingPotential: { check: nonNegativeOrNull, rule: 'a number, 0 or above, or null' },
  laterGlobalWarmingPotential: { check: nonNegativeOrNull, rule: 'a number, 0 or above, or null' },
  ozoneDepletionPotential: { check: nonNegativeOrNull, rule: 'a number, 0 or above, or null' },
  usualOils: {
    check: (value) => Array.isArray(value) && value.length > 0 && value.every((oil) => oils.includes(oil)),
    rule: `a list out of ${oils.join(', ')}`,
  },
  legalStatus: { check: isText, rule: 'a text that is not empty' },
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
  const sources = asRecord(root.sources, 'sources');
  const path = `fluids.${name}`;
  const entry = asRecord(asRecord(root.fluids, 'fluids')[name], path);
  for (const key of Object.keys(entry)) {
    if (key !== 'formula' && key !== 'kind' && !(fields as readonly string[]).includes(key)) {
      throw new DataError(file, `${path}.${key}`, 'is not a known field');
    }
  }
  for (const key of ['formula', 'kind'] as const) {
    if (!isText(entry[key])) throw new DataError(file, `${path}.${key}`, 'must be a text that is not empty');
  }
  const origins: Partial<Record<CatalogueField, FieldSource>> = {};
  const values: Partial<Record<CatalogueField, unknown>> = {};
  for (const field of fields) {
    const record = asRecord(entry[field], `${path}.${field}`);
    const { check, rule } = rules[field];
    if (!check(record.value)) throw new DataError(file, `${path}.${field}.value`, `must be ${rule}`);
    if (typeof record.confirmed !== 'boolean') {
      throw new DataError(file, `${path}.${field}.confirmed`, 'must be true or false');
    }
    const source = sources[String(record.source)];
    if (!isText(source)) throw new DataError(file, `${path}.${field}.source`, 'must be a key of sources');
    if (record.note !== undefined && !isText(record.note)) {
      throw new DataError(file, `${path}.${field}.note`, 'must be a text that is not empty');
    }
    values[field] = record.value;
    const note = record.note as string | undefined;
    origins[field] = { source, confirmed: record.confirmed, ...(note === undefined ? {} : { note }) };
  }
  const origin = origins as Record<CatalogueField, FieldSource>;
  const isFlammable = ['2', '3'].includes(String(values.safetyClass).charAt(1));
  if (isFlammable !== (values.lowerFlammabilityLimit !== null)) {
    const rule = 'must be a number for classes 2L, 2 and 3, and null for class 1';
    throw new DataError(file, `${path}.lowerFlammabilityLimit.value`, rule);
  }
  return {
    name,
    formula: entry.formula as string,
    kind: entry.kind as string,
    safetyClass: values.safetyClass as SafetyClass,
    lowerFlammabilityLimit: values.lowerFlammabilityLimit as number | null,
    practicalLimit: values.practicalLimit as number | null,
    toxicityLimit: values.toxicityLimit as number | null,
    globalWarmingPotential: {
      value: values.globalWarmingPotential as number | null,
      report: origin.globalWarmingPotential.source,
    },
    laterGlobalWarmingPotential: {
      value: values.laterGlobalWarmingPotential as number | null,
      report: origin.laterGlobalWarmingPotential.source,
    },
    ozoneDepletionPotential: values.ozoneDepletionPotential as number | null,
    usualOils: values.usualOils as readonly Oil[],
    legalStatus: values.legalStatus as string,
    sources: origin,
  };
}

function asRecord(value: unknown, path: string): Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new DataError(file, path, 'must be an object');
  }
  return value as Record<string, unknown>;
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
