// What the page opens with: the design kept from the last visit, or the first invented example.

import { type DesignDocument, parseDesign, sayProblem } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { LightChoice } from '../ui/light.tsx';
import { firstDemo } from './demos.ts';
import type { Keeper } from './storage.ts';
import type { Notice } from './workbench.ts';

export interface Start {
  readonly document: DesignDocument;
  readonly view: UnitView;
  readonly light: LightChoice;
  readonly notice: Notice | undefined;
}

export function startFrom(keeper: Keeper): Start {
  const view = keeper.read('view') === 'us' ? 'us' : 'metric';
  const kept = keeper.read('light');
  const light = kept === 'light' || kept === 'dark' ? kept : 'system';
  const text = keeper.read('design');
  if (text === undefined) return { document: exampleDocument(), view, light, notice: undefined };
  const outcome = parseDesign(text);
  if (outcome.ok) return { document: outcome.document, view, light, notice: undefined };
  // Kept text that no longer reads is set aside under another key, not thrown away, before the example takes its place.
  keeper.write('design-set-aside', text);
  const problems = outcome.problems.map((problem) => ({ path: problem.path, message: sayProblem(problem) }));
  const title = 'The design kept in this browser cannot be read. It was set aside; an example is open instead.';
  return { document: exampleDocument(), view, light, notice: { title, problems } };
}

function exampleDocument(): DesignDocument {
  const outcome = parseDesign(firstDemo.text);
  if (outcome.ok) return outcome.document;
  throw new Error(`The example ${firstDemo.file} cannot be read: ${outcome.problems.map(sayProblem).join(' ')}`);
}
