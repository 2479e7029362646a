// Textbook cycles: against the library's own, worst of the four conditions of each fluid, and against printed examples
// (values from memory of the source; the textbooks' property tables are older than the equation used here).

import { type TextbookCycle, type TextbookCycleRequest, textbookCycle } from '../../../src/loop/index.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import moreLibrary from './more-textbook-cycles.json';
import library from './textbook-cycles.json';

export function validationRows(): readonly ValidationRow[] {
  return [...printedRows(), ...referenceCycleRows(), ...moreCycleRows(), ...exchangerCycleRows()];
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
      const [published, ours] = worstOf(pairs);
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

/** Twenty seeded cycles each of the blends and of further fluids. */
function moreCycleRows(): readonly ValidationRow[] {
  const asked = ['evaporating', 'condensing', 'superheat', 'subcooling', 'isentropicEfficiency'] as const;
  return Object.entries(moreLibrary.cycles).flatMap(([refrigerant, table]) => {
    const compared = table.map((row) => {
      const of = (name: string) => row[moreLibrary.columns.indexOf(name)]!;
      const conditions = Object.fromEntries(asked.map((name) => [name, of(name)]));
      return { of, cycle: textbookCycle({ refrigerant, ...conditions }) };
    });
    const quantities = [
      ['heating COP', compared.map(({ of, cycle }) => [of('heatingCop'), cycle.heatingCop])],
      ['discharge temperature [K]', compared.map(({ of, cycle }) => [of('T_2'), cycle.points[2].temperature])],
      ['temperature behind the valve [K]', compared.map(({ of, cycle }) => [of('T_4'), cycle.points[4].temperature])],
    ] as const;
    return quantities.map(([quantity, pairs]): ValidationRow => {
      const [published, ours] = worstOf(pairs);
      return {
        subject: `${refrigerant}, cycles of the library, worst of ${compared.length}`,
        quantity,
        source: moreLibrary.provenance.source,
        published,
        ours,
        deviation: deviationInPercent(ours, published),
        status: 'reference',
      };
    });
  });
}

/** Cycles with pressure lost and a heat exchanger between liquid and suction gas. */
function exchangerCycleRows(): readonly ValidationRow[] {
  const compared = library.exchangerCycles.map((outside) => ({
    outside,
    cycle: textbookCycle(outside.request as TextbookCycleRequest),
  }));
  const quantities = [
    ['heat exchanged [J/kg]', compared.map(({ outside, cycle }) => [outside.heat, cycle.heatExchanger!.heat])],
    [
      'suction temperature [K]',
      compared.map(({ outside, cycle }) => [outside.suctionTemperature, cycle.points[0].temperature]),
    ],
    ['heating COP', compared.map(({ outside, cycle }) => [outside.heatingCop, cycle.heatingCop])],
    [
      'exergy destroyed in the heat exchanger [J/kg]',
      compared.map((each) => [
        each.outside.exergyDestruction.heatExchanger,
        each.cycle.exergyDestruction.heatExchanger!,
      ]),
    ],
  ] as const;
  return quantities.map(([quantity, pairs]): ValidationRow => {
    const [published, ours] = worstOf(pairs);
    return {
      subject: `Cycles of the library with heat exchanger and pressure losses, worst of ${compared.length}`,
      quantity,
      source: library.provenance.source,
      published,
      ours,
      deviation: deviationInPercent(ours, published),
      status: 'reference',
    };
  });
}

/** Of pairs of published and own, the one that differs most. */
function worstOf(pairs: readonly (readonly number[])[]): readonly [number, number] {
  const apart = ([published, ours]: readonly number[]) => Math.abs(ours! / published! - 1);
  const [published, ours] = [...pairs].sort((a, b) => apart(b) - apart(a))[0]!;
  return [published!, ours!];
}

const saturated = { superheat: 0, subcooling: 0, isentropicEfficiency: 1 } as const;
const olderTables = 'Printed with an R134a equation of 1988, whose differences lie up to 1 % from this one';

const boettner = (example: string) =>
  `Moran, Shapiro, Boettner & Bailey, 8th ed., example ${example}, from memory of the source`;
const cengel = (example: string) =>
  `Çengel & Boles, Thermodynamics, 8th ed., example ${example}, from memory of the source`;

interface PrintedExample {
  readonly source: string;
  readonly request: TextbookCycleRequest;
  readonly printed: readonly (readonly [quantity: string, value: number, read: (cycle: TextbookCycle) => number])[];
  readonly reason?: string;
}

const tonOfRefrigeration = 3516.853;

const cooling = (cycle: TextbookCycle) => cycle.perSecond!.coolingCapacity;
const tons = (cycle: TextbookCycle) => cooling(cycle) / tonOfRefrigeration;
const shaft = (cycle: TextbookCycle) => cycle.perSecond!.compressorPower;
const coolingCop = (cycle: TextbookCycle) => cycle.coolingCop;

const printedExamples: readonly PrintedExample[] = [
  {
    source: cengel('11-1'),
    request: {
      refrigerant: 'R134a',
      evaporatingPressure: 0.14e6,
      condensingPressure: 0.8e6,
      ...saturated,
      massFlow: 0.05,
    },
    printed: [
      ['heat taken [W]', 7180, cooling],
      ['shaft power [W]', 1810, shaft],
      ['cooling COP', 3.97, coolingCop],
    ],
  },
  {
    source: cengel('11-2'),
    request: {
      refrigerant: 'R134a',
      evaporatingPressure: 0.15e6,
      suctionPressure: 0.14e6,
      suctionTemperature: 263.15,
      condensingPressure: 0.8e6,
      dischargeTemperature: 323.15,
      liquidPressure: 0.72e6,
      liquidTemperature: 299.15,
      massFlow: 0.05,
    },
    printed: [
      ['heat taken [W]', 7930, cooling],
      ['shaft power [W]', 2020, shaft],
      ['isentropic efficiency', 0.939, (cycle) => cycle.isentropicEfficiency],
      ['cooling COP', 3.93, coolingCop],
    ],
  },
  {
    source: cengel('11-3'),
    request: {
      refrigerant: 'R134a',
      evaporatingPressure: 100e3,
      superheat: 6.4,
      condensing: 312.55,
      subcooling: 0,
      isentropicEfficiency: 0.85,
      deadState: 300.15,
      sinkTemperature: 300.15,
      sourceTemperature: 260.15,
      massFlow: 0.05,
    },
    printed: [
      ['heat taken [W]', 6600, cooling],
      ['second-law efficiency', 0.35, (cycle) => cycle.exergyBasis.secondLawEfficiency],
    ],
  },
  {
    source: boettner('10.1'),
    request: { refrigerant: 'R134a', evaporating: 273.15, condensing: 299.15, ...saturated, massFlow: 0.08 },
    printed: [
      ['heat taken [tons of refrigeration]', 3.67, tons],
      ['shaft power [W]', 1400, shaft],
      ['cooling COP', 9.24, coolingCop],
    ],
    reason: olderTables,
  },
  {
    source: boettner('10.2'),
    request: { refrigerant: 'R134a', evaporating: 263.15, condensingPressure: 9e5, ...saturated, massFlow: 0.08 },
    printed: [
      ['heat taken [tons of refrigeration]', 3.23, tons],
      ['shaft power [W]', 2480, shaft],
      ['cooling COP', 4.57, coolingCop],
    ],
    reason: olderTables,
  },
  {
    source: boettner('10.3'),
    request: {
      refrigerant: 'R134a',
      evaporating: 263.15,
      condensingPressure: 9e5,
      superheat: 0,
      liquidTemperature: 303.15,
      isentropicEfficiency: 0.8,
      deadState: 299,
      massFlow: 0.08,
    },
    printed: [
      ['heat taken [tons of refrigeration]', 3.41, tons],
      ['shaft power [W]', 3100, shaft],
      ['cooling COP', 3.86, coolingCop],
      ['exergy destroyed in the compressor [W]', 580, (cycle) => cycle.perSecond!.exergyDestructionRate.compressor],
      ['exergy destroyed in the expansion [W]', 390, (cycle) => cycle.perSecond!.exergyDestructionRate.expansion],
    ],
    reason: `${olderTables}; the subcooled liquid was taken as saturated at its temperature`,
  },
];

function printedRows(): readonly ValidationRow[] {
  return printedExamples.flatMap(({ source, request, printed, reason }) => {
    const cycle = textbookCycle(request);
    return printed.map(([quantity, published, read]): ValidationRow => {
      const ours = read(cycle);
      return {
        subject: 'Printed examples',
        quantity,
        source,
        published,
        ours,
        deviation: deviationInPercent(ours, published),
        status: 'reference',
        ...(reason === undefined ? {} : { reason }),
      };
    });
  });
}
