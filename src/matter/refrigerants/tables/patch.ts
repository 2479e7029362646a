// Temperature, density and entropy over a rectangle of two coordinates by bicubic Hermite interpolation: each node carries
// the value, both slopes and the cross derivative of all three, so that values and slopes pass from cell to cell without a
// jump. Beside them c_p, c_v and w by quintic interpolation through the thirty-six nearest nodes.
// The second coordinate y runs from one border of the patch (0) to the other (1), finer towards one of them.

/** Numbers a node holds for T, the volume form and s: value, slope in x, slope in y, cross derivative, per cell width. */
const PER_VALUE = 4;
const VALUES = 3;
export const PER_NODE = PER_VALUE * VALUES;
/** And for 1/c_p, c_v, w. */
const SIDE_VALUES = 3;

/** Which of the three values. */
export const TEMPERATURE = 0;
export const VOLUME = 1;
export const ENTROPY = 2;

export interface PatchShape {
  /** Ends of x. */
  readonly from: number;
  readonly to: number;
  /** Cells in x and in y. */
  readonly columns: number;
  readonly rows: number;
  /** Width of the last cell in y by that of the first, as shares of enthalpy; not 1. */
  readonly growth: number;
}

/** Six nodes in a row that a quintic goes through, and its weights: reused, so that a look-up makes no garbage. */
const SIDE_NODES = 6;
const sideX = new Float64Array(SIDE_NODES);
const sideY = new Float64Array(SIDE_NODES);
/** One over the product of the distances of node k from the five others. */
const quinticScale = [-1 / 120, 1 / 24, -1 / 12, 1 / 12, -1 / 24, 1 / 120];

export class Patch {
  readonly shape: PatchShape;
  readonly nodes: Float64Array;
  readonly side: Float64Array;
  /** The last found values, in the order of TEMPERATURE, VOLUME, ENTROPY; after `findSide` 1/c_p, c_v, w. */
  readonly found = new Float64Array(VALUES);
  readonly foundSide = new Float64Array(SIDE_VALUES);
  private readonly from: number;
  private readonly perUnit: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly growthSquareLessOne: number;
  private readonly growthLessOne: number;

  constructor(shape: PatchShape) {
    const { from, to, columns, rows, growth } = shape;
    const count = (columns + 1) * (rows + 1);
    this.shape = shape;
    this.nodes = new Float64Array(count * PER_NODE);
    this.side = new Float64Array(count * SIDE_VALUES);
    this.from = from;
    this.perUnit = columns / (to - from);
    this.columns = columns;
    this.rows = rows;
    this.growthLessOne = growth - 1;
    this.growthSquareLessOne = growth * growth - 1;
  }

  get bytes(): number {
    return this.nodes.byteLength + this.side.byteLength;
  }

  /** y from a share u of the enthalpy between the borders; both from 0 to 1. */
  place(share: number): number {
    return (Math.sqrt(1 + this.growthSquareLessOne * share) - 1) / this.growthLessOne;
  }

  /** Share of the enthalpy at y. */
  share(y: number): number {
    const width = 1 + this.growthLessOne * y;
    return (width * width - 1) / this.growthSquareLessOne;
  }

  /** Derivative of the share with respect to y. */
  shareSlope(y: number): number {
    return (2 * this.growthLessOne * (1 + this.growthLessOne * y)) / this.growthSquareLessOne;
  }

  /** Interpolates the three values at x and y into `found`. */
  find(x: number, y: number): void {
    const { nodes, found, columns, rows } = this;
    const placeX = (x - this.from) * this.perUnit;
    let i = Math.floor(placeX);
    if (i < 0) i = 0;
    else if (i >= columns) i = columns - 1;
    const placeY = y * rows;
    let j = Math.floor(placeY);
    if (j < 0) j = 0;
    else if (j >= rows) j = rows - 1;
    const a = placeX - i;
    const b = placeY - j;
    // Hermite's four cubics: value at the start, slope there, value at the end, slope there.
    const a1 = 1 - a;
    const xStart = a1 * a1 * (1 + 2 * a);
    const xStartSlope = a * a1 * a1;
    const xEnd = 1 - xStart;
    const xEndSlope = -a * a * a1;
    const b1 = 1 - b;
    const yStart = b1 * b1 * (1 + 2 * b);
    const yStartSlope = b * b1 * b1;
    const yEnd = 1 - yStart;
    const yEndSlope = -b * b * b1;
    const n = (i * (rows + 1) + j) * PER_NODE;
    const m = n + (rows + 1) * PER_NODE;
    for (let k = 0; k < PER_NODE; k += PER_VALUE) {
      const p = n + k;
      const q = m + k;
      const start = xStart * nodes[p]! + xStartSlope * nodes[p + 1]! + xEnd * nodes[q]! + xEndSlope * nodes[q + 1]!;
      const startSlope =
        xStart * nodes[p + 2]! + xStartSlope * nodes[p + 3]! + xEnd * nodes[q + 2]! + xEndSlope * nodes[q + 3]!;
      const end =
        xStart * nodes[p + 12]! + xStartSlope * nodes[p + 13]! + xEnd * nodes[q + 12]! + xEndSlope * nodes[q + 13]!;
      const endSlope =
        xStart * nodes[p + 14]! + xStartSlope * nodes[p + 15]! + xEnd * nodes[q + 14]! + xEndSlope * nodes[q + 15]!;
      found[k >> 2] = yStart * start + yStartSlope * startSlope + yEnd * end + yEndSlope * endSlope;
    }
  }

  /**
   * The y at which one of the values, which must rise or fall throughout, is that asked for; undefined where it lies beyond
   * both borders.
   */
  inverse(which: number, x: number, value: number): number | undefined {
    const { nodes, columns, rows } = this;
    const placeX = (x - this.from) * this.perUnit;
    const i = Math.min(Math.max(Math.floor(placeX), 0), columns - 1);
    const a = placeX - i;
    const a1 = 1 - a;
    const xStart = a1 * a1 * (1 + 2 * a);
    const xStartSlope = a * a1 * a1;
    const xEndSlope = -a * a * a1;
    const first = i * (rows + 1) * PER_NODE + which * PER_VALUE;
    const next = (rows + 1) * PER_NODE;
    /** Value (0) or slope in y (2) at a node line. */
    const atLine = (line: number, what: 0 | 2): number => {
      const p = first + line * PER_NODE + what;
      const q = p + next;
      return xStart * nodes[p]! + xStartSlope * nodes[p + 1]! + (1 - xStart) * nodes[q]! + xEndSlope * nodes[q + 1]!;
    };
    let low = 0;
    let high = rows;
    const lowest = atLine(0, 0);
    const rises = atLine(rows, 0) > lowest;
    if (rises ? value < lowest || value > atLine(rows, 0) : value > lowest || value < atLine(rows, 0)) return undefined;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (atLine(middle, 0) <= value === rises) low = middle;
      else high = middle;
    }
    return (low + hermiteInverse(atLine(low, 0), atLine(low, 2), atLine(high, 0), atLine(high, 2), value)) / rows;
  }

  /** Interpolates 1/c_p, c_v and w at x and y into `foundSide`. */
  findSide(x: number, y: number): void {
    const { side, foundSide, columns, rows } = this;
    const i = quinticWeights((x - this.from) * this.perUnit, columns, sideX);
    const j = quinticWeights(y * rows, rows, sideY);
    for (let k = 0; k < SIDE_VALUES; k++) {
      let sum = 0;
      for (let m = 0; m < SIDE_NODES; m++) {
        const first = ((i + m) * (rows + 1) + j) * SIDE_VALUES + k;
        let along = 0;
        for (let n = 0; n < SIDE_NODES; n++) along += sideY[n]! * side[first + n * SIDE_VALUES]!;
        sum += sideX[m]! * along;
      }
      foundSide[k] = sum;
    }
  }
}

/** Where in a cell, from 0 to 1, a monotonous cubic with these ends and slopes has a value: Newton's method, kept inside. */
function hermiteInverse(start: number, startSlope: number, end: number, endSlope: number, value: number): number {
  const rise = end - start;
  const square = 3 * rise - 2 * startSlope - endSlope;
  const cube = startSlope + endSlope - 2 * rise;
  let low = 0;
  let high = 1;
  let place = (value - start) / rise;
  for (let step = 0; step < 60; step++) {
    const gap = start - value + place * (startSlope + place * (square + place * cube));
    if (gap > 0 === rise > 0) high = place;
    else low = place;
    let next = place - gap / (startSlope + place * (2 * square + 3 * place * cube));
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    if (Math.abs(next - place) < 1e-14) return next;
    place = next;
  }
  return place;
}

/** Lagrange's weights of the six nodes around a place among `cells` cells; returns the first of those nodes. */
function quinticWeights(place: number, cells: number, weights: Float64Array): number {
  const first = Math.min(Math.max(Math.floor(place) - 2, 0), cells - 5);
  const x = place - first;
  for (let k = 0; k < SIDE_NODES; k++) {
    let weight = quinticScale[k]!;
    for (let m = 0; m < SIDE_NODES; m++) if (m !== k) weight *= x - m;
    weights[k] = weight;
  }
  return first;
}
