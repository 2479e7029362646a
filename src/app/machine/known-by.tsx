// How the machine is known: what was printed or measured of it beside what the likely machine makes of that, which values do not
// fit the rest, and how far the model itself may be off here.

import type { ReactNode } from 'react';
import { doubtWords, evidenceWords, type MachineAnswer } from '../../assess/index.ts';
import { type DesignNotice, fieldRecord, noticesOf, sayNotice } from '../../design/index.ts';
import { listed, sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Fold } from '../ui/fold.tsx';
import { PageLink } from '../ui/page-link.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { StateMark } from '../ui/state-mark.tsx';
import { quantityNamed } from './quantity-named.ts';
import { fieldOfResidual, type KnownResidual, offBy } from './residual-words.ts';
import { TablesRead, tablesPath } from './tables-read.tsx';

interface KnownByProps {
  readonly machine: MachineAnswer;
  readonly view: UnitView;
}

export function KnownBy({ machine, view }: KnownByProps): ReactNode {
  const { document } = useWorkbench();
  const { residuals, displacement } = machine;
  const odd = residuals.filter(({ disagrees }) => disagrees);
  const unusual = noticesOf(document);
  // Those of tables stand beside what was read of them.
  const single = residuals.filter(({ path }) => !path.startsWith(`${tablesPath}.`));
  return (
    <section className="block">
      <h3 id="known-by-title" tabIndex={-1}>
        How it is known
      </h3>
      <p>
        {residuals.length === 0
          ? 'Nothing printed or measured of it has been given: every number here is the range of such machines. A nameplate, a rating, a data sheet or an hour with thermometers on its pipes would narrow them; each has its place under “I know more”.'
          : fitWords(residuals.length, odd.length)}{' '}
        It sweeps {sayBand(displacement, 'displacement', view)} per revolution.
      </p>
      <p>{doubtSentence(machine, view)}</p>
      {odd.length + unusual.length > 0 && (
        <ul className="known-odd">
          {unusual.map((notice) => (
            <li key={notice.code}>
              <StateMark kind="look" word={unusualWords(notice)} />{' '}
              <PageLink page="the-machine" part={notice.path}>
                look at it
              </PageLink>
            </li>
          ))}
          {odd.map((residual) => (
            <li key={`${residual.path} ${residual.of}`}>
              <StateMark kind="look" word={oddWords(residual, view)} />{' '}
              <PageLink page="the-machine" part={fieldOfResidual(residual)}>
                look at it
              </PageLink>
            </li>
          ))}
        </ul>
      )}
      {single.length > 0 && (
        <Fold
          className="fields-more"
          open={single.some(({ disagrees }) => disagrees)}
          summary={`What was given beside what the machine makes of it (${single.length})`}
        >
          <ResidualTable residuals={single} view={view} />
        </Fold>
      )}
      <TablesRead residuals={residuals} view={view} />
    </section>
  );
}

/** A field of the design by the name it has on the page. */
function unusualWords(notice: DesignNotice): string {
  return sayNotice({ ...notice, path: fieldRecord(notice.path)?.label ?? notice.path });
}

function fitWords(count: number, odd: number): string {
  const given = count === 1 ? 'One value was given of it' : `${count} values were given of it`;
  if (odd === 0) return `${given}, and a machine that meets ${count === 1 ? 'it' : 'all of them'} is likely.`;
  const which = odd === 1 ? 'one of them does not' : `${odd} of them do not`;
  return count === 1
    ? `${given}, and it does not fit such machines.`
    : `${given}; ${which} fit the rest. A misprint, a wrong unit or another convention of gas and liquid is the usual reason.`;
}

function doubtSentence({ doubt: { flow, power, reasons } }: MachineAnswer, view: UnitView): string {
  const half = (value: number) => `±\u00a0${sayQuantity(value, 'fraction', view, 2)}`;
  const why = reasons.flatMap((reason) => doubtWords[reason] ?? []);
  const since = why.length === 0 ? '' : `, since ${listed(why)}`;
  return `The model itself may be off where the machine would run: by ${half(flow.halfWidth)} of the flow and ${half(power.halfWidth)} of the power${since}.`;
}

function oddWords({ label, quantity, given, modelled }: KnownResidual, view: UnitView): string {
  const value = (number: number) => say(number, quantityNamed(quantity), view, 3);
  return `${sentenceStart(label)}: ${value(given)} was given, ${value(modelled)} would fit.`;
}

function ResidualTable({
  residuals,
  view,
}: {
  readonly residuals: readonly KnownResidual[];
  readonly view: UnitView;
}): ReactNode {
  return (
    <ScrollBox className="table-scroll" label="What was given beside what the machine makes of it">
      <table className="data">
        <caption className="for-reader">Values that were given, and what the likely machine makes of them</caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">What</th>
            <th scope="col" className="number">
              Given
            </th>
            <th scope="col" className="number">
              Modelled
            </th>
            <th scope="col" className="number">
              Off by
            </th>
            <th scope="col">State</th>
          </tr>
        </thead>
        <tbody>
          {residuals.map((residual) => (
            <tr key={`${residual.path} ${residual.of}`}>
              <th scope="row">
                <PageLink page="the-machine" part={fieldOfResidual(residual)}>
                  {sentenceStart(residual.label)}
                </PageLink>
              </th>
              <td>{evidenceWords[residual.of]}</td>
              <td className="number">{say(residual.given, quantityNamed(residual.quantity), view, 3)}</td>
              <td className="number">{say(residual.modelled, quantityNamed(residual.quantity), view, 3)}</td>
              <td className="number">{offBy(residual, view)}</td>
              <td>
                {residual.disagrees ? (
                  <StateMark kind="look" word="does not fit" />
                ) : (
                  <StateMark kind="plain" word="fits" />
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}
