// What a chart says, as plain data in the units of the view: axes, lines, bars, hatched margins, words on the picture,
// and the table that says the same. Pure functions make it from results; one adapter draws it. Nothing here knows how.

/** The inks of the workbench. The same meaning in every picture. */
export type InkRole =
  | 'intoWater'
  | 'fromSource'
  | 'electricity'
  | 'leaving'
  | 'neutral'
  | 'faint'
  | 'ink'
  | 'doubt'
  | 'stop';

export type Dash = 'solid' | 'dash' | 'dot' | 'dashdot' | 'longdash';

export interface ChartAxis {
  /** Quantity in words: "specific enthalpy". */
  readonly label: string;
  /** Unit of the view: "kJ/kg"; empty for names. */
  readonly unit: string;
  readonly logarithmic?: boolean;
  readonly range?: readonly [number, number];
  /** For an axis of names, in order. */
  readonly names?: readonly string[];
}

export interface ChartSeries {
  readonly label: string;
  /** A range is the outline of what lies between two lines: along one of them and back along the other. */
  readonly kind: 'line' | 'bar' | 'area' | 'range' | 'points';
  readonly ink: InkRole;
  readonly x: readonly (number | string)[];
  readonly y: readonly number[];
  readonly dash?: Dash;
  readonly width?: number;
  /** Shown on hovering, one per point; without it the point's values are shown. */
  readonly hover?: readonly string[];
  /** Words that stand on the line itself, as near to that end of it as there is room; or beside its end, beyond it. */
  readonly written?: { readonly text: string; readonly from: 'start' | 'end' | 'beyond' };
  readonly inLegend?: boolean;
  /** Background families answer no pointer. */
  readonly silent?: boolean;
  readonly stacked?: boolean;
}

/** A hatched margin: the part of the picture that lies beyond a limit. */
export interface LimitBand {
  readonly label: string;
  readonly axis: 'x' | 'y';
  readonly from: number;
  readonly to: number;
}

/** A named level across the picture, such as the temperature of the water. */
export interface LevelLine {
  readonly label: string;
  readonly y: number;
  readonly ink: InkRole;
}

export interface ChartNote {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly ink: InkRole;
  readonly place: 'above' | 'below' | 'left' | 'right' | 'aboveLeft' | 'aboveRight';
}

export interface ChartTable {
  readonly caption: string;
  readonly columns: readonly { readonly label: string; readonly unit?: string; readonly numeric?: boolean }[];
  readonly rows: readonly (readonly string[])[];
  /** Names of the results that the cells show, row by row, by which their working is found. */
  readonly results?: readonly (readonly (string | undefined)[])[];
}

export interface ChartSpecification {
  readonly title: string;
  /** Says in words what the picture shows, for those who do not see it. */
  readonly description: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly series: readonly ChartSeries[];
  readonly limits: readonly LimitBand[];
  readonly levels: readonly LevelLine[];
  readonly notes: readonly ChartNote[];
  readonly table: ChartTable;
  /** Height over width on a wide screen. */
  readonly proportion?: number;
}
