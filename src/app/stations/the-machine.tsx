// The machine: what it is, what it would do here and how that is known; how it runs over the evaporating temperature, how near its
// limits, what was found, and what could hurt someone. What would help, how many of them, another fluid in it and how it starts
// stand folded, each with its answer in a few words.

import type { ReactNode } from 'react';
import { sayMachine, withholdsCharge } from '../../assess/index.ts';
import { Found, MachineCautions } from '../machine/found.tsx';
import { HowMany } from '../machine/how-many.tsx';
import { KnownBy } from '../machine/known-by.tsx';
import { Limits } from '../machine/limits.tsx';
import { MachineNumbers, MoreNumbers } from '../machine/machine-numbers.tsx';
import { MapCharts } from '../machine/map-charts.tsx';
import { OtherFluids } from '../machine/other-fluids.tsx';
import { PartLinks } from '../machine/part.tsx';
import { Remedies } from '../machine/remedies.tsx';
import { Starting } from '../machine/starting.tsx';
import { useWorkbench } from '../state/context.tsx';
import { useStudy } from '../state/use-study.ts';
import '../../parts/every-machine-reading/index.ts';
import '../fluids/refrigerant-field.tsx';
import '../bills/bills.css';
import '../machine/machine.css';
import { Station, type StationProps } from './station.tsx';

/** In the order of the page. */
const parts = [
  ['station-inputs', 'What it rests on'],
  ['known-by', 'How it is known'],
  ['machine-map', 'How it runs'],
  ['limits', 'Limits'],
  ['findings', 'What was found'],
  ['remedies', 'What would help'],
  ['how-many', 'How many'],
  ['other-fluids', 'Another fluid'],
  ['starting', 'Starting'],
  ['more-numbers', 'More numbers'],
] as const;

export function TheMachine({ answer, view }: StationProps): ReactNode {
  const { document } = useWorkbench();
  const { reply, problems, isOld } = useStudy('machine', document, view);
  const { assessment } = answer;
  const { machine, operating, tankLoad } = assessment;
  const className = isOld ? 'machine-study stale' : 'machine-study';
  return (
    <Station
      name="the-machine"
      answer={sayMachine(isOld || reply === undefined ? machine : reply.study.sentence, operating.refrigerant, view)}
      numbers={<MachineNumbers assessment={assessment} view={view} />}
      before={
        <>
          <PartLinks parts={parts} />
          <MachineCautions />
        </>
      }
    >
      <KnownBy machine={machine} view={view} />
      {reply === undefined && problems.length === 0 && (
        <p className="quiet">How it runs elsewhere, what would help it and how many it takes are being worked out.</p>
      )}
      {problems.length > 0 && <p className="quiet">The machine cannot be studied any further: {problems.join(' ')}</p>}
      {reply !== undefined && (
        <div className={className}>
          <MapCharts study={reply.study} needed={tankLoad} view={view} />
        </div>
      )}
      <Limits assessment={assessment} study={isOld ? undefined : reply?.study} view={view} />
      <Found answer={answer} />
      {reply !== undefined && (
        <div className={`${className} machine-parts`}>
          <Remedies study={reply.study} view={view} />
          <HowMany
            howMany={reply.study.howMany}
            isChargeWithheld={withholdsCharge(assessment.standing, 'machine.charge')}
            view={view}
          />
          <OtherFluids fluids={reply.study.otherFluids} stopWords={reply.stopWords} view={view} />
          <Starting facts={reply.study.starting} view={view} />
        </div>
      )}
      <MoreNumbers assessment={assessment} view={view} />
    </Station>
  );
}
