// Panels for the tests of the stack: one that is put together by hand, and any that can be thought of.

import fc from 'fast-check';
import type { StackLayer } from '../../../src/tank/stack/layers.ts';
import type { PanelInput } from '../../../src/tank/stack/panel.ts';

export const kelvin = (celsius: number) => celsius + 273.15;

/** 10 mm of glass. */
export const glass: StackLayer = { kind: 'solid', thickness: 0.01, conductivity: 1 };
/** One inch of board whose faces are foil. */
export const foilBoard: StackLayer = { kind: 'solid', thickness: 0.0254, conductivity: 0.022, emissivity: 0.05 };

/** Half a square metre of a side, water at 26 °C, room at 20 °C. */
export function panelOf(given: Partial<PanelInput> = {}): PanelInput {
  return {
    name: 'back',
    area: 0.5,
    facing: 'side',
    inside: kelvin(26),
    waterFilmResistance: 1 / 300,
    stack: [glass],
    emissivity: 0.9,
    exposure: { kind: 'roomAir' },
    surroundings: { room: kelvin(20), outdoors: kelvin(5), ground: kelvin(10) },
    outerFilmFactor: 1,
    ...given,
  };
}

const emissivity = fc.double({ min: 0.02, max: 1, noNaN: true });
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const solid = fc.record({
  kind: fc.constant('solid' as const),
  thickness: number(0.001, 0.3),
  conductivity: number(0.02, 2),
  emissivity,
});
const jointed = fc
  .record({ layer: solid, share: number(0, 1), conductivity: number(0.02, 2) })
  .map(({ layer, ...bridge }) => ({ ...layer, bridge }));
const known = fc.record({ kind: fc.constant('resistance' as const), resistance: number(0.001, 5), emissivity });
const sealedGap = fc.record({
  kind: fc.constant('sealedGap' as const),
  thickness: number(0.001, 0.5),
  innerEmissivity: emissivity,
  outerEmissivity: emissivity,
});
const narrowGap = fc
  .record({ gap: sealedGap, breadth: number(0.01, 2) })
  .map(({ gap, breadth }) => ({ ...gap, breadth }));
const waterGap = fc.record({ kind: fc.constant('waterGap' as const), thickness: number(0.001, 0.2) });

const anyLayer: fc.Arbitrary<StackLayer> = fc.oneof(solid, jointed, known, sealedGap, narrowGap, waterGap);

const anyExposure = fc.oneof(
  fc.constant({ kind: 'roomAir' as const }),
  fc.record({ kind: fc.constant('againstWall' as const), resistance: number(0, 5) }),
  fc.record({ kind: fc.constant('closedStand' as const), resistance: number(0, 2) }),
  fc.record({ kind: fc.constant('slab' as const), resistance: number(0.01, 3) }),
  fc.record({ kind: fc.constant('outdoors' as const), windSpeed: number(0, 20) }),
);

/** Any panel; joints by the two limits, gaps of any build, whatever lies beyond, warmer or colder than the water. */
export const anyPanel: fc.Arbitrary<PanelInput> = fc
  .record({
    area: number(0.01, 5),
    facing: fc.constantFrom('side' as const, 'bottom' as const, 'top' as const),
    inside: number(274, 318),
    waterFilmResistance: fc.constantFrom(0, 1 / 300),
    stack: fc.array(anyLayer, { maxLength: 6 }),
    emissivity,
    exposure: anyExposure,
    surroundings: fc.record({ room: number(250, 320), outdoors: number(235, 320), ground: number(265, 300) }),
    outerFilmFactor: number(0.5, 2),
    height: number(0.1, 1.5),
  })
  .map((parts) => ({ name: 'any', ...parts }));
