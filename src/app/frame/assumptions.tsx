// The assumptions left: every value nobody gave, with how far it moves the verdict, its range, where that comes from, how one
// would find out, and a field to replace it.

import { type ReactNode, useState } from 'react';
import type { AssumptionLeft, Influence, ResultRange } from '../../assess/index.ts';
import { fieldRecord } from '../../design/index.ts';
import { sayBand, sayRange, type UnitView } from '../../quantities/index.ts';
import '../doubt/doubt.css';
import { assumptionValue, DesignField } from '../fields/design-field.tsx';
import { KindField } from '../fields/kind-field.tsx';
import { useWorkbench } from '../state/context.tsx';
import { useRange } from '../state/use-range.ts';
import { Dialog } from '../ui/dialog.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import type { AssessAnswer } from '../worker/messages.ts';

export interface AssumptionsProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
  readonly close: () => void;
}

/** How one assumption moves the verdict: what can be said of the load, and what the loop costs. */
interface Bearing {
  readonly onMargin: Influence | undefined;
  readonly onCost: ResultRange['moves'][number] | undefined;
}

export function Assumptions({ answer, view, close }: AssumptionsProps): ReactNode {
  const { assessment } = answer;
  // The list stays as it was when it was opened: a field must not vanish under the hand that fills it.
  const [{ assumptions, influences }] = useState(assessment);
  const { document } = useWorkbench();
  const cheapest = assessment.loopAgainst.find(({ isCheapest }) => isCheapest);
  const cost = useRange(cheapest?.lifeCost.result, assessment);
  const left = assessment.assumptions.filter(({ path }) => fieldRecord(path, document) !== undefined).length;
  // By what moves the margin; among the rest by what moves the cost, as it was when that first arrived.
  const [firstCost, setFirstCost] = useState<ResultRange | undefined>(undefined);
  if (firstCost === undefined && cost !== undefined) setFirstCost(cost);
  const rank = (path: string) => rankIn(influences, path) + rankIn(firstCost?.moves ?? [], path) / 1000;
  const sorted = assumptions.toSorted((a, b) => rank(a.path) - rank(b.path));
  const mine = sorted.filter((assumption) => fieldRecord(assumption.path, document) !== undefined);
  const models = sorted.filter((assumption) => fieldRecord(assumption.path, document) === undefined);
  const bearingOf = ({ path }: AssumptionLeft): Bearing => ({
    onMargin: assessment.influences.find((influence) => influence.path === path),
    onCost: cost?.moves.find((move) => move.path === path),
  });
  const facts = (assumption: AssumptionLeft) => (
    <Facts
      assumption={assumption}
      assumed={assumptionValue(assumption, fieldRecord(assumption.path, document), document, view)}
      isGiven={!assessment.assumptions.some(({ path }) => path === assumption.path)}
      bearing={bearingOf(assumption)}
      currency={assessment.currency}
      other={cheapest?.label ?? ''}
      view={view}
    />
  );
  return (
    <Dialog title={left === 1 ? '1 assumption left' : `${left} assumptions left`} close={close}>
      <p>
        Each stands for something nobody has told yet. Those that move the verdict most stand first. A number of your
        own replaces the assumption at once; a range is a number too.
      </p>
      <p className="quiet">
        Margin: heat delivered less heat needed, now {sayBand(assessment.margin, 'power', view)}. At 0 the machine just
        carries the load.
      </p>
      <ul className="assumption-list">
        {mine.map((assumption) => {
          const record = fieldRecord(assumption.path, document)!;
          return (
            <li key={assumption.path}>
              {record.type === 'kind' ? <KindField record={record} /> : <DesignField record={record} />}
              {facts(assumption)}
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
                {facts(assumption)}
              </li>
            ))}
          </ul>
        </details>
      )}
    </Dialog>
  );
}

/** Place among the inputs that move a result worth speaking of; all others share the last. */
function rankIn(moves: readonly { readonly path: string; readonly share: number }[], path: string): number {
  const telling = moves.filter(({ share }) => share >= smallest);
  const found = telling.findIndex((move) => move.path === path);
  return found === -1 ? telling.length : found;
}

interface FactsProps {
  readonly assumption: AssumptionLeft;
  /** What is assumed, as it was when the list was opened: "5 to 14 cm³". */
  readonly assumed: string;
  /** Given since the list was opened. */
  readonly isGiven: boolean;
  readonly bearing: Bearing;
  readonly currency: string;
  /** The cheapest other way, which the cost is held against. */
  readonly other: string;
  readonly view: UnitView;
}

/** Shares of the doubt below this are not worth a line. */
const smallest = 0.001;

function Facts({ assumption, assumed, isGiven, bearing, currency, other, view }: FactsProps): ReactNode {
  const { onMargin, onCost } = bearing;
  const moves = [
    ...(onMargin !== undefined && onMargin.share >= smallest
      ? [
          <span key="margin">
            Moves the margin from <strong>{endsOf(onMargin.marginAtLow, onMargin.marginAtHigh, 'power', view)}</strong>,{' '}
            {sayShare(onMargin.share, view)} of its doubt.
          </span>,
        ]
      : []),
    ...(onCost !== undefined && onCost.share >= smallest
      ? [
          <span key="cost">
            Moves what this loop costs more than {other} from{' '}
            <strong>{endsOf(onCost.atLow, onCost.atHigh, 'money', view, currency)}</strong> a year,{' '}
            {sayShare(onCost.share, view)} of its doubt.
          </span>,
        ]
      : []),
  ];
  const measure = onMargin?.measure ?? onCost?.measure;
  return (
    <div className="assumption-facts">
      {moves.length > 0 ? moves : <span>{silence(assumption, isGiven)}</span>}
      <span>
        {isGiven ? 'You gave it. Before, it was assumed:' : 'Assumed:'} {assumed}. From: {assumption.source}.
      </span>
      {measure !== undefined && <span>To know better, {measure}.</span>}
    </div>
  );
}

function sayShare(share: number, view: UnitView): string {
  return share < 0.01 ? 'under 1 %' : say(share, 'fraction', view);
}

function silence({ value }: AssumptionLeft, isGiven: boolean): string {
  if (isGiven) return 'Given as one value, it adds no doubt to the verdict.';
  return typeof value === 'string'
    ? 'A choice has no range: what another choice would do shows when you choose it.'
    : 'It moves neither the margin nor the cost worth speaking of.';
}

function endsOf(one: number, other: number, quantity: 'power' | 'money', view: UnitView, currency?: string): string {
  const band = { low: Math.min(one, other), likely: (one + other) / 2, high: Math.max(one, other) };
  return sayRange(band, quantity, view, currency === undefined ? {} : { currency });
}
