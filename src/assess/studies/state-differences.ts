// How far two assessments of one design part that differ in where the states of the refrigerant came from: the figures that
// the verdict shows, end by end, the one that moved most first.

import type { Band } from '../../quantities/index.ts';
import type { Assessment, BandWithUnit } from '../assessment/assessment.ts';

/** One figure of the verdict, both ways. */
export interface StateDifference {
  /** Name of the result: 'operating.compressorCop'. */
  readonly result: string;
  readonly label: string;
  /** Largest change of low, likely or high end, as a share of the larger of both. */
  readonly share: number;
  readonly exact: Band;
  readonly tables: Band;
}

/**
 * Every figure of the verdict, the one that parts most first: what carries no state of the refrigerant, such as the load,
 * too, since it must not move at all.
 * @param exact   with states from the equation
 * @param tables  of the same design, with states from tables
 */
export function stateDifferences(exact: Assessment, tables: Assessment): readonly StateDifference[] {
  const other = new Map(figuresOf(tables).map((figure) => [figure.label, figure.band]));
  return figuresOf(exact)
    .map(({ label, band }) => {
      const against = other.get(label)!;
      return { result: band.result, label, share: shareMoved(band, against), exact: band, tables: against };
    })
    .sort((one, another) => another.share - one.share);
}

function shareMoved(exact: Band, tables: Band): number {
  return Math.max(...(['low', 'likely', 'high'] as const).map((end) => moved(exact[end], tables[end])));
}

function moved(exact: number, tables: number): number {
  return exact === tables ? 0 : Math.abs(tables - exact) / Math.max(Math.abs(exact), Math.abs(tables));
}

interface Figure {
  readonly label: string;
  readonly band: BandWithUnit;
}

function figuresOf(assessment: Assessment): readonly Figure[] {
  const { operating, seasonCop, accounts } = assessment;
  return [
    { label: 'heat the tank needs', band: assessment.tankLoad },
    { label: 'heat to the water', band: assessment.heatDelivered },
    { label: 'electricity of the compressor', band: assessment.compressorPower },
    { label: 'electricity, all of it', band: assessment.systemPower },
    { label: 'COP of the compressor', band: assessment.compressorCop },
    { label: 'COP of the system', band: assessment.systemCop },
    ...(seasonCop === null ? [] : [{ label: 'COP over the year', band: seasonCop }]),
    { label: 'evaporating temperature', band: operating.evaporatingTemperature },
    { label: 'evaporating pressure', band: operating.evaporatingPressure },
    { label: 'condensing temperature', band: operating.condensingTemperature },
    { label: 'condensing pressure', band: operating.condensingPressure },
    { label: 'temperature of the discharge gas', band: operating.dischargeTemperature },
    { label: 'pressure ratio', band: operating.pressureRatio },
    ...accounts.map(({ label, lifeCostPerYear }) => ({ label: `cost per year, ${label}`, band: lifeCostPerYear })),
  ];
}
