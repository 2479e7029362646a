// What tanks and lids are made of and wrapped in: conductivity with its doubt, density, specific heat, emissivity, from
// data/materials.json, checked once when loaded. A twin-wall sheet is no solid: its conductivity is an equivalent one,
// found from the transmittance of the sheet thickness. Left out: moisture, ageing and temperature beyond the given ends.

import data from '../../../data/materials.json';
import { DataError, InputError, requirePositive } from '../../numerics/index.ts';

/** A value with its doubt, in base SI; the words of its origin are in `source`. */
export interface MaterialRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly source: string;
}

export interface MaterialValue {
  readonly value: number;
  readonly source: string;
}

export type MaterialUse = 'wall' | 'lid' | 'insulation';

export interface Material {
  /** Name in the data file and in designs: 'extrudedPolystyrene'. */
  readonly name: string;
  /** What people read: "Extruded polystyrene (XPS), aged". */
  readonly label: string;
  readonly uses: readonly MaterialUse[];
  /** k, W/(m K). */
  readonly conductivity: MaterialRange;
  /** ρ, kg/m³; absent where not known. */
  readonly density?: MaterialValue;
  /** c_p, J/(kg K); absent where not known. */
  readonly specificHeat?: MaterialValue;
  /** ε, long wave. */
  readonly emissivity: MaterialRange;
  /** Twin-wall sheet: transmittance W/(m² K) with both conventional surface resistances, by thickness m. */
  readonly sheets?: { readonly source: string; readonly doubt: number; readonly points: readonly SheetPoint[] };
}

export interface SheetPoint {
  readonly thickness: number;
  readonly transmittance: number;
}

const FILE = 'data/materials.json';
/** Surface resistances contained in a sheet's transmittance, m² K/W: ISO 6946 conventional, horizontal flow, in and out. */
const SHEET_FILMS = 0.13 + 0.04;
/** Conductivities outside this are misprints, W/(m K). */
const CONDUCTIVITY_MIN = 0.01;
const CONDUCTIVITY_MAX = 450;

/** @throws DataError naming the place and the rule that a materials file breaks. */
export function readMaterials(raw: unknown): readonly Material[] {
  const file = requireRecord(raw, '');
  const sources = requireRecord(file.sources, 'sources');
  const entries = Object.entries(requireRecord(file.materials, 'materials'));
  if (entries.length === 0) throw new DataError(FILE, 'materials', 'at least one material');
  return entries.map(([name, entry]) => readMaterial(name, entry, sources));
}

const materials = readMaterials(data);
const byName = new Map(materials.map((entry) => [entry.name, entry]));

/** All names, in the file's order. */
export const materialNames: readonly string[] = materials.map((entry) => entry.name);
/** Names of what a tank is built of. */
export const wallMaterialNames: readonly string[] = namesFor('wall');
/** Names of what a lid is made of. */
export const lidMaterialNames: readonly string[] = namesFor('lid');
/** Names of what a tank is wrapped in. */
export const insulationNames: readonly string[] = namesFor('insulation');

/**
 * The material of this name.
 * @throws InputError (code unknownMaterial) naming the accepted names.
 */
export function material(name: string): Material {
  const found = byName.get(name);
  if (found === undefined) {
    throw new InputError('material', name, `one of ${materialNames.join(', ')}`, 'unknownMaterial');
  }
  return found;
}

/**
 * Conductivity k of a layer of this material: for a solid the tabulated one; for a twin-wall sheet the equivalent one
 *     k = d / (1/U − 0.17),  U interpolated linearly over the thickness
 * @param name       name of the material
 * @param thickness  d [m]
 * @returns          k [W/(m K)], low, likely, high
 * @throws InputError for an unknown name, a thickness not above 0, or a sheet thickness outside the tabulated ones.
 * Source: the material's own. Worked value: polycarbonateTwinWall, 10 mm → 0.0655 W/(m K).
 */
export function layerConductivity(name: string, thickness: number): MaterialRange {
  const { sheets, conductivity } = material(name);
  requirePositive('thickness', thickness);
  if (sheets === undefined) return conductivity;
  const likely = sheetConductivity(interpolatedTransmittance(name, sheets.points, thickness), thickness);
  return {
    low: likely * (1 - sheets.doubt),
    likely,
    high: likely * (1 + sheets.doubt),
    source: sheets.source,
  };
}

function sheetConductivity(transmittance: number, thickness: number): number {
  return thickness / (1 / transmittance - SHEET_FILMS);
}

function interpolatedTransmittance(name: string, points: readonly SheetPoint[], thickness: number): number {
  for (let i = 1; i < points.length; i++) {
    const left = points[i - 1]!;
    const right = points[i]!;
    if (thickness >= left.thickness && thickness <= right.thickness) {
      const share = (thickness - left.thickness) / (right.thickness - left.thickness);
      return left.transmittance + share * (right.transmittance - left.transmittance);
    }
  }
  const first = points[0]!.thickness;
  const last = points[points.length - 1]!.thickness;
  throw new InputError('thickness', thickness, `${first} to ${last} m for ${name}`, 'sheetThickness');
}

function namesFor(use: MaterialUse): string[] {
  return materials.filter((entry) => entry.uses.includes(use)).map((entry) => entry.name);
}

function readMaterial(name: string, raw: unknown, sources: Record<string, unknown>): Material {
  const path = `materials.${name}`;
  const entry = requireRecord(raw, path);
  requireKeys(entry, path, ['label', 'uses', 'conductivity', 'density', 'specificHeat', 'emissivity', 'sheets']);
  if (typeof entry.label !== 'string' || entry.label === '') throw new DataError(FILE, `${path}.label`, 'a text');
  return {
    name,
    label: entry.label,
    uses: readUses(entry.uses, `${path}.uses`),
    conductivity: readRange(entry.conductivity, `${path}.conductivity`, CONDUCTIVITY_MIN, CONDUCTIVITY_MAX, sources),
    emissivity: readRange(entry.emissivity, `${path}.emissivity`, 0.01, 1, sources),
    ...(entry.density === undefined ? {} : { density: readValue(entry.density, `${path}.density`, 5, 25000, sources) }),
    ...(entry.specificHeat === undefined
      ? {}
      : { specificHeat: readValue(entry.specificHeat, `${path}.specificHeat`, 100, 5000, sources) }),
    ...(entry.sheets === undefined ? {} : { sheets: readSheets(entry.sheets, `${path}.sheets`, sources) }),
  };
}

function readUses(raw: unknown, path: string): readonly MaterialUse[] {
  const known: readonly string[] = ['wall', 'lid', 'insulation'];
  if (!Array.isArray(raw) || raw.length === 0 || !raw.every((use) => known.includes(use))) {
    throw new DataError(FILE, path, `a list of ${known.join(', ')}`);
  }
  return raw as MaterialUse[];
}

function readRange(raw: unknown, path: string, min: number, max: number, sources: Record<string, unknown>) {
  const entry = requireRecord(raw, path);
  requireKeys(entry, path, ['low', 'likely', 'high', 'source']);
  const low = readNumber(entry.low, `${path}.low`, min, max);
  const likely = readNumber(entry.likely, `${path}.likely`, low, max);
  const high = readNumber(entry.high, `${path}.high`, likely, max);
  return { low, likely, high, source: readSource(entry.source, `${path}.source`, sources) };
}

function readValue(raw: unknown, path: string, min: number, max: number, sources: Record<string, unknown>) {
  const entry = requireRecord(raw, path);
  requireKeys(entry, path, ['value', 'source']);
  return {
    value: readNumber(entry.value, `${path}.value`, min, max),
    source: readSource(entry.source, `${path}.source`, sources),
  };
}

function readSheets(raw: unknown, path: string, sources: Record<string, unknown>) {
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
    const thickness = readNumber(record.thickness, `${at}.thickness`, thinnest + 1e-6, 0.1);
    thinnest = thickness;
    const transmittance = readNumber(record.transmittance, `${at}.transmittance`, 0.1, 0.99 / SHEET_FILMS);
    const conductivity = sheetConductivity(transmittance, thickness);
    readNumber(conductivity, `${at} (equivalent conductivity)`, CONDUCTIVITY_MIN, CONDUCTIVITY_MAX);
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
function readSource(raw: unknown, path: string, sources: Record<string, unknown>): string {
  const words = typeof raw === 'string' ? sources[raw] : undefined;
  if (typeof words !== 'string' || words === '') throw new DataError(FILE, path, 'a key of sources');
  return words;
}

function requireRecord(raw: unknown, path: string): Record<string, unknown> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) throw new DataError(FILE, path, 'an object');
  return raw as Record<string, unknown>;
}

function requireKeys(entry: Record<string, unknown>, path: string, allowed: readonly string[]): void {
  for (const key of Object.keys(entry)) {
    if (!allowed.includes(key)) throw new DataError(FILE, `${path}.${key}`, `one of ${allowed.join(', ')}`);
  }
}
