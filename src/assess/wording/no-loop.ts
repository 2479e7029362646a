// Why a fluid has no loop in a machine or at the temperatures of a comparison.

import { sayQuantity, sentenceStart, type UnitView } from '../../quantities/index.ts';
import type { EngineError } from '../from-design.ts';
import { messageInView } from './si-text.ts';

/** Why a fluid has no loop, in a sentence that says what would help. */
export function sayNoLoop(error: EngineError, fluid: string, view: UnitView): string {
  const { code, facts } = error;
  const level = (name: string) => sayQuantity(Number(facts[name]), 'temperature', view);
  const side = String(facts.quantity ?? '').startsWith('evaporating') ? 'Evaporating' : 'Condensing';
  if (code === 'condensingAboveCritical' && facts.unit === 'K') {
    return `Condensing at ${level('value')} is not below the critical point of ${fluid}, ${level('high')}: nothing condenses there, and cycles that work above it are not in this version. A lower condensing temperature has an answer.`;
  }
  if (code === 'noLift' || code === 'condensingBelowEvaporating') {
    return 'Condensing is not above evaporating: there is nothing to pump. Give a higher condensing or a lower evaporating temperature.';
  }
  if (code === 'outOfModel' && facts.unit === 'K' && /^(evaporating|condensing)/.test(String(facts.quantity))) {
    return `${side} at ${level('value')} lies outside the equation of ${fluid}, which holds from ${level('low')} to ${level('high')}.`;
  }
  if (code === 'dischargeTooHot') {
    return `The gas out of the compressor would be hotter than the equation of ${fluid} reaches: the machine’s losses are too much for the little gas it would move.`;
  }
  const words = messageInView(error.message, view);
  const start = sentenceStart(words);
  const sentence = start.endsWith('.') ? start : `${start}.`;
  const possible = possibleOf(code, facts);
  return possible === undefined ? sentence : `${sentence} Possible is ${messageInView(possible, view)}.`;
}

/** Codes whose limit is what would be possible, in words for people. */
const saysWhatIsPossible: readonly string[] = [
  'moreThanSwept',
  'belowIsentropic',
  'noFlow',
  'motorStalls',
  'chokedSuction',
  'beyondKnowledge',
];

/** What would be possible instead, as the error says it; undefined where its limit is no words for people. */
export function possibleOf(code: string, { limit }: Readonly<Record<string, unknown>>): string | undefined {
  return saysWhatIsPossible.includes(code) && typeof limit === 'string' ? limit : undefined;
}
