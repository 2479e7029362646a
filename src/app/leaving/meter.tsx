// Bring your meter: what the heater used over some days beside what the model says of them, which inputs could explain the
// difference, and whether the measurement is taken as the load.

import type { ReactNode } from 'react';
import type { MeterAnswer } from '../../assess/index.ts';
import { fieldsOf, setField } from '../../design/index.ts';
import { isQuantityName, sayBand, type UnitView } from '../../quantities/index.ts';
import { Fields } from '../fields/fields.tsx';
import { useWorkbench } from '../state/context.tsx';
import { DataTable } from '../ui/data-table.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { meterSentence } from './meter-words.ts';

export interface MeterProps {
  readonly meter: MeterAnswer | null;
  readonly view: UnitView;
}

const adopt = 'tank.load.meter.adopt';

export function Meter({ meter, view }: MeterProps): ReactNode {
  const { document } = useWorkbench();
  const fields = fieldsOf(document).filter(({ path }) => path.startsWith('tank.load.meter.') && path !== adopt);
  if (fields.length === 0) return null;
  return (
    <section className="block meter">
      <h3 id="meter-title" tabIndex={-1}>
        Bring your meter
      </h3>
      <p className="quiet">
        A plug-in meter on the heater for a week knows more than any calculation. The model is kept for what would
        change.
      </p>
      {meter !== null && (
        <>
          <p>{meterSentence(meter, view)}</p>
          <Explanations meter={meter} view={view} />
          <Adopting meter={meter} />
        </>
      )}
      <Fields records={fields} />
    </section>
  );
}

function Explanations({ meter, view }: { readonly meter: MeterAnswer; readonly view: UnitView }): ReactNode {
  if (meter.explanations.length === 0) return null;
  return (
    <DataTable
      table={{
        caption: 'Which input alone could explain the difference, the least far-fetched first.',
        columns: [
          { label: 'Input' },
          { label: 'Taken as', numeric: true },
          { label: 'Would have to be', numeric: true },
          { label: 'Likely?' },
        ],
        rows: meter.explanations.map(({ label, quantity, input, value, isWithin }) => [
          sentenceStart(label),
          isQuantityName(quantity) ? sayBand(input, quantity, view) : '',
          value === null || !isQuantityName(quantity) ? 'no value would do' : say(value, quantity, view),
          value === null ? '' : isWithin ? 'within its range' : 'outside its range',
        ]),
      }}
    />
  );
}

function Adopting({ meter }: { readonly meter: MeterAnswer }): ReactNode {
  const { document, edit } = useWorkbench();
  return (
    <>
      {meter.adopted && (
        <p>
          The measurement is taken: every loss the model gives is multiplied by {meter.ratio.likely.toPrecision(2)},
          here, in the year and for each measure.
        </p>
      )}
      <p>
        <button
          type="button"
          className="plain"
          data-field={adopt}
          onClick={() => edit(setField(document, adopt, meter.adopted ? '' : 'yes'), adopt)}
        >
          {meter.adopted ? 'Go back to what the model says' : 'Take the measurement as the load'}
        </button>
      </p>
    </>
  );
}
