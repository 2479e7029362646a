// Measure this next: the one to three measurements that would narrow the verdict most, how each is done, by how much the
// range would shrink, and the fields that take the result.

import { type ReactNode, useState } from 'react';
import type { Assessment, MeasureNext as Measurement } from '../../assess/index.ts';
import { fieldRecord } from '../../design/index.ts';
import { type Band, listed, sayRange, type UnitView } from '../../quantities/index.ts';
import { DesignField } from '../fields/design-field.tsx';
import { KindField } from '../fields/kind-field.tsx';
import { useWorkbench } from '../state/context.tsx';
import { insideSentence, say, sentenceStart } from '../ui/say.ts';
import './doubt.css';

export interface MeasureNextProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function MeasureNext({ assessment, view }: MeasureNextProps): ReactNode {
  const { measureNext, margin } = assessment;
  // While the hand is in one of the fields the list stays: its field must not vanish under it.
  const [held, setHeld] = useState<readonly Measurement[] | undefined>(undefined);
  const shown = held ?? measureNext;
  if (shown.length === 0) {
    return <p className="quiet">Nothing that you could measure or read would narrow the verdict worth speaking of.</p>;
  }
  return (
    <>
      <p className="quiet">
        With the circuit closed and nothing live opened. “At best” takes the measurement itself as exact; what it leaves
        open goes into the field as a range.
      </p>
      <ol
        className="measurements"
        onFocus={() => setHeld(held ?? measureNext)}
        onBlur={({ currentTarget, relatedTarget }) => {
          if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) setHeld(undefined);
        }}
      >
        {shown.map((measurement) => (
          <li key={measurement.measure}>
            <MeasurementCard
              measurement={measurement}
              margin={margin}
              hint={toppedUpHint(measurement, assessment, view)}
              view={view}
            />
          </li>
        ))}
      </ol>
    </>
  );
}

const evaporationFactor = 'tank.load.evaporationFactor';

/** The field takes a factor, the measurement gives water a day: how one becomes the other. */
function toppedUpHint({ enterAt }: Measurement, { tank, influences }: Assessment, view: UnitView): string | undefined {
  const factor = influences.find(({ path }) => path === evaporationFactor)?.input.likely;
  if (!enterAt.includes(evaporationFactor) || factor === undefined) return undefined;
  const atOne = say(tank.evaporation.likely / factor, 'evaporation', view);
  return `With a correction of 1 the models let ${atOne} evaporate in the coldest spell. Divide what you top up a day in such weather by that, and enter the quotient, as a range.`;
}

interface MeasurementCardProps {
  readonly measurement: Measurement;
  readonly margin: Band;
  readonly hint: string | undefined;
  readonly view: UnitView;
}

function MeasurementCard({ measurement, margin, hint, view }: MeasurementCardProps): ReactNode {
  const { document } = useWorkbench();
  const { measure, labels, share, marginIfKnown, enterAt } = measurement;
  const records = enterAt.flatMap((path) => fieldRecord(path, document) ?? []);
  return (
    <>
      <h4>{sentenceStart(measure)}.</h4>
      <p>
        It would settle {namedInputs(labels)}: {say(share, 'fraction', view)} of the doubt. The margin, now{' '}
        {sayRange(margin, 'power', view)}, would run from {sayRange(marginIfKnown, 'power', view)} at best:{' '}
        {say(shrinkage(margin, marginIfKnown), 'fraction', view)} narrower.
      </p>
      {hint !== undefined && <p className="quiet">{hint}</p>}
      <div className="measurement-fields">
        {records.map((record) =>
          record.type === 'kind' ? (
            <KindField key={record.path} record={record} />
          ) : (
            <DesignField key={record.path} record={record} />
          ),
        )}
      </div>
    </>
  );
}

/** By which share of its width a range shrinks. */
function shrinkage(now: Band, then: Band): number {
  return 1 - (then.high - then.low) / (now.high - now.low);
}

/** "the filling factor, the clearance ratio and 4 more". */
function namedInputs(labels: readonly string[]): string {
  const named = labels.slice(0, labels.length > 3 ? 2 : 3).map((label) => `“${insideSentence(label)}”`);
  const more = labels.length - named.length;
  if (more > 0) return `${named.join(', ')} and ${more} more`;
  return listed(named);
}
