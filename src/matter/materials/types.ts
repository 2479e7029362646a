// What is known of a material, and what a material is offered for. Base SI.

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

/**
 * What a material is offered for: panes and shells, lids, wrapping, thin sheets and coats on a wall, the boards of a stand,
 * what bridges a layer, pipes and hoses, the bed on the bottom, a decorative background in the water.
 */
export const materialUses = [
  'wall',
  'lid',
  'insulation',
  'lining',
  'stand',
  'joint',
  'pipe',
  'bed',
  'background',
] as const;
export type MaterialUse = (typeof materialUses)[number];

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
