// What the engine refused or threw, as problems in words of the view.

import { messageInView, type Refusal, sayNoLoop, sayProblemInView } from '../../assess/index.ts';
import { fieldRecord, listRecord } from '../../design/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { sentenceStart, type UnitView } from '../../quantities/index.ts';
import { fluidsOfDesign } from './fluids-named.ts';
import type { EngineProblem } from './messages.ts';

/**
 * What is wrong with a design, in words of the view.
 * @param outcome  what the engine made of it
 * @param text     of the design, which names the fluid that has no loop in it
 * @param view     in whose units the words are
 */
export function problemsOf(outcome: Refusal, text: string, view: UnitView): readonly EngineProblem[] {
  if (outcome.kind === 'noSolution') {
    const [fluid = 'this fluid'] = fluidsOfDesign(text);
    const error = { ...outcome.error, message: named(outcome.error.message) };
    return [{ code: error.code, path: undefined, message: sayNoLoop(error, fluid, view) }];
  }
  return outcome.problems.map((problem) => ({
    code: problem.engine?.code ?? problem.code,
    path: problem.path,
    message: sentenceStart(named(sayProblemInView(problem, view))),
  }));
}

/** Names of the machine's fields, as the page has them, in place of their paths. */
function named(message: string): string {
  return message.replaceAll(/\bmachine(?:\.\w+)+/g, nameOnPage);
}

/** 'machine.compressor.ratings.0.capacity': capacity of rating 1; a point of a table by its item alone. */
function nameOnPage(path: string): string {
  const label = fieldRecord(path)?.label;
  const [, list = '', index] = /^(.*?)\.(\d+)/.exec(path) ?? [];
  const itemName = listRecord(list)?.itemName;
  if (itemName === undefined) return label ?? path;
  const [, point] = /\.points\.(\d+)/.exec(path) ?? [];
  const item = `${itemName} ${Number(index) + 1}${point === undefined ? '' : `, point ${Number(point) + 1}`}`;
  return label === undefined ? item : `${label} of ${item}`;
}

/**
 * Typed errors keep their code and words; anything else is a fault of the program and says so.
 * @param error  what was thrown
 * @param view   in whose units the words are
 * @param say    the words of a typed error, where they are not its own message
 */
export function problemOf(
  error: unknown,
  view: UnitView,
  say: (error: KettlefinError) => string = ({ message }) => messageInView(message, view),
): EngineProblem {
  if (error instanceof KettlefinError) {
    return { code: error.code, path: undefined, message: sentence(say(error)) };
  }
  const words = error instanceof Error ? error.message : String(error);
  return {
    code: 'programFault',
    path: undefined,
    message: `This is a fault of the program, not of the design: ${words}`,
  };
}

/** Something of the program that an answer needs and that could not be fetched, by what it is called. */
export function missingPart(code: string, name: string): EngineProblem {
  const message = `${name} could not be fetched from where this page came from. Everything else works without it; reload the page to try again.`;
  return { code, path: undefined, message };
}

function sentence(words: string): string {
  const start = sentenceStart(words);
  return start.endsWith('.') ? start : `${start}.`;
}
