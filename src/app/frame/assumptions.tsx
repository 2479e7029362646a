// The assumptions left: every value nobody gave, with its range and where the range comes from, and a field to replace it.

import { type ReactNode, useState } from 'react';
import { type FieldRecord, fieldRecord } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { assumptionValue, DesignField } from '../fields/design-field.tsx';
import { KindField } from '../fields/kind-field.tsx';
import { useWorkbench } from '../state/context.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { sentenceStart } from '../ui/say.ts';
import type { AssessAnswer } from '../worker/messages.ts';

export interface AssumptionsProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
  readonly close: () => void;
}

export function Assumptions({ answer, view, close }: AssumptionsProps): ReactNode {
  // The list stays as it was when it was opened: a field must not vanish under the hand that fills it.
  const [{ assumptions, influences }] = useState(answer.assessment);
  const { document } = useWorkbench();
  const left = answer.assessment.assumptions.filter(({ path }) => fieldRecord(path, document) !== undefined).length;
  const rank = (path: string) => {
    const found = influences.findIndex((influence) => influence.path === path);
    return found === -1 ? influences.length : found;
  };
  const sorted = assumptions.toSorted((a, b) => rank(a.path) - rank(b.path));
  const mine = sorted.filter((assumption) => fieldRecord(assumption.path, document) !== undefined);
  const models = sorted.filter((assumption) => fieldRecord(assumption.path, document) === undefined);
  return (
    <Dialog title={left === 1 ? '1 assumption left' : `${left} assumptions left`} close={close}>
      <p>
        Each stands for something nobody has told yet. Those that move the verdict most stand first. A number of your
        own replaces the assumption at once.
      </p>
      <ul className="assumption-list">
        {mine.map((assumption) => {
          const record = fieldRecord(assumption.path, document) as FieldRecord;
          return (
            <li key={assumption.path}>
              {record.type === 'kind' ? <KindField record={record} /> : <DesignField record={record} />}
              <p className="quiet">From: {assumption.source}.</p>
            </li>
          );
        })}
      </ul>
      {models.length > 0 && (
        <details>
          <summary>Assumptions of the models themselves ({models.length})</summary>
          <ul className="assumption-list">
            {models.map((assumption) => (
              <li key={assumption.path}>
                <p>
                  <strong>{sentenceStart(assumption.label)}</strong>
                </p>
                <p className="quiet">
                  Assumed: {assumptionValue(assumption, undefined, document, view)}. From: {assumption.source}.
                </p>
              </li>
            ))}
          </ul>
        </details>
      )}
    </Dialog>
  );
}
