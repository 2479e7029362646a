// The library as another program would use it: one import, plain numbers in, plain numbers or a typed error out.

import { expect, test } from 'vitest';
import {
  InputError,
  materialLayer,
  ownMaterialLayer,
  type RectangularTank,
  rectangularTank,
  refrigerant,
  saturationAtTemperature,
  stateAt,
  tankLoad,
  textbookCycle,
} from '../../src/index.ts';

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

test('a tank of glass wrapped in a board of the user’s own', () => {
  const layer = ({ conductivity, thickness }: ReturnType<typeof materialLayer>) => ({
    conductivity: conductivity.likely,
    thickness,
  });
  const glass = materialLayer('glass', 0.01);
  const board = layer(ownMaterialLayer({ conductivity: 0.03, thickness: 0.03 }));
  const tank: RectangularTank = {
    kind: 'rectangular',
    length: 1,
    width: 0.5,
    height: 0.5,
    waterDepth: 0.45,
    salinity: 0,
    wall: { ...layer(glass), emissivity: glass.emissivity.likely },
    insulation: {},
    surface: 'still',
    lid: 'none',
    pumpHeat: 0,
    lightHeat: 0,
  };
  const conditions = {
    waterTemperature: 299.15,
    roomTemperature: 293.15,
    roomRelativeHumidity: 0.5,
    atmosphericPressure: 101325,
  };
  const back = (insulation: RectangularTank['insulation']) =>
    tankLoad(rectangularTank({ ...tank, insulation }), conditions).paths.find(({ path }) => path === 'back')!.heat;
  // By hand: water film 1/300, glass 0.01, board 1, R_si 0.13 of ISO 6946 on 1 m x 0.45 m and 6 K: 18.8 W bare, 2.36 W wrapped.
  expect(back({})).toBeGreaterThan(18.4);
  expect(back({})).toBeLessThan(19.2);
  expect(back({ back: board })).toBeGreaterThan(2.32);
  expect(back({ back: board })).toBeLessThan(2.4);
  expect(() => ownMaterialLayer({ conductivity: 0, thickness: 0.03 })).toThrow(InputError);
});
