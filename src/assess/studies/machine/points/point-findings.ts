// What is to be known beside one running point: whether the fluid belongs into the machine, what of its description does not fit,
// where the model is extrapolated, and ends of ranges without an answer.

import { worstFirst } from '../../../../cautions/index.ts';
import type { OperatingPoint } from '../../../../loop/index.ts';
import type { Finding } from '../../../../quantities/index.ts';
import type { UnansweredEnd } from '../../../doubt/doubt.ts';
import { coefficientFindings } from '../../../findings/coefficient-findings.ts';
import {
  disagreementFindings,
  nameplateFindings,
  operatingFindings,
  unansweredFinding,
} from '../../../findings/model-findings.ts';
import { fluidFindings } from '../../fluid-findings.ts';
import type { MachineSubject } from '../subject.ts';

export function pointFindings(
  { design, results }: MachineSubject,
  point: OperatingPoint,
  fluid: string,
  unanswered: readonly UnansweredEnd[],
): readonly Finding[] {
  return worstFirst([
    ...fluidFindings(design, fluid),
    ...nameplateFindings(design.described.nameplate),
    ...coefficientFindings(design),
    ...disagreementFindings(results.identified),
    ...operatingFindings({ operating: point }),
    ...unanswered.map(unansweredFinding),
  ]);
}
