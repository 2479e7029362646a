// The section in words and numbers: films and layers in order, each with its thickness, resistance and temperatures.

import type { ReactNode } from 'react';
import type { PanelAnswer } from '../../assess/index.ts';
import type { ChartTable } from '../../charts/index.ts';
import { fixedDecimals, formatNumber, quantityUnit, toView, type UnitView } from '../../quantities/index.ts';
import { DataTable } from '../ui/data-table.tsx';
import { say, sentenceStart } from '../ui/say.ts';

export function SectionTable({ panel, view }: { readonly panel: PanelAnswer; readonly view: UnitView }): ReactNode {
  return <DataTable table={sectionTable(panel, view)} />;
}

export function sectionTable(panel: PanelAnswer, view: UnitView): ChartTable {
  const { layers, waterFilmResistance: film, insideTemperature: inside } = panel;
  const resistance = (value: number) => formatNumber(toView(value, 'thermalResistance', view), 2);
  const degrees = (value: number) => fixedDecimals(toView(value, 'temperature', view), 1);
  const between = (from: number, to: number) => `${degrees(from)} to ${degrees(to)}`;
  const wall = layers[0]?.innerTemperature ?? panel.outerTemperature;
  const total = film + panel.outerResistance + layers.reduce((sum, layer) => sum + layer.resistance, 0);
  return {
    caption: 'From the inside outwards, in the coldest spell.',
    columns: [
      { label: 'Layer' },
      { label: 'Thickness', numeric: true },
      view === 'us'
        ? { label: 'R-value', numeric: true }
        : { label: 'RSI', unit: quantityUnit('thermalResistance', view), numeric: true },
      { label: 'Temperature', unit: quantityUnit('temperature', view), numeric: true },
    ],
    rows: [
      ...(film > 0 ? [['Film of water', '–', resistance(film), between(inside, wall)]] : []),
      ...layers.map(({ label, thickness, resistance: own, innerTemperature, outerTemperature }, index) => [
        `${index + 1}  ${sentenceStart(label)}`,
        thickness === null ? 'not given' : say(thickness, 'length', view, 2),
        resistance(own),
        between(innerTemperature, outerTemperature),
      ]),
      ['Outer surface', '–', resistance(panel.outerResistance), between(panel.outerTemperature, panel.sinkTemperature)],
      ['All together', '–', resistance(total), between(inside, panel.sinkTemperature)],
    ],
  };
}
