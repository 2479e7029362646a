// What cannot be in a tank: water above the rim, a recess as large as the tank, a face it does not have, more water changed
// than it holds, a meter in a room warmer than the water.

import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';
import { coverProblems } from './cover-checks.ts';
import { layerProblems } from './layer-checks.ts';
import { aboveLimit, hair, inMetric, problemAt, valueAt } from './reading.ts';

type Load = DesignDocument['tank']['load'];
export type SizedLoad = Exclude<Load, { readonly kind: 'measured' }>;

const tank = 'tank.load';
const sideVessels = ['sump', 'refuge', 'overflow'] as const;

export function tankProblems(document: DesignDocument): readonly DesignProblem[] {
  const { load } = document.tank;
  if (load.kind === 'measured') return measurementProblems(document, tank);
  return [
    ...vesselPaths(load).flatMap((path) => rimProblems(document, path)),
    ...recessProblems(document, load),
    ...faceProblems(document, load),
    ...nameProblems(document, load),
    ...layerProblems(document, load),
    ...coverProblems(document, load),
    ...pipeProblems(document, load),
    ...waterChangeProblems(document, load),
    ...(load.meter?.kind === 'heater' ? measurementProblems(document, `${tank}.meter`) : []),
  ];
}

/** Paths of the vessels that have sizes of their own: the display tank and those beside it. */
export function vesselPaths(load: SizedLoad): readonly string[] {
  return [tank, ...sideVessels.filter((name) => load[name]?.kind === 'rectangular').map((name) => `${tank}.${name}`)];
}

function rimProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  return aboveLimit(
    document,
    `${path}.waterDepth`,
    valueAt(document, `${path}.height`)?.low,
    'waterAboveRim',
    (height) => `at most the height of ${path === tank ? 'the tank' : 'that vessel'}, ${height}`,
  );
}

function recessProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  if (load.kind !== 'lShape') return [];
  return [
    ['recessLength', 'length'],
    ['recessWidth', 'width'],
  ].flatMap(([recess, whole]) => {
    const inside = valueAt(document, `${tank}.${recess}`);
    const outside = valueAt(document, `${tank}.${whole}`);
    if (inside === undefined || outside === undefined || inside.high < outside.low - hair) return [];
    const expected = `less than the ${whole} of the tank, ${inMetric(outside.low, 'length')}`;
    return [problemAt(document, `${tank}.${recess}`, 'recessTooLarge', expected)];
  });
}

const facesOf: Readonly<Record<Exclude<SizedLoad['kind'], 'panels'>, readonly string[]>> = {
  rectangular: ['front', 'back', 'left', 'right', 'bottom'],
  cylinder: ['side', 'bottom'],
  lShape: ['front', 'right', 'recessBack', 'recessSide', 'back', 'left', 'bottom'],
};

function faceProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  if (load.kind === 'panels' || load.faces === undefined) return [];
  const known = facesOf[load.kind];
  const named = load.faces.map(({ face }) => face);
  return named.flatMap((face, index) => {
    const path = `${tank}.faces.${index}.face`;
    if (!known.includes(face)) {
      return [problemAt(document, path, 'noSuchFace', `a face of this shape: ${known.join(', ')}`)];
    }
    if (named.indexOf(face) === index) return [];
    return [problemAt(document, path, 'namedTwice', `each face once; this one is face ${named.indexOf(face) + 1} too`)];
  });
}

/** Names that heat leaves by on every tank: a panel of that name would be taken for one of them. */
const pathNames = [
  'evaporation',
  'surfaceConvection',
  'surfaceRadiation',
  'lid',
  'freeboard',
  'hoodAir',
  'hoodVapour',
  'hoodWalls',
  'pipes',
  'airStones',
  'airStonesVapour',
  'skimmer',
  'skimmerVapour',
  'makeUpWater',
  'waterChange',
  ...sideVessels,
];

function nameProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  const panels = load.kind === 'panels' ? load.panels.map(({ name }) => name) : [];
  const pipes = load.pipes?.map(({ name }, index) => name ?? `pipe${index + 1}`) ?? [];
  return [...namesIn(document, `${tank}.panels`, panels, pathNames), ...namesIn(document, `${tank}.pipes`, pipes, [])];
}

function namesIn(
  document: DesignDocument,
  list: string,
  names: readonly string[],
  taken: readonly string[],
): readonly DesignProblem[] {
  return names.flatMap((name, index) => {
    const path = `${list}.${index}.name`;
    if (taken.includes(name) || name.includes('.')) {
      const expected = `another name, without a full stop; taken are ${taken.join(', ')}`;
      return [problemAt(document, path, 'nameTaken', taken.length === 0 ? 'a name without a full stop' : expected)];
    }
    if (names.indexOf(name) === index) return [];
    return [problemAt(document, path, 'namedTwice', `a name of its own; item ${names.indexOf(name) + 1} has this one`)];
  });
}

function pipeProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  return (load.pipes ?? []).flatMap((_, index) => {
    const path = `${tank}.pipes.${index}`;
    const diameter = valueAt(document, `${path}.outerDiameter`);
    const wall = valueAt(document, `${path}.wallThickness`);
    if (diameter === undefined || wall === undefined || 2 * wall.high < diameter.low - hair) return [];
    const expected = `less than half of the outer diameter, ${inMetric(diameter.low / 2, 'length')}`;
    return [problemAt(document, `${path}.wallThickness`, 'wallTooThick', expected)];
  });
}

/** In a day at most as much as the vessels hold to the rim. */
function waterChangeProblems(document: DesignDocument, load: SizedLoad): readonly DesignProblem[] {
  const volume = valueAt(document, `${tank}.waterChange.volume`);
  const every = valueAt(document, `${tank}.waterChange.every`);
  if (volume === undefined || every === undefined) return [];
  const held = vesselPaths(load).reduce((sum, path) => sum + volumeOf(document, path), 0);
  const perDay = (86_400 * volume.high) / every.low;
  const path = `${tank}.waterChange.volume`;
  if (volume.high > held + hair) {
    return [problemAt(document, path, 'tooMuchWater', `at most what tank and sump hold, ${inMetric(held, 'volume')}`)];
  }
  if (perDay <= held + hair) return [];
  const limit = `at most ${inMetric((held * every.low) / 86_400, 'volume')} in that time: in a day no more than tank and sump hold`;
  return [problemAt(document, path, 'tooMuchWater', limit)];
}

/** What a vessel holds to the rim [m³], at the smaller end of its sizes. */
function volumeOf(document: DesignDocument, path: string): number {
  const { load } = document.tank;
  const low = (name: string) => valueAt(document, `${path}.${name}`)?.low ?? 0;
  if (path !== tank || load.kind === 'rectangular') return low('length') * low('width') * low('height');
  if (load.kind === 'panels') return low('waterVolume');
  if (load.kind === 'cylinder') return (Math.PI / 4) * low('diameter') ** 2 * low('height');
  return (low('length') * low('width') - low('recessLength') * low('recessWidth')) * low('height');
}

/** A heater tells of losses only while the room is colder than the water. */
function measurementProblems(document: DesignDocument, path: string): readonly DesignProblem[] {
  const room = valueAt(document, `${path}.roomTemperature`) ?? valueAt(document, 'room.temperature');
  const water = valueAt(document, `${path}.waterTemperature`) ?? valueAt(document, 'tank.waterTemperature');
  if (room === undefined || water === undefined || room.high < water.low) return [];
  const given = valueAt(document, `${path}.roomTemperature`) !== undefined;
  const said = inMetric(water.low, 'temperature');
  return [
    problemAt(
      document,
      given ? `${path}.roomTemperature` : 'room.temperature',
      'measuredRoomTooWarm',
      `a room colder than the water's ${said}: otherwise a heater tells nothing about losses`,
    ),
  ];
}
