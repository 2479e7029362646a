// Tanks of every form from the design to the load: the right layers in the right order with their doubt, what lies beyond, and
// laws that the whole way must obey. Reference for the plain box: the same box told to the tank model directly.

import { describe, expect, test } from 'vitest';
import { doubtfulInputs, withInput } from '../../src/assess/inputs.ts';
import { type StagedDesign, stagedDesign } from '../../src/assess/stages/engine-assumptions.ts';
import { tankSlice } from '../../src/assess/stages/index.ts';
import { surroundingsOf, surroundingsSlice } from '../../src/assess/stages/surroundings/surroundings.ts';
import { tankConditions, tankDescription, tankLoadAt } from '../../src/assess/stages/tank/tank.ts';
import { partAt, resolveDesign } from '../../src/design/index.ts';
import { saturationVapourPressure } from '../../src/matter/air/index.ts';
import { layerConductivity, material } from '../../src/matter/materials/index.ts';
import { type BuiltTank, rectangularTank, type TankLoad, tankLoad } from '../../src/tank/index.ts';
import { cylinderDesign, documentOf, fullDesign, type Loose, panelsDesign, sizedDesign } from '../design/examples.ts';

function staged(value: Loose): StagedDesign {
  return stagedDesign(resolveDesign(documentOf(value)).design);
}

function loadOf(design: StagedDesign): TankLoad {
  const { spell, atmosphericPressure } = surroundingsOf(surroundingsSlice(design));
  return tankLoadAt(tankSlice(design), spell, atmosphericPressure);
}

function builtOf(value: Loose): BuiltTank {
  const tank = tankDescription(tankSlice(staged(value)));
  if (tank.kind !== 'built') throw new Error('expected a built tank');
  return tank;
}

const heatBy = (value: Loose) => Object.fromEntries(loadOf(staged(value)).paths.map(({ path, heat }) => [path, heat]));

function changed(make: () => Loose, change: (load: Loose) => void): Loose {
  const design = make();
  change(design.tank.load);
  return design;
}

describe('the plain box', () => {
  test('is that of the tank model, told directly', () => {
    const design = staged(sizedDesign());
    const { spell, atmosphericPressure } = surroundingsOf(surroundingsSlice(design));
    const glass = { conductivity: layerConductivity('glass', 0.01).likely, thickness: 0.01 };
    const direct = tankLoad(
      rectangularTank({
        kind: 'rectangular',
        length: 1.2,
        width: 0.5,
        height: 0.5,
        waterDepth: 0.475,
        salinity: 0,
        wall: { ...glass, emissivity: material('glass').emissivity.likely },
        insulation: {},
        surface: 'rippled',
        lid: 'tight',
        lidLayer: { ...glass, thickness: 0.004, emissivity: material('glass').emissivity.likely },
        pumpHeat: 9,
        lightHeat: 0,
      }),
      {
        waterTemperature: 299.15,
        roomTemperature: spell.roomTemperature,
        roomRelativeHumidity: 0.5,
        atmosphericPressure,
      },
    );
    const whole = loadOf(design);
    expect(whole.paths.map(({ path }) => path)).toEqual(direct.paths.map(({ path }) => path));
    direct.paths.forEach(({ heat }, index) => {
      expect(whole.paths[index]!.heat / heat).toBeCloseTo(1, 9);
    });
  });
});

describe('layers', () => {
  const tank = builtOf(fullDesign());
  const [display, sump] = tank.vessels;
  const panel = (name: string) => display!.panels.find((each) => each.name === name)!;

  test('stand from the water outwards, those in the water counted', () => {
    const { stack, layersInWater, exposure, emissivity } = panel('back');
    expect(stack.map(({ kind }) => kind)).toEqual(['solid', 'waterGap', 'solid', 'sealedGap', 'solid', 'solid']);
    expect(layersInWater).toBe(2);
    expect(exposure).toEqual({ kind: 'againstWall', resistance: 0.5 });
    expect(emissivity).toBe(0.9);
    expect(stack[3]).toMatchObject({ thickness: 0.02, outerEmissivity: 0.05 });
    expect(stack[4]).toMatchObject({ bridge: { share: 0.1, conductivity: material('softwood').conductivity.likely } });
  });

  test('of the short form lie beyond the pane, over their gap; recess and ends are told apart', () => {
    expect(panel('left').stack.map(({ kind }) => kind)).toEqual(['solid', 'sealedGap', 'solid']);
    expect(panel('recessSide').stack.map(({ origin }) => origin)).toEqual(['tank.load.faces.1.wall']);
    expect(panel('front').stack.length).toBe(1);
    expect(panel('recessSide').exposure).toEqual({ kind: 'outdoors', windSpeed: 2 });
  });

  test('each says where in the design it stands', () => {
    for (const make of [fullDesign, panelsDesign, cylinderDesign]) {
      const document = documentOf(make());
      const layers = builtOf(make()).vessels.flatMap(({ panels, cover }) => [
        ...panels.flatMap(({ stack }) => stack),
        ...(cover.kind === 'none' ? [] : cover.stack),
      ]);
      for (const { origin } of layers) {
        const isAssumed = origin === 'tank.load.lidMaterial' || origin === 'tank.load.sump.lidMaterial';
        expect(isAssumed || partAt(document, origin!) !== undefined, origin).toBe(true);
      }
    }
  });

  test('a lid of layers has them all, two panes a gap between', () => {
    const { cover } = display!;
    expect(cover.kind === 'lid' && cover.stack.map(({ kind }) => kind)).toEqual(['solid', 'sealedGap', 'solid']);
    const two = builtOf(changed(sizedDesign, (load) => Object.assign(load, { lidPanes: 'two' }))).vessels[0]!.cover;
    expect(two.kind === 'lid' && two.stack.map(({ kind }) => kind)).toEqual(['solid', 'sealedGap', 'solid']);
    expect(sump!.cover).toMatchObject({ kind: 'lid', openShare: expect.closeTo(0.3, 12) });
  });

  test('boards of a closed stand are shared by all panels in its air', () => {
    const bottom = panel('bottom').exposure;
    if (bottom.kind !== 'closedStand') throw new Error('expected a closed stand');
    const areas = [panel('bottom'), ...sump!.panels].reduce((sum, { wetArea, dryArea }) => sum + wetArea + dryArea, 0);
    const perimeter = 2 * (1.8 + 0.7);
    const boards = 2 * 0.13 + 0.018 / layerConductivity('plywood', 0.018).likely;
    expect(bottom.resistance).toBeCloseTo((boards * areas) / (0.7 * perimeter), 9);
    for (const { exposure } of sump!.panels) expect(exposure).toEqual(bottom);
  });

  test('a hood has sides as high as it is and a top as large as the water', () => {
    const [vessel] = builtOf(panelsDesign()).vessels;
    const { cover, perimeter } = vessel!;
    if (cover.kind !== 'hood') throw new Error('expected a hood');
    expect(cover.area).toBeCloseTo(0.9 + 0.2 * perimeter, 12);
    expect(cover.airFlow).toBeCloseTo(22.5 / 3600, 12);
  });
});

describe('laws', () => {
  test.each([
    ['L', fullDesign],
    ['pieces', panelsDesign],
    ['cylinder', cylinderDesign],
    ['box', sizedDesign],
  ])('%s: paths add up to the loss, and nothing is missing', (_, make) => {
    const { paths, loss, load, gains } = loadOf(staged(make()));
    const sum = paths.reduce((total, { heat }) => total + heat, 0);
    expect(Math.abs(sum - loss)).toBeLessThan(1e-9 * Math.abs(loss));
    expect(load).toBeCloseTo(loss - gains.pump - gains.light - gains.ultraviolet, 9);
    expect(new Set(paths.map(({ path }) => path)).size).toBe(paths.length);
  });

  test('every layer added outside takes heat from its face, and only there', () => {
    const layers = [
      { kind: 'material', material: 'extrudedPolystyrene', thickness: '20 mm' },
      { kind: 'own', conductivity: '0.05 W/(m K)', thickness: '10 mm' },
      { kind: 'resistance', resistance: 'R-3' },
    ];
    const bare = heatBy(sizedDesign());
    let last = bare.back!;
    for (let count = 1; count <= layers.length; count++) {
      const wrapped = heatBy(
        changed(sizedDesign, (load) => {
          load.faces = [{ face: 'back', outside: layers.slice(0, count) }];
        }),
      );
      expect(wrapped.back!).toBeLessThan(last);
      expect(wrapped.front).toBe(bare.front);
      last = wrapped.back!;
    }
  });

  test('foil earns its value over a sealed gap, and none over one that is open to the room', () => {
    const board = (name: string) => ({ kind: 'material', material: name, thickness: '25 mm' });
    const backWith = (...outside: Loose[]) =>
      heatBy(
        changed(sizedDesign, (load) => {
          load.faces = [{ face: 'back', outside }];
        }),
      ).back!;
    const sealed = { kind: 'sealedGap', thickness: '20 mm' };
    const open = { kind: 'openGap', thickness: '20 mm' };
    const plain = backWith(sealed, board('polyisocyanurate'));
    const foil = backWith(sealed, board('polyisocyanurateFoil'));
    expect(foil).toBeLessThan(0.95 * plain);
    expect(backWith(open, board('polyisocyanurateFoil'))).toBeGreaterThan(1.8 * foil);
    expect(backWith(sealed, { ...board('polyisocyanurateFoil') })).toBe(foil);
    expect(backWith({ ...sealed, outerEmissivity: '0.9' }, board('polyisocyanurateFoil'))).toBeCloseTo(plain, 0);
  });

  test('a closed stand keeps the bottom warmer than an open one; a wall close by the back', () => {
    const bottomOn = (stand: Loose) => heatBy(changed(sizedDesign, (load) => Object.assign(load, { stand }))).bottom!;
    const open = bottomOn({ kind: 'openStand' });
    expect(bottomOn({ kind: 'closedStand', material: 'plywood', thickness: '18 mm' })).toBeLessThan(open);
    const atWall = heatBy(
      changed(sizedDesign, (load) => {
        load.faces = [{ face: 'back', exposure: { kind: 'againstWall' } }];
      }),
    );
    expect(atWall.back!).toBeLessThan(atWall.front!);
  });

  test('a face outdoors follows the weather, a slab the ground, and both say where the heat goes', () => {
    const at = (winter: string) => {
      const design = panelsDesign();
      design.place = { outdoors: { winter } };
      return loadOf(staged(design));
    };
    const [cold, mild] = [at('-5 °C'), at('8 °C')];
    const pathOf = (load: TankLoad, name: string) => load.paths.find(({ path }) => path === name)!;
    expect(pathOf(cold, 'back')).toMatchObject({ to: 'outdoors' });
    expect(pathOf(cold, 'floor')).toMatchObject({ to: 'ground' });
    expect(pathOf(cold, 'back').heat).toBeGreaterThan(1.3 * pathOf(mild, 'back').heat);
    expect(pathOf(cold, 'floor').heat).toBeGreaterThan(pathOf(mild, 'floor').heat);
    expect(pathOf(cold, 'window').heat).toBe(pathOf(mild, 'window').heat);
    expect(cold.lostElsewhere).toBeGreaterThan(0);
  });

  test('an aired room is as humid as air changes leave it: dry where there are many, damp where there are few', () => {
    const at = (airChanges: string) => {
      const design = changed(sizedDesign, (load) => Object.assign(load, { lid: 'none' }));
      design.room.moisture = { kind: 'ventilated', airChanges };
      const of = staged(design);
      const { spell, atmosphericPressure } = surroundingsOf(surroundingsSlice(of));
      const { roomRelativeHumidity } = tankConditions(tankSlice(of), spell, atmosphericPressure);
      return { humidity: roomRelativeHumidity, evaporation: loadOf(of).evaporation, spell };
    };
    const [stuffy, usual, draughty] = [at('0.02 /h'), at('0.5 /h'), at('20 /h')];
    expect(draughty.humidity).toBeLessThan(usual.humidity);
    expect(usual.humidity).toBeLessThan(stuffy.humidity);
    expect(stuffy.humidity).toBeLessThanOrEqual(1);
    // With air changes without end the room has the humidity ratio of outdoors: p_o / p_sat(T_r).
    const { outdoorTemperature, roomTemperature } = draughty.spell;
    const dry = (0.8 * saturationVapourPressure(outdoorTemperature)) / saturationVapourPressure(roomTemperature);
    expect(draughty.humidity).toBeGreaterThan(dry);
    expect(draughty.humidity).toBeLessThan(1.2 * dry);
    expect(draughty.evaporation).toBeGreaterThan(usual.evaporation);
  });

  test('a room hotter than the tank is a cooling load, with its sign', () => {
    const design = changed(sizedDesign, (load) => Object.assign(load, { pumpPower: '0 W' }));
    Object.assign(design.room, { temperature: '35 °C', coldest: '35 °C', relativeHumidity: '90 %' });
    const { load, paths } = loadOf(staged(design));
    expect(load).toBeLessThan(0);
    expect(paths.find(({ path }) => path === 'front')!.heat).toBeLessThan(0);
  });

  test.each([
    ['0 %', '0 °C'],
    ['100 %', '0 °C'],
    ['0 %', '45 °C'],
    ['100 %', '45 °C'],
  ])('a room of %s and %s has an answer, covered or open', (relativeHumidity, temperature) => {
    for (const lid of ['none', 'tight', 'loose', 'hood']) {
      const design = changed(sizedDesign, (load) => Object.assign(load, { lid }));
      design.room = { temperature, coldest: temperature, relativeHumidity };
      expect(Number.isFinite(loadOf(staged(design)).load), lid).toBe(true);
    }
  });
});

describe('doubt', () => {
  const ofOthers =
    /^(?:source|machine|exchangers|power|prices|wrapping)\.|^room\.(?:warmest|height|monthsHeated|houseHeatPrice)/;

  test.each([
    ['L', fullDesign],
    ['pieces', panelsDesign],
    ['cylinder', cylinderDesign],
  ])('%s: every uncertain number of the tank moves its load, in winter or in summer', (_, make) => {
    const resolution = resolveDesign(documentOf(make()));
    const design = staged(make());
    const loads = (of: StagedDesign) => {
      const { spell, months, atmosphericPressure } = surroundingsOf(surroundingsSlice(of));
      return [spell, months[0]!, months[6]!].map((place) => tankLoadAt(tankSlice(of), place, atmosphericPressure).load);
    };
    const likely = loads(design);
    const isAired = design.room.moisture.kind === 'ventilated';
    const isOfAir = (path: string) => path === 'room.volume' || path.startsWith('room.moisture.');
    const inputs = doubtfulInputs(resolution, design).filter(
      ({ path }) =>
        !ofOthers.test(path) &&
        !path.startsWith('tank.load.meter') &&
        isOfTank(path) &&
        // An aired room has no humidity of its own; a room whose humidity is known is not aired.
        (isAired ? path !== 'room.relativeHumidity' : !isOfAir(path)),
    );
    expect(inputs.length).toBeGreaterThan(12);
    for (const { path, estimate } of inputs) {
      const moved = [estimate.low, estimate.high].some((value) =>
        loads(withInput(design, resolution.followers, path, value)).some((load, index) => load !== likely[index]),
      );
      expect(moved, path).toBe(true);
    }
  });

  test('a factor is listed only where the tank has such a part', () => {
    const keys = (make: () => Loose) =>
      doubtfulInputs(resolveDesign(documentOf(make())), staged(make())).map(({ path }) => path);
    expect(keys(fullDesign)).toEqual(
      expect.arrayContaining([
        'engine.insideConductivityFactor',
        'engine.insulationConductivityFactor',
        'engine.standFactor',
      ]),
    );
    // The gap before the foil of that design has its emissivity typed, and the foil's other face lies on a board.
    expect(keys(fullDesign)).not.toContain('engine.foilEmissivityFactor');
    const foiled = () =>
      changed(sizedDesign, (load) => {
        load.insulation = { back: { material: 'polyisocyanurateFoil', thickness: '30 mm', gap: '20 mm' } };
      });
    expect(keys(foiled)).toContain('engine.foilEmissivityFactor');
    const box = keys(sizedDesign);
    for (const key of [
      'insideConductivityFactor',
      'insulationConductivityFactor',
      'foilEmissivityFactor',
      'standFactor',
    ]) {
      expect(box).not.toContain(`engine.${key}`);
    }
  });
});

/** The engine's own assumptions that are not about the tank belong to the machine. */
function isOfTank(path: string): boolean {
  return !path.startsWith('engine.') || /Factor$/.test(path);
}
