// The machine: what it is, how near its limits it runs, how well it compresses, and what could hurt someone.

import { Fragment, type ReactNode } from 'react';
import type { Assessment, LimitMargin, OperatingAnswer } from '../../assess/index.ts';
import { machineCautions } from '../../cautions/index.ts';
import { type Band, isQuantityName, type QuantityName, sayBand, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { Findings, saidFindings } from '../ui/findings.tsx';
import { NumberItem, Numbers } from '../ui/number.tsx';
import { ResultLink } from '../ui/result-link.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import type { AssessAnswer } from '../worker/messages.ts';
import { Station, type StationProps } from './station.tsx';

export function TheMachine({ answer, view }: StationProps): ReactNode {
  const { assessment } = answer;
  const { operating } = assessment;
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
            band={operating.shellHeat}
            quantity="power"
            view={view}
            workings={assessment.workings}
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
        <LimitTable operating={operating} workings={assessment.workings} view={view} />
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
        : ` The limit it would meet first: ${first.label}, ${leftWords(first, operating, view)} left.`;
  return `On ${operating.refrigerant} it would draw ${sayBand(compressorPower, 'electricPower', view)} in the coldest spell.${limit}`;
}

interface LimitTableProps {
  readonly operating: OperatingAnswer;
  readonly workings: Assessment['workings'];
  readonly view: UnitView;
}

function LimitTable({ operating, workings, view }: LimitTableProps): ReactNode {
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
          {operating.limits.map((limit) => (
            <tr key={limit.limit}>
              <th scope="row">{sentenceStart(limit.label)}</th>
              <td className="number">
                <ResultLink
                  workings={workings}
                  result={bandOfLimit(limit, operating).result}
                  of={`${limit.label}, now`}
                >
                  {sayBand(bandOfLimit(limit, operating), quantityOf(limit.quantity), view)}
                </ResultLink>
              </td>
              <td className="number">{sayLimit(limit.bound, limit.quantity, view)}</td>
              <td className="number">
                <ResultLink
                  workings={workings}
                  result={`operating.limits.${limit.limit}`}
                  of={`${limit.label}, distance left`}
                >
                  {leftWords(limit, operating, view)}
                </ResultLink>
              </td>
              <td>
                <LimitState limit={limit} left={leftOf(limit, operating)} />
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

/** Passed, passed at one end of its range only, or not met. */
function LimitState({ limit, left }: { limit: LimitMargin; left: Band }): ReactNode {
  if (limit.passed) return <StateMark kind="look" word="passed" />;
  return left.low < 0 ? <StateMark kind="look" word="passed at one end" /> : <StateMark kind="plain" word="not met" />;
}

/** The range of the number that a limit is about. */
function bandOfLimit({ limit, value }: LimitMargin, operating: OperatingAnswer): Band & { readonly result?: string } {
  if (limit.startsWith('evaporating')) return operating.evaporatingTemperature;
  if (limit.startsWith('condensing')) return operating.condensingTemperature;
  if (limit.startsWith('discharge')) return operating.dischargeTemperature;
  if (limit.startsWith('pressureRatio')) return operating.pressureRatio;
  return { low: value, likely: value, high: value };
}

/** The distance left with its range; negative once passed. */
function leftOf(limit: LimitMargin, operating: OperatingAnswer): Band {
  const { low, high } = bandOfLimit(limit, operating);
  const isUpper = limit.bound - limit.value === limit.margin;
  const ends = isUpper ? [limit.bound - high, limit.bound - low] : [low - limit.bound, high - limit.bound];
  return { low: ends[0]!, likely: limit.margin, high: ends[1]! };
}

/** The distance of a temperature level is a difference. */
function leftWords(limit: LimitMargin, operating: OperatingAnswer, view: UnitView): string {
  const quantity = limit.quantity === 'temperature' ? 'temperatureDifference' : quantityOf(limit.quantity);
  return sayBand(leftOf(limit, operating), quantity, view);
}
