// The steps of colour with their bounds.

import type { ReactNode } from 'react';
import { formatNumber, quantityUnit, type UnitView } from '../../quantities/index.ts';
import type { HeatClass, HeatScale } from './heat-scale.ts';

export function HeatLegend({ scale, view }: { readonly scale: HeatScale; readonly view: UnitView }): ReactNode {
  return (
    <ul className="heat-legend" aria-label={`Colours, in ${quantityUnit('heatFlux', view)}`}>
      {scale.hasIncoming && (
        <li>
          <Swatch tone="tone-incoming" />
          comes in
        </li>
      )}
      {scale.classes.map((each) => (
        <li key={each.to}>
          <Swatch tone={`tone-${each.tone}`} />
          {boundsOf(each)}
        </li>
      ))}
      <li className="quiet">{quantityUnit('heatFlux', view)}</li>
    </ul>
  );
}

export function Swatch({ tone }: { readonly tone: string }): ReactNode {
  return (
    <svg className="heat-swatch" width="22" height="14" aria-hidden="true" focusable="false">
      <rect x="0.5" y="0.5" width="21" height="13" className={`tank-fill ${tone}`} />
    </svg>
  );
}

/** Once on the page: what faces and swatches are filled with where heat comes in. */
export function IncomingHatch(): ReactNode {
  return (
    <defs>
      <pattern id="heat-incoming" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="8" height="8" fill="var(--sheet)" />
        <rect width="2.5" height="8" fill="var(--from-source-fill)" />
      </pattern>
    </defs>
  );
}

function boundsOf({ from, to }: HeatClass): string {
  return from === 0 ? `up to ${formatNumber(to, 3)}` : `${formatNumber(from, 3)} to ${formatNumber(to, 3)}`;
}
