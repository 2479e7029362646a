// The picture of one or two textbook cycles as an SVG document.

import { chartSvg, cyclesChart, isobarsFor, isothermsFor, makeDiagram, type Plane } from '../../charts/index.ts';
import { InputError } from '../../numerics/index.ts';
import { nearestWord, type UnitView } from '../../quantities/index.ts';
import type { AskedCycle } from './options.ts';

/** Names of the diagrams without hyphens, in small letters. */
const planes: Readonly<Record<string, Plane>> = {
  pressureenthalpy: 'pressureEnthalpy',
  ph: 'pressureEnthalpy',
  temperatureentropy: 'temperatureEntropy',
  ts: 'temperatureEntropy',
};

/** Printed 180 mm wide, its letters are 3 mm high. */
const size = { width: 900, height: 620 } as const;

/** Which diagram was asked for; pressure and enthalpy where none was. */
export function planeGiven(text = 'pressure-enthalpy'): Plane {
  const name = text.toLowerCase().replaceAll('-', '');
  const plane = Object.hasOwn(planes, name) ? planes[name] : undefined;
  if (plane !== undefined) return plane;
  const nearest = nearestWord(text, ['pressure-enthalpy', 'temperature-entropy', 'p-h', 'T-s']);
  const hint = nearest === undefined ? '' : `; did you mean ${nearest}?`;
  throw new InputError('--diagram', `"${text}"`, `pressure-enthalpy or temperature-entropy${hint}`, 'unknownChoice');
}

/** The text of the SVG document; two cycles overlay one another. */
export function cyclePicture(first: AskedCycle, second: AskedCycle | undefined, plane: Plane, view: UnitView): string {
  const diagram = ({ request, cycle }: AskedCycle) =>
    makeDiagram({
      refrigerant: cycle.refrigerant,
      points: cycle.points,
      levels: [],
      limits: [],
      isotherms: isothermsFor(view),
      isobars: isobarsFor(view),
      referenceState: request.referenceState ?? 'iir',
    });
  const cycles = second === undefined ? ([diagram(first)] as const) : ([diagram(first), diagram(second)] as const);
  return `${chartSvg(cyclesChart(cycles, plane, view), size)}\n`;
}
