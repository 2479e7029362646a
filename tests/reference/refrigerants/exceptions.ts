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

const cancellation = (terms: string, rounding: string, library: string) =>
  `The terms of this equation sum up to ${terms} times the pressure of an ideal gas and cancel: one rounding of a double among them ` +
  `is ${rounding} of the scale. Of the same sum with 40 digits, at the same coefficients, the library lies up to ${library} away.`;

const smallQuality =
  'Rounding, enlarged by the request. In a mixture with little vapour enthalpy and entropy are nearly those of the liquid, whose ' +
  'difference h − Ts hardly changes with pressure: a rounding of h is divided by x (s″ − s′) to give the temperature, and by x again to ' +
  'give the density. The temperature itself agrees to 1e-10.';

export const exceptions: readonly Exception[] = [
  {
    fluid: 'R22',
    region: 'liquid',
    subject: 'pressure from (ρ,T)',
    where: 'below 210 K',
    holds: ({ temperature }) => temperature < 210,
    reached: 2e-8,
    cause: cancellation('5.7e4', '6e-9', '1.6e-8'),
  },
  {
    fluid: 'R152a',
    region: 'liquid',
    subject: 'pressure from (ρ,T)',
    where: 'below 180 K',
    holds: ({ temperature }) => temperature < 180,
    reached: 2e-9,
    cause: cancellation('5.5e3', '6e-10', '1.7e-9'),
  },
  {
    fluid: 'R718',
    region: 'liquid',
    subject: 'pressure from (ρ,T)',
    where: 'below 276 K',
    holds: ({ temperature }) => temperature < 276,
    reached: 2e-9,
    cause: cancellation('2.1e3', '2.3e-10', '1.1e-9'),
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
  {
    fluid: 'R718',
    region: 'liquid',
    subject: 'all from (T,s)',
    where: 'below the temperature of the greatest density, about 4 °C',
    holds: ({ temperature }) => temperature < 277.2,
    reached: Number.POSITIVE_INFINITY,
    cause:
      'Refused here. Water that expands when cooled has the same entropy at up to three pressures of one temperature; the refusal ' +
      '(severalStates) names all of them. From any other pair these states are given.',
  },
  ...(
    [
      ['R245fa', 0.002, 3e-9],
      ['R718', 0.002, 5e-8],
    ] as const
  ).map(
    ([fluid, quality, reached]): Exception => ({
      fluid,
      region: 'twoPhase',
      subject: 'all from (h,s)',
      where: `a liquid with less than ${100 * quality} % of vapour, by mass`,
      holds: (row) => 'quality' in row && row.quality < quality,
      reached,
      cause: smallQuality,
    }),
  ),
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
