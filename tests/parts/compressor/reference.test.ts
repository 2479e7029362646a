// Numbers from outside that no model of a machine stands between: the liquid convention of ratings, and what the rows of a
// published calorimeter data set imply. Tolerances: printed digits.

import { describe, expect, test } from 'vitest';
import { refrigerant, saturationAtTemperature, stateAt } from '../../../src/matter/refrigerants/index.ts';
import { ratingConditions } from '../../../src/parts/compressor/index.ts';
import dataSet from '../../reference/parts/compressor-r600a.json';
import worked from '../../reference/parts/compressor-worked.json';
import { fluid, impliedEfficiencies, kelvin, rows, suctionAt } from '../../reference/parts/data-set.ts';

describe('reference: how much the liquid temperature of a rating is worth (CoolProp 8.0.0)', () => {
  test.each(worked.liquidConvention.rows as [string, number][])(
    '%s at ASHRAE low back pressure: %d',
    (name, expected) => {
      const fluid = refrigerant(name);
      const { evaporating, condensing, returnGas, liquid } = ratingConditions('ashraeLow');
      const pressure = saturationAtTemperature(fluid, evaporating).vapour.pressure;
      const gas = stateAt(fluid, { temperature: returnGas, pressure }).enthalpy;
      const liquidAt = (temperature: number) => saturationAtTemperature(fluid, temperature).liquid.enthalpy;
      const ratio = (gas - liquidAt(liquid)) / (gas - liquidAt(condensing));
      expect(Math.abs(ratio - expected)).toBeLessThanOrEqual(5e-4);
    },
  );
});

describe('reference: R600a calorimeter rows (F. Fortkamp 2022)', () => {
  test('the liquid temperature that capacity and flow imply is the 32.2 °C of the ASHRAE convention', () => {
    for (const row of rows) {
      const enthalpy = suctionAt(row).enthalpy - row.capacity / row.massFlow;
      const at = (temperature: number) => saturationAtTemperature(fluid, temperature).liquid;
      const near = at(kelvin(dataSet.liquidCelsius));
      const slope = (at(kelvin(33)).enthalpy - at(kelvin(31)).enthalpy) / 2;
      const implied = dataSet.liquidCelsius + (enthalpy - near.enthalpy) / slope;
      // The printed flow has three digits: half a unit of the last one is up to 0.3 % of 340 kJ/kg, about 0.4 K.
      expect(Math.abs(implied - dataSet.liquidCelsius)).toBeLessThan(0.4);
      expect(implied).toBeGreaterThan(32.0);
      expect(implied).toBeLessThan(32.4);
    }
  });

  test('efficiencies that the rows imply agree with those computed with CoolProp 8.0.0', () => {
    rows.forEach((row, index) => {
      const implied = impliedEfficiencies(row);
      expect(Math.abs(implied.volumetric - dataSet.derived.volumetricEfficiencyAt60[index]!)).toBeLessThanOrEqual(6e-4);
      expect(Math.abs(implied.overall - dataSet.derived.overallEfficiency[index]!)).toBeLessThanOrEqual(6e-4);
    });
  });
});
