// Saves the states of the cycle as a table for spreadsheets, in the units of the view, headed by the caution.

import type { ReactNode } from 'react';
import { statesCsv } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { saveText } from '../../state/files.ts';
import type { CycleTexts } from './cycle-texts.ts';

interface StatesFileProps {
  readonly cycle: TextbookCycle;
  readonly texts: CycleTexts;
  readonly view: UnitView;
}

export function StatesFile({ cycle, texts, view }: StatesFileProps): ReactNode {
  const save = () =>
    saveText(statesCsv(cycle.points, view, texts.referenceState), `${cycle.refrigerant}-states.csv`, 'text/csv');
  return (
    <button type="button" className="solid" onClick={save}>
      Save the states (CSV)
    </button>
  );
}
