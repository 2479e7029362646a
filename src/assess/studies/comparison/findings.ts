// What the rules of caution say of a design with another fluid in it. On the fluid its compressor was made for everything
// of the assessment counts, with its ranges: whether figures of a charge are withheld hangs on it. Any other fluid is stopped
// in any case; there the rules are asked at likely values.

import { findCautions } from '../../../cautions/index.ts';
import type { DesignDocument } from '../../../design/index.ts';
import { KettlefinError } from '../../../numerics/index.ts';
import type { Finding } from '../../../quantities/index.ts';
import { BareAssessor } from '../../bare-assessor.ts';
import { cautionFacts } from '../../caution-facts/caution-facts.ts';
import { StageRunner } from '../../stage.ts';
import { type StageResults, stages } from '../../stages/index.ts';
import { fluidFindings } from '../fluid-findings.ts';
import { onFluid, type Subject } from './subject.ts';
import { comparedStages } from './values.ts';

/** All findings about the design with this fluid in it. Rules about a charge count only where it is this fluid's. */
export function findingsFor(subject: Subject, fluid: string): readonly Finding[] {
  const { design, charge } = subject;
  const found =
    fluid === design.machine.compressor.madeFor ? assessedFindings(subject, fluid) : likelyFindings(subject, fluid);
  return found.filter(({ facts }) => charge.fluid === fluid || facts.chargeHigh === undefined);
}

function assessedFindings(subject: Subject, fluid: string): readonly Finding[] {
  const { document } = subject;
  const onIt: DesignDocument = {
    ...document,
    machine: { ...document.machine, refrigerant: fluid },
  };
  const outcome = new BareAssessor().assess(onIt, 'metric');
  return outcome.ok
    ? [...outcome.assessment.findings, ...outcome.assessment.cautions]
    : fluidFindings(subject.design, fluid);
}

function likelyFindings(subject: Subject, fluid: string): readonly Finding[] {
  const design = onFluid(subject.design, fluid);
  const months = ['monthLoads', 'monthOperating'];
  const needed = stages.filter(({ name }) => [...comparedStages, ...months].includes(name));
  try {
    const results = new StageRunner<StageResults>(needed).run(design);
    return findCautions(cautionFacts(design, results, subject.resolution.design));
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return fluidFindings(subject.design, fluid);
  }
}
