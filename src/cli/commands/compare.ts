// `kettlefin compare`: refrigerants side by side, in the machine of a design file or in the textbook cycle, for people or as
// JSON.

import {
  type ComparedLevels,
  type CompareOutcome,
  compareRefrigerants,
  compareTextbookCycles,
  comparisonBases,
  type MachineBasis,
  type RefrigerantComparison,
  type TextbookComparisonRequest,
} from '../../assess/index.ts';
import { InputError } from '../../numerics/index.ts';
import { nearestWord, type UnitView } from '../../quantities/index.ts';
import { oneFile, readArguments, unitView } from '../arguments.ts';
import { type Command, SaidError, type Streams } from '../command.ts';
import { type ExitCode, exitCodes } from '../exit-codes.ts';
import { airPressure, optionAt, type QuantityOption, quantitiesGiven, sayInOptionWords } from '../quantity-options.ts';
import { refuse, withDesignText } from '../refusal.ts';
import { compareReport } from '../report/compare-report.ts';
import { inputSentence } from '../say-error.ts';

const levelOptions: readonly QuantityOption[] = [
  { option: 'evaporating', key: 'evaporating', quantity: 'temperature' },
  { option: 'condensing', key: 'condensing', quantity: 'temperature' },
];

const cycleOptions: readonly QuantityOption[] = [
  { option: 'superheat', key: 'superheat', quantity: 'temperatureDifference' },
  { option: 'subcooling', key: 'subcooling', quantity: 'temperatureDifference' },
  { option: 'efficiency', key: 'isentropicEfficiency', quantity: 'fraction' },
];

const options = {
  fluids: 'text',
  basis: 'text',
  evaporating: 'text',
  condensing: 'text',
  superheat: 'text',
  subcooling: 'text',
  efficiency: 'text',
  altitude: 'text',
  units: 'text',
  json: 'flag',
} as const;

type Texts = Readonly<Partial<Record<string, string>>>;

/** Words of the option by basis. */
const basisWords: Readonly<Record<string, MachineBasis>> = {
  'same-dome': 'sameDome',
  'same-heat': 'sameHeat',
  'same-parts': 'sameParts',
};

/** What gauge pressures count from where there is neither a design nor an altitude [Pa]. */
const standardAtmosphere = 101_325;

export const compareCommand: Command = {
  name: 'compare',
  summary: 'refrigerants side by side, in the machine of a design file or in the textbook cycle',
  usage: `kettlefin compare FILE --fluids R134a,R600a,R290 [--basis same-dome|same-heat|same-parts]
                  [--evaporating T --condensing T] [--json] [--units metric|us]
kettlefin compare --fluids R134a,R600a --evaporating "-10 °C" --condensing "45 °C"
                  --superheat "5 K" --subcooling "5 K" --efficiency 0.6 [--altitude z] [--json] [--units metric|us]

FILE              a design file, or - for standard input: the fluids in its machine, at its coldest spell
--fluids A,B,…    two to five fluids, each once
--basis BASIS     what is held the same, with a FILE:
                    same-dome   displacement and both dew temperatures (default)
                    same-heat   heat out of the condenser; the displacement needed is a row
                    same-parts  source, water, approaches and every part as the design has them
--evaporating T, --condensing T    dew temperatures in place of the design's; not with same-parts
--json            one object in SI units: columns with facts, values and workings, differences, caution
--units VIEW      metric (default) or us, for people

Without FILE: the textbook cycle, not electricity; no machine. All five quantities are needed; --altitude moves the air
pressure that gauge pressures count from.

A fluid the compressor was not made for stands under "not for this machine", for study only and unranked. A fluid without
a loop says why in its own column.

Exit codes: 0 answered, also where some of the fluids have no loop; 2 unusable input; 3 no fluid has one.`,
  async run(args, streams) {
    const { texts, flags, positionals } = readArguments(args, options);
    const view = unitView(texts.units);
    const asked = { json: flags.json, view };
    if (positionals.length === 0) {
      const comparison = saying(view, () => compareTextbookCycles(fluidsGiven(texts), textbookRequest(texts)));
      return told(comparison, asked, streams);
    }
    const file = oneFile(positionals);
    return withDesignText({ file, json: flags.json, view }, streams, (text) => {
      const outcome = saying(view, () => inMachine(text, texts));
      if (!outcome.ok) return refuse({ file, json: flags.json, view }, outcome, streams);
      return told(outcome.comparison, asked, streams);
    });
  },
};

interface Asked {
  readonly json: boolean;
  readonly view: UnitView;
}

function inMachine(text: string, texts: Texts): CompareOutcome {
  for (const { option } of [...cycleOptions, { option: 'altitude' }]) {
    if (texts[option] !== undefined) {
      const expected = 'it left out: the design has its own superheat, subcooling, compressor and altitude';
      throw new InputError(`--${option}`, texts[option], expected, 'bothGiven');
    }
  }
  return compareRefrigerants(text, fluidsGiven(texts), basisGiven(texts.basis), levelsGiven(texts));
}

function told(comparison: RefrigerantComparison, { json, view }: Asked, { output }: Streams): ExitCode {
  output.write(json ? `${JSON.stringify(comparison, null, 2)}\n` : `${compareReport(comparison, view)}\n`);
  return comparison.columns.some(({ cycle }) => cycle.ok) ? exitCodes.answered : exitCodes.noSolution;
}

function fluidsGiven({ fluids }: Texts): readonly string[] {
  if (fluids === undefined) {
    throw new InputError('--fluids', 'nothing', 'two to five fluids, such as R134a,R600a', 'missing');
  }
  return fluids
    .split(',')
    .map((fluid) => fluid.trim())
    .filter((fluid) => fluid !== '');
}

function basisGiven(word: string | undefined): MachineBasis {
  if (word === undefined) return comparisonBases[0];
  const basis = Object.hasOwn(basisWords, word) ? basisWords[word] : undefined;
  if (basis !== undefined) return basis;
  const known = Object.keys(basisWords);
  const nearest = nearestWord(word, known);
  const hint = nearest === undefined ? '' : `; did you mean ${nearest}?`;
  throw new InputError('--basis', word, `${known.join(', ')}${hint}`, 'unknownChoice');
}

function levelsGiven(texts: Texts): ComparedLevels | undefined {
  const { evaporating, condensing } = quantitiesGiven(levelOptions, texts, undefined);
  if (evaporating === undefined && condensing === undefined) return undefined;
  if (evaporating !== undefined && condensing !== undefined) {
    requireLift(texts, evaporating, condensing);
    return { evaporating, condensing };
  }
  const missing = evaporating === undefined ? '--evaporating' : '--condensing';
  throw new InputError(missing, 'nothing', 'both temperatures, or neither', 'missing');
}

/** Without a lift no fluid has a loop, so that it is the input that cannot be used. */
function requireLift(texts: Texts, evaporating: number, condensing: number): void {
  if (condensing > evaporating) return;
  const expected = `above --evaporating, "${texts.evaporating}": there is nothing to pump otherwise`;
  throw new InputError('--condensing', `"${texts.condensing}"`, expected, 'condensingBelowEvaporating');
}

function textbookRequest(texts: Texts): TextbookComparisonRequest {
  if (texts.basis !== undefined) {
    const expected = 'a design FILE beside it; without one the cycle is the textbook’s';
    throw new InputError('--basis', texts.basis, expected, 'bothGiven');
  }
  const needed = [...levelOptions, ...cycleOptions];
  const missing = needed.find(({ option }) => texts[option] === undefined);
  if (missing !== undefined) {
    const expected = 'it, or a design FILE: without one the textbook cycle needs all five quantities';
    throw new InputError(`--${missing.option}`, 'nothing', expected, 'missing');
  }
  const given = quantitiesGiven(needed, texts, undefined);
  requireLift(texts, given.evaporating!, given.condensing!);
  return {
    evaporating: given.evaporating!,
    condensing: given.condensing!,
    superheat: given.superheat!,
    subcooling: given.subcooling!,
    isentropicEfficiency: given.isentropicEfficiency!,
    atmosphericPressure: airPressure(texts.altitude) ?? standardAtmosphere,
  };
}

/** Runs, and tells an input that cannot be used in words of the options. @throws SaidError */
function saying<Result>(view: UnitView, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    if (error.path !== 'refrigerant' && error.path !== 'fluids') {
      const quantities = [...levelOptions, ...cycleOptions];
      throw new SaidError(error, sayInOptionWords(error, quantities, view), optionAt(error, quantities));
    }
    const { received, expected } = error.facts();
    throw new SaidError(error, inputSentence('--fluids', received, expected, error.code), '--fluids');
  }
}
