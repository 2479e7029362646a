// Fills the nodes of the patches: along each column, which is an isobar, from the end whose state is known; then the cross
// derivatives along each row.

import type { HelmholtzEquation } from '../equation/equation.ts';
import { Isobar } from './isobar.ts';
import { type Patch, PER_NODE } from './patch.ts';

/** One column of a patch: an isobar, with its border where the walk starts (y = 0) and where it ends (y = 1). */
export interface Column {
  readonly pressure: number;
  /** dp/dθ. */
  readonly pressureSlope: number;
  readonly startTemperature: number;
  readonly startDensity: number;
  readonly startEnthalpy: number;
  readonly endEnthalpy: number;
  /** d/dθ of both. */
  readonly startEnthalpySlope: number;
  readonly endEnthalpySlope: number;
  /** What the patch counts T, its form of the density and s from, and d/dθ of these. */
  readonly base: readonly [number, number, number];
  readonly baseSlope: readonly [number, number, number];
}

/** The form of the density that a patch holds: ρ of a liquid, p/ρ of a gas, which has a limit where the pressure vanishes. */
export type VolumeForm = 'density' | 'pressureByDensity';

/** Everything a table takes from the equation is taken here; columns and nodes are functions of their own, which run fast soon. */
export function fill(
  equation: HelmholtzEquation,
  patch: Patch,
  form: VolumeForm,
  columnAt: (theta: number) => Column,
): void {
  const { from, to, columns } = patch.shape;
  const isobar = new Isobar(equation);
  const width = (to - from) / columns;
  for (let i = 0; i <= columns; i++) {
    fillColumn(patch, i, isobar, form, columnAt(i === columns ? to : from + i * width), width);
  }
  for (let i = 0; i <= columns; i++) fillCrossDerivatives(patch, i);
}

function fillColumn(patch: Patch, i: number, isobar: Isobar, form: VolumeForm, column: Column, width: number): void {
  const { rows } = patch.shape;
  const { pressure, startEnthalpy, startEnthalpySlope } = column;
  const span = column.endEnthalpy - startEnthalpy;
  const spanSlope = column.endEnthalpySlope - startEnthalpySlope;
  isobar.start(pressure, startEnthalpy, column.startTemperature, column.startDensity);
  for (let j = 0; j <= rows; j++) {
    const share = patch.share(j / rows);
    if (j > 0) isobar.go(startEnthalpy + share * span);
    const alongY = (patch.shareSlope(j / rows) * span) / rows;
    const alongX = width * (startEnthalpySlope + share * spanSlope);
    writeNode(patch, i * (rows + 1) + j, isobar, form, column, width, alongX, alongY);
  }
}

/** Per cell: x carries the pressure along its slope over `width` and the enthalpy by `alongX`, y the enthalpy by `alongY`. */
function writeNode(
  patch: Patch,
  index: number,
  isobar: Isobar,
  form: VolumeForm,
  column: Column,
  width: number,
  alongX: number,
  alongY: number,
): void {
  const { nodes, side } = patch;
  const { temperature, density, temperatureByPressure, temperatureByEnthalpy } = isobar;
  const { pressure, base, baseSlope } = column;
  const isDensity = form === 'density';
  const volume = isDensity ? density : pressure / density;
  const byDensity = isDensity ? 1 : -volume / density;
  const volumeByPressure = byDensity * isobar.densityByPressure + (isDensity ? 0 : 1 / density);
  const volumeByEnthalpy = byDensity * isobar.densityByEnthalpy;
  const pressureStep = width * column.pressureSlope;
  const at = index * PER_NODE;
  nodes[at] = temperature - base[0];
  nodes[at + 1] = temperatureByPressure * pressureStep + temperatureByEnthalpy * alongX - baseSlope[0] * width;
  nodes[at + 2] = temperatureByEnthalpy * alongY;
  nodes[at + 4] = volume - base[1];
  nodes[at + 5] = volumeByPressure * pressureStep + volumeByEnthalpy * alongX - baseSlope[1] * width;
  nodes[at + 6] = volumeByEnthalpy * alongY;
  // ds = dh/T − dp/(ρ T).
  nodes[at + 8] = isobar.entropy - base[2];
  nodes[at + 9] = (alongX - pressureStep / density) / temperature - baseSlope[2] * width;
  nodes[at + 10] = alongY / temperature;
  side[3 * index] = 1 / isobar.cp;
  side[3 * index + 1] = isobar.cv;
  side[3 * index + 2] = isobar.soundSpeed;
}

/** The slopes in y are exact; how they change along x is taken from five neighbours, to fourth order. */
function fillCrossDerivatives(patch: Patch, i: number): void {
  const { columns, rows } = patch.shape;
  const { nodes } = patch;
  const stride = (rows + 1) * PER_NODE;
  const first = Math.min(Math.max(i - 2, 0), columns - 4);
  const [a, b, c, d, e] = differences[i - first]! as [number, number, number, number, number];
  // A cross derivative stands behind its slope in y; three of each a node.
  for (let slope = 2; slope < stride; slope += 4) {
    const at = first * stride + slope;
    nodes[i * stride + slope + 1] =
      a * nodes[at]! +
      b * nodes[at + stride]! +
      c * nodes[at + 2 * stride]! +
      d * nodes[at + 3 * stride]! +
      e * nodes[at + 4 * stride]!;
  }
}

/** Derivative at the first, second … of five equally spaced points, per spacing: that of the quartic through them. */
const differences = [
  [-25, 48, -36, 16, -3],
  [-3, -10, 18, -6, 1],
  [1, -8, 0, 8, -1],
  [-1, 6, -18, 10, 3],
  [3, -16, 36, -48, 25],
].map((row) => row.map((weight) => weight / 12));
