// Measures on a tank: what each changes, that none makes the tank lose more, that the order of a list does not matter, and that
// one which changes nothing says why.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyMeasures,
  areaOf,
  type BuiltTank,
  type Measure,
  type MeasuredTank,
  panelsOf,
  type RectangularTank,
  rectangularTank,
  type TankConditions,
  tankHeatOf,
  tankLoad,
  type Vessel,
} from '../../../src/tank/index.ts';

const bare: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.45,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 0,
  lightHeat: 0,
};
const room: TankConditions = {
  waterTemperature: 298.15,
  roomTemperature: 291.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};
const tank = rectangularTank(bare);
const box = rectangularTank({ ...bare, length: 0.8, width: 0.4, height: 0.4, waterDepth: 0.25 }).vessels[0]!;
const sump: Vessel = { ...box, name: 'sump' };
const withSump: BuiltTank = { ...tank, vessels: [...tank.vessels, sump] };

const acrylic = { kind: 'solid', thickness: 0.004, conductivity: 0.18, emissivity: 0.9 } as const;
const gap = { kind: 'sealedGap', thickness: 0.02 } as const;
const foilBoard = { kind: 'solid', thickness: 0.025, conductivity: 0.022, emissivity: 0.05 } as const;
const mat = { kind: 'solid', thickness: 0.02, conductivity: 0.03, emissivity: 0.9 } as const;

const singleLid: Measure = { kind: 'lid', vessel: 'tank', stack: [acrylic], emissivity: 0.9, openShare: 0 };
const doubleLid: Measure = { ...singleLid, stack: [acrylic, { kind: 'sealedGap', thickness: 0.012 }, acrylic] };
const board: Measure = {
  kind: 'outside',
  panels: [...panelsOf(tank, 'back'), ...panelsOf(tank, 'sides')],
  stack: [gap, foilBoard],
  emissivity: 0.05,
};
const underneath: Measure = { kind: 'outside', panels: panelsOf(tank, 'bottom'), stack: [mat], emissivity: 0.9 };
const secondPane: Measure = {
  kind: 'outside',
  panels: panelsOf(tank, 'front'),
  stack: [{ kind: 'sealedGap', thickness: 0.012 }, acrylic],
  emissivity: 0.9,
};
const cooler: Measure = { kind: 'cooler', by: 1 };
const nightCover: Measure = { kind: 'nightCover', share: 0.4, stack: [mat], emissivity: 0.9, openShare: 0.02 };
const still: Measure = { kind: 'calmerSurface', to: 'still' };
const all = [singleLid, doubleLid, board, underneath, secondPane, cooler, nightCover, still];

function loadWith(measures: readonly Measure[], on: BuiltTank = tank): number {
  const wrapped = applyMeasures(on, room.waterTemperature, measures);
  return tankHeatOf(wrapped.tank)({ ...room, waterTemperature: wrapped.waterTemperature }).load;
}

const reasonsOf = (measures: readonly Measure[], on: BuiltTank | MeasuredTank = tank) =>
  applyMeasures(on, room.waterTemperature, measures).outcomes.map(({ unchanged }) =>
    unchanged.map((each) => each.reason),
  );

describe('measures on a tank', () => {
  it('leave it as it is where there are none', () => {
    const { tank: same, waterTemperature, outcomes } = applyMeasures(tank, 298.15, []);
    expect(same).toBe(tank);
    expect(waterTemperature).toBe(298.15);
    expect(outcomes).toEqual([]);
  });

  it.each(all.map((measure) => [measure.kind, measure] as const))('%s makes the load smaller', (_kind, measure) => {
    expect(loadWith([measure])).toBeLessThan(loadWith([]));
    expect(reasonsOf([measure])).toEqual([[]]);
  });

  it('leave the tank they were given untouched', () => {
    const before = JSON.stringify(tank);
    applyMeasures(tank, 298.15, all);
    expect(JSON.stringify(tank)).toBe(before);
  });

  it('give the same tank in any order, each with its own outcome (law, any sub-list in any order)', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: 1 }), (list) => {
        const sorted = all.filter((measure) => list.includes(measure));
        expect(loadWith(list)).toBeCloseTo(loadWith(sorted), 9);
        expect(applyMeasures(tank, 298.15, list).outcomes).toHaveLength(list.length);
      }),
      { seed: 20, numRuns: 60 },
    );
  });

  it('never make the tank lose more by being added (law, any sub-list)', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: 1 }), ([first, ...rest]) => {
        expect(loadWith([first!, ...rest])).toBeLessThanOrEqual(loadWith(rest) + 1e-9);
      }),
      { seed: 21, numRuns: 60 },
    );
  });

  it('give a mat its resistance: d/k = 0.02/0.03 = 0.667 m² K/W in series with film, glass and outer film', () => {
    const bottom = (measures: readonly Measure[]) => {
      const load = tankLoad(applyMeasures(tank, 298.15, measures).tank, room);
      const { intermediates } = load;
      if (intermediates.kind !== 'built') throw new Error('a built tank');
      return intermediates.vessels[0]!.panels.find(({ name }) => name === 'bottom')!;
    };
    expect(bottom([underneath]).innerResistance - bottom([]).innerResistance).toBeCloseTo(0.02 / 0.03, 9);
  });

  it('cover the areas of their panels, above the water too', () => {
    expect(areaOf(tank, panelsOf(tank, 'back'))).toBeCloseTo(1.2 * 0.5, 12);
    expect(areaOf(tank, panelsOf(tank, 'sides'))).toBeCloseTo(2 * 0.5 * 0.5, 12);
    expect(areaOf(tank, panelsOf(tank, 'hidden'))).toBeCloseTo(1.2 * 0.5 + 2 * 0.5 * 0.5, 12);
    expect(panelsOf(withSump, 'hidden')).toHaveLength(3 + 4);
    expect(panelsOf(tank, 'sideVessels')).toEqual([]);
    expect(panelsOf(withSump, 'sideVessels').every(({ vessel }) => vessel === 'sump')).toBe(true);
  });

  it('leave the other vessels alone', () => {
    const { tank: wrapped } = applyMeasures(withSump, 298.15, [singleLid, board, underneath, secondPane]);
    expect(wrapped.vessels[1]).toBe(withSump.vessels[1]);
    const lidOnSump = applyMeasures(withSump, 298.15, [{ ...singleLid, vessel: 'sump' } as Measure]);
    expect(lidOnSump.tank.vessels[0]).toBe(withSump.vessels[0]);
    expect(lidOnSump.tank.vessels[1]!.cover.kind).toBe('lid');
  });
});

describe('a measure that changes nothing', () => {
  const lidded = applyMeasures(tank, 298.15, [doubleLid]).tank;

  it('says that a lid as good lies there', () => {
    expect(reasonsOf([singleLid], lidded)).toEqual([['noBetterThanPresent']]);
    expect(reasonsOf([nightCover], lidded)).toEqual([['noBetterThanPresent']]);
    expect(loadWith([singleLid], lidded)).toBe(loadWith([], lidded));
  });

  it('says which of two lids of a list stays, whatever their order', () => {
    expect(reasonsOf([doubleLid, singleLid])).toEqual([[], ['noBetterThanPresent']]);
    expect(loadWith([doubleLid, singleLid])).toBe(loadWith([singleLid, doubleLid]));
  });

  it('says that the tank has no such part', () => {
    expect(reasonsOf([{ ...singleLid, vessel: 'sump' } as Measure])).toEqual([['noSuchPart']]);
    expect(reasonsOf([{ ...board, panels: [{ vessel: 'tank', panel: 'recessBack' }] } as Measure])).toEqual([
      ['noSuchPart'],
    ]);
  });

  it('says that the surface is as calm already', () => {
    expect(reasonsOf([{ kind: 'calmerSurface', to: 'rippled' }])).toEqual([['alreadyCalm']]);
  });

  it('says that nobody knows the sizes of a tank known by its meter; cooler water applies', () => {
    const metered: MeasuredTank = {
      kind: 'measured',
      energy: 1e8,
      duration: 6e5,
      roomTemperature: 291.15,
      waterTemperature: 298.15,
      volume: 0.3,
      salinity: 0,
      evaporationShare: 0.4,
      pumpHeat: 0,
      lightHeat: 0,
    };
    expect(reasonsOf([singleLid, cooler, still, underneath], metered)).toEqual([
      ['sizesUnknown'],
      [],
      ['sizesUnknown'],
      ['sizesUnknown'],
    ]);
    expect(applyMeasures(metered, 298.15, [cooler]).waterTemperature).toBe(297.15);
  });

  it('is refused where its numbers cannot be', () => {
    expect(() => applyMeasures(tank, 298.15, [{ kind: 'cooler', by: -1 }])).toThrow(/measures\.0\.by/);
    expect(() => applyMeasures(tank, 298.15, [cooler, { ...nightCover, share: 1.2 } as Measure])).toThrow(
      /measures\.1\.share/,
    );
    expect(() => applyMeasures(tank, 298.15, [{ ...board, emissivity: 1.5 } as Measure])).toThrow(/emissivity/);
  });
});

describe('the bare heat of a tank', () => {
  it('is that of the full load (law, any room)', () => {
    const on = applyMeasures(withSump, 298.15, [doubleLid, board, nightCover]).tank;
    const heatAt = tankHeatOf(on);
    fc.assert(
      fc.property(
        fc.double({ min: 273.15, max: 318.15, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (roomTemperature, roomRelativeHumidity) => {
          const conditions = { ...room, roomTemperature, roomRelativeHumidity };
          const full = tankLoad(on, conditions);
          const bareHeat = heatAt(conditions);
          for (const key of ['load', 'loss', 'sensibleToRoom', 'latentToRoom', 'evaporation'] as const) {
            expect(bareHeat[key]).toBe(full[key]);
          }
        },
      ),
      { seed: 22, numRuns: 40 },
    );
  });
});
