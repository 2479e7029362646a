// Where our states lie further from the reference than the bound, and why. Each is asserted by the test, narrowly: nothing
// beyond `reached` passes, and an entry nothing needs any more fails. docs/validation prints the same list.

import type { Check, Region, Subject } from './accuracy.ts';

export interface Exception {
  readonly fluid: string;
  readonly region: Region;
  readonly subject: Subject;
  /** In words, the part of the region it holds in. */
  readonly where: string;
  readonly holds: (row: Check['row']) => boolean;
  /** The largest deviation allowed there; Infinity where the state is refused. */
  readonly reached: number;
  readonly cause: string;
}

const cancellation = (terms: string, library: string) =>
  `Rounding in the reference. The terms of this equation sum up to ${terms} times the pressure of an ideal gas and cancel; of the ` +
  `same sum, evaluated with 40 digits at the same coefficients, the library lies up to ${library} away, in units of the scale.`;

export const exceptions: readonly Exception[] = [
  {
    fluid: 'R22',
    region: 'liquid',
    subject: 'pressure from (ρ,T)',
    where: 'below 160 K',
    holds: ({ temperature }) => temperature < 160,
    reached: 2e-8,
    cause: cancellation('5.7e4', '1.6e-8'),
  },
  {
    fluid: 'R152a',
    region: 'liquid',
    subject: 'pressure from (ρ,T)',
    where: 'below 180 K',
    holds: ({ temperature }) => temperature < 180,
    reached: 2e-9,
    cause: cancellation('5.5e3', '1.7e-9'),
  },
  {
    fluid: 'R407C',
    region: 'nearCritical',
    subject: 'all from (p,x)',
    where: 'saturated liquid at or above the critical pressure, 4.6317 MPa',
    holds: ({ pressure }) => pressure >= 4631700,
    reached: Number.POSITIVE_INFINITY,
    cause:
      'Refused here. The published bubble curve rises to 4.642 MPa just below the critical temperature: a pressure between has two ' +
      'temperatures on it and none on the dew curve. From temperature and quality these states are given.',
  },
];

/** The exception a deviation above its bound falls under, if there is one. */
export function exceptionFor(fluid: string, { region, subject, row, deviation }: Check): Exception | undefined {
  return exceptions.find(
    (entry) =>
      entry.fluid === fluid &&
      entry.region === region &&
      entry.subject === subject &&
      entry.holds(row) &&
      deviation <= entry.reached,
  );
}
