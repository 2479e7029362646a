// A vessel, and a room with its water, for the tests of what covers it: a basis, and arbitrary ones over the whole range.

import fc from 'fast-check';
import { type Cover, type Panel, rectangularTank, type TankConditions, type Vessel } from '../../../src/tank/index.ts';
import { airState } from '../../../src/tank/water-surface/vapour.ts';

export const atmosphere = 101325;

export const livingRoom: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 295.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: atmosphere,
};

export const glassBox: Vessel = rectangularTank({
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.44,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: { back: { conductivity: 0.03, thickness: 0.025 } },
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 0,
  lightHeat: 0,
}).vessels[0]!;

export type LidCover = Extract<Cover, { readonly kind: 'lid' }>;
export type HoodCover = Extract<Cover, { readonly kind: 'hood' }>;

export const glass = { kind: 'solid', thickness: 0.004, conductivity: 1, emissivity: 0.87 } as const;
export const foam = { kind: 'solid', thickness: 0.02, conductivity: 0.033, emissivity: 0.9 } as const;
export const gap = { kind: 'sealedGap', thickness: 0.012 } as const;

/** What `coveredSurface` and `hoodedSurface` ask beside vessel and cover. */
export function placeOf(conditions: TankConditions, salinity = 0) {
  const { waterTemperature, atmosphericPressure, roomTemperature, outdoorTemperature } = conditions;
  return {
    conditions,
    waterTemperature,
    atmosphericPressure,
    air: airState(conditions, salinity),
    surroundings: {
      room: roomTemperature,
      ...(outdoorTemperature === undefined ? {} : { outdoors: outdoorTemperature }),
    },
    outerFilmFactor: 1,
  };
}

/** Rooms of 0 to 45 °C, dry to saturated, from sea level to high mountains; water of 1 to 45 °C. */
export const anyConditions: fc.Arbitrary<TankConditions> = fc
  .record({
    waterTemperature: fc.double({ min: 274, max: 318, noNaN: true }),
    roomTemperature: fc.double({ min: 273.15, max: 318.15, noNaN: true }),
    roomRelativeHumidity: fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })),
    atmosphericPressure: fc.double({ min: 60e3, max: 105e3, noNaN: true }),
  })
  .map((conditions) => ({ ...conditions, outdoorTemperature: 268.15 }));

export const anyStack = fc.constantFrom<LidCover['stack']>([glass], [glass, gap, glass], [glass, foam], [foam], []);

/** The glass box with other water levels and looks, and its back perhaps outdoors. */
export const anyVessel: fc.Arbitrary<Vessel> = fc
  .record({
    freeboard: fc.double({ min: 0.002, max: 0.4, noNaN: true }),
    surface: fc.constantFrom('still' as const, 'rippled' as const, 'rough' as const),
    backOutdoors: fc.boolean(),
  })
  .map(({ freeboard, surface, backOutdoors }) => {
    const panels = glassBox.panels.map((panel): Panel => {
      const level = { ...panel, dryArea: (panel.dryArea / glassBox.freeboard) * freeboard };
      if (!(backOutdoors && panel.name === 'back')) return level;
      return { ...level, exposure: { kind: 'outdoors', windSpeed: 2 } };
    });
    return { ...glassBox, panels, freeboard, surface };
  });
