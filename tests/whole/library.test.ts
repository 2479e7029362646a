// The library as another program would use it: one import, plain numbers in, plain numbers or a typed error out.

import { expect, test } from 'vitest';
import { InputError, refrigerant, saturationAtTemperature, stateAt, textbookCycle } from '../../src/index.ts';

// Tillner-Roth & Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657, table 8, 300 K: p 0.70282 MPa, ρ' 1199.7, ρ'' 34.193 kg/m³.
test('a saturation state of R134a, to the printed digits of the equation’s own paper', () => {
  const { liquid, vapour } = saturationAtTemperature(refrigerant('R134a'), 300);
  const { pressure } = liquid;
  expect(Math.abs(pressure - 0.70282e6)).toBeLessThanOrEqual(10);
  expect(Math.abs(liquid.density - 1199.7)).toBeLessThanOrEqual(0.1);
  expect(Math.abs(vapour.density - 34.193)).toBeLessThanOrEqual(0.001);
});

test('a cycle, and a refusal that names the place', () => {
  const cycle = textbookCycle({
    refrigerant: 'R600a',
    evaporating: 263.15,
    condensing: 318.15,
    superheat: 5,
    subcooling: 5,
    isentropicEfficiency: 0.6,
  });
  expect(cycle.heatingCop).toBeCloseTo(cycle.coolingCop + 1, 9);
  expect(() => stateAt(refrigerant('R600a'), { temperature: 300, pressure: -1 })).toThrow(InputError);
});
