// One measure: what it changes, what it costs, what it saves beside those before it, in the account of the tank and in that of
// the room, when it has paid for itself, and its fields.

import { type ReactNode, useId } from 'react';
import { type MeasureAlone, sayPayback, sayYears, type WrappingAnswer, type WrappingGain } from '../../assess/index.ts';
import { fieldsOf } from '../../design/index.ts';
import { type Band, listed, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { Fields } from '../fields/fields.tsx';
import { useWorkbench } from '../state/context.tsx';
import { sayParts, sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { hasOwnMeasures, measuresPath, placeOf } from './list-edits.ts';
import { heatPumpStepsOf, marksOf } from './marks.ts';

export interface MeasureCardProps {
  readonly measure: MeasureAlone;
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
  /** Whether its fields are shown; only a measure of the design's own list has some. */
  readonly isOpen: boolean;
  readonly change: () => void;
  readonly remove: () => void;
}

export function MeasureCard({ measure, answer, view, isOpen, change, remove }: MeasureCardProps): ReactNode {
  const { document } = useWorkbench();
  const title = useId();
  const place = answer.inTurn.findIndex(({ id }) => id === measure.id);
  const step = answer.inTurn[place];
  const item = `${measuresPath}.${placeOf(document, answer, measure.id)}.`;
  const fields =
    isOpen && hasOwnMeasures(document) ? fieldsOf(document).filter(({ path }) => path.startsWith(item)) : [];
  const name = sentenceStart(measure.name);
  return (
    <article className="bill measure" aria-labelledby={title}>
      <h4 id={title} tabIndex={-1} data-measure={measure.id}>
        {place >= 0 && `${place + 1}. `}
        {name}
      </h4>
      <p className="measure-marks">
        {marksOf(answer, measure.id).map((mark) => (
          <StateMark key={mark.word} kind={mark.kind} word={mark.word} />
        ))}
      </p>
      <p className="quiet">
        Changes: {listed(measure.changes.map(({ words }) => words))}.
        {measure.area !== null && ` ${sayQuantity(measure.area, 'area', view, 2)} to cover.`}
      </p>
      <Gains
        gain={step?.gain ?? measure.alone}
        measure={measure}
        answer={answer}
        view={view}
        isInTurn={step !== undefined}
      />
      <p className="item-tools">
        <button
          type="button"
          className="plain"
          aria-expanded={fields.length > 0}
          aria-label={`Change it: ${name}`}
          onClick={change}
        >
          Change it
        </button>
        <button type="button" className="plain" aria-label={`Remove: ${name}`} onClick={remove}>
          Remove
        </button>
      </p>
      {fields.length > 0 && <Fields records={fields} />}
    </article>
  );
}

interface GainsProps {
  readonly gain: WrappingGain;
  readonly measure: MeasureAlone;
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
  readonly isInTurn: boolean;
}

function Gains({ gain, measure, answer, view, isInTurn }: GainsProps): ReactNode {
  const { currency, basis } = answer;
  const money = (band: Band) => sayParts(band, 'money', view, currency);
  const alone = sayParts(measure.alone.loadSaved, 'power', view).likely;
  const saved = sayParts(gain.loadSaved, 'power', view);
  return (
    <dl>
      <Line
        name="Saves in the coldest spell"
        {...saved}
        note={isInTurn && alone !== saved.likely ? `${alone} on the tank as it is, without the others` : undefined}
      />
      <Line name="Heat saved in a year" {...sayParts(gain.heatSaved, 'energy', view)} />
      <Line name="Tank: electricity not paid" {...money(gain.electricitySaved)} />
      <Line name={roomName(gain.roomCreditChange)} {...money(gain.roomCreditChange)} />
      {!isNothing(gain.coolingSaved) && <Line name="Room: summer cooling saved" {...money(gain.coolingSaved)} />}
      <Line total name="Saved a year, tank and room" {...money(gain.netSaving)} />
      <Line
        name={measure.cost.origin === 'typed' ? 'To buy' : 'To buy (assumed)'}
        {...money(measure.cost)}
        note={measure.cost.origin === 'typed' ? undefined : measure.cost.source}
      />
      <Line
        name="Has paid for itself"
        likely={afterYears(sayPayback(gain.payback))}
        range={undefined}
        note={`With interest: ${sayPayback(gain.discountedPayback)}`}
      />
      <Line total name={`Worth over ${sayYears(basis.years)}, less its cost`} {...money(gain.netValue)} />
      {heatPumpStepsOf(answer, measure.id).map(({ machine, step }) => (
        <Line
          key={machine.heat}
          name={`The same with ${machine.label}`}
          likely={money({ low: step.netValue, likely: step.netValue, high: step.netValue }).likely}
          range={undefined}
          note={step.stopsPaying ? 'No longer pays: heat saved is worth less where heat is cheaper.' : undefined}
        />
      ))}
    </dl>
  );
}

function roomName({ likely }: Band): string {
  return likely > 0 ? 'Room: more heat from the tank' : 'Room: heat it no longer gets';
}

function afterYears(payback: string): string {
  return /^\d/.test(payback) ? `after ${payback}` : payback;
}

function isNothing(band: Band): boolean {
  return band.low === 0 && band.high === 0;
}

interface LineProps {
  readonly name: string;
  readonly likely: string;
  readonly range: string | undefined;
  readonly note?: string | undefined;
  readonly total?: boolean;
}

function Line({ name, likely, range, note, total = false }: LineProps): ReactNode {
  return (
    <div className={total ? 'total' : undefined}>
      <dt>{name}</dt>
      <dd>{likely}</dd>
      {range !== undefined && <dd className="bill-range">{range}</dd>}
      {note !== undefined && <dd className="bill-note">{note}</dd>}
    </div>
  );
}
