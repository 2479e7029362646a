// What lies beyond a panel: balances at the surface, limits that must meet, and the temperatures an exposure asks for.

import { describe, expect, test } from 'vitest';
import { InputError } from '../../../src/numerics/index.ts';
import { standResistance } from '../../../src/tank/stack/enclosures.ts';
import { radiationToWall, WALL_EMISSIVITY } from '../../../src/tank/stack/outer-surface.ts';
import { settlePanel } from '../../../src/tank/stack/panel.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { kelvin, panelOf } from './stacks.ts';

describe('against a wall', () => {
  const resistance = 0.5;
  const state = settlePanel(panelOf({ exposure: { kind: 'againstWall', resistance } }));
  const { temperature: surface, wallTemperature: wall } = state.outer;

  test('the wall lies between surface and room, and passes on what it takes up', () => {
    expect(wall).toBeGreaterThan(kelvin(20));
    expect(wall).toBeLessThan(surface);
    const between = (surface + wall!) / 2;
    const takenUp = radiationToWall(0.9, WALL_EMISSIVITY, between) * (surface - wall!);
    const passedOn = (2.5 + 1 / resistance) * (wall! - kelvin(20));
    expect(deviation(takenUp, passedOn)).toBeLessThan(1e-7);
    const given = takenUp + 2.5 * (surface - kelvin(20));
    expect(deviation(given, state.heat / 0.5)).toBeLessThan(1e-7);
  });

  test('loses less than free in the room; less still before a wall that insulates', () => {
    const free = settlePanel(panelOf()).heat;
    const insulated = settlePanel(panelOf({ exposure: { kind: 'againstWall', resistance: 3 } })).heat;
    expect(state.heat).toBeLessThan(free);
    expect(insulated).toBeLessThan(state.heat);
    // Convection to the gap's room air stays.
    expect(insulated).toBeGreaterThan(0.4 * free);
  });

  test('a wall that does not resist is a wall of the room, grey as itself', () => {
    const black = panelOf({ exposure: { kind: 'againstWall', resistance: 0 } });
    expect(settlePanel(black).outer.wallTemperature).toBeCloseTo(kelvin(20), 9);
    expect(deviation(settlePanel(black).heat, settlePanel(panelOf()).heat)).toBeLessThan(0.07);
  });
});

describe('in a closed stand', () => {
  // (0.13 + 0.018/0.13 + 0.13) · 0.6/2.4, by hand.
  test('18 mm of board of 0.13 round 0.6 m² of bottom, 2.4 m² of boards: 0.0996 m² K/W', () => {
    expect(standResistance(0.018 / 0.13, 0.6, 2.4)).toBeCloseTo(0.0996, 4);
  });

  test('its air lies between the surface and the room', () => {
    const given = panelOf({ facing: 'bottom', exposure: { kind: 'closedStand', resistance: 0.1 } });
    const { outer, heat, area } = settlePanel(given);
    const air = kelvin(20) + (heat / area) * 0.1;
    expect(air).toBeGreaterThan(kelvin(20));
    expect(air).toBeLessThan(outer.temperature);
    expect(deviation(heat / area, (outer.temperature - air) / outer.filmResistance)).toBeLessThan(1e-8);
    expect(heat).toBeLessThan(settlePanel(panelOf({ facing: 'bottom' })).heat);
  });

  test('a stand that does not resist is an open one', () => {
    const given = panelOf({ facing: 'bottom', exposure: { kind: 'closedStand', resistance: 0 } });
    expect(deviation(settlePanel(given).heat, settlePanel(panelOf({ facing: 'bottom' })).heat)).toBeLessThan(1e-12);
  });
});

describe('on a slab and outdoors', () => {
  test('a slab takes heat to the ground, with no film: resistances in series by hand', () => {
    const state = settlePanel(panelOf({ facing: 'bottom', exposure: { kind: 'slab', resistance: 0.6 } }));
    // 0.5 m² · (26 − 10) K / (1/300 + 0.010 + 0.6)
    expect(deviation(state.heat, (0.5 * 16) / (1 / 300 + 0.01 + 0.6))).toBeLessThan(1e-12);
    expect(state.outer.filmResistance).toBe(0);
  });

  test('wind of 4 m/s at 5 °C: film 20 + h_r, conventional 0.04 m² K/W', () => {
    const state = settlePanel(panelOf({ exposure: { kind: 'outdoors', windSpeed: 4 } }));
    expect(state.sink).toBe(kelvin(5));
    expect(Math.abs(state.outer.resistance - 0.04)).toBeLessThan(0.005);
    const calm = settlePanel(panelOf({ exposure: { kind: 'outdoors', windSpeed: 0 } }));
    expect(calm.heat).toBeLessThan(state.heat);
  });

  test.each([
    [{ kind: 'slab', resistance: 0.6 } as const, 'groundTemperature'],
    [{ kind: 'outdoors', windSpeed: 1 } as const, 'outdoorTemperature'],
  ])('without the temperature beyond, %o is refused by name', (exposure, path) => {
    const attempt = () => settlePanel(panelOf({ exposure, surroundings: { room: kelvin(20) } }));
    expect(attempt).toThrow(InputError);
    expect(attempt).toThrow(expect.objectContaining({ path }));
  });
});
