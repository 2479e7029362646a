// Rules about mains electricity beside water.

import type { CautionFinding } from '../fact.ts';
import type { CautionFacts } from '../facts.ts';

export type MainsFacts = Pick<CautionFacts, 'residualCurrentProtection'>;

const source =
  'local wiring rules commonly ask for residual-current protection of 30 mA on socket outlets and near water, from memory: check locally';

/** Somebody has said that there is none. */
export function residualCurrentProtectionMissing(facts: MainsFacts): CautionFinding | undefined {
  if (facts.residualCurrentProtection !== 'no') return undefined;
  return {
    code: 'residualCurrentProtectionMissing',
    severity: 'stop',
    subject: 'person',
    facts: {},
    source,
    remedy: 'Have a licensed electrician fit it before any mains equipment stands at a tank, this machine or another.',
    needsLicensedPerson: true,
  };
}

/** Nobody has said whether there is any. */
export function residualCurrentProtectionUnknown(facts: MainsFacts): CautionFinding | undefined {
  if (facts.residualCurrentProtection !== 'unknown') return undefined;
  return {
    code: 'residualCurrentProtectionUnknown',
    severity: 'look',
    subject: 'person',
    facts: {},
    source,
    remedy:
      'Look for a test button in the distribution board or the socket; if there is none, ask a licensed electrician.',
    needsLicensedPerson: false,
  };
}
