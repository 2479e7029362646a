// The tank drawn to scale: every panel coloured by its heat per area, and chosen by a click or by the arrow keys. A table below
// says the same in words and numbers.

import './tank-picture.css';
import { type ReactNode, useId, useMemo, useRef, useState } from 'react';
import type { UnitView } from '../../quantities/index.ts';
import { paperWidth, usePaper } from '../ui/light.tsx';
import { useWidth } from '../ui/use-width.ts';
import { drawingsOf, type PictureVessel } from './drawing.ts';
import { DrawingShapes } from './drawing-shapes.tsx';
import { type FaceTarget, faceTargets } from './face-targets.ts';
import { type HeatScale, heatScale } from './heat-scale.ts';
import { laySheet, type Sheet } from './layout.ts';
import { HeatLegend, IncomingHatch } from './legend.tsx';
import { PanelTable } from './panel-table.tsx';
import type { PicturePanel } from './panels.ts';
import { pieceDrawings } from './pieces.ts';
import { marginsOf, panelSentence, scaleWords } from './words.ts';

export interface TankPictureProps {
  readonly vessels: readonly PictureVessel[];
  readonly panels: readonly PicturePanel[];
  readonly view: UnitView;
  /** Key of the chosen panel. */
  readonly chosen: string | undefined;
  readonly choose: (key: string) => void;
}

/** A sheet this high still stands on a screen with its words [px]. */
const mostHeight = { wide: 560, narrow: 1000, pieces: 360 } as const;
const narrowWidth = 640;

export function TankPicture({ vessels, panels, view, chosen, choose }: TankPictureProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  const isPaper = usePaper();
  const windowWidth = useWidth(host);
  const width = isPaper ? paperWidth : windowWidth;
  const scale = useMemo(
    () =>
      heatScale(
        panels.map(({ flux }) => flux),
        view,
      ),
    [panels, view],
  );
  const sheet = useMemo(() => {
    const drawings = vessels.flatMap((vessel) =>
      vessel.shape.kind === 'panels' ? pieceDrawings(vessel, vessel.shape) : drawingsOf(vessel),
    );
    const isPieces = drawings.every((drawing) => drawing.view === 'pieces');
    const most = isPieces ? mostHeight.pieces : width < narrowWidth ? mostHeight.narrow : mostHeight.wide;
    return laySheet(drawings, { width, mostHeight: most, marginsOf: marginsOf(panels, view) });
  }, [vessels, panels, width, view]);
  return (
    <figure className="tank-picture">
      <figcaption className="quiet">{scaleWords(sheet, vessels, view)}</figcaption>
      <HeatLegend scale={scale} view={view} />
      <div className="tank-sheet" ref={host} style={{ height: sheet.height }}>
        <ChoosableSheet {...{ sheet, scale, panels, view, width, chosen, choose }} />
      </div>
      <details className="tank-table">
        <summary>Table of this picture</summary>
        <PanelTable panels={panels} scale={scale} view={view} chosen={chosen} choose={choose} />
      </details>
    </figure>
  );
}

interface ChoosableSheetProps extends Omit<TankPictureProps, 'vessels'> {
  readonly sheet: Sheet;
  readonly scale: HeatScale;
  readonly width: number;
}

/** The drawn sheet under one choice among its panels: each is the label of its own radio button. */
function ChoosableSheet({ sheet, scale, panels, view, width, chosen, choose }: ChoosableSheetProps): ReactNode {
  const group = useId();
  const [focused, setFocused] = useState<string | undefined>(undefined);
  const targets = useMemo(() => faceTargets(sheet), [sheet]);
  const drawn = panels.filter(({ key }) => targets.some((target) => target.key === key));
  return (
    <>
      <svg width={width} height={sheet.height} aria-hidden="true" focusable="false">
        <IncomingHatch />
        {sheet.placed.map((placed) => (
          <DrawingShapes
            key={`${placed.drawing.vessel} ${placed.drawing.view} ${placed.drawing.faces[0]?.panel}`}
            {...{ placed, panels, view, chosen, focused }}
            heatScale={scale}
            scale={sheet.scale}
          />
        ))}
      </svg>
      <fieldset className="tank-choice">
        <legend className="for-reader">Panel whose layers are shown</legend>
        {drawn.map((panel) => (
          <input
            key={panel.key}
            id={`${group}-${panel.key}`}
            className="for-reader"
            type="radio"
            name={group}
            aria-label={panelSentence(panel, view)}
            data-panel={panel.key}
            checked={panel.key === chosen}
            onChange={() => choose(panel.key)}
            onFocus={() => setFocused(panel.key)}
            onBlur={() => setFocused(undefined)}
          />
        ))}
      </fieldset>
      {targets.map((target) => (
        <FaceLabel key={target.id} target={target} input={`${group}-${target.key}`} />
      ))}
    </>
  );
}

/** The part of the sheet that a face takes up, for the pointer: what the radio button of its panel is called stands on that. */
function FaceLabel({ target: { box, clip }, input }: { target: FaceTarget; input: string }): ReactNode {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the radio button carries its name itself; a panel may have several of these
    <label
      className="tank-face"
      htmlFor={input}
      style={{
        left: box.left,
        top: box.top,
        width: box.right - box.left,
        height: box.bottom - box.top,
        clipPath: clip,
      }}
    />
  );
}
