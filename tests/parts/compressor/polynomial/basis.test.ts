// What printed numbers hold for: dew and mid-points, gas and liquid, another superheat, and what the liquid is worth.

import { describe, expect, test } from 'vitest';
import { refrigerant } from '../../../../src/matter/refrigerants/index.ts';
import {
  liquidOfEnthalpy,
  printedLevels,
  type RatingBasis,
  ratedConditions,
} from '../../../../src/parts/compressor/polynomial/basis.ts';
import { liquidWorth, ratedStates } from '../../../../src/parts/compressor/polynomial/flow-and-capacity.ts';
import {
  flowRatioDabiriRice1981,
  powerRatioDabiriRice1981,
} from '../../../../src/parts/compressor/polynomial/superheat.ts';
import { ratingConditions } from '../../../../src/parts/compressor/rating-points.ts';
import reference from '../../../reference/parts/compressor-polynomial.json';
import worked from '../../../reference/parts/compressor-worked.json';

const kelvin = (celsius: number) => celsius + 273.15;
const r134a = refrigerant('R134a');
const blend = refrigerant('R407C');

const superheated: RatingBasis = {
  gas: { kind: 'superheat', superheat: 10 },
  liquid: { kind: 'subcooling', subcooling: 0 },
  saturation: 'midPoint',
};

describe('reference', () => {
  test('another superheat, R134a (CoolProp 8.0.0; Dabiri & Rice 1981, F from memory)', () => {
    const { densities, isentropicWork, flowRatio, powerRatio } = reference.otherSuperheat;
    const levels = { evaporating: kelvin(-23.3), condensing: kelvin(54.4), liquid: kelvin(32.2) };
    const warm = ratedStates(r134a, { ...levels, returnGas: kelvin(32.2) });
    const cold = ratedStates(r134a, { ...levels, returnGas: kelvin(4.4) });
    [warm, cold].forEach((states, index) => {
      expect(Math.abs(states.suction.density - densities[index]!)).toBeLessThan(6e-5);
      expect(Math.abs(states.isentropicWork - isentropicWork[index]!)).toBeLessThan(1);
    });
    const flow = flowRatioDabiriRice1981(cold.suction.density / warm.suction.density);
    expect(Math.abs(flow - flowRatio)).toBeLessThan(5e-5);
    expect(
      Math.abs(powerRatioDabiriRice1981(flow, cold.isentropicWork / warm.isentropicWork) - powerRatio),
    ).toBeLessThan(5e-5);
  });

  test.each(worked.liquidConvention.rows as [string, number][])(
    'what the liquid is worth, %s: %d (CoolProp 8.0.0)',
    (name, expected) => {
      const at = ratingConditions('ashraeLow');
      expect(Math.abs(liquidWorth(refrigerant(name), at, at.condensing) - expected)).toBeLessThanOrEqual(5e-4);
    },
  );

  test('mid-points of R407C (CoolProp 8.0.0)', () => {
    const { evaporatingMiddle, condensingMiddle, evaporatingDew, condensingDew, bubble } = reference.midPoint;
    const at = ratedConditions(blend, superheated, kelvin(evaporatingMiddle), kelvin(condensingMiddle));
    expect(Math.abs(at.evaporating - kelvin(evaporatingDew))).toBeLessThan(0.01);
    expect(Math.abs(at.condensing - kelvin(condensingDew))).toBeLessThan(0.01);
    expect(Math.abs(at.liquid - kelvin(bubble))).toBeLessThan(0.01);
    expect(at.returnGas).toBe(at.evaporating + 10);
  });
});

describe('law', () => {
  test('printed levels are the inverse of rated conditions', () => {
    for (const [evaporating, condensing] of [
      [kelvin(-30), kelvin(30)],
      [kelvin(5), kelvin(55)],
    ] as const) {
      const at = ratedConditions(blend, superheated, evaporating, condensing);
      const back = printedLevels(blend, superheated, at.evaporating, at.condensing);
      expect(Math.abs(back.evaporating - evaporating)).toBeLessThan(1e-6);
      expect(Math.abs(back.condensing - condensing)).toBeLessThan(1e-6);
    }
  });

  test('of a pure fluid a mid-point is the dew point', () => {
    const at = ratedConditions(r134a, superheated, 260, 320);
    expect([at.evaporating, at.condensing]).toEqual([260, 320]);
    expect(at.liquid).toBeCloseTo(320, 9);
  });

  test('liquid as warm as condensing is liquid without subcooling, of a blend too', () => {
    for (const saturation of ['dew', 'midPoint'] as const) {
      const with0 = { ...superheated, saturation };
      const printed = { ...with0, liquid: { kind: 'liquid', liquid: kelvin(55) } } as const;
      const at = ratedConditions(blend, with0, kelvin(-10), kelvin(55));
      const same = ratedConditions(blend, printed, kelvin(-10), kelvin(55));
      expect(same).toEqual(at);
      expect(at.liquid).toBeLessThan(at.condensing - 3);
      const back = printedLevels(blend, printed, at.evaporating, at.condensing);
      expect(Math.abs(back.condensing - kelvin(55))).toBeLessThan(1e-6);
      // Between bubble and dew it is neither, which is refused.
      const neither = { ...printed, liquid: { kind: 'liquid', liquid: kelvin(54) } } as const;
      expect(() => ratedConditions(blend, neither, kelvin(-10), kelvin(55))).toThrow(
        expect.objectContaining({ code: 'liquidAboveCondensing' }),
      );
    }
  });

  test('the liquid that an enthalpy stands for', () => {
    const { liquidEnthalpy } = ratedStates(r134a, ratingConditions('ashraeLow'));
    expect(liquidOfEnthalpy(r134a, liquidEnthalpy)).toBeCloseTo(ratingConditions('ashraeLow').liquid, 4);
    expect(liquidOfEnthalpy(r134a, liquidEnthalpy + 1e6)).toBeUndefined();
    expect(liquidOfEnthalpy(r134a, liquidEnthalpy - 1e6)).toBeUndefined();
  });
});

describe('refusals name place and reason', () => {
  const dew = (gas: RatingBasis['gas'], liquid: RatingBasis['liquid'] = null): RatingBasis => ({
    gas,
    liquid,
    saturation: 'dew',
  });
  const warmGas: RatingBasis['gas'] = { kind: 'returnGas', returnGas: kelvin(20) };
  test.each([
    ['evaporating above condensing', superheated, 330, 320, 'evaporatingAboveCondensing', 'b.evaporating'],
    ['gas colder than evaporating', dew(warmGas), 300, 330, 'returnGasBelowEvaporating', 'b.returnGas'],
    [
      'liquid warmer than condensing',
      dew(warmGas, { kind: 'liquid', liquid: 321 }),
      260,
      320,
      'liquidAboveCondensing',
      'b.liquid',
    ],
    ['a superheat below 0', dew({ kind: 'superheat', superheat: -1 }), 260, 320, 'badInput', 'b.superheat'],
  ] as const)('%s', (_, basis, evaporating, condensing, code, path) => {
    expect(() => ratedConditions(r134a, basis, evaporating, condensing, 'b')).toThrow(
      expect.objectContaining({ name: 'InputError', code, path }),
    );
  });

  test('gas below dew, and liquid too warm to leave anything to evaporate', () => {
    const at = { evaporating: 260, condensing: 320, returnGas: 255, liquid: 310 };
    expect(() => ratedStates(r134a, at)).toThrow(expect.objectContaining({ code: 'returnGasBelowEvaporating' }));
    const hot = { evaporating: 233.15, condensing: 373.5, returnGas: 233.15, liquid: 373.4 };
    expect(() => ratedStates(r134a, hot)).toThrow(expect.objectContaining({ code: 'noEvaporation', path: 'liquid' }));
  });
});
