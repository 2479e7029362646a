// The liquid-to-suction heat exchanger: a cycle computed outside, the two definitions of effectiveness, and its limits.

import { describe, expect, it } from 'vitest';
import {
  exchangedHeat,
  exchangerEffectiveness,
  exergyDestroyedBetweenStreams,
  textbookCycle,
} from '../../src/loop/index.ts';
import { InputError } from '../../src/numerics/index.ts';

describe('R134a, liquid at 40 °C, dry gas at −10 °C, effectiveness 0.6 (computed with CoolProp 8.0.0)', () => {
  const cycle = textbookCycle({
    refrigerant: 'R134a',
    evaporating: 263.15,
    condensing: 313.15,
    superheat: 0,
    subcooling: 0,
    isentropicEfficiency: 1,
    heatExchangerEffectiveness: 0.6,
  });
  const celsius = (name: string) => cycle.points.find((point) => point.name === name)!.temperature - 273.15;

  it('25.915 kJ/kg; suction at 20.30 °C, liquid leaves at 22.13 °C', () => {
    expect(cycle.heatExchanger!.heat).toBeCloseTo(25915, 0);
    expect(celsius('compressorInlet')).toBeCloseTo(20.3, 2);
    expect(celsius('expansionInlet')).toBeCloseTo(22.13, 2);
  });

  it('counted on temperature the same heat is an effectiveness of 0.606', () => {
    const liquid = celsius('condenserOutlet');
    const gas = celsius('evaporatorOutlet');
    expect((celsius('compressorInlet') - gas) / (liquid - gas)).toBeCloseTo(0.606, 3);
  });

  it('leaves the five states their names and adds two', () => {
    expect(cycle.points.map(({ name }) => name)).toEqual([
      'compressorInlet',
      'compressorOutletIsentropic',
      'compressorOutlet',
      'condenserOutlet',
      'evaporatorInlet',
      'evaporatorOutlet',
      'expansionInlet',
    ]);
  });
});

describe('the functions', () => {
  it('are each other’s inverse', () => {
    const heat = exchangedHeat(0.37, 435e3, 392e3);
    expect(exchangerEffectiveness(heat, 435e3, 392e3)).toBeCloseTo(0.37, 12);
  });

  it('worked values of their comments', () => {
    expect(exchangedHeat(0.6, 435_858, 392_666)).toBeCloseTo(25_915.2, 6);
    expect(exergyDestroyedBetweenStreams(300, [1700, 1800], [1200, 1110])).toBeCloseTo(3000, 9);
  });

  it.each([
    ['no effectiveness', () => exchangedHeat(0, 2, 1)],
    ['more than all', () => exchangedHeat(1.1, 2, 1)],
    ['gas as warm as the liquid', () => exchangedHeat(0.5, 1, 1)],
    ['not a number', () => exchangerEffectiveness(Number.NaN, 2, 1)],
    ['no dead state', () => exergyDestroyedBetweenStreams(0, [1, 2], [2, 1])],
  ])('refuse: %s', (_what, call) => {
    expect(call).toThrowError(InputError);
  });
});
