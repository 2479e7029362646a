// Sentences of the findings: a title and one or two sentences for every code, with the numbers of the finding put in as
// the reader's view says them. Words for a person; the finding itself stays data.

import type { CautionCode } from '../../cautions/index.ts';
import { cautionCodes } from '../../cautions/index.ts';
import { InputError } from '../../numerics/index.ts';
import type { Finding } from '../../quantities/index.ts';
import { isQuantityName, type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';
import type { Phrase, Told } from './phrase.ts';
import { fluidPhrases } from './phrases/fluid.ts';
import { leakPhrases } from './phrases/leak.ts';
import { machinePhrases } from './phrases/machine.ts';
import { standingTankPhrases } from './phrases/standing-tank.ts';
import { tankPhrases } from './phrases/tank.ts';

export interface FindingWords {
  readonly title: string;
  /** One or two sentences; the remedy of the finding is not repeated in it. */
  readonly text: string;
}

/**
 * The words for a finding.
 * @param finding  one of `findCautions`
 * @param view     how numbers are shown
 * @throws InputError for a code without words, or a fact its words need and the finding lacks
 */
export function findingSentence(finding: Finding, view: UnitView): FindingWords {
  const phrase = phrases[codeWithWords(finding.code)];
  const told = toldBy(finding, view);
  const title = typeof phrase.title === 'string' ? phrase.title : phrase.title(told);
  return { title, text: phrase.text(told) };
}

/** Whether `findingSentence` has words for this code. */
export function hasFindingWords(code: string): code is CautionCode {
  return (cautionCodes as readonly string[]).includes(code);
}

function codeWithWords(code: string): CautionCode {
  if (!hasFindingWords(code)) throw new InputError('finding.code', code, `one of ${cautionCodes.join(', ')}`);
  return code;
}

function toldBy(finding: Finding, view: UnitView): Told {
  const tell = (name: string): string => {
    const fact = finding.facts[name];
    if (fact === undefined) throw new InputError(`finding.facts.${name}`, undefined, `a fact of ${finding.code}`);
    if ('word' in fact) return plainWord(fact.word);
    if (!isQuantityName(fact.quantity)) {
      throw new InputError(`finding.facts.${name}`, fact.quantity, 'a quantity of the table');
    }
    return sayQuantity(fact.value, fact.quantity, view, digitsOf[name] ?? digits[fact.quantity]);
  };
  return Object.assign(tell, {
    has: (name: string) => finding.facts[name] !== undefined,
    kelvin: sayQuantity(1, 'temperatureDifference', view),
  });
}

/** Two digits where the table would print more: nothing here is known better. */
const digits: Readonly<Partial<Record<QuantityName, number>>> = {
  mass: 2,
  volume: 2,
  area: 2,
  massFlow: 2,
  duration: 2,
};

/** Whole degrees for what is known least. */
const digitsOf: Readonly<Record<string, number>> = {
  settlesAt: 2,
  beyondWater: 2,
  surface: 2,
  restLow: 2,
  restHigh: 2,
  wrapped: 2,
  bare: 2,
};

const plainWords: Readonly<Record<string, string>> = {
  coldestSpell: 'in the coldest spell',
  usual: 'at usual temperatures',
  warmestMonth: 'on a mild day',
  low: 'cold work (freezers, refrigerators)',
  medium: 'medium work (bottle coolers)',
  high: 'warm work (dehumidifiers, air conditioners)',
  closedCabinet: 'the closed cabinet',
  hood: 'the hood',
  copper: 'copper',
  cupronickel: 'cupronickel, which is mostly copper',
  stainless316: 'stainless steel',
  titanium: 'titanium',
  polymer: 'polymer',
  unknown: 'unknown',
  fresh: 'fresh water',
  sea: 'sea water',
  fish: 'fish',
  invertebrates: 'invertebrates',
  plantsOnly: 'plants only',
  tankRoom: 'the room of the tank',
  otherRoom: 'the room the heat comes from',
  sameRoom: 'a room that holds part of the circuit',
  besideMachine: 'beside the machine',
};

/** A word of the design in plain language; names of fluids, classes and oils stay as they are. */
function plainWord(word: string): string {
  return plainWords[word] ?? word;
}

const phrases: Readonly<Record<CautionCode, Phrase>> = {
  ...fluidPhrases,
  ...leakPhrases,
  ...machinePhrases,
  ...tankPhrases,
  ...standingTankPhrases,
};
