// The shapes of one drawing: coloured faces with their names, water lines, sizes.

import { Fragment, type ReactNode } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { DimensionLine } from './dimension-line.tsx';
import { onSheet } from './face-targets.ts';
import { FaceWords } from './face-words.tsx';
import { classOf, type HeatScale } from './heat-scale.ts';
import type { PlacedDrawing } from './layout.ts';
import { type PicturePanel, panelKey } from './panels.ts';
import type { Spot } from './projection.ts';
import { captionOf } from './words.ts';

export interface DrawingShapesProps {
  readonly placed: PlacedDrawing;
  readonly panels: readonly PicturePanel[];
  readonly heatScale: HeatScale;
  /** [px/m]. */
  readonly scale: number;
  readonly view: UnitView;
  readonly chosen: string | undefined;
  readonly focused: string | undefined;
}

export function DrawingShapes(props: DrawingShapesProps): ReactNode {
  const { placed, panels, heatScale, scale, view, chosen, focused } = props;
  const { drawing } = placed;
  const place = (spots: readonly Spot[]) => spots.map((spot) => onSheet(spot, placed, scale));
  const faces = drawing.faces.map(({ panel, polygons }) => {
    const key = panelKey(drawing.vessel, panel);
    const shapes = polygons.map(place);
    return { key, shapes, own: panels.find((each) => each.key === key) };
  });
  return (
    <g>
      <text className="tank-caption" x={placed.left + 2} y={placed.top + 15}>
        {captionOf(drawing, panels)}
      </text>
      {faces.map(({ key, shapes, own }) =>
        shapes.map((shape) => (
          <path
            key={`${key} ${pathOf(shape)}`}
            d={`${pathOf(shape)}Z`}
            className={`tank-fill ${toneName(own, heatScale, view)}`}
          />
        )),
      )}
      {drawing.waterLines.map((line) => (
        <Fragment key={pathOf(place(line))}>
          <path d={pathOf(place(line))} className="tank-water-under" />
          <path d={pathOf(place(line))} className="tank-water" />
        </Fragment>
      ))}
      {faces.map(({ key, shapes, own }) => {
        const shape = shapes.at(-1);
        if (own === undefined || shape === undefined) return null;
        return (
          <FaceWords
            key={key}
            panel={own}
            shape={shape}
            tone={toneName(own, heatScale, view)}
            isNamed={drawing.view !== 'pieces'}
            view={view}
          />
        );
      })}
      {drawing.dimensions.map((dimension) => (
        <DimensionLine key={dimension.name} {...{ dimension, placed, scale, view }} />
      ))}
      {faces
        .filter(({ key }) => key === chosen || key === focused)
        .map(({ key, shapes }) =>
          shapes.map((shape) => (
            <path
              key={pathOf(shape)}
              d={`${pathOf(shape)}Z`}
              className={key === focused ? 'tank-chosen tank-focused' : 'tank-chosen'}
            />
          )),
        )}
    </g>
  );
}

function pathOf(spots: readonly Spot[]): string {
  return spots.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}

/** A panel the answer does not know yet stays uncoloured. */
function toneName(panel: PicturePanel | undefined, scale: HeatScale, view: UnitView): string {
  if (panel === undefined) return 'tone-unknown';
  const found = classOf(scale, panel.flux, view);
  return found === 'incoming' ? 'tone-incoming' : `tone-${found.tone}`;
}
