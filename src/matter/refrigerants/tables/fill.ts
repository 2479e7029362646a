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

export function fill(
  equation: HelmholtzEquation,
  patch: Patch,
  form: VolumeForm,
  columnAt: (theta: number) => Column,
): void {
  const { from, to, columns, rows } = patch.shape;
  const isobar = new Isobar(equation);
  const width = (to - from) / columns;
  for (let i = 0; i <= columns; i++) {
    const column = columnAt(i === columns ? to : from + i * width);
    const { pressure, pressureSlope, startEnthalpy, endEnthalpy, startEnthalpySlope, endEnthalpySlope } = column;
    const span = endEnthalpy - startEnthalpy;
    isobar.start(pressure, startEnthalpy, column.startTemperature, column.startDensity);
    for (let j = 0; j <= rows; j++) {
      const share = patch.share(j / rows);
      const enthalpy = startEnthalpy + share * span;
      if (j > 0) isobar.go(enthalpy);
      const alongY = (patch.shareSlope(j / rows) * span) / rows;
      const alongX = width * (startEnthalpySlope + share * (endEnthalpySlope - startEnthalpySlope));
      writeNode(patch, i * (rows + 1) + j, isobar, form, column, width * pressureSlope, alongX, alongY, width);
    }
  }
  fillCrossDerivatives(patch);
}

/** Per cell: x carries the pressure by `pressureStep` and the enthalpy by `alongX`, y the enthalpy by `alongY`. */
function writeNode(
  patch: Patch,
  index: number,
  isobar: Isobar,
  form: VolumeForm,
  { pressure, base, baseSlope }: Column,
  pressureStep: number,
  alongX: number,
  alongY: number,
  width: number,
): void {
  const { temperature, density, entropy } = isobar;
  const { temperatureByPressure, temperatureByEnthalpy, densityByPressure, densityByEnthalpy } = isobar;
  const isDensity = form === 'density';
  const volume = isDensity ? density : pressure / density;
  const byDensity = isDensity ? 1 : -volume / density;
  const volumeByPressure = byDensity * densityByPressure + (isDensity ? 0 : 1 / density);
  const write = (which: 0 | 1 | 2, value: number, byPressure: number, byEnthalpy: number) => {
    const at = index * PER_NODE + 4 * which;
    patch.nodes[at] = value - base[which];
    patch.nodes[at + 1] = byPressure * pressureStep + byEnthalpy * alongX - baseSlope[which] * width;
    patch.nodes[at + 2] = byEnthalpy * alongY;
  };
  write(0, temperature, temperatureByPressure, temperatureByEnthalpy);
  write(1, volume, volumeByPressure, byDensity * densityByEnthalpy);
  // ds = dh/T − dp/(ρ T).
  write(2, entropy, -1 / (density * temperature), 1 / temperature);
  patch.side[3 * index] = 1 / isobar.cp;
  patch.side[3 * index + 1] = isobar.cv;
  patch.side[3 * index + 2] = isobar.soundSpeed;
}

/** The slopes in y are exact; how they change along x is taken from five neighbours, to fourth order. */
function fillCrossDerivatives(patch: Patch): void {
  const { columns, rows } = patch.shape;
  const { nodes } = patch;
  const stride = (rows + 1) * PER_NODE;
  for (let i = 0; i <= columns; i++) {
    const first = Math.min(Math.max(i - 2, 0), columns - 4);
    const weights = differences[i - first]!;
    for (let j = 0; j <= rows; j++) {
      for (let which = 0; which < 3; which++) {
        const slope = first * stride + j * PER_NODE + 4 * which + 2;
        let sum = 0;
        for (let k = 0; k < 5; k++) sum += weights[k]! * nodes[slope + k * stride]!;
        nodes[i * stride + j * PER_NODE + 4 * which + 3] = sum;
      }
    }
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
