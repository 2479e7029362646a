// Which faces are wet: dew points from the moist air of the engine, which is held against handbook values in its own tests.

import { expect, test } from 'vitest';
import { dewPoint, vapourPressure } from '../../../src/matter/air/index.ts';
import { dampFaces } from '../../../src/tank/stack/condensation.ts';
import { settlePanel } from '../../../src/tank/stack/panel.ts';
import { foilBoard, glass, kelvin, panelOf } from './stacks.ts';

/** A cold tank of 12 °C in a room of 24 °C with 60 %: dew point 15.8 °C. */
const room = dewPoint(kelvin(24), vapourPressure(kelvin(24), 0.6));
const cold = { inside: kelvin(12), surroundings: { room: kelvin(24), ground: kelvin(10), outdoors: kelvin(0) } };

test('the dew point of 24 °C and 60 % is 15.8 °C, as psychrometric tables say', () => {
  expect(room).toBeCloseTo(kelvin(15.8), 0);
});

test('the bare pane of a cold tank is wet outside, a wrapped one is dry', () => {
  const [wet, ...others] = dampFaces(settlePanel(panelOf(cold)), { room });
  expect(others).toEqual([]);
  expect(wet!.face).toBe('outer');
  expect(wet!.layer).toBe(0);
  expect(wet!.temperature).toBeLessThan(room);
  expect(wet!.below).toBeCloseTo(room - wet!.temperature, 12);
  expect(dampFaces(settlePanel(panelOf({ ...cold, stack: [glass, foilBoard] })), { room })).toEqual([]);
});

test('behind a board that hangs before the pane the pane is wet; behind a sealed gap no room air gets there', () => {
  const hanging = settlePanel(panelOf({ ...cold, stack: [glass, { kind: 'openGap', thickness: 0.02 }, foilBoard] }));
  expect(dampFaces(hanging, { room })).toMatchObject([{ face: 'outer', layer: 0 }]);
  const sealed = settlePanel(panelOf({ ...cold, stack: [glass, { kind: 'sealedGap', thickness: 0.02 }, foilBoard] }));
  expect(sealed.layers[0]!.outerTemperature).toBeLessThan(room);
  expect(dampFaces(sealed, { room })).toEqual([]);
});

test('on a slab no air reaches the face; outdoors it is the outdoor air that counts', () => {
  const slab = settlePanel(panelOf({ ...cold, facing: 'bottom', exposure: { kind: 'slab', resistance: 0.5 } }));
  expect(dampFaces(slab, { room: kelvin(60), outdoors: kelvin(60) })).toEqual([]);
  const outdoors = settlePanel(panelOf({ ...cold, exposure: { kind: 'outdoors', windSpeed: 2 } }));
  expect(dampFaces(outdoors, { room: kelvin(60) })).toEqual([]);
  expect(dampFaces(outdoors, { outdoors: kelvin(60) })).toHaveLength(1);
});

test('above the water the inner face is wet where it is below the dew point of the air inside', () => {
  const state = settlePanel(panelOf({ inside: kelvin(24), waterFilmResistance: 0 }));
  expect(dampFaces(state, { inside: kelvin(25.9) })).toMatchObject([{ face: 'inner', layer: 0 }]);
  expect(dampFaces(state, { inside: kelvin(24) })).toEqual([]);
});
