// The machine: what it is, how near its limits it runs, how well it compresses, and what could hurt someone.

import { Fragment, type ReactNode } from 'react';
import type { Assessment, LimitMargin } from '../../assess/index.ts';
import { machineCautions } from '../../cautions/index.ts';
import { isQuantityName, type QuantityName, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import { say, sayParts, sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import type { AssessAnswer } from '../worker/messages.ts';
import { Station, type StationProps } from './station.tsx';

export function TheMachine({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { operating, flows } = assessment;
  return (
    <Station
      name="the-machine"
      answer={answerSentence(assessment, view)}
      numbers={
        <Numbers>
          <NumberItem
            label="Heat to the water, running"
            band={assessment.heatDelivered}
            quantity="power"
            view={view}
            ink="into-water"
            workings={assessment.workings}
          />
          <NumberItem
            label="Electricity of the compressor"
            band={assessment.compressorPower}
            quantity="electricPower"
            view={view}
            ink="electricity"
            workings={assessment.workings}
          />
          <NumberItem
            label="Shell heat, lost beside the water"
            band={exactly(flows.shellHeat)}
            quantity="power"
            view={view}
            workings={assessment.workings}
            result="operating.compressor.shellHeat"
          />
          <NumberItem
            label="Volumetric efficiency"
            band={operating.volumetricEfficiency}
            quantity="fraction"
            view={view}
            workings={assessment.workings}
          />
          <NumberItem
            label="Overall efficiency"
            band={operating.overallEfficiency}
            quantity="fraction"
            view={view}
            workings={assessment.workings}
          />
          <NumberItem
            label="Refrigerant flow"
            band={operating.massFlow}
            quantity="massFlow"
            view={view}
            workings={assessment.workings}
          />
        </Numbers>
      }
      before={<MachineCautions />}
    >
      <section className="block">
        <h3>How near its limits</h3>
        <p className="quiet">In the coldest spell. The limit met first stands at the top.</p>
        <LimitTable limits={operating.limits} view={view} />
      </section>
      <section className="block">
        <h3 id="findings-title" tabIndex={-1}>
          What was found
        </h3>
        <p className="quiet">
          A limit that is not listed was not checked, or not found: neither says that all is well.
        </p>
        <Findings said={saidFindings(answer, ['machine', 'person', 'house'])} none="No limit found." />
        <FoundElsewhere answer={answer} />
      </section>
    </Station>
  );
}

/** What else is to be stopped for or looked at stands with the animals and with the model; here is the way there. */
function FoundElsewhere({ answer }: { answer: AssessAnswer }): ReactNode {
  const { open } = useWorkbench();
  const places = [
    ['livestock', 'for the animals', 'what-leaves'],
    ['model', 'of the model', 'where-it-settles'],
  ] as const;
  const found = places
    .map(([subject, words, station]) => {
      const grave = saidFindings(answer, [subject]).filter(({ finding }) => finding.severity !== 'note');
      return { count: grave.length, words, station };
    })
    .filter(({ count }) => count > 0);
  if (found.length === 0) return null;
  return (
    <p className="elsewhere">
      Elsewhere:{' '}
      {found.map(({ count, words, station }, index) => (
        <Fragment key={station}>
          {index > 0 && ', '}
          <button type="button" className="linkish" onClick={() => open(station, 'findings')}>
            {count} {words}
          </button>
        </Fragment>
      ))}
    </p>
  );
}

function MachineCautions(): ReactNode {
  return (
    <section className="machine-cautions" aria-labelledby="machine-cautions-title">
      <h3 id="machine-cautions-title">Before anyone touches a machine</h3>
      <ul>
        {machineCautions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

function answerSentence({ operating, compressorPower }: Assessment, view: UnitView): string {
  const first = operating.limits[0];
  const limit =
    first === undefined
      ? ''
      : first.passed
        ? ` It is past a limit: ${first.label}.`
        : ` The limit it would meet first: ${first.label}, ${marginWords(first, view)} left.`;
  return `On ${operating.refrigerant} it would draw ${sayParts(compressorPower, 'electricPower', view).likely} in the coldest spell.${limit}`;
}

function LimitTable({ limits, view }: { limits: readonly LimitMargin[]; view: UnitView }): ReactNode {
  return (
    <div className="table-scroll">
      <table className="data">
        <caption className="for-reader">Limits of the machine with the distance left</caption>
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col" className="number">
              Now
            </th>
            <th scope="col" className="number">
              Limit at
            </th>
            <th scope="col" className="number">
              Left
            </th>
            <th scope="col">State</th>
          </tr>
        </thead>
        <tbody>
          {limits.map((limit) => (
            <tr key={limit.limit}>
              <th scope="row">{sentenceStart(limit.label)}</th>
              <td className="number">{sayLimit(limit.value, limit.quantity, view)}</td>
              <td className="number">{sayLimit(limit.bound, limit.quantity, view)}</td>
              <td className="number">{marginWords(limit, view)}</td>
              <td>
                <StateMark kind={limit.passed ? 'look' : 'plain'} word={limit.passed ? 'passed' : 'not met'} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function quantityOf(name: string): QuantityName {
  return isQuantityName(name) ? name : 'ratio';
}

function sayLimit(value: number, quantity: string, view: UnitView): string {
  return say(value, quantityOf(quantity), view);
}

/** The distance left; that of a temperature level is a difference. */
function marginWords({ margin, quantity }: LimitMargin, view: UnitView): string {
  return say(margin, quantity === 'temperature' ? 'temperatureDifference' : quantityOf(quantity), view);
}
