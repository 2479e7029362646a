// Two bills: every way of keeping the tank warm as one complete account of tank and room, side by side, and the year.

import { type ReactNode, useMemo } from 'react';
import type { Assessment, ScenarioAccount } from '../../assess/index.ts';
import { monthsChart } from '../../charts/index.ts';
import { type Band, sayQuantity, sayRange, type UnitView, type WorkingStep } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { HowComputed } from '../ui/how-computed.tsx';
import { sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { Station, type StationProps } from './station.tsx';

export function TwoBills({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const chart = useMemo(() => monthsChart(assessment.year, view), [assessment.year, view]);
  return (
    <Station name="two-bills" answer={answerSentence(assessment, view)}>
      <section className="block">
        <h3>Side by side, for a year</h3>
        <p className="quiet">
          Each is a whole account: what the tank costs, less the heat the room gets for it in heated months. A machine
          that takes its heat from a heated room owes that room its heat back. Amounts are rounded to whole{' '}
          {assessment.currency}; the range under each says how little the last digits mean.
        </p>
        <div className="bills">
          {assessment.accounts.map((account) => (
            <Bill
              key={account.scenario}
              account={account}
              currency={assessment.currency}
              view={view}
              workings={assessment.workings}
              forStudyOnly={assessment.standing === 'doNotBuild' && account.scenario === 'thisLoop'}
            />
          ))}
        </div>
      </section>
      <Chart chart={chart} />
    </Station>
  );
}

function answerSentence({ accounts, currency, standing }: Assessment, view: UnitView): string {
  const ranked = standing === 'doNotBuild' ? accounts.filter((account) => account.scenario !== 'thisLoop') : accounts;
  const sorted = ranked.toSorted((a, b) => a.lifeCostPerYear.likely - b.lifeCostPerYear.likely);
  const [cheapest] = sorted;
  const loop = accounts.find((account) => account.scenario === 'thisLoop');
  if (cheapest === undefined || loop === undefined) return '';
  const money = (value: number) => sayQuantity(value, 'money', view, 2, { currency });
  if (standing === 'doNotBuild') {
    return `This loop is not to be built; its bill stands here for study only. Of the other ways, ${cheapest.label} costs least over its life: ${money(cheapest.lifeCostPerYear.likely)} a year.`;
  }
  if (cheapest.scenario === 'thisLoop') {
    const next = sorted[1];
    const than =
      next === undefined ? '' : `, against ${money(next.lifeCostPerYear.likely)} for the next, ${next.label}`;
    return `Over its life this loop is the cheapest way looked at: ${money(loop.lifeCostPerYear.likely)} a year${than}.`;
  }
  const more = loop.lifeCostPerYear.likely - cheapest.lifeCostPerYear.likely;
  return `The cheapest over its life: ${cheapest.label}, ${money(cheapest.lifeCostPerYear.likely)} a year. This loop costs ${money(more)} a year more.`;
}

interface BillProps {
  readonly account: ScenarioAccount;
  readonly currency: string;
  readonly view: UnitView;
  readonly workings: readonly WorkingStep[];
  readonly forStudyOnly: boolean;
}

function Bill({ account, currency, view, workings, forStudyOnly }: BillProps): ReactNode {
  // Whole units, so that the lines of the bill add up; the range under each says how little the last digits mean.
  const how = ({ result }: { readonly result: string }, of: string) => (
    <HowComputed workings={workings} result={result} of={`${of}, ${account.label}`} />
  );
  const money = (value: number) => sayQuantity(Math.round(value), 'money', view, 9, { currency });
  const range = (band: Band) => (band.high > band.low ? sayRange(band, 'money', view, { currency }) : undefined);
  const credit = account.roomCredit.likely;
  return (
    <article className="bill">
      <h4>{sentenceStart(account.label)}</h4>
      {forStudyOnly && (
        <p>
          <StateMark kind="stop" word="not to be built: for study only" />
        </p>
      )}
      <dl>
        <BillLine
          name={`Electricity, ${sayQuantity(account.electricity.likely, 'energy', view)}`}
          value={money(account.electricityCost.likely)}
          range={range(account.electricityCost)}
        />
        <BillLine
          name={
            credit >= 0
              ? `Less: room heat gained, ${sayQuantity(account.roomHeat.likely, 'energy', view)}`
              : `Plus: room heat taken, ${sayQuantity(-account.roomHeat.likely, 'energy', view)}`
          }
          value={money(-credit)}
          range={range({ low: -account.roomCredit.high, likely: -credit, high: -account.roomCredit.low })}
        />
        {account.coolingCost.likely !== 0 && (
          <BillLine
            name={account.coolingCost.likely > 0 ? 'Plus: summer cooling' : 'Less: summer cooling saved'}
            value={money(account.coolingCost.likely)}
            range={range(account.coolingCost)}
          />
        )}
        <BillLine
          total
          name="Running, a year"
          value={money(account.runningCost.likely)}
          range={range(account.runningCost)}
          how={how(account.runningCost, 'running, a year')}
        />
        <BillLine
          name={account.scenario === 'plainHeater' ? 'To buy' : 'To buy, a plain heater beside it included'}
          value={money(account.purchase)}
        />
        <BillLine
          total
          name="Over its life, per year"
          value={money(account.lifeCostPerYear.likely)}
          range={range(account.lifeCostPerYear)}
          how={how(account.lifeCostPerYear, 'over its life, per year')}
        />
      </dl>
    </article>
  );
}

interface BillLineProps {
  readonly name: string;
  readonly value: string;
  readonly range?: string | undefined;
  readonly total?: boolean;
  readonly how?: ReactNode;
}

function BillLine({ name, value, range, total, how }: BillLineProps): ReactNode {
  return (
    <div className={total ? 'total' : undefined}>
      <dt>{name}</dt>
      <dd>{value}</dd>
      {range !== undefined && <dd className="bill-range">{range}</dd>}
      {how !== undefined && <dd className="bill-how">{how}</dd>}
    </div>
  );
}
