// Points of a machine out of sets of ten coefficients, pasted tables and measurements on the bench, as the identification
// reads them.

import type { Refrigerant } from '../../matter/refrigerants/index.ts';
import { InputError } from '../../numerics/index.ts';
import {
  type BenchMeter,
  type CoefficientEvidence,
  type CoefficientSet,
  type GasBasis,
  type LiquidBasis,
  machineReading,
  type PointTable,
  type PolynomialUnit,
  type RatingBasis,
  type TableDoubt,
  type TableEvidence,
} from '../../parts/compressor/index.ts';
import { compressorPath as path } from './machine.ts';
import {
  aboutOne,
  calorimeterSurroundings,
  type DescribedCompressor,
  type Evidence,
  supplyOf,
} from './machine-evidence.ts';

/** With what is odd about them. @throws what evidenceFromCoefficients throws, at the path in the design */
export function coefficientEvidence(
  described: DescribedCompressor,
  fluid: Refrigerant,
): Evidence & Pick<CoefficientEvidence, 'doubts'> {
  if (described.coefficients.length === 0) return { points: [], series: [], doubts: [] };
  return machineReading().evidenceFromCoefficients({
    fluid,
    sets: coefficientSets(described),
    surroundings: calorimeterSurroundings,
    displacement: described.displacement,
    usual: { numbers: described, ratedSupply: supplyOf(described.nameplate) },
  });
}

/** The sets of ten coefficients as they were typed. */
export function coefficientSets({ coefficients }: DescribedCompressor): readonly CoefficientSet[] {
  return coefficients.map((set, index) => {
    const at = `${path}.coefficients.${index}`;
    return {
      path: at,
      label: `Coefficients of ${ofWords[set.of]}`,
      of: set.of,
      coefficients: machineReading().requireTenCoefficients(set.values, `${at}.values`),
      temperatureUnit: set.temperatureUnit,
      unit: set.unit as PolynomialUnit,
      basis: basisOf(set.basis),
      evaporatingRange: { low: set.evaporatingRange.from, high: set.evaporatingRange.to },
      condensingRange: { low: set.condensingRange.from, high: set.condensingRange.to },
      supply: supplyOf(set),
    };
  });
}

const ofWords: Readonly<Record<CoefficientSet['of'], string>> = {
  massFlow: 'flow',
  capacity: 'capacity',
  power: 'power',
  current: 'current',
};

type Basis = DescribedCompressor['coefficients'][number]['basis'];

function basisOf({ suction, liquid, saturation }: Basis): RatingBasis {
  return { gas: gasOf(suction), liquid: liquid === undefined ? null : liquidOf(liquid), saturation };
}

function gasOf(suction: Basis['suction']): GasBasis {
  return suction.kind === 'superheat'
    ? { kind: 'superheat', superheat: suction.superheat.likely }
    : { kind: 'returnGas', returnGas: suction.returnGas.likely };
}

function liquidOf(liquid: NonNullable<Basis['liquid']>): LiquidBasis {
  return liquid.kind === 'subcooling'
    ? { kind: 'subcooling', subcooling: liquid.subcooling.likely }
    : { kind: 'liquid', liquid: liquid.temperature.likely };
}

/**
 * With what is odd about them.
 * @throws what evidenceFromTable throws, at the path in the design; InputError at the line of a table that cannot be read
 */
export function tableEvidence(
  described: DescribedCompressor,
  fluid: Refrigerant,
): Evidence & { readonly doubts: readonly TableDoubt[] } {
  const read = describedTables(described, fluid);
  return {
    points: read.flatMap(({ points }) => points),
    series: read.map(({ series }) => series),
    doubts: read.flatMap(({ doubt }) => doubt ?? []),
  };
}

/** What each pasted table tells, in their order. */
function describedTables(described: DescribedCompressor, fluid: Refrigerant): readonly TableEvidence[] {
  const { tables } = described;
  return tables.map((each, index) => {
    const at = `${path}.tables.${index}`;
    const { suction, liquid, saturation } = each.basis;
    return machineReading().evidenceFromTable({
      fluid,
      table: readTable(each.table, `${at}.table`),
      path: at,
      label: tables.length === 1 ? 'Table' : `Table ${index + 1}`,
      gas: suction === undefined ? null : gasOf(suction),
      liquid: liquid === undefined ? null : liquidOf(liquid),
      saturation,
      supply: supplyOf(each),
      surroundings: calorimeterSurroundings,
      flowFactor: aboutOne(each.flowTolerance.likely),
      powerFactor: aboutOne(each.powerTolerance.likely),
      usual: { numbers: described, ratedSupply: supplyOf(described.nameplate) },
    });
  });
}

/** The design's own checks have read it before; an edge that skipped them gets the first problem. */
function readTable(text: string, at: string): PointTable {
  const read = machineReading().readPointTable(text);
  if (read.ok) return read.table;
  const [{ line, column, received, expected, code }] = read.problems as [(typeof read.problems)[number]];
  throw new InputError(at, `${received} in line ${line}, column ${column}`, expected, code);
}

/** @throws what benchPoint throws, at the path in the design */
export function benchEvidence({ bench }: DescribedCompressor, fluid: Refrigerant): Evidence {
  const points = bench.map((measured, index) =>
    machineReading().benchPoint(fluid, {
      ...measured,
      path: `${path}.bench.${index}`,
      label: bench.length === 1 ? 'Bench' : `Bench ${index + 1}`,
      meter: meterOf(measured),
      supply: supplyOf(measured),
    }),
  );
  return { points, series: [] };
}

function meterOf({ meter, voltage }: DescribedCompressor['bench'][number]): BenchMeter {
  return meter.kind === 'watts' ? meter : { ...meter, voltage };
}
