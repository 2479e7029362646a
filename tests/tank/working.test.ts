// The working: every step names a formula that exists, puts in exactly that formula's symbols, gives the step's value again
// when the engine's function is called with them, and says where each number came from.

import { describe, expect, test } from 'vitest';
import { airFormulas } from '../../src/matter/air/index.ts';
import { waterFormulas } from '../../src/matter/water/index.ts';
import {
  type BuiltTank,
  type ConditionOrigins,
  type MeasuredTank,
  measuresOf,
  type Panel,
  type Shape,
  type Stack,
  type TankConditions,
  type TankDescription,
  tankEvaporationOf,
  tankFormulas,
  tankLoad,
  tankLoadWorking,
  type Vessel,
} from '../../src/tank/index.ts';
import { expectTraced } from '../traced-steps.ts';

const formulas = [...airFormulas, ...waterFormulas, ...tankFormulas];
const room: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 292.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 99800,
  outdoorTemperature: 275.15,
  groundTemperature: 283.15,
  mainsTemperature: 283.15,
};
const origins: ConditionOrigins = {
  waterTemperature: 'tank.waterTemperature',
  roomTemperature: 'room.coldest',
  roomRelativeHumidity: 'room.relativeHumidity',
  atmosphericPressure: 'place.pressure',
  outdoorTemperature: 'place.outdoors.coldest',
  groundTemperature: 'place.ground',
  mainsTemperature: 'place.mains.winter',
  measuredOverModelled: 'tank.meter.ratio',
  outerFilmFactor: 'engine.outerFilmFactor',
};

const glass: Stack = [{ kind: 'solid', thickness: 0.012, conductivity: 1, emissivity: 0.87, origin: 'tank.load.wall' }];
const foam: Stack = [
  ...glass,
  { kind: 'sealedGap', thickness: 0.02, origin: 'tank.load.insulation.back.gap' },
  { kind: 'solid', thickness: 0.025, conductivity: 0.03, emissivity: 0.05, origin: 'tank.load.insulation.back' },
];
const sheet: Stack = [{ kind: 'solid', thickness: 0.004, conductivity: 0.18, origin: 'tank.load.lidMaterial' }];
const twin: Stack = [...sheet, { kind: 'sealedGap', thickness: 0.016, origin: 'tank.load.lidPaneGap' }, ...sheet];
const box: Shape = { kind: 'rectangular', length: 1.5, width: 0.5, height: 0.6, waterDepth: 0.54 };

type Given = Readonly<Record<string, Partial<Panel>>>;

function vesselOf(name: Vessel['name'], shape: Shape, given: Given = {}, more: Partial<Vessel> = {}): Vessel {
  const { faces, ...measures } = measuresOf(shape);
  const panels = faces.map(({ name: face, facing, wetArea, dryArea }): Panel => {
    const usual = { stack: glass, layersInWater: 0, emissivity: 0.87, exposure: { kind: 'roomAir' } } as const;
    return { name: face, facing, wetArea, dryArea, ...usual, ...given[face] };
  });
  return { name, panels, ...measures, surface: 'rippled', evaporationFactor: 1.1, cover: { kind: 'none' }, ...more };
}

function tankOf(vessels: readonly Vessel[], more: Partial<BuiltTank> = {}): BuiltTank {
  return {
    kind: 'built',
    salinity: 0.035,
    vessels,
    pipes: [],
    outerFilmFactor: 0.95,
    airFlow: { airStones: 0, skimmer: 0 },
    exchange: { makeUpFrom: 'room', changeFlow: 0 },
    pumpHeat: 9,
    lightHeat: 4,
    ultravioletHeat: 2,
    ...more,
  };
}

const lid: Vessel['cover'] = { kind: 'lid', stack: sheet, emissivity: 0.9, openShare: 0 };
const loose: Vessel['cover'] = { kind: 'lid', stack: twin, emissivity: 0.9, openShare: 0.2 };
const hood: Vessel['cover'] = { kind: 'hood', stack: sheet, emissivity: 0.9, area: 1.9, airFlow: 0.002 };
const wrapped: Given = { back: { stack: foam, emissivity: 0.05 }, bottom: { stack: foam, emissivity: 0.05 } };

const exposed: Given = {
  back: { exposure: { kind: 'againstWall', resistance: 0.8 } },
  left: { exposure: { kind: 'closedStand', resistance: 0.2 } },
  right: { exposure: { kind: 'outdoors', windSpeed: 2 } },
  bottom: { exposure: { kind: 'slab', resistance: 1.2 } },
};
const bed = { kind: 'solid', thickness: 0.05, conductivity: 1.8, origin: 'tank.load.faces.0.inside.0' } as const;
const jointed: Stack = [
  {
    kind: 'solid',
    thickness: 0.05,
    conductivity: 0.029,
    bridge: { share: 0.1, conductivity: 0.13 },
    origin: 'tank.load.faces.1.outside.0',
  },
  { kind: 'resistance', resistance: 0.3, origin: 'tank.load.faces.1.outside.1' },
  {
    kind: 'solid',
    thickness: 0.02,
    conductivity: 0.13,
    bridge: { share: 0.02, conductivity: 17 },
    origin: 'tank.load.faces.1.outside.2',
  },
];
const layered: Given = {
  bottom: { stack: [bed, ...glass], layersInWater: 1 },
  back: {
    stack: [{ kind: 'waterGap', thickness: 0.03, origin: 'tank.load.faces.1.inside.0' }, ...glass, ...jointed],
    layersInWater: 1,
  },
  front: { stack: [...glass, { kind: 'openGap', thickness: 0.02 }, ...glass] },
};

const sump: Shape = { kind: 'rectangular', length: 0.9, width: 0.4, height: 0.4, waterDepth: 0.25 };
const lShape: Shape = {
  kind: 'lShape',
  length: 1.6,
  width: 0.9,
  height: 0.6,
  waterDepth: 0.5,
  recessLength: 0.7,
  recessWidth: 0.4,
};
const round: Shape = { kind: 'cylinder', diameter: 0.9, height: 0.8, waterDepth: 0.7 };
const pieces: Shape = {
  kind: 'panels',
  pieces: [
    { name: 'long wall', facing: 'side', area: 1.2, areaAboveWater: 0.1 },
    { name: 'floor', facing: 'bottom', area: 0.9, areaAboveWater: 0 },
  ],
  waterSurface: 0.9,
  waterVolume: 0.5,
  freeboard: 0.08,
};
const pipe = { length: 3, outerDiameter: 0.032, wallThickness: 0.0024, wallConductivity: 0.16, emissivity: 0.9 };
const wet: Partial<BuiltTank> = {
  pipes: [
    { ...pipe, name: 'pipe1' },
    { ...pipe, name: 'return', insulation: { thickness: 0.013, conductivity: 0.036 } },
  ],
  airFlow: { airStones: 1e-4, skimmer: 2e-4 },
  exchange: { makeUpFrom: 'mains', changeFlow: 1e-7 },
};

interface Case {
  readonly tank: TankDescription;
  readonly shapes?: ConditionOrigins['shapes'];
  readonly conditions?: TankConditions;
}

const measured: MeasuredTank = {
  kind: 'measured',
  energy: 38 * 3.6e6,
  duration: 7 * 86400,
  roomTemperature: 291.15,
  waterTemperature: 298.65,
  volume: 0.3,
  salinity: 0,
  evaporationShare: 0.35,
  pumpHeat: 9,
  lightHeat: 4,
};

const shapes = { tank: box };
const cases: Readonly<Record<string, Case>> = {
  open: { tank: tankOf([vesselOf('tank', box, wrapped)]), shapes },
  'tight lid': { tank: tankOf([vesselOf('tank', box, wrapped, { cover: lid })]), shapes },
  'loose lid of two panes': { tank: tankOf([vesselOf('tank', box, wrapped, { cover: loose })]), shapes },
  'lid on the water': {
    tank: tankOf([vesselOf('tank', { ...box, waterDepth: 0.6 }, {}, { cover: lid })]),
    shapes: { tank: { ...box, waterDepth: 0.6 } },
  },
  'hood with a fan': { tank: tankOf([vesselOf('tank', box, wrapped, { cover: hood })]), shapes },
  'dry hood': {
    tank: tankOf([vesselOf('tank', box, wrapped, { cover: { ...hood, airFlow: 0.2 } as Vessel['cover'] })]),
    shapes,
  },
  'all exposures, lid': { tank: tankOf([vesselOf('tank', box, exposed, { cover: loose })]), shapes },
  'layers, joints and water gap': { tank: tankOf([vesselOf('tank', box, layered, { cover: lid })]), shapes },
  'water gap that stands still': {
    tank: tankOf([
      vesselOf('tank', box, {
        bottom: { stack: [{ kind: 'waterGap', thickness: 0.004, origin: 'tank.load.faces.0.inside.0' }, ...glass] },
      }),
    ]),
    shapes,
  },
  'sump, pipes, drawn air and fresh water': {
    tank: tankOf([vesselOf('tank', box), vesselOf('sump', sump, {}, { airSpeed: 0.3, cover: loose })], wet),
    shapes: { tank: box, sump },
  },
  'L-shape': { tank: tankOf([vesselOf('tank', lShape)]), shapes: { tank: lShape } },
  cylinder: { tank: tankOf([vesselOf('tank', round, {}, { cover: lid })]), shapes: { tank: round } },
  'free panels': { tank: tankOf([vesselOf('tank', pieces, {}, { cover: loose })]), shapes: { tank: pieces } },
  'carried by a measurement': {
    tank: tankOf([vesselOf('tank', box), vesselOf('sump', sump)], { ...wet, measuredOverModelled: 0.83 }),
    shapes: { tank: box, sump },
  },
  'a room warmer than the water': {
    tank: tankOf([vesselOf('tank', box, layered, { cover: lid })]),
    shapes,
    conditions: { ...room, roomTemperature: 305.15 },
  },
  measured: { tank: measured },
  'measured, no vapour': { tank: { ...measured, evaporationShare: 0 } },
};

/** Constants of the model: films of ISO 6946 and of water, air speed, emissivities, sections of joints, counts. */
const modelsOwn = [
  'h_c',
  'h',
  'v',
  'n',
  'f',
  's',
  'S',
  'epsilon_w',
  'epsilon1',
  'epsilon2',
  'R_before',
  'R_f',
  'Nu',
  'dT',
  'b',
  'R',
];

/** Design fields and steps of whoever asks. */
const given =
  /^(place\.[\w.]+|room\.(coldest|relativeHumidity)|tank\.(waterTemperature|salinity|meter\.ratio)|tank\.load\.[\w.]+|engine\.outerFilmFactor)$/;

describe.each(Object.entries(cases))('%s', (_, { tank, shapes: known, conditions = room }) => {
  const load = tankLoad(tank, conditions);
  const steps = tankLoadWorking(tank, conditions, load, {
    ...origins,
    ...(known === undefined ? {} : { shapes: known }),
  });

  test('each step is its formula with the numbers put in, and each number comes from somewhere', () => {
    expect(steps.length).toBeGreaterThan(10);
    const absent = steps.flatMap(({ inputs, from }) =>
      Object.keys(inputs).filter((symbol) => inputs[symbol] === 0 && !(symbol in from)),
    );
    // Faces of the hood itself are part of its area; water film and outer film are the first of a section's resistances.
    const ofSections = ['A', 'A_1', 'A_2', 'R_1', 'epsilon'];
    expectTraced(steps, formulas, (origin) => given.test(origin), [...modelsOwn, ...ofSections, ...absent]);
  });

  test('every path, the loss and the load have a step with the value of the result', () => {
    const byResult = new Map(steps.map((one) => [one.result, one.value]));
    for (const { path, heat } of load.paths) expect(byResult.get(`tank.paths.${path}`), path).toBe(heat);
    expect(byResult.get('tank.loss')).toBe(load.loss);
    expect(byResult.get('tank.load')).toBe(load.load);
    expect(byResult.get('tank.evaporation')).toBeCloseTo(load.evaporation, 16);
    expect(byResult.get('tank.sensibleToRoom')).toBe(load.sensibleToRoom);
    expect(byResult.get('tank.latentToRoom')).toBe(load.latentToRoom);
  });
});

test.each(Object.entries(cases))('%s: the evaporation alone is that of the load', (_, { tank, conditions = room }) => {
  expect(tankEvaporationOf(tank)(conditions)).toBe(tankLoad(tank, conditions).evaporation);
});

test('panels of like build are shown once', () => {
  const tank = tankOf([vesselOf('tank', box)]);
  const steps = tankLoadWorking(tank, room, tankLoad(tank, room), { ...origins, shapes });
  const transmittances = steps.filter(({ formula }) => formula === 'tank.transmittance').map(({ result }) => result);
  expect(transmittances).toEqual(['tank.panels.front.transmittance', 'tank.panels.bottom.transmittance']);
  expect(steps.filter(({ formula }) => formula === 'tank.paneHeat')).toHaveLength(5);
});

test('origins of the conditions can be named', () => {
  const { tank } = cases.open!;
  const steps = tankLoadWorking(tank, room, tankLoad(tank, room), origins);
  expect(steps.find((one) => one.result === 'tank.paths.front')?.from.T_r).toBe('room.coldest');
});

test('a load of another kind of tank is refused', () => {
  const { tank } = cases.open!;
  expect(() => tankLoadWorking(tank, room, tankLoad(measured, room))).toThrow(
    expect.objectContaining({ path: 'load.kind' }),
  );
});
