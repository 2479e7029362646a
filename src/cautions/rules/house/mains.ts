// Rules about mains electricity beside water: residual-current protection, and in one finding where plugs, cables, machine
// and metal stand to the water.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type MainsFacts = Pick<
  CautionFacts,
  'residualCurrentProtection' | 'sockets' | 'dripLoops' | 'machineLevel' | 'metalEarthed' | 'wettedMetal'
>;

const source =
  'local wiring rules commonly ask for residual-current protection of 30 mA on socket outlets and near water, from memory: check locally';

const besideWater: Grounds = { source: 'common practice of wiring beside water, no source', certainty: 'practice' };

/** Somebody has said that there is none. */
export function residualCurrentProtectionMissing(facts: MainsFacts): CautionFinding | undefined {
  if (facts.residualCurrentProtection !== 'no') return undefined;
  return {
    code: 'residualCurrentProtectionMissing',
    severity: 'stop',
    subject: 'person',
    facts: {},
    source,
    certainty: 'stated',
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
    certainty: 'memory',
    remedy:
      'Look for a test button in the distribution board or the socket; if there is none, ask a licensed electrician.',
    needsLicensedPerson: false,
  };
}

/** Something about plugs, cables, machine or metal is said to stand badly to the water. */
export function mainsNearWater(facts: MainsFacts): CautionFinding | undefined {
  const wrong = itemsOf(facts).filter(({ state }) => state === 'wrong');
  if (wrong.length === 0) return undefined;
  return {
    code: 'mainsNearWater',
    severity: 'look',
    subject: 'person',
    facts: Object.fromEntries(wrong.map(({ name }) => [name, word('wrong')])),
    ...besideWater,
    remedy:
      'Plugs above the rim and to one side, every cable in a drip loop, the machine above the water or behind a closed board, equipment marked for splashing water (IP X4 or better); earthing and fixed wiring by a licensed electrician.',
    needsLicensedPerson: true,
  };
}

/** Nobody has said how they stand. */
export function mainsNearWaterUnknown(facts: MainsFacts): CautionFinding | undefined {
  const open = itemsOf(facts).filter(({ state }) => state === 'unknown');
  if (open.length === 0) return undefined;
  return {
    code: 'mainsNearWaterUnknown',
    severity: 'note',
    subject: 'person',
    facts: Object.fromEntries(open.map(({ name }) => [name, word('unknown')])),
    ...besideWater,
    remedy:
      'Look where water runs when a hose slips off or the tank overflows, and follow every cable with the eye. Opening anything that is live is for a licensed electrician.',
    needsLicensedPerson: false,
  };
}

interface MainsItem {
  readonly name: 'sockets' | 'dripLoops' | 'machineLevel' | 'metalEarthed';
  readonly state: 'fine' | 'wrong' | 'unknown';
}

function itemsOf({ sockets, dripLoops, machineLevel, metalEarthed, wettedMetal }: MainsFacts): readonly MainsItem[] {
  const level = { aboveWater: 'fine', belowWater: 'wrong', unknown: 'unknown' } as const;
  const answer = { yes: 'fine', no: 'wrong', unknown: 'unknown' } as const;
  return [
    { name: 'sockets', state: level[sockets] },
    { name: 'dripLoops', state: answer[dripLoops] },
    { name: 'machineLevel', state: level[machineLevel] },
    { name: 'metalEarthed', state: wettedMetal === 'polymer' ? 'fine' : answer[metalEarthed] },
  ];
}
