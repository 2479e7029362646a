// Answers of the real engine to the invented examples, for the tests of what the page draws from them.

import { readFileSync } from 'node:fs';
import type { AssessAnswer, EngineReply } from '../../src/app/worker/messages.ts';
import { createServe } from '../../src/app/worker/serve.ts';
import { assessDesign } from '../../src/assess/index.ts';
import { makeDiagram } from '../../src/charts/index.ts';
import type { UnitView } from '../../src/quantities/index.ts';

export const exampleFiles = [
  'frag-tank-cold-garage.json',
  'propane-in-the-cabinet.json',
  'reef-in-the-study.json',
  'shrimp-rack-unknown-draughts.json',
] as const;

export type ExampleFile = (typeof exampleFiles)[number];

/** One whose machine is known by a plate, a rating and a measurement. */
export const freezerDome = 'freezer-dome-with-a-worn-nameplate.json';

export function exampleText(file: ExampleFile | typeof freezerDome): string {
  return readFileSync(new URL(`../../data/designs/${file}`, import.meta.url), 'utf8');
}

const serve = createServe(() => 0);

export function replyTo(text: string, view: UnitView = 'metric'): EngineReply {
  return serve({ id: 1, body: { kind: 'assess', text, view } });
}

export function answerTo(file: ExampleFile, view: UnitView = 'metric'): AssessAnswer {
  const reply = replyTo(exampleText(file), view);
  const whole = assessDesign(exampleText(file), view);
  if (reply.kind !== 'assess' || !reply.ok || !whole.ok)
    throw new Error(`no answer to ${file}: ${JSON.stringify(reply)}`);
  const { workings } = whole.assessment;
  return { ...reply.answer, assessment: { ...reply.answer.assessment, workings } };
}

export function diagramOf({ assessment: { operating } }: AssessAnswer) {
  return makeDiagram({
    refrigerant: operating.refrigerant,
    points: operating.points,
    levels: [
      { name: 'source', temperature: operating.sourceTemperature },
      { name: 'water', temperature: operating.waterTemperature },
    ],
    limits: [{ label: 'limit', temperature: 333.15, beyond: 'above' }],
    isotherms: [273.15, 313.15],
    isobars: [1e5, 5e5],
  });
}
