// Doubt of films and materials reaches the load of a tank by its sizes: which factors a design has, and what they do to the
// band, held against the tank model called one by one and combined as JCGM 100:2008 equation (10) says.

import { describe, expect, test } from 'vitest';
import { type Assessment, assessDesign, assessTankLoad } from '../../../src/assess/index.ts';
import { withInput } from '../../../src/assess/inputs.ts';
import { StageRunner } from '../../../src/assess/stage.ts';
import { engineAssumptions, stagedDesign } from '../../../src/assess/stages/engine-assumptions.ts';
import { type StageResults, stages } from '../../../src/assess/stages/index.ts';
import { resolveDesign } from '../../../src/design/index.ts';
import { type RectangularTank, rectangularTank, type TankConditions, tankLoad } from '../../../src/tank/index.ts';
import { documentOf, type Loose, measuredDesign } from '../../design/examples.ts';

/** Every number typed in without doubt: what is left moves by the engine's own assumptions. */
function certain(): Loose {
  return {
    formatVersion: 2,
    name: 'Sizes without doubt',
    place: { altitude: '0 m' },
    room: {
      temperature: '20 °C',
      coldest: '18 °C',
      warmest: '25 °C',
      relativeHumidity: '50 %',
      volume: '40 m3',
      monthsHeated: '7',
      houseHeatPrice: '0.12 EUR/kWh',
    },
    tank: {
      waterTemperature: '26 °C',
      water: 'fresh',
      load: {
        kind: 'rectangular',
        length: '120 cm',
        width: '50 cm',
        height: '60 cm',
        waterDepth: '55 cm',
        wall: { material: 'glass', thickness: '10 mm' },
        insulation: {
          back: { material: 'extrudedPolystyrene', thickness: '20 mm' },
          bottom: { material: 'elastomericFoam', thickness: '10 mm' },
        },
        surface: 'still',
        lid: 'tight',
        lidMaterial: 'acrylic',
        lidThickness: '4 mm',
        evaporationFactor: '1',
        pumpPower: '10 W',
        pumpShareToWater: '0.9',
        lightPower: '0 W',
      },
    },
    machine: {
      refrigerant: 'R134a',
      compressor: { appliance: 'dehumidifier', madeFor: 'R134a' },
    },
    prices: { currency: 'EUR', electricity: '0.36 EUR/kWh' },
  };
}

/** The same tank in the words of the tank model; conductivities of data/materials.json, likely values. */
const tank: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.6,
  waterDepth: 0.55,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: { back: { conductivity: 0.03, thickness: 0.02 }, bottom: { conductivity: 0.04, thickness: 0.01 } },
  surface: 'still',
  lid: 'tight',
  lidLayer: { conductivity: 0.18, thickness: 0.004, emissivity: 0.9 },
  pumpHeat: 9,
  lightHeat: 0,
};
const conditions: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 291.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101_325,
};

const load = (changed: Partial<RectangularTank>) => tankLoad(rectangularTank({ ...tank, ...changed }), conditions).load;
const glass = (conductivity: number) => load({ wall: { ...tank.wall, conductivity } });
const wrapped = (factor: number) =>
  load({
    insulation: {
      back: { conductivity: 0.03 * factor, thickness: 0.02 },
      bottom: { conductivity: 0.04 * factor, thickness: 0.01 },
    },
  });
const lid = (conductivity: number) => load({ lidLayer: { conductivity, thickness: 0.004, emissivity: 0.9 } });

describe('a tank by its sizes, of which every number is certain', () => {
  const likely = load({});
  const pairs = {
    outerFilmFactor: [load({ outerFilmFactor: 0.8 }), load({ outerFilmFactor: 1.25 })],
    wallConductivityFactor: [glass(0.9), glass(1.1)],
    // Extruded polystyrene 0.026 to 0.034 about 0.030, elastomeric foam 0.036 to 0.050 about 0.040: the farther ends.
    insulationConductivityFactor: [wrapped(0.026 / 0.03), wrapped(0.05 / 0.04)],
    lidConductivityFactor: [lid(0.17), lid(0.2)],
  };

  test('has the band that films and materials leave', () => {
    const moves = Object.values(pairs).map((ends) => ends.map((value) => value - likely));
    const high = likely + Math.sqrt(moves.reduce((sum, [, up]) => sum + up! ** 2, 0));
    const low = likely - Math.sqrt(moves.reduce((sum, [down]) => sum + down! ** 2, 0));
    const { tankLoad: band } = assessed(certain());
    expect(band.likely / likely).toBeCloseTo(1, 9);
    expect(band.low / low).toBeCloseTo(1, 9);
    expect(band.high / high).toBeCloseTo(1, 9);
    // About as much as a fifth of the load: not to be left out.
    expect((band.high - band.low) / band.likely).toBeGreaterThan(0.2);
  });

  test('names each in the answer of the tank alone, the film first', () => {
    const outcome = assessTankLoad(JSON.stringify(certain()));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    const { influences, assumptions, tankLoad: band } = outcome.answer;
    expect(band).toEqual(assessed(certain()).tankLoad);
    const paths = Object.keys(pairs).map((key) => `engine.${key}`);
    expect(influences.map(({ path }) => path).sort()).toEqual([...paths].sort());
    expect(influences[0]?.path).toBe('engine.outerFilmFactor');
    expect(assumptions.filter(({ path }) => path.startsWith('engine.')).map(({ path }) => path)).toEqual(paths);
    for (const { path, loadAtLow, loadAtHigh } of influences) {
      const [low, high] = pairs[path.slice('engine.'.length) as keyof typeof pairs];
      expect(loadAtLow / low!).toBeCloseTo(1, 9);
      expect(loadAtHigh / high!).toBeCloseTo(1, 9);
    }
  });

  test('passes its doubt on to the year and its bills', () => {
    const electricity = assessed(certain()).accounts.find(({ scenario }) => scenario === 'plainHeater')!.electricity;
    expect(electricity.high / electricity.likely).toBeGreaterThan(1.05);
    expect(electricity.low / electricity.likely).toBeLessThan(0.95);
  });
});

describe('a design has the factors of its parts and no others', () => {
  const keys = (design: Loose) =>
    engineAssumptions(stagedOf(design))
      .map(({ key }) => key)
      .filter((key) => key.endsWith('Factor'));

  test('a measured tank none', () => {
    expect(keys(measuredDesign())).toEqual([]);
    expect(assessed(measuredDesign()).assumptions.some(({ path }) => /^engine.*Factor$/.test(path))).toBe(false);
  });

  test('an open tank without wrapping those of film and panes; the rest stay at 1', () => {
    const design = certain();
    design.tank.load.lid = 'none';
    design.tank.load.insulation = undefined;
    expect(keys(design)).toEqual(['outerFilmFactor', 'wallConductivityFactor']);
    expect(stagedOf(design).engine).toMatchObject({ insulationConductivityFactor: 1, lidConductivityFactor: 1 });
  });

  test('each with the material’s name, its ends and where they come from', () => {
    const design = certain();
    design.tank.load.lidMaterial = 'polycarbonateTwinWall';
    design.tank.load.lidThickness = '10 mm';
    const [film, wall, wrapping, cover] = engineAssumptions(stagedOf(design)).slice(-4);
    expect(film).toMatchObject({ key: 'outerFilmFactor', estimate: { low: 0.8, likely: 1, high: 1.25 } });
    expect(film!.source).toContain('judgement');
    expect(wall).toMatchObject({
      estimate: { low: 0.9, likely: 1, high: 1.1 },
      source: expect.stringContaining('ISO 10456'),
    });
    expect(wrapping!.label).toMatch(/Extruded polystyrene.* and Elastomeric foam/);
    // A sheet with air in it is as doubtful as its transmittance: 15 %.
    expect(cover!.label).toContain('twin-wall');
    expect(cover!.estimate.low).toBeCloseTo(0.85, 12);
    expect(cover!.estimate.high).toBeCloseTo(1.15, 12);
  });
});

test('a film of the tank runs the tank and its months again and no size; a film of the coil the other way about', () => {
  const design = stagedOf(certain());
  const runner = new StageRunner<StageResults>(stages);
  runner.run(design);
  const ranAgain = (path: string, value: number) => {
    const before = runner.counts();
    runner.probe(withInput(design, [], path, value));
    return Object.entries(runner.counts()).flatMap(([name, count]) => (count > before[name]! ? [name] : []));
  };
  const afterTheTank = ['tank', 'plant', 'monthLoads', 'year', 'wrapped', 'accounts'];
  const factors = engineAssumptions(design).filter(({ key }) => key.endsWith('Factor'));
  expect(factors).toHaveLength(4);
  for (const { key, estimate } of factors) {
    expect(ranAgain(`engine.${key}`, estimate.high), key).toEqual(afterTheTank);
  }
  expect(ranAgain('engine.fouling', 3e-4)).toEqual(['sizing']);
});

function stagedOf(design: Loose) {
  return stagedDesign(resolveDesign(documentOf(design)).design);
}

function assessed(design: Loose): Assessment {
  const outcome = assessDesign(JSON.stringify(design), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}
