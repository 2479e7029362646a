// The fields of a station: at most seven to begin with, the rest behind "I know more".

import type { ReactNode } from 'react';
import { fieldsOf } from '../../design/index.ts';
import type { StationName } from '../pages.ts';
import { useWorkbench } from '../state/context.tsx';
import { fieldsOfStation } from '../stations/fields.ts';
import { Fields } from './fields.tsx';

export function FieldGroup({ station }: { station: StationName }): ReactNode {
  const { document } = useWorkbench();
  const { shown, more, expert } = fieldsOfStation(station, fieldsOf(document));
  return (
    <>
      <Fields records={shown} />
      {more.length + expert.length > 0 && (
        <details className="fields-more">
          <summary>I know more ({more.length + expert.length})</summary>
          <Fields records={more} />
          {expert.length > 0 && (
            <details className="fields-more">
              <summary>Rarely known ({expert.length})</summary>
              <Fields records={expert} />
            </details>
          )}
        </details>
      )}
    </>
  );
}
