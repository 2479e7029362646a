// What is to be known beside one running point: whether the fluid belongs into the machine, what of its description does not fit,
// where the model is extrapolated, and ends of ranges without an answer.

import {
  cautionFluid,
  flammableFluidInUnsuitableEquipment,
  fluidAttacksCopper,
  fluidForStudyOnly,
  notForThisMachine,
  worstFirst,
} from '../../../../cautions/index.ts';
import type { OperatingPoint } from '../../../../loop/index.ts';
import { catalogueEntry } from '../../../../matter/refrigerants/index.ts';
import type { Finding } from '../../../../quantities/index.ts';
import type { UnansweredEnd } from '../../../doubt/doubt.ts';
import { disagreementFindings, operatingFindings, unansweredFinding } from '../../../model-findings.ts';
import type { StagedDesign } from '../../../stages/engine-assumptions.ts';
import type { MachineSubject } from '../subject.ts';

export function pointFindings(
  { design, results }: MachineSubject,
  point: OperatingPoint,
  fluid: string,
  unanswered: readonly UnansweredEnd[],
): readonly Finding[] {
  return worstFirst([
    ...fluidFindings(design, fluid),
    ...disagreementFindings(results.identified),
    ...operatingFindings({ operating: point }),
    ...unanswered.map(unansweredFinding),
  ]);
}

/** What the rules say of this fluid in this machine, wherever it runs. */
export function fluidFindings({ machine, place }: StagedDesign, fluid: string): readonly Finding[] {
  const facts = {
    fluid: cautionFluid(catalogueEntry(fluid)),
    madeFor: cautionFluid(catalogueEntry(machine.compressor.madeFor)),
    forFlammables: machine.forFlammables,
    region: place.region,
  };
  const rules = [flammableFluidInUnsuitableEquipment, notForThisMachine, fluidForStudyOnly, fluidAttacksCopper];
  return rules.flatMap((rule) => rule(facts) ?? []);
}
