// The picture in words and numbers: each panel with its heat, heat per area and area; its name chooses it.

import type { ReactNode } from 'react';
import { sayRange, sentenceStart, type UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';
import { classOf, type HeatScale } from './heat-scale.ts';
import { Swatch } from './legend.tsx';
import type { PicturePanel } from './panels.ts';

export interface PanelTableProps {
  readonly panels: readonly PicturePanel[];
  readonly scale: HeatScale;
  readonly view: UnitView;
  readonly chosen: string | undefined;
  readonly choose: (key: string) => void;
}

export function PanelTable({ panels, scale, view, chosen, choose }: PanelTableProps): ReactNode {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className="table-scroll" tabIndex={0} aria-label="Heat of each panel">
      <table className="data">
        <caption className="for-reader">Heat of each panel in the coldest spell</caption>
        <thead>
          <tr>
            <th scope="col">Panel</th>
            <th scope="col" className="number">
              Heat
            </th>
            <th scope="col" className="number">
              Range
            </th>
            <th scope="col" className="number">
              Per area
            </th>
            <th scope="col" className="number">
              Area
            </th>
          </tr>
        </thead>
        <tbody>
          {panels.map(({ key, label, heat, flux, area }) => (
            <tr key={key}>
              <th scope="row">
                <Swatch tone={toneOf(scale, flux, view)} />{' '}
                <button type="button" className="linkish" aria-pressed={key === chosen} onClick={() => choose(key)}>
                  {sentenceStart(label)}
                </button>
              </th>
              <td className="number">{say(heat.likely, 'power', view)}</td>
              <td className="number">{sayRange(heat, 'power', view)}</td>
              <td className="number">{say(flux, 'heatFlux', view)}</td>
              <td className="number">{say(area, 'area', view, 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function toneOf(scale: HeatScale, flux: number, view: UnitView): string {
  const found = classOf(scale, flux, view);
  return found === 'incoming' ? 'tone-incoming' : `tone-${found.tone}`;
}
