// A cell of a table with a likely value over its range, so that columns stay narrow.

import type { ReactNode } from 'react';
import type { Band, QuantityName, UnitView, WorkingStep } from '../../quantities/index.ts';
import { ResultLink } from './result-link.tsx';
import { sayParts } from './say.ts';

export interface BandCellProps {
  readonly band: Band & { readonly result?: string };
  readonly quantity: QuantityName;
  readonly view: UnitView;
  /** What the number is, where it leads to how it was computed. */
  readonly of?: string;
  readonly workings?: readonly WorkingStep[];
  /** Name of the result in the workings, where the band does not carry it. */
  readonly result?: string;
}

export function BandCell({ band, quantity, view, of = '', workings = [], result }: BandCellProps): ReactNode {
  const { likely, range } = sayParts(band, quantity, view);
  return (
    <td className="number">
      <ResultLink workings={workings} result={result ?? band.result} of={of}>
        {likely}
      </ResultLink>
      {range !== undefined && <span className="cell-range">{range}</span>}
    </td>
  );
}
