// Two bills: every way of keeping the tank warm as one complete account of tank and room, side by side, month by month, and
// what it would cost to be wrong about it.

import { type ReactNode, useMemo } from 'react';
import type { Assessment } from '../../assess/index.ts';
import { monthsChart } from '../../charts/index.ts';
import { sayBand, type UnitView } from '../../quantities/index.ts';
import { BeingWrong } from '../bills/being-wrong.tsx';
import { Bill } from '../bills/bill.tsx';
import '../bills/bills.css';
import { BillsByMonth } from '../bills/months.tsx';
import { Chart } from '../charts/chart.tsx';
import { Station, type StationProps } from './station.tsx';

export function TwoBills({ answer, view }: StationProps): ReactNode {
  const { assessment, loopAgainstWords } = answer;
  const chart = useMemo(() => monthsChart(assessment.year, view), [assessment.year, view]);
  return (
    <Station name="two-bills" answer={answerSentence(answer, view)}>
      <section className="block">
        <h3>Side by side, for a year</h3>
        <p className="quiet">
          Each is a whole account: what the tank costs, less the heat the room gets for it in heated months. A machine
          that takes its heat from a heated room owes that room its heat back. Amounts are rounded to whole{' '}
          {assessment.currency}; the range under each says how little the last digits mean.
        </p>
        <div className="bills">
          {assessment.accounts.map((account) => (
            <Bill key={account.scenario} account={account} assessment={assessment} view={view} />
          ))}
        </div>
      </section>
      <BeingWrong assessment={assessment} words={loopAgainstWords} view={view} />
      <BillsByMonth assessment={assessment} view={view} />
      <Chart chart={chart} workings={assessment.workings} />
    </Station>
  );
}

function answerSentence({ assessment, loopAgainstWords }: StationProps['answer'], view: UnitView): string {
  const { loopAgainst, standing } = assessment;
  const cheapest = loopAgainst.findIndex(({ isCheapest }) => isCheapest);
  const other = loopAgainst[cheapest];
  const words = loopAgainstWords[cheapest];
  if (other === undefined || words === undefined) return '';
  if (standing === 'doNotBuild') {
    return `This loop is not to be built; its bill stands here for study only. Of the other ways, ${other.label} costs least over its life: ${costOf(assessment, other.against, view)} a year.`;
  }
  const isLoop = other.lifeCost.likely < 0;
  const way = isLoop ? 'this loop' : other.label;
  const cost = costOf(assessment, isLoop ? 'thisLoop' : other.against, view);
  return `The cheapest way over its life is likely ${way}: ${cost} a year. ${words.difference}`;
}

function costOf({ accounts, currency }: Assessment, scenario: string, view: UnitView): string {
  const account = accounts.find((each) => each.scenario === scenario)!;
  return sayBand(account.lifeCostPerYear, 'money', view, { currency });
}
