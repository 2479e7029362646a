// What reading a machine's data costs: a pasted table, ten coefficients fitted to thirty points, and sets of coefficients as
// evidence. Each call has other numbers.

import { refrigerant } from '../../src/matter/refrigerants/index.ts';
import {
  type CoefficientSet,
  evidenceFromCoefficients,
  evidenceFromTable,
  type FitPoint,
  fitTenCoefficients,
  readPointTable,
  tenCoefficients,
} from '../../src/parts/compressor/index.ts';
import type { BenchCase } from './cases.ts';

const inputs = 16;

/** Invented, for R134a between −35/−10 and 35/55 °C: W. */
const capacity = [620, 22, -4.1, 0.26, -0.16, 0.012, 0.0011, -0.0014, 0.0006, -0.00025] as const;
const power = [118, 0.9, 1.15, 0.008, 0.021, 0.0012, 0.00006, 0.00011, -0.00009, 0] as const;

function inTurn<T>(make: (share: number) => T): (index: number) => T {
  const made = Array.from({ length: inputs }, (_, index) => make(index / (inputs - 1)));
  return (index) => made[index % inputs]!;
}

/** Thirty points, −35 to −10 and 35 to 55 °C. */
const places = [35, 40, 45, 50, 55].flatMap((d) => [-35, -30, -25, -20, -15, -10].map((s) => [s, d] as const));

function fitPoints(share: number): readonly FitPoint[] {
  return places.map(([s, d], index) => ({
    evaporating: s + 273.15,
    condensing: d + 273.15,
    value: tenCoefficients(capacity, s, d) * (1 + 0.01 * share * Math.sin(7 * index)),
    name: `row ${index}`,
  }));
}

function tableText(share: number): string {
  const lines = places.map(([s, d]) =>
    [s, d, tenCoefficients(capacity, s, d) * (1 + 0.01 * share), tenCoefficients(power, s, d)]
      .map((value) => value.toFixed(1))
      .join('\t'),
  );
  return ['Te [°C]\tTc [°C]\tQ [W]\tP [W]', ...lines].join('\n');
}

const fluid = refrigerant('R134a');
const shared = {
  basis: {
    gas: { kind: 'returnGas', returnGas: 305.35 },
    liquid: { kind: 'liquid', liquid: 305.35 },
    saturation: 'dew',
  },
  supply: { frequency: 50, voltage: 230 },
} as const;

function sets(share: number): readonly CoefficientSet[] {
  const set = { ...shared, label: 'set', temperatureUnit: 'celsius', unit: 'W' } as const;
  const ranges = {
    evaporatingRange: { low: 238.15, high: 263.15 },
    condensingRange: { low: 308.15, high: 328.15 - share },
  };
  return [
    { ...set, ...ranges, path: 'a', of: 'capacity', coefficients: capacity },
    { ...set, ...ranges, path: 'b', of: 'power', coefficients: power },
  ];
}

const surroundings = 305.35;

export const compressorDataCases: readonly BenchCase[] = [
  {
    id: 'compressorData.fit',
    title: 'ten coefficients fitted to 30 points, points that disagree looked for',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const points = inTurn(fitPoints);
      return (index) => fitTenCoefficients(points(index)).scatter;
    },
  },
  {
    id: 'compressorData.table',
    title: 'a pasted table of 30 points read and made evidence',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const texts = inTurn(tableText);
      return (index) => {
        const read = readPointTable(texts(index));
        if (!read.ok) throw new Error('the table is one');
        const { gas, liquid, saturation } = shared.basis;
        const request = { fluid, table: read.table, path: 't', label: 'table', gas, liquid, saturation, surroundings };
        return evidenceFromTable({ ...request, supply: shared.supply }).points[0]!.returnGas;
      };
    },
  },
  {
    id: 'compressorData.coefficients',
    title: 'two sets of ten coefficients made evidence',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const given = inTurn(sets);
      return (index) =>
        evidenceFromCoefficients({ fluid, sets: given(index), surroundings, displacement: null }).points[0]!.returnGas;
    },
  },
];
