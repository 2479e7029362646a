// Reads and checks data/materials.json: each value between believable ends, each with the key of a source. In the file a
// range is [low, likely, high, key] and a value [value, key]; here both become objects with the words of the source.

import { DataError } from '../../numerics/index.ts';
import {
  conductivityLimits,
  densityLimits,
  emissivityLimits,
  insulationConductivityLimits,
  type Limits,
  specificHeatLimits,
  thicknessLimits,
} from './limits.ts';
import { equivalentConductivity, SHEET_FILMS } from './sheets.ts';
import { type Material, type MaterialRange, type MaterialUse, type MaterialValue, materialUses } from './types.ts';

const FILE = 'data/materials.json';

type Entries = Readonly<Record<string, unknown>>;

/** @throws DataError naming the place and the rule that a materials file breaks. */
export function readMaterials(raw: unknown): readonly Material[] {
  const file = requireRecord(raw, '');
  const sources = requireRecord(file.sources, 'sources');
  const entries = Object.entries(requireRecord(file.materials, 'materials'));
  if (entries.length === 0) throw new DataError(FILE, 'materials', 'at least one material');
  return entries.map(([name, entry]) => readMaterial(name, entry, sources));
}

function readMaterial(name: string, raw: unknown, sources: Entries): Material {
  const path = `materials.${name}`;
  const entry = requireRecord(raw, path);
  requireKeys(entry, path, ['label', 'uses', 'conductivity', 'density', 'specificHeat', 'emissivity', 'sheets']);
  if (typeof entry.label !== 'string' || entry.label === '') throw new DataError(FILE, `${path}.label`, 'a text');
  const { density, specificHeat, sheets } = entry;
  const uses = readUses(entry.uses, `${path}.uses`);
  const conducts = uses.includes('insulation') ? insulationConductivityLimits : conductivityLimits;
  return {
    name,
    label: entry.label,
    uses,
    conductivity: readRange(entry.conductivity, `${path}.conductivity`, conducts, sources),
    emissivity: readRange(entry.emissivity, `${path}.emissivity`, emissivityLimits, sources),
    ...(density === undefined ? {} : { density: readValue(density, `${path}.density`, densityLimits, sources) }),
    ...(specificHeat === undefined
      ? {}
      : { specificHeat: readValue(specificHeat, `${path}.specificHeat`, specificHeatLimits, sources) }),
    ...(sheets === undefined ? {} : { sheets: readSheets(sheets, `${path}.sheets`, sources) }),
  };
}

function readUses(raw: unknown, path: string): readonly MaterialUse[] {
  const known: readonly unknown[] = materialUses;
  if (!Array.isArray(raw) || raw.length === 0 || !raw.every((use) => known.includes(use))) {
    throw new DataError(FILE, path, `a list of ${known.join(', ')}`);
  }
  return raw as MaterialUse[];
}

function readRange(raw: unknown, path: string, limits: Limits, sources: Entries): MaterialRange {
  const entry = requireList(raw, path, ['low', 'likely', 'high', 'key of a source']);
  const low = readNumber(entry[0], `${path}.0`, limits.min, limits.max);
  const likely = readNumber(entry[1], `${path}.1`, low, limits.max);
  const high = readNumber(entry[2], `${path}.2`, likely, limits.max);
  return { low, likely, high, source: readSource(entry[3], `${path}.3`, sources) };
}

function readValue(raw: unknown, path: string, limits: Limits, sources: Entries): MaterialValue {
  const entry = requireList(raw, path, ['value', 'key of a source']);
  return {
    value: readNumber(entry[0], `${path}.0`, limits.min, limits.max),
    source: readSource(entry[1], `${path}.1`, sources),
  };
}

function readSheets(raw: unknown, path: string, sources: Entries) {
  const entry = requireRecord(raw, path);
  requireKeys(entry, path, ['source', 'doubt', 'points']);
  if (!Array.isArray(entry.points) || entry.points.length < 2) {
    throw new DataError(FILE, `${path}.points`, 'a list of at least two points');
  }
  let thinnest = 0;
  const points = entry.points.map((point: unknown, index) => {
    const at = `${path}.points.${index}`;
    const record = requireRecord(point, at);
    requireKeys(record, at, ['thickness', 'transmittance']);
    const thickness = readNumber(record.thickness, `${at}.thickness`, thinnest + thicknessLimits.min, 0.1);
    thinnest = thickness;
    const transmittance = readNumber(record.transmittance, `${at}.transmittance`, 0.1, 0.99 / SHEET_FILMS);
    const { min, max } = conductivityLimits;
    readNumber(equivalentConductivity(transmittance, thickness), `${at} (equivalent conductivity)`, min, max);
    return { thickness, transmittance };
  });
  return {
    source: readSource(entry.source, `${path}.source`, sources),
    doubt: readNumber(entry.doubt, `${path}.doubt`, 0, 0.9),
    points,
  };
}

function readNumber(raw: unknown, path: string, min: number, max: number): number {
  if (typeof raw !== 'number' || !(raw >= min && raw <= max)) {
    throw new DataError(FILE, path, `a number from ${min} to ${max}, found ${String(raw)}`);
  }
  return raw;
}

/** The words of a source, looked up by its key. */
function readSource(raw: unknown, path: string, sources: Entries): string {
  const words = typeof raw === 'string' ? sources[raw] : undefined;
  if (typeof words !== 'string' || words === '') throw new DataError(FILE, path, 'a key of sources');
  return words;
}

function requireList(raw: unknown, path: string, parts: readonly string[]): readonly unknown[] {
  if (!Array.isArray(raw) || raw.length !== parts.length) {
    throw new DataError(FILE, path, `a list of ${parts.length}: ${parts.join(', ')}`);
  }
  return raw;
}

function requireRecord(raw: unknown, path: string): Entries {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw new DataError(FILE, path, 'an object');
  return raw as Entries;
}

function requireKeys(entry: Entries, path: string, allowed: readonly string[]): void {
  for (const key of Object.keys(entry)) {
    if (!allowed.includes(key)) throw new DataError(FILE, `${path}.${key}`, `one of ${allowed.join(', ')}`);
  }
}
