// Temperature and density over a region of isobars, as numbers at the crossings of a grid and cubics between: a row for each
// of a few pressures, on it columns from one end of the isobar to the other, counted by enthalpy or by entropy. Where an
// isobar ends at the dome or at a limit of the equation, so does its row; no cubic goes across.

/** What a point of an isobar is, and what of enthalpy or entropy it holds. */
export interface IsobarPoint {
  readonly temperature: number;
  readonly density: number;
}

/** One row: the values at its two ends, temperatures and what is kept of the densities, at the columns. */
export interface SheetRow {
  readonly first: number;
  readonly last: number;
  readonly temperature: Float64Array;
  readonly logDensity: Float64Array;
}

export class Sheet {
  /** Where the last call of `at` led: T [K], and the logarithm the rows were given. */
  temperature = Number.NaN;
  logDensity = Number.NaN;

  private readonly rows: number;
  private readonly columns: number;
  private readonly low: number;
  private readonly perRow: number;
  private readonly isRoot: boolean;
  private readonly firsts: Float64Array;
  private readonly lasts: Float64Array;
  private readonly temperatures: Float64Array;
  private readonly logDensities: Float64Array;
  private readonly rowWeights = new Float64Array(4);
  private readonly columnWeights = new Float64Array(4);

  /**
   * @param rows     how many
   * @param columns  how many
   * @param low      place of the first row, in a coordinate of pressure
   * @param high     place of the last row
   * @param isRoot   whether columns stand evenly in the root of the share of the way, closer at the first end
   * @param rowAt    the row at a place, its columns at the given shares of the way from first to last value
   */
  constructor(
    rows: number,
    columns: number,
    low: number,
    high: number,
    isRoot: boolean,
    rowAt: (place: number, shares: Float64Array) => SheetRow,
  ) {
    this.rows = rows;
    this.columns = columns;
    this.low = low;
    this.perRow = (rows - 1) / (high - low);
    this.isRoot = isRoot;
    this.firsts = new Float64Array(rows);
    this.lasts = new Float64Array(rows);
    this.temperatures = new Float64Array(rows * columns);
    this.logDensities = new Float64Array(rows * columns);
    const shares = Float64Array.from({ length: columns }, (_, k) => (k / (columns - 1)) ** (isRoot ? 2 : 1));
    for (let row = 0; row < rows; row++) {
      const { first, last, temperature, logDensity } = rowAt(low + row / this.perRow, shares);
      this.firsts[row] = first;
      this.lasts[row] = last;
      this.temperatures.set(temperature, row * columns);
      this.logDensities.set(logDensity, row * columns);
    }
  }

  /**
   * Interpolates at a place and a value.
   * @param first  the value at the first end there, if it is known better than between the rows
   */
  at(place: number, value: number, first: number | undefined): void {
    const { columns, rowWeights, columnWeights, temperatures, logDensities } = this;
    const row = weigh((place - this.low) * this.perRow, this.rows, rowWeights);
    const from = first ?? weighted(this.firsts, row, rowWeights);
    const to = weighted(this.lasts, row, rowWeights);
    const share = Math.min(Math.max((value - from) / (to - from), 0), 1);
    const column = weigh((this.isRoot ? Math.sqrt(share) : share) * (columns - 1), columns, columnWeights);
    let temperature = 0;
    let logDensity = 0;
    for (let i = 0; i < 4; i++) {
      let k = (row + i) * columns + column;
      let rowTemperature = 0;
      let rowDensity = 0;
      for (let j = 0; j < 4; j++, k++) {
        rowTemperature += columnWeights[j]! * temperatures[k]!;
        rowDensity += columnWeights[j]! * logDensities[k]!;
      }
      temperature += rowWeights[i]! * rowTemperature;
      logDensity += rowWeights[i]! * rowDensity;
    }
    this.temperature = temperature;
    this.logDensity = logDensity;
  }
}

/** Weights of the cubic through the four entries nearest to a place; returns the first of them. */
function weigh(place: number, entries: number, weights: Float64Array): number {
  const first = Math.min(Math.max(Math.floor(place) - 1, 0), entries - 4);
  const a = place - first;
  const b = a - 1;
  const c = a - 2;
  const d = a - 3;
  weights[0] = (-b * c * d) / 6;
  weights[1] = (a * c * d) / 2;
  weights[2] = (-a * b * d) / 2;
  weights[3] = (a * b * c) / 6;
  return first;
}

function weighted(row: Float64Array, first: number, weights: Float64Array): number {
  return (
    weights[0]! * row[first]! +
    weights[1]! * row[first + 1]! +
    weights[2]! * row[first + 2]! +
    weights[3]! * row[first + 3]!
  );
}
