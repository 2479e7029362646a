// What stands on and beside the picture in words: captions, names and numbers of panels, sizes, and the room they need.

import { sentenceStart, type UnitView } from '../../quantities/index.ts';
import { say, sayParts } from '../ui/say.ts';
import type { DrawnDimension } from './dimensions.ts';
import type { Drawing, PictureVessel } from './drawing.ts';
import type { Margins, Sheet } from './layout.ts';
import type { PicturePanel } from './panels.ts';
import type { Box } from './polygons.ts';

/** Height of the words of the picture, and how wide a letter of them is at most, on average [px]. */
export const letter = { height: 13, width: 6.9 } as const;

export function widthOf(text: string): number {
  return text.length * letter.width;
}

/** "Tank, from outside". */
export function captionOf({ label, view, faces }: Drawing, panels: readonly PicturePanel[]): string {
  if (view === 'outside') return `${sentenceStart(label)}, from outside`;
  if (view === 'inside') return `${sentenceStart(label)}, looking in`;
  const own = panels.find(({ panel }) => panel === faces[0]?.panel);
  return sentenceStart(own?.label ?? '');
}

export function dimensionText({ size }: Pick<DrawnDimension, 'size'>, view: UnitView): string {
  return say(size, 'length', view);
}

/** Distance of a dimension line from the drawing, and of its words from the line [px]. */
export const dimensionGap = 9;
export const dimensionWordGap = 6;

/** Room around a drawing for its caption, its dimension lines and their words. */
export function marginsOf(
  panels: readonly PicturePanel[],
  view: UnitView,
): (drawing: Drawing, scale: number) => Margins {
  return (drawing, scale) => {
    const least = widthOf(captionOf(drawing, panels)) + 18;
    if (drawing.view === 'pieces') return { above: 24, below: 12, before: 2, after: 14, least };
    const reach = drawing.dimensions.map((dimension) => wordsBeyond(dimension, drawing.box, scale, view));
    return {
      above: drawing.dimensions.some(({ off }) => off[1] === -1) ? 54 : 30,
      below: drawing.view === 'outside' ? 38 : 14,
      before: 4 + Math.max(0, ...reach.map(({ left }) => left)),
      after: 16 + Math.max(0, ...reach.map(({ right }) => right)),
      least,
    };
  };
}

/** How far the words of a dimension reach beyond the drawing itself [px]. */
function wordsBeyond({ from, to, off, ...rest }: DrawnDimension, box: Box, scale: number, view: UnitView) {
  const width = widthOf(dimensionText(rest, view));
  const at = (scale * (from[0] + to[0])) / 2 + (dimensionGap + dimensionWordGap) * off[0];
  const begin = off[0] > 0.5 ? at : off[0] < -0.5 ? at - width : at - width / 2;
  return { left: scale * box.left - begin, right: begin + width - scale * box.right };
}

/** "Front: 23 W (18 to 30), 41 W/m²". */
export function panelSentence({ label, heat, flux }: PicturePanel, view: UnitView): string {
  const { likely, range } = sayParts(heat, 'power', view);
  const reach = range === undefined ? '' : `, range ${range}`;
  return `${sentenceStart(label)}: ${likely}${reach}; ${say(flux, 'heatFlux', view)}`;
}

/** How the picture is to be read, in one or two sentences. */
export function scaleWords({ placed }: Sheet, vessels: readonly PictureVessel[], view: UnitView): string {
  const isPieces = placed.some(({ drawing }) => drawing.view === 'pieces');
  const what = isPieces
    ? 'Each panel as a square of its own area, all at one scale.'
    : `To scale, inner sizes${vessels.length > 1 ? ', all vessels at one scale' : ''}. Looking in: what is nearest is taken away.`;
  return `${what} Colour is likely heat per area in ${view === 'us' ? 'BTU/(h ft²)' : 'W/m²'}, in the coldest spell. Choose a panel to see its layers.`;
}
