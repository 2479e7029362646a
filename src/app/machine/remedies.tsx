// What would help a machine that is loaded too hard: each remedy simulated, beside how it runs without.

import type { ReactNode } from 'react';
import {
  type MachineStudy,
  type Remedy,
  type RemedyState,
  remedyBasis,
  remedyReasons,
  remedyWords,
  whenWords,
} from '../../assess/index.ts';
import { listed, type UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { Part } from './part.tsx';

interface RemediesProps {
  readonly study: MachineStudy;
  readonly view: UnitView;
}

export function Remedies({ study, view }: RemediesProps): ReactNode {
  const [first] = study.remedies;
  if (first === undefined) return null;
  const labels = new Map(study.limits.map(({ limit, label }) => [limit, label]));
  const named = (limits: readonly string[]) => listed(limits.map((limit) => labels.get(limit) ?? limit));
  return (
    <Part name="remedies" title="What would help it" brief={briefly(study)}>
      <p>
        Simulated {whenWords[first.when]}, where its motor is loaded most, one at a time; likely values.{' '}
        {first.before.passed.length === 0
          ? 'It passes no limit there as it is, so none of these is needed for its sake.'
          : `As it is, it passes there: ${named(first.before.passed)}.`}
      </p>
      <ScrollBox className="table-scroll" label="Remedies, each beside the machine as it is">
        <table className="data remedies">
          <caption className="for-reader">Remedies, each beside the machine as it is</caption>
          <thead>
            <tr>
              <th scope="col">What is done</th>
              {columns.map(({ label }) => (
                <th key={label} scope="col" className="number">
                  {label}
                </th>
              ))}
              <th scope="col">What comes of it</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">Nothing</th>
              <Numbers state={first.before} view={view} />
              <td className="outcome">
                {first.before.passed.length === 0 ? 'no limit passed' : `past: ${named(first.before.passed)}`}
              </td>
            </tr>
            {study.remedies.map((remedy) => (
              <tr key={remedy.name}>
                <th scope="row">{remedyWords(remedy, view)}</th>
                {remedy.after === null ? (
                  <td colSpan={columns.length + 1}>
                    {remedy.reason === null ? 'It could not be simulated.' : remedyReasons[remedy.reason]}
                  </td>
                ) : (
                  <>
                    <Numbers state={remedy.after} view={view} />
                    <td className="outcome">{outcome(remedy, remedy.after, named)}</td>
                  </>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      <p className="quiet">{remedyBasis}</p>
    </Part>
  );
}

function briefly({ remedies }: MachineStudy): string {
  const passed = remedies[0]?.before.passed.length ?? 0;
  if (passed === 0) return 'It passes no limit as it is.';
  const whole = remedies.filter(({ after }) => after !== null && after.passed.length === 0).length;
  const limits = passed === 1 ? 'the limit it passes' : `the ${passed} limits it passes`;
  if (whole > 0)
    return `${whole} of ${remedies.length} simulated ${whole === 1 ? 'keeps' : 'keep'} it within ${limits}.`;
  const some = remedies.filter(({ cures }) => cures.length > 0).length;
  return some > 0
    ? `None of ${remedies.length} simulated keeps it within ${limits}; ${some === 1 ? 'one cures' : `${some} cure`} some of it.`
    : `None of ${remedies.length} simulated keeps it within ${limits}.`;
}

interface Column {
  readonly label: string;
  readonly said: (state: RemedyState, view: UnitView) => string;
}

const columns: readonly Column[] = [
  { label: 'Heat, averaged', said: ({ meanHeat }, view) => say(meanHeat, 'power', view, 2) },
  { label: 'Electricity, averaged', said: ({ meanPower }, view) => say(meanPower, 'electricPower', view, 2) },
  { label: 'Current', said: currentWords },
  { label: 'Motor load', said: ({ motorLoad }, view) => say(motorLoad, 'fraction', view, 2) },
  { label: 'Discharge', said: ({ dischargeTemperature }, view) => say(dischargeTemperature, 'temperature', view) },
];

function Numbers({ state, view }: { readonly state: RemedyState; readonly view: UnitView }): ReactNode {
  return columns.map(({ label, said }) => (
    <td key={label} className="number">
      {said(state, view)}
    </td>
  ));
}

function currentWords({ current, currentShare }: RemedyState, view: UnitView): string {
  const said = say(current, 'current', view, 2);
  return currentShare === null ? said : `${said}, ${say(currentShare, 'fraction', view, 2)} of rated`;
}

function outcome({ cures }: Remedy, after: RemedyState, named: (limits: readonly string[]) => string): string {
  const cured = cures.length === 0 ? [] : [`no longer past: ${named(cures)}`];
  const left = after.passed.length === 0 ? [] : [`still past: ${named(after.passed)}`];
  return [...cured, ...left].join('; ') || 'no limit passed';
}
