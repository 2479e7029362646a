// Which part of the work a step belongs to, so that a long chain can be folded into parts that have a name.

import { scenarioLabel } from '../../../assess/index.ts';
import { sentenceStart } from '../../ui/say.ts';

/** Steps that follow one another in a chain and belong to one part. */
export interface ChainPart<Step> {
  readonly title: string;
  readonly steps: readonly Step[];
}

const titles: readonly (readonly [start: string, title: string])[] = [
  ['surroundings.', 'The place'],
  ['tank.', 'The tank'],
  ['identified.', 'What the machine is'],
  ['operating.', 'Where the loop settles'],
  ['machines.', 'All machines'],
  ['plant.', 'Tank, room and loop together'],
  ['condenser.', 'Into the water'],
  ['evaporator.', 'Out of the source'],
  ['flows.', 'The heat path'],
];

/** Steps of the textbook cycle, in the order it is handed in. */
const cycleTitles: readonly (readonly [pattern: RegExp, title: string])[] = [
  [/\.(stiffness|thermalPush|cp|cv|soundSpeed|surfaceTension)$/, 'Heat capacities, speeds of sound, surface tension'],
  [/^cycle\.(evaporating|condensing|suction|liquid)\./, 'Levels of pressure and temperature'],
  [/^cycle\.(points\.compressorInlet\.|superheat$)/, 'State 1, into the compressor'],
  [/^cycle\.points\.compressorOutletIsentropic\./, 'State 2s, out of a loss-free compressor'],
  [/^cycle\.(points\.compressorOutlet\.|isentropicEfficiency$)/, 'State 2, out of the compressor'],
  [/^cycle\.(points\.condenserOutlet\.|subcooling$)/, 'State 3, out of the condenser'],
  [/^cycle\.points\.expansionInlet\./, 'State 3′, into the expansion'],
  [/^cycle\.points\.evaporatorInlet\./, 'State 4, into the evaporator'],
  [/^cycle\.points\.evaporatorOutlet\./, 'State 4′, out of the evaporator'],
  [/^cycle\.heatExchanger\./, 'Heat exchanger'],
  [/^cycle\.exergy/, 'Where the work is lost'],
  [/^cycle\.perSecond\./, 'Per second'],
];

/** Whether a result is one of a textbook cycle and so stands without the design. */
export function isOfCycle(result: string): boolean {
  return /^(cycle|secondCycle)(\.|$)/.test(result);
}

/** What the part is called that a result belongs to: 'year.january.tank.load' → January. */
export function partTitle(result: string): string {
  const [first = '', second = '', ...rest] = result.split('.');
  if (isOfCycle(result)) {
    const plain = result.replace(/^secondCycle\./, 'cycle.');
    return cycleTitles.find(([pattern]) => pattern.test(plain))?.[1] ?? 'Work, heats and COPs';
  }
  if (first === 'year') return rest.length > 0 ? sentenceStart(second) : 'The year';
  if (first === 'accounts' && isScenario(second)) return `Bill: ${scenarioLabel(second)}`;
  return titles.find(([start]) => result.startsWith(start))?.[1] ?? 'Further steps';
}

function isScenario(name: string): name is Parameters<typeof scenarioLabel>[0] {
  return scenarioLabel(name as Parameters<typeof scenarioLabel>[0]) !== undefined;
}

/** The chain cut wherever the next step belongs to another part; no step changes its place. */
export function partsOfChain<Step extends { readonly result: string }>(
  steps: readonly Step[],
): readonly ChainPart<Step>[] {
  const parts: { title: string; steps: Step[] }[] = [];
  for (const step of steps) {
    const title = partTitle(step.result);
    const last = parts.at(-1);
    if (last?.title === title) last.steps.push(step);
    else parts.push({ title, steps: [step] });
  }
  return parts;
}
