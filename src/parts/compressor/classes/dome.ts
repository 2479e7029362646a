// What the size of a dome tells: its outside, the heat it sheds to still air, and roughly what it sweeps.

import type { Band, Formula } from '../../../quantities/index.ts';
import { machineData } from './machine-data.ts';
import { productOf } from './ranges.ts';

/**
 * Outside of a dome [m²], half-way between a capsule with round ends and a closed cylinder.
 *     A = π D (H + D/4)
 * @param height    H, over all without feet [m]
 * @param diameter  D, outside [m]; of an oval dome the mean
 * Source: geometry; a capsule has π D H, a closed cylinder π D (H + D/2). Worked value: 0.17, 0.15 → 0.09778 m².
 */
export function domeArea(height: number, diameter: number): number {
  return Math.PI * diameter * (height + diameter / 4);
}

/**
 * Room a dome takes up [m³], as a cylinder.
 *     V = π D² H / 4
 * Source: geometry. Worked value: 0.17, 0.15 → 3.004e-3 m³.
 */
export function domeRoom(height: number, diameter: number): number {
  return (Math.PI * diameter ** 2 * height) / 4;
}

/**
 * Heat the shell sheds for each kelvin above the air around it [W/K].
 *     UA = h A
 * @param height    of the dome without its feet [m]
 * @param diameter  its diameter [m]
 * @param film      h, heat transfer on the outside of the dome by convection and radiation [W/(m² K)]
 */
export function shellConductanceOf(height: Band, diameter: Band, film: Band): Band {
  return productOf([ofBoth(domeArea, height, diameter), film]);
}

/** Swept volume that domes of this size usually hold [m³]; wide. */
export function displacementOf(height: Band, diameter: Band, kind: 'reciprocating' | 'rotary'): Band {
  return productOf([ofBoth(domeRoom, height, diameter), machineData.dome[kind]]);
}

/** Sizes so many times beyond the known ones are none of such machines; own judgement. */
const beyondKnown = 1.3;

/** Heights and diameters of the domes known here [m], and those that are accepted about them. */
export function domeSizes(): Readonly<
  Record<'height' | 'diameter', { readonly known: Span; readonly accepted: Span }>
> {
  const mechanisms = [...machineData.mechanisms.values()];
  const classes = [...machineData.domes.values()];
  return {
    height: spanAbout([...mechanisms.map(({ domeHeight }) => domeHeight), ...classes.map(({ height }) => height)]),
    diameter: spanAbout([
      ...mechanisms.map(({ domeDiameter }) => domeDiameter),
      ...classes.map(({ diameter }) => diameter),
    ]),
  };
}

interface Span {
  readonly low: number;
  readonly high: number;
}

function spanAbout(sizes: readonly Band[]): { readonly known: Span; readonly accepted: Span } {
  const low = Math.min(...sizes.map((size) => size.low));
  const high = Math.max(...sizes.map((size) => size.high));
  return { known: { low, high }, accepted: { low: low / beyondKnown, high: high * beyondKnown } };
}

/** Range of a function that grows with both, by moving one at a time. */
function ofBoth(compute: (height: number, diameter: number) => number, height: Band, diameter: Band): Band {
  const likely = compute(height.likely, diameter.likely);
  const down = Math.hypot(
    Math.log(likely / compute(height.low, diameter.likely)),
    Math.log(likely / compute(height.likely, diameter.low)),
  );
  const up = Math.hypot(
    Math.log(compute(height.high, diameter.likely) / likely),
    Math.log(compute(height.likely, diameter.high) / likely),
  );
  return { low: likely * Math.exp(-down), likely, high: likely * Math.exp(up) };
}

const file = 'src/parts/compressor/classes/dome.ts';
const size = {
  H: { meaning: 'height of the dome without its feet', unit: 'm', quantity: 'length' },
  D: { meaning: 'its diameter', unit: 'm', quantity: 'length' },
} as const;

/** Formula records of this file. */
export const domeFormulas: readonly Formula[] = [
  {
    id: 'compressor.domeArea',
    title: 'Outside of a dome',
    result: { symbol: 'A', meaning: 'outside of the dome', unit: 'm²', quantity: 'area' },
    expression: 'pi * D * (H + D / 4)',
    symbols: size,
    source: 'geometry, half-way between a capsule and a closed cylinder',
    validity: 'domes about as tall as wide, or taller',
    file,
    compute: (v) => domeArea(v.H!, v.D!),
    examples: [
      { H: 0.17, D: 0.15 },
      { H: 0.26, D: 0.12 },
    ],
  },
  {
    id: 'compressor.domeRoom',
    title: 'Room a dome takes up',
    result: { symbol: 'V', meaning: 'room of the dome', unit: 'm³', quantity: 'volume' },
    expression: 'pi * D^2 * H / 4',
    symbols: size,
    source: 'geometry of a cylinder',
    validity: 'any dome',
    file,
    compute: (v) => domeRoom(v.H!, v.D!),
    examples: [
      { H: 0.17, D: 0.15 },
      { H: 0.26, D: 0.12 },
    ],
  },
];
