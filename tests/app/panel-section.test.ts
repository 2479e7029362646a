// The section of a panel: layers to scale or honestly broken, the temperature through them, what is said of water on its outer
// face, and where in the design the panel stands.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { panelOfField, placeInDesign, sharedBeginnings } from '../../src/app/panel-section/place-in-design.ts';
import { layerWidths, levelOf, sectionOf } from '../../src/app/panel-section/section.ts';
import { sectionTable } from '../../src/app/panel-section/section-table.tsx';
import { drynessWords } from '../../src/app/panel-section/words.ts';
import type { PanelAnswer } from '../../src/assess/index.ts';
import { addItem, type DesignDocument, moveItem, parseDesign, removeItem } from '../../src/design/index.ts';
import { exampleText } from './answers.ts';

/** A pane of 10 mm under 20 mm of foam: water at 26 °C, room at 18 °C. */
const wrapped: PanelAnswer = {
  vessel: 'tank',
  panel: 'back',
  label: 'back pane',
  facing: 'side',
  exposure: 'roomAir',
  area: 0.6,
  dryArea: 0.03,
  heat: { low: 4.5, likely: 5.6, high: 6.8, unit: 'W', result: 'tank.paths.back' },
  transmittance: 1.16,
  insideTemperature: 299.15,
  waterFilmResistance: 0.002,
  layers: [
    {
      kind: 'solid',
      label: 'glass',
      thickness: 0.01,
      resistance: 0.01,
      innerTemperature: 299.13,
      outerTemperature: 299.04,
      origin: 'tank.load.wall',
    },
    {
      kind: 'solid',
      label: 'foam',
      thickness: 0.02,
      resistance: 0.571,
      innerTemperature: 299.04,
      outerTemperature: 293.72,
      origin: 'tank.load.insulation.back',
    },
    {
      kind: 'resistance',
      label: 'felt',
      thickness: null,
      resistance: 0.15,
      innerTemperature: 293.72,
      outerTemperature: 292.32,
      origin: null,
    },
  ],
  outerTemperature: 292.32,
  outerResistance: 0.13,
  sinkTemperature: 291.15,
  condenses: false,
};

describe('widths of layers', () => {
  test('to scale where the thinnest can be seen, and they fill the room', () => {
    expect(layerWidths([0.1, 0.2], 300)).toEqual([
      { width: 100, isBroken: false },
      { width: 200, isBroken: false },
    ]);
  });

  test('one much thicker than the others is cut, and only that one is broken', () => {
    const [glass, wall, foam] = layerWidths([0.004, 0.5, 0.02], 300);
    expect(glass).toEqual({ width: 16, isBroken: false });
    expect(foam!.width / glass!.width).toBeCloseTo(5, 9);
    expect(foam!.isBroken).toBe(false);
    expect(wall!.isBroken).toBe(true);
    expect(glass!.width + wall!.width + foam!.width).toBeCloseTo(300, 9);
  });

  test('whatever the layers: none wider than all room unless all are at the least, order kept, breaks only at the cut (seed 7)', () => {
    const thickness = fc.oneof(fc.double({ min: 0.0005, max: 1, noNaN: true }), fc.constant(null));
    fc.assert(
      fc.property(fc.array(thickness, { minLength: 1, maxLength: 8 }), (thicknesses) => {
        const widths = layerWidths(thicknesses, 420);
        const sum = widths.reduce((total, { width }) => total + width, 0);
        expect(sum).toBeLessThanOrEqual(Math.max(420, 34 * thicknesses.length) + 1e-6);
        const unbroken = widths.filter(({ isBroken }, index) => !isBroken && thicknesses[index] !== null);
        const broken = widths.filter(({ isBroken }) => isBroken);
        for (const { width } of widths) expect(width).toBeGreaterThanOrEqual(16 - 1e-9);
        for (const cut of broken) {
          for (const { width } of unbroken) expect(width).toBeLessThanOrEqual(cut.width + 1e-9);
        }
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

describe('the section', () => {
  test('zones stand side by side from the water to the room, and the temperature goes on from one to the next', () => {
    const { zones } = sectionOf(wrapped, 283.15, 600);
    expect(zones.map(({ kind }) => kind)).toEqual([
      'inside',
      'innerFilm',
      'layer',
      'layer',
      'layer',
      'outerFilm',
      'beyond',
    ]);
    zones.slice(1).forEach((zone, index) => {
      expect(zone.left).toBeCloseTo(zones[index]!.right, 9);
      expect(zone.from).toBeCloseTo(zones[index]!.to, 9);
    });
    expect(zones.at(-1)!.right).toBeGreaterThanOrEqual(600 - 1e-9);
  });

  test('warmer stands higher, and the dew point is drawn where air of the room touches the panel', () => {
    const section = sectionOf(wrapped, 283.15, 600);
    expect(levelOf(299.15, section, 170)).toBeLessThan(levelOf(291.15, section, 170));
    expect(section.dewPoint).toBe(283.15);
    expect(section.coldest).toBe(283.15);
    expect(sectionOf({ ...wrapped, exposure: 'slab' }, 283.15, 600).dewPoint).toBeUndefined();
    expect(sectionOf(wrapped, null, 600).dewPoint).toBeUndefined();
  });

  test('the table adds up to all resistances together', () => {
    const table = sectionTable(wrapped, 'metric');
    expect(table.rows).toHaveLength(6);
    expect(table.rows.at(-1)![2]).toBe('0.86');
    expect(table.columns[2]!.label).toBe('RSI');
    const us = sectionTable(wrapped, 'us');
    expect(us.columns[2]!.label).toBe('R-value');
    expect(us.rows.at(-1)![2]).toBe('4.9');
    expect(us.rows[3]![1]).toBe('not given');
  });

  test('water on the outer face is said with both temperatures', () => {
    expect(drynessWords(wrapped, 283.15, 'metric')).toMatch(/stays dry/);
    expect(drynessWords({ ...wrapped, condenses: true }, 294.15, 'metric')).toMatch(/^Water will settle .*19\.2.*21/);
    expect(drynessWords({ ...wrapped, exposure: 'outdoors' }, undefined, 'metric')).toMatch(/No air of the room/);
  });
});

describe('where a panel stands in the design', () => {
  const opened = parseDesign(exampleText('frag-tank-cold-garage.json'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const start = opened.document;
  const foam = { kind: 'material', material: 'extrudedPolystyrene', thickness: '20 mm' };
  const done = (outcome: ReturnType<typeof addItem>): DesignDocument => {
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.document;
  };

  test('a face has a place before and after its first layer, and is found from the field of a layer', () => {
    const place = placeInDesign(start, 'tank', 'back');
    expect(place).toEqual({ kind: 'face', path: 'tank.load.faces.0', isThere: false });
    const once = done(addItem(start, 'tank.load.faces', { face: 'back', outside: [foam] }));
    expect(placeInDesign(once, 'tank', 'back')).toEqual({ kind: 'face', path: 'tank.load.faces.0', isThere: true });
    expect(placeInDesign(once, 'tank', 'front')).toEqual({ kind: 'face', path: 'tank.load.faces.1', isThere: false });
    expect(panelOfField(once, 'tank.load.faces.0.outside.0.thickness')).toBe('tank.back');
    expect(panelOfField(once, 'tank.load.wall.thickness')).toBeUndefined();
  });

  test('layers move and go; the face goes with what it had', () => {
    const felt = { kind: 'resistance', resistance: '0.2 m2 K/W' };
    const two = done(addItem(start, 'tank.load.faces', { face: 'back', outside: [foam, felt] }));
    const turned = done(moveItem(two, 'tank.load.faces.0.outside', 1, 0));
    expect(JSON.stringify(turned)).toContain(JSON.stringify([felt, foam]));
    expect(done(removeItem(turned, 'tank.load.faces', 0))).toEqual(start);
  });

  test('lids have layers, open water and other vessels share inputs', () => {
    expect(placeInDesign(start, 'tank', 'lid')).toEqual({ kind: 'lid', path: 'tank.load.lidLayers' });
    expect(placeInDesign(start, 'sump', 'front')).toBeUndefined();
    expect(placeInDesign(start, 'tank', 'waterSurface')).toBeUndefined();
    expect(sharedBeginnings(start, 'sump', 'front')).toContain('tank.load.sump.wall');
    expect(sharedBeginnings(start, 'tank', 'left')).toContain('tank.load.insulation.sides.');
    expect(sharedBeginnings(start, 'tank', 'bottom')).toContain('tank.load.stand');
  });
});
