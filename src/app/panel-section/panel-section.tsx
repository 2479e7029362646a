// The chosen panel: its heat, its section with the temperature through it, and whether water settles on it.

import './panel-section.css';
import { type ReactNode, useMemo, useRef } from 'react';
import type { PanelAnswer } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { paperWidth, usePaper } from '../ui/light.tsx';
import { say, sayParts } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { useWidth } from '../ui/use-width.ts';
import { sectionOf } from './section.ts';
import { SectionPicture } from './section-picture.tsx';
import { SectionTable } from './section-table.tsx';
import { drynessWords } from './words.ts';

export interface PanelSectionProps {
  readonly panel: PanelAnswer;
  readonly roomDewPoint: number | null;
  readonly view: UnitView;
}

/** A pane of a few millimetres needs no wider picture [px]. */
const mostWidth = 620;

export function PanelSection({ panel, roomDewPoint, view }: PanelSectionProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  const isPaper = usePaper();
  const windowWidth = useWidth(host);
  const width = Math.min(mostWidth, isPaper ? paperWidth : windowWidth);
  const section = useMemo(() => sectionOf(panel, roomDewPoint, width), [panel, roomDewPoint, width]);
  const { likely, range } = sayParts(panel.heat, 'power', view);
  const hasBreak = section.zones.some(({ isBroken }) => isBroken);
  return (
    <div className="panel-section">
      <p>
        {likely}
        {range === undefined ? '' : ` (${range})`} through {say(panel.area, 'area', view, 2)}, likely{' '}
        {say(panel.transmittance, 'heatTransferCoefficient', view)}.
      </p>
      <p>
        {panel.condenses ? (
          <StateMark kind="look" word={drynessWords(panel, section.dewPoint, view)} />
        ) : (
          drynessWords(panel, section.dewPoint, view)
        )}
      </p>
      <div ref={host} className="section-host">
        <SectionPicture panel={panel} section={section} view={view} />
      </div>
      <p className="quiet">
        Layers to scale{hasBreak ? '; a zigzag where part of a thick one is left out' : ''}. The line is the
        temperature, likely values. The film of still water or air on either side is not to scale.
      </p>
      <SectionTable panel={panel} view={view} />
    </div>
  );
}
