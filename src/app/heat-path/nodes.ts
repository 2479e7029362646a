// One number and one state for each node of the heat path, and the station it opens.

import type { Assessment } from '../../assess/index.ts';
import { type Band, type Finding, sayRange, type UnitView } from '../../quantities/index.ts';
import { pageTitles, type StationName } from '../pages.ts';
import { say, sentenceStart } from '../ui/say.ts';
import type { StateKind } from '../ui/state-mark.tsx';
import type { HeatPathFlows } from './flows.ts';
import type { HeatNodeName } from './layout.ts';

export interface NodeWords {
  readonly name: string;
  readonly number: string;
  /** "310 to 420 W", for the reader and on hovering; undefined where the number has no range of its own. */
  readonly range: string | undefined;
  readonly state: StateKind;
  readonly stateWord: string;
  readonly station: StationName;
  readonly stationTitle: string;
  /** Name of the result in the workings; undefined where the number is put together from several. */
  readonly result: string | undefined;
}

/** A way out is known roughly when its range is wider than this share of its likely value to either side. */
const roughly = 0.3;

export function wordsOfNodes(
  assessment: Assessment,
  path: HeatPathFlows,
  view: UnitView,
): ReadonlyMap<HeatNodeName, NodeWords> {
  const { operating, tank, flows } = assessment;
  const { ranges } = flows;
  const words = new Map<HeatNodeName, NodeWords>();
  const add = (
    name: HeatNodeName,
    title: string,
    number: string,
    station: StationName,
    state: [StateKind, string],
    band?: Band,
  ) =>
    words.set(name, {
      name: title,
      number,
      range: band !== undefined && band.high > band.low ? sayRange(band, 'power', view) : undefined,
      state: state[0],
      stateWord: state[1],
      station,
      stationTitle: pageTitles[station],
      result: resultOf(name, path, tank.loss.likely),
    });
  const watts = (value: number) => say(value, 'power', view);
  add(
    'source',
    `Source, ${say(operating.sourceTemperature, 'temperature', view)}`,
    watts(path.heatTaken),
    'where-it-settles',
    sourceState(assessment),
    ranges.heatTaken,
  );
  add(
    'socket',
    'Wall socket',
    say(path.electricity, 'electricPower', view),
    'two-bills',
    electricityState(assessment),
    ranges.electricity,
  );
  add(
    'machine',
    'Machine gives',
    watts(path.delivered),
    'the-machine',
    worst(machineFindings(assessment)),
    ranges.delivered,
  );
  add(
    'water',
    `Water, ${say(operating.waterTemperature, 'temperature', view)}, loses`,
    watts(totalOut(path)),
    'what-leaves',
    waterState(assessment),
    tank.loss,
  );
  add('room', 'Warmer room', watts(path.fromRoom), 'what-leaves', ['plain', 'comes by itself']);
  add('out.surplus', 'Too much', watts(path.surplus), 'what-leaves', ['look', 'warms the water']);
  add(
    'appliances',
    'Pumps, lights',
    watts(tank.gains.pump + tank.gains.light + tank.gains.ultraviolet),
    'what-leaves',
    ['plain', 'counted once'],
  );
  add('heater', 'Plain heater', watts(flows.backup), 'two-bills', ['look', 'still needed'], ranges.backup);
  add('out.machine', 'Beside the water', watts(path.beside), 'the-machine', ['plain', 'lost to the air']);
  for (const way of path.waysOut) {
    const heat = tank.paths.find((each) => each.path === way.path)?.heat;
    const known = knowledge(assessment, way.path);
    add(`out.${way.path}`, sentenceStart(way.label), watts(way.watts), 'what-leaves', known, heat);
  }
  return words;
}

/** Results that nodes show as they are: means over the spell, the machine running its share of the time. */
const nodeResults: Readonly<Partial<Record<HeatNodeName, string>>> = {
  source: 'plant.heatTaken',
  machine: 'plant.heatFromMachine',
  heater: 'plant.backupHeat',
};

function resultOf(name: HeatNodeName, path: HeatPathFlows, loss: number): string | undefined {
  // Where heat comes in through some panes, what goes out through the others is more than the loss.
  if (name === 'water')
    return path.fromRoom > 0 || Math.abs(totalOut(path) - loss) > 1e-9 * loss ? undefined : 'tank.loss';
  const way = path.waysOut.find((each) => name === `out.${each.path}`);
  return way === undefined || way.path === 'other' ? nodeResults[name] : `tank.paths.${way.path}`;
}

function totalOut(path: HeatPathFlows): number {
  return path.waysOut.reduce((sum, way) => sum + way.watts, 0);
}

export function worst(findings: readonly Finding[]): [StateKind, string] {
  const stops = findings.filter((finding) => finding.severity === 'stop').length;
  const looks = findings.filter((finding) => finding.severity === 'look').length;
  if (stops > 0) return ['stop', stops === 1 ? 'stop' : `${stops} stops`];
  if (looks > 0) return ['look', looks === 1 ? 'look here' : `${looks} to look at`];
  return ['plain', 'no limit found'];
}

export function machineFindings(assessment: Assessment): readonly Finding[] {
  return [...assessment.findings, ...assessment.cautions].filter((finding) => finding.subject === 'machine');
}

function sourceState(assessment: Assessment): [StateKind, string] {
  const codes = ['frostOnEvaporator', 'condensateOnEvaporator', 'flammableFluidInOtherRoom'];
  return worst([...assessment.findings, ...assessment.cautions].filter((finding) => codes.includes(finding.code)));
}

function electricityState(assessment: Assessment): [StateKind, string] {
  const own = [...assessment.findings, ...assessment.cautions].filter(({ code }) =>
    /^(?:residualCurrent|mainsNearWater)/.test(code),
  );
  return worst(own);
}

function waterState(assessment: Assessment): [StateKind, string] {
  if (assessment.standing === 'fallsShort') return ['look', 'falls short'];
  return worst([...assessment.findings, ...assessment.cautions].filter((finding) => finding.subject === 'livestock'));
}

function knowledge(assessment: Assessment, path: string): [StateKind, string] {
  const heat = assessment.tank.paths.find((way) => way.path === path)?.heat;
  if (heat === undefined || heat.likely === 0) return ['plain', 'together'];
  const reach = Math.max(heat.high - heat.likely, heat.likely - heat.low) / Math.abs(heat.likely);
  return reach > roughly ? ['look', 'known roughly'] : ['plain', 'known well'];
}
