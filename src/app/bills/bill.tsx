// One way of keeping the tank warm as a bill of a year. The line of the room's heat is always there, also when it is zero.

import type { ReactNode } from 'react';
import type { Assessment, ScenarioAccount } from '../../assess/index.ts';
import { type Band, sayQuantity, sayRange, type UnitView } from '../../quantities/index.ts';
import { HowComputed } from '../ui/how-computed.tsx';
import { PageLink } from '../ui/page-link.tsx';
import { sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';

export interface BillProps {
  readonly account: ScenarioAccount;
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function Bill({ account, assessment, view }: BillProps): ReactNode {
  const { workings, currency } = assessment;
  const forStudyOnly = assessment.standing === 'doNotBuild' && account.scenario === 'thisLoop';
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
          how={how(account.electricityCost, 'electricity')}
        />
        <BillLine
          name={creditName(account, view)}
          value={money(-credit)}
          range={range({ low: -account.roomCredit.high, likely: -credit, high: -account.roomCredit.low })}
          note={creditNote(account, assessment, view)}
          how={how(account.roomCredit, 'room heat')}
        />
        {!isNothing(account.coolingCost) && (
          <BillLine
            name={account.coolingCost.likely > 0 ? 'Plus: summer cooling' : 'Less: summer cooling saved'}
            value={money(account.coolingCost.likely)}
            range={range(account.coolingCost)}
            how={how(account.coolingCost, 'summer cooling')}
          />
        )}
        {account.dehumidifierCost !== null && account.dehumidifierElectricity !== null && (
          <BillLine
            name={`Plus: dehumidifier, ${sayQuantity(account.dehumidifierElectricity.likely, 'energy', view)}`}
            value={money(account.dehumidifierCost.likely)}
            range={range(account.dehumidifierCost)}
            how={how(account.dehumidifierCost, 'dehumidifier')}
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
          name={purchaseNames[account.scenario]}
          value={money(account.purchase)}
          range={range(account.purchaseRange)}
          how={account.scenario !== 'plainHeater' && how({ result: `accounts.${account.scenario}.purchase` }, 'to buy')}
        />
        <BillLine
          total
          name="Over its life, per year"
          value={money(account.lifeCostPerYear.likely)}
          range={range(account.lifeCostPerYear)}
          how={how(account.lifeCostPerYear, 'over its life, per year')}
        />
      </dl>
      {account.scenario === 'insulationOnly' && (
        <p className="bill-more">
          <PageLink page="what-to-wrap">What is wrapped, and what each measure saves</PageLink>
        </p>
      )}
    </article>
  );
}

const purchaseNames: Readonly<Record<ScenarioAccount['scenario'], string>> = {
  plainHeater: 'To buy',
  insulationOnly: 'To buy, wrapping and a plain heater',
  thisLoop: 'To buy, a plain heater beside it included',
  certifiedHeatPump: 'To buy, a plain heater beside it included',
};

function creditName({ roomHeat }: ScenarioAccount, view: UnitView): string {
  const energy = sayQuantity(Math.abs(roomHeat.likely), 'energy', view);
  return roomHeat.likely >= 0 ? `Less: room heat gained, ${energy}` : `Plus: room heat taken, ${energy}`;
}

/** Why the credit is no larger, or zero: months without heating, and the vapour that warms nothing. */
function creditNote({ months, dehumidifierCost }: ScenarioAccount, { year }: Assessment, view: UnitView): string {
  // Months at both ends of the heated time may be heated in part.
  const unheated = Number(months.reduce((sum, { heated }) => sum + 1 - heated, 0).toFixed(1));
  const vapour = year.reduce((sum, month) => sum + month.vapourHeat, 0);
  const left = vapour > 0 ? vapourNote(dehumidifierCost !== null, vapour, view) : ' No heat leaves as vapour.';
  if (unheated === months.length) return `Nothing is credited: the room is heated in no month.${left}`;
  const when =
    unheated === 0
      ? 'The room is heated in every month.'
      : `Heat of the ${unheated === 1 ? 'month' : `${unheated} months`} without heating is not counted.`;
  return when + left;
}

/** Vapour warms nothing, unless a dehumidifier turns it back into water. */
function vapourNote(isDried: boolean, vapour: number, view: UnitView): string {
  if (isDried) return ' What leaves as vapour comes back as heat at the dehumidifier, and is counted.';
  return ` ${sayQuantity(vapour, 'energy', view)} a year leave as vapour and are not counted.`;
}

/** Exactly nothing, whatever the inputs. */
function isNothing(band: Band): boolean {
  return band.low === 0 && band.high === 0;
}

interface BillLineProps {
  readonly name: string;
  readonly value: string;
  readonly range?: string | undefined;
  readonly note?: string;
  readonly total?: boolean;
  readonly how?: ReactNode;
}

function BillLine({ name, value, range, note, total, how }: BillLineProps): ReactNode {
  return (
    <div className={total ? 'total' : undefined}>
      <dt>{name}</dt>
      <dd>{value}</dd>
      {range !== undefined && <dd className="bill-range">{range}</dd>}
      {note !== undefined && <dd className="bill-note">{note}</dd>}
      {how && <dd className="bill-how">{how}</dd>}
    </div>
  );
}
