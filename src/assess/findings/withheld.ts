// What is withheld from a design that must not be built: how much refrigerant the circuit holds. The figures would serve
// nobody but the one who fills it. The concentration that a leak would make stays, since it is the reason to stop.

import type { Fact, Finding } from '../../quantities/index.ts';
import type { AssumptionLeft, Standing } from '../assessment/assessment.ts';
import type { BareAssessment } from '../bare-assessor.ts';

/** Stands in place of an assumed charge. */
export const withheldWord = 'withheld';

const chargeFacts: readonly string[] = ['chargeLow', 'chargeHigh'];

const chargePath = 'machine.charge';

/** Whether the value at a path of the design is how much refrigerant the circuit holds. */
export function isCharge(path: string): boolean {
  return path === chargePath;
}

/** Whether the value at a path of the design is withheld from what is printed and exported. */
export function withholdsCharge(standing: Standing, path: string): boolean {
  return standing === 'doNotBuild' && isCharge(path);
}

/** The assessment as it may be printed and exported: with standing doNotBuild without figures of the charge. */
export function withoutCharge<Answer extends BareAssessment>(assessment: Answer): Answer {
  if (assessment.standing !== 'doNotBuild') return assessment;
  return {
    ...assessment,
    assumptions: assessment.assumptions.map(withheldAssumption),
    findings: assessment.findings.map(withheldFacts),
    cautions: assessment.cautions.map(withheldFacts),
  };
}

function withheldAssumption(assumption: AssumptionLeft): AssumptionLeft {
  return isCharge(assumption.path) ? { ...assumption, value: withheldWord } : assumption;
}

/** A finding without the figures of a charge that it rests on. */
export function withheldFacts(finding: Finding): Finding {
  const facts: Record<string, Fact> = {};
  for (const [name, fact] of Object.entries(finding.facts)) if (!chargeFacts.includes(name)) facts[name] = fact;
  return { ...finding, facts };
}
