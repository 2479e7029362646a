// A study of a machine with plain round numbers, all invented, for what is made from one.

import type { MapFamily, MapMark, MapPoint, MapQuantity } from '../../src/assess/index.ts';
import type { MachineMap } from '../../src/charts/machine/map-points.ts';
import type { Band } from '../../src/quantities/index.ts';

const celsius = (value: number) => value + 273.15;

function band(likely: number, share = 0.1): Band {
  return { low: likely * (1 - share), likely, high: likely * (1 + share) };
}

/** Heat rises by 10 W a kelvin, and falls by 2 W a kelvin of condensing; the electricity is a third to a half of it. */
export function valuesAt(evaporating: number, condensing: number): Record<MapQuantity, Band> {
  const heat = 500 + 10 * evaporating - 2 * (condensing - 40);
  const power = 150 + 2 * evaporating + (condensing - 40);
  return {
    heat: band(heat),
    power: band(power),
    cop: band(heat / power),
    current: band(power / 150),
    dischargeTemperature: band(celsius(80), 0),
    massFlow: band(heat / 2e5),
    motorLoad: band(power / 120),
  };
}

function point(evaporating: number, condensing: number): MapPoint {
  return {
    evaporating: celsius(evaporating),
    values: valuesAt(evaporating, condensing),
    reason: null,
    insideData: evaporating <= -10,
    passed: evaporating > 0 ? ['evaporatingHighest'] : [],
  };
}

const evaporatings = [-30, -20, -10, 0, 10];

function family(condensing: number): MapFamily {
  return { condensing: celsius(condensing), points: evaporatings.map((evaporating) => point(evaporating, condensing)) };
}

function mark(when: MapMark['when'], evaporating: number, condensing: number): MapMark {
  return {
    when,
    evaporating: celsius(evaporating),
    condensing: celsius(condensing),
    sourceTemperature: celsius(evaporating + 8),
    values: valuesAt(evaporating, condensing),
    passed: [],
  };
}

const condensings = [30, 40, 50].map(celsius);

export const inventedMachine: MachineMap = {
  basis: {
    refrigerant: 'R134a',
    superheat: 5,
    subcooling: 5,
    surroundings: celsius(22),
    frequency: 50,
    voltage: 230,
  },
  map: [30, 40, 50].map(family),
  limits: [
    {
      limit: 'evaporatingHighest',
      label: 'highest evaporating temperature',
      quantity: 'temperature',
      bound: celsius(0),
      source: 'an invented guide',
      edges: condensings.map((condensing) => ({ condensing, beyond: 'above', at: celsius(0) })),
    },
    {
      limit: 'currentRated',
      label: 'rated current',
      quantity: 'current',
      bound: 1.1,
      source: 'an invented plate',
      edges: condensings.map((condensing, index) => ({
        condensing,
        beyond: 'above',
        at: [null, celsius(5), 'all' as const][index]!,
      })),
    },
    {
      limit: 'pressureRatioHighest',
      label: 'highest pressure ratio',
      quantity: 'ratio',
      bound: 12,
      source: 'an invented guide',
      edges: condensings.map((condensing, index) => ({
        condensing,
        beyond: 'below',
        at: [null, celsius(-28), celsius(-25)][index]!,
      })),
    },
  ],
  marks: [mark('coldestSpell', 2, 38), mark('mildDay', 9, 39)],
};
