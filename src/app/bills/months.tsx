// The bills month by month: one way at a time, chosen by a switch, all on one scale; and how each amount of a chosen month
// was computed.

import { type ReactNode, useMemo, useState } from 'react';
import type { Assessment, ScenarioAccount } from '../../assess/index.ts';
import { billsByMonthChart } from '../../charts/index.ts';
import { sayQuantity, type UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { Choice } from '../ui/choice.tsx';
import { HowComputed } from '../ui/how-computed.tsx';
import { sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';

export function BillsByMonth({ assessment, view }: { assessment: Assessment; view: UnitView }): ReactNode {
  const { accounts, currency } = assessment;
  const [scenario, setScenario] = useState<ScenarioAccount['scenario']>('thisLoop');
  const chart = useMemo(
    () => billsByMonthChart(accounts, scenario, currency, view),
    [accounts, scenario, currency, view],
  );
  const account = accounts.find((each) => each.scenario === scenario)!;
  return (
    <section className="block bills-by-month">
      <h3>Month by month</h3>
      <p className="quiet">
        One bill at a time, all three on the same scale. Likely values; twelve months add up to the year above. What a
        way costs to buy has no month and is not in it.
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
      <MonthWorking account={account} assessment={assessment} view={view} />
    </section>
  );
}

interface MonthWorkingProps {
  readonly account: ScenarioAccount;
  readonly assessment: Assessment;
  readonly view: UnitView;
}

/** Any amount of any month opens its working here. */
function MonthWorking({ account, assessment, view }: MonthWorkingProps): ReactNode {
  const { currency, workings } = assessment;
  const [chosen, setChosen] = useState(account.months[0]!.month);
  const month = account.months.find((each) => each.month === chosen) ?? account.months[0]!;
  const lines = [
    ['electricity', 'electricityCost', month.electricityCost],
    ['room heat credited', 'roomHeatCredit', month.roomCredit],
    ['summer cooling', 'coolingCost', month.coolingCost],
    ['left to pay', 'runningCost', month.runningCost],
  ] as const;
  return (
    <details className="month-working">
      <summary>How the amounts of one month are computed</summary>
      <label>
        Month{' '}
        <select value={month.month} onChange={(event) => setChosen(event.target.value)}>
          {account.months.map((each) => (
            <option key={each.month} value={each.month}>
              {sentenceStart(each.month)}
            </option>
          ))}
        </select>
      </label>
      <div className="hows">
        {lines.map(([name, part, value]) => (
          <HowComputed
            key={`${account.scenario} ${month.month} ${part}`}
            workings={workings}
            result={`accounts.${account.scenario}.${month.month}.${part}`}
            of={`${name}, ${month.month}, ${account.label}`}
            words={`${sentenceStart(name)}, about ${sayQuantity(value, 'money', view, 2, { currency })}: how computed`}
          />
        ))}
      </div>
    </details>
  );
}
