// Textbook cycles: against the library's own, worst of the four conditions of each fluid, and against printed examples
// (values from memory of the source; the textbooks' property tables are older than the equation used here).

import { type TextbookCycleRequest, textbookCycle } from '../../../src/loop/index.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import library from './textbook-cycles.json';

export function validationRows(): readonly ValidationRow[] {
  return [...printedRows(), ...referenceCycleRows()];
}

function referenceCycleRows(): readonly ValidationRow[] {
  const fluids = [...new Set(library.cycles.map(({ request }) => request.refrigerant))];
  return fluids.flatMap((fluid) => {
    const compared = library.cycles
      .filter(({ request }) => request.refrigerant === fluid)
      .map((outside) => ({ outside, cycle: textbookCycle(outside.request as TextbookCycleRequest) }));
    const quantities = [
      ['heating COP', compared.map(({ outside, cycle }) => [outside.heatingCop, cycle.heatingCop])],
      [
        'discharge temperature [K]',
        compared.map((each) => [each.outside.dischargeTemperature, each.cycle.points[2].temperature]),
      ],
      [
        'volumetric heating capacity [J/m³]',
        compared.map((each) => [each.outside.volumetricHeatingCapacity, each.cycle.volumetricHeatingCapacity]),
      ],
      [
        'exergy destroyed in the expansion [J/kg]',
        compared.map((each) => [each.outside.exergyDestruction.expansion, each.cycle.exergyDestruction.expansion]),
      ],
    ] as const;
    return quantities.map(([quantity, pairs]): ValidationRow => {
      const worst = [...pairs].sort(([a, b], [c, d]) => Math.abs(d! / c! - 1) - Math.abs(b! / a! - 1))[0]!;
      const [published, ours] = worst as [number, number];
      return {
        subject: `${fluid}, cycles of the library, worst of ${compared.length}`,
        quantity,
        source: library.provenance.source,
        published,
        ours,
        deviation: deviationInPercent(ours, published),
        status: 'reference',
      };
    });
  });
}

const saturated = { superheat: 0, subcooling: 0, isentropicEfficiency: 1 } as const;
const olderTables = 'Printed with an R134a equation of 1988, whose differences lie up to 1 % from this one';

interface PrintedExample {
  readonly source: string;
  readonly request: TextbookCycleRequest;
  readonly workPerKilogram: number;
  readonly coolingCop: number;
  readonly reason?: string;
}

const printedExamples: readonly PrintedExample[] = [
  {
    source: 'Çengel & Boles, Thermodynamics, 8th ed., example 11-1, from memory of the source',
    request: { refrigerant: 'R134a', evaporatingPressure: 0.14e6, condensingPressure: 0.8e6, ...saturated },
    workPerKilogram: 1810 / 0.05,
    coolingCop: 3.97,
  },
  {
    source: 'Moran, Shapiro, Boettner & Bailey, 8th ed., example 10.1, from memory of the source',
    request: { refrigerant: 'R134a', evaporating: 273.15, condensing: 299.15, ...saturated },
    workPerKilogram: 1400 / 0.08,
    coolingCop: 9.24,
    reason: olderTables,
  },
  {
    source: 'Moran, Shapiro, Boettner & Bailey, 8th ed., example 10.2, from memory of the source',
    request: { refrigerant: 'R134a', evaporating: 263.15, condensingPressure: 9e5, ...saturated },
    workPerKilogram: 2480 / 0.08,
    coolingCop: 4.57,
    reason: olderTables,
  },
];

function printedRows(): readonly ValidationRow[] {
  return printedExamples.flatMap(({ source, request, workPerKilogram, coolingCop, reason }) => {
    const cycle = textbookCycle(request);
    const pairs = [
      ['specific work [J/kg]', workPerKilogram, cycle.specificWork],
      ['cooling COP', coolingCop, cycle.coolingCop],
    ] as const;
    return pairs.map(
      ([quantity, published, ours]): ValidationRow => ({
        subject: 'Printed examples',
        quantity,
        source,
        published,
        ours,
        deviation: deviationInPercent(ours, published),
        status: 'reference',
        ...(reason === undefined ? {} : { reason }),
      }),
    );
  });
}
