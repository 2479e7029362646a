// The bills month by month: one way at a time, chosen by a switch, all on one scale. Each amount of the table leads to its
// working.

import { type ReactNode, useMemo, useState } from 'react';
import type { Assessment, ScenarioAccount } from '../../assess/index.ts';
import { billsByMonthChart } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { Choice } from '../ui/choice.tsx';
import { sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';

export function BillsByMonth({ assessment, view }: { assessment: Assessment; view: UnitView }): ReactNode {
  const { accounts, currency } = assessment;
  const [scenario, setScenario] = useState<ScenarioAccount['scenario']>('thisLoop');
  const chart = useMemo(
    () => billsByMonthChart(accounts, scenario, currency, view),
    [accounts, scenario, currency, view],
  );
  return (
    <section className="block bills-by-month">
      <h3>Month by month</h3>
      <p className="quiet">
        One bill at a time, all on the same scale. Likely values; twelve months add up to the year above. What a way
        costs to buy has no month and is not in it.
      </p>
      <Choice
        legend="Whose bill"
        value={scenario}
        options={accounts.map((each) => [each.scenario, sentenceStart(each.label)] as const)}
        choose={setScenario}
      />
      {assessment.standing === 'doNotBuild' && scenario === 'thisLoop' && (
        <p>
          <StateMark kind="stop" word="not to be built: for study only" />
        </p>
      )}
      <Chart chart={chart} workings={assessment.workings} />
    </section>
  );
}
