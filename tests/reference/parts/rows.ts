// Parts of the loop: films and friction against documented values of open libraries, clearance relation against worked
// values, a machine identified from the colder rows of a published data set against the warmer ones, machines identified from
// part of published curves against the rest of them.

import { clearanceVolumetricEfficiency } from '../../../src/parts/compressor/index.ts';
import {
  effectivenessCounterFlow,
  effectivenessIsothermal,
  frictionFactorChurchill1977,
  nusseltHorizontalCylinderChurchillChu1975,
  nusseltImmersedCoilXinEbadian1996,
  nusseltTurbulentGnielinski1976,
} from '../../../src/parts/exchangers/index.ts';
import type { Band } from '../../../src/quantities/index.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import dataSet from './compressor-r600a.json';
import worked from './compressor-worked.json';
import { curveRows } from './curve-rows.ts';
import { identifiedFrom, rows as measured, predictedRow, type Row } from './data-set.ts';
import films from './exchanger-films.json';
import { printedDataRows } from './printed-data-rows.ts';

export function validationRows(): readonly ValidationRow[] {
  return [
    ...filmRows(),
    ...frictionRows(),
    ...effectivenessRows(),
    ...clearanceRows(),
    ...printedDataRows(),
    ...dataSetRows(),
    ...curveRows(),
  ];
}

function row(subject: string, quantity: string, source: string, published: number, ours: number): ValidationRow {
  const deviation = deviationInPercent(ours, published);
  return { subject, quantity, source, published, ours, deviation, status: 'reference' };
}

function filmRows(): readonly ValidationRow[] {
  const { churchillChu, xinEbadian, gnielinski } = films;
  const cylinder = nusseltHorizontalCylinderChurchillChu1975(
    churchillChu.grashof * churchillChu.prandtl,
    churchillChu.prandtl,
  );
  const rayleigh = 2e4 * 0.7;
  const turbulent = nusseltTurbulentGnielinski1976(gnielinski.reynolds, gnielinski.prandtl, gnielinski.friction);
  const vertical = nusseltImmersedCoilXinEbadian1996(rayleigh, 'vertical');
  const horizontal = nusseltImmersedCoilXinEbadian1996(rayleigh, 'horizontal');
  const subject = 'Films';
  return [
    row(subject, 'Nu, horizontal cylinder, Churchill & Chu 1975', churchillChu.source, churchillChu.nusselt, cylinder),
    row(subject, 'Nu, coil of vertical axis, Xin & Ebadian 1996', xinEbadian.source, xinEbadian.vertical, vertical),
    row(
      subject,
      'Nu, coil of horizontal axis, Xin & Ebadian 1996',
      xinEbadian.source,
      xinEbadian.horizontal,
      horizontal,
    ),
    row(subject, 'Nu, turbulent tube, Gnielinski 1976', gnielinski.source, gnielinski.nusselt, turbulent),
  ];
}

function frictionRows(): readonly ValidationRow[] {
  const { rows, source } = films.churchillFriction;
  return (rows as [number, number, number, number][]).map(([reynolds, roughness, published]) =>
    row(
      'Friction',
      `Darcy factor, Re ${reynolds}, e/D ${roughness}`,
      source,
      published,
      frictionFactorChurchill1977(reynolds, roughness),
    ),
  );
}

function effectivenessRows(): readonly ValidationRow[] {
  const { counterFlow, isothermal, source } = films.effectiveness;
  return [
    ...(counterFlow as [number, number, number][]).map(([units, ratio, published]) =>
      row(
        'Effectiveness',
        `counter flow, NTU ${units}, ratio ${ratio}`,
        source,
        published,
        effectivenessCounterFlow(units, ratio),
      ),
    ),
    ...(isothermal as [number, number][]).map(([units, published]) =>
      row('Effectiveness', `one side isothermal, NTU ${units}`, source, published, effectivenessIsothermal(units)),
    ),
  ];
}

function clearanceRows(): readonly ValidationRow[] {
  const { rows, source } = worked.clearance;
  return (rows as [number, number, number, number][]).map(([clearance, exponent, ratio, published]) =>
    row(
      'Clearance',
      `volumetric efficiency, C ${clearance}, n ${exponent}, pressure ratio ${ratio}`,
      source,
      published,
      clearanceVolumetricEfficiency(clearance, exponent, ratio),
    ),
  );
}

/** The colder rows identify the machine, the two warmest are predicted; then the warmest alone. */
function dataSetRows(): readonly ValidationRow[] {
  return [2, 3].flatMap((count) => {
    const known = measured.slice(0, count);
    const identified = identifiedFrom(known);
    const temperatures = known.map(celsiusOf).join(', ');
    const subject = `R600a compressor, machine identified from the rows at ${temperatures} °C`;
    return measured.slice(count).flatMap((each): readonly ValidationRow[] => {
      const { massFlow, power } = predictedRow(identified, each);
      const at = `at ${celsiusOf(each)} °C`;
      const flowRow = row(
        subject,
        `mass flow ${at} [kg/h]`,
        dataSet.source,
        each.massFlow * 3600,
        massFlow.likely * 3600,
      );
      const powerRow = row(subject, `power ${at} [W]`, dataSet.source, each.power, power.likely);
      return [
        { ...flowRow, reason: beyondTheRows(massFlow, each.massFlow) },
        { ...powerRow, reason: beyondTheRows(power, each.power) },
      ];
    });
  });
}

function celsiusOf({ evaporating }: Row): string {
  return (evaporating - 273.15).toFixed(0);
}

/** What a reader must know of such a prediction. */
function beyondTheRows({ low, likely, high }: Band, value: number): string {
  const percent = (end: number) => `${Math.abs((end / likely - 1) * 100).toFixed(1)} %`;
  const where = value >= low && value <= high ? 'inside' : 'outside';
  return `${where} the stated band of −${percent(low)} to +${percent(high)}; the set has one condensing temperature, so that high evaporating temperatures and other condensing temperatures are extrapolation with a wider band`;
}
