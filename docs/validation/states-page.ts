// The page of the refrigerants' reference states: the worst and the median deviation by fluid, property and region, and what
// lies above its bound with its cause.

import {
  bounds,
  type Check,
  checksOf,
  type Region,
  regions,
  type Subject,
  subjects,
} from '../../tests/reference/refrigerants/accuracy.ts';
import { exceptionFor, exceptions } from '../../tests/reference/refrigerants/exceptions.ts';
import { type ReferenceTable, referenceTables } from '../../tests/reference/refrigerants/states.ts';

const regionWords: Readonly<Record<Region, string>> = {
  liquid: 'liquid',
  vapour: 'vapour',
  supercritical: 'supercritical',
  nearCritical: 'near the critical point',
  saturation: 'on the dome',
  twoPhase: 'inside the dome',
};

/** Deviations of one property in one region. */
interface Group {
  /** Of those that were answered. */
  readonly worst: number;
  readonly median: number;
  readonly refused: number;
}

interface Measured {
  readonly table: ReferenceTable;
  readonly checks: readonly Check[];
  readonly groups: ReadonlyMap<Subject, ReadonlyMap<Region, Group>>;
}

export function statesPage() {
  const measured = referenceTables().map((table): Measured => {
    const checks = checksOf(table);
    return { table, checks, groups: grouped(checks) };
  });
  const states = measured.reduce((sum, { table }) => sum + stateCount(table), 0);
  const comparisons = measured.reduce((sum, { checks }) => sum + checks.length, 0);
  return {
    name: 'refrigerant-states.md',
    title: 'Refrigerants against reference states',
    about: `${comparisons} deviations at ${states} states of ${measured.length} fluids, worst and median by property and region`,
    text: `${[opening(states, comparisons), allFluids(measured), ...measured.map(oneFluid), aboveBound(measured)].join('\n\n')}\n`,
  };
}

function opening(states: number, comparisons: number): string {
  return `# Refrigerants against reference states

${states} seeded random states, ${comparisons} deviations. Made by \`npm run documents\`; do not edit. The states are those of the general-purpose library CoolProp 8.0.0, written by [data/refrigerants/export.py](../../data/refrigerants/export.py) into [tests/reference/refrigerants/states](../../tests/reference/refrigerants/states), where the head of each file names its seed; [the test](../../tests/matter/refrigerants/reference.test.ts) holds us to them.

- Temperature over the whole range of an equation, pressure log-uniform from 1 Pa (or a thousandth of saturation) to its limit or below the melting pressure; states close to the dome and to the critical point drawn besides; saturation to 0.9999 of the critical temperature.
- The library evaluates its equation at exactly the rounded temperature and density of a row, so that no solver of its own stands between the numbers. Sides of the dome come from its own equilibrium; the pressure there is its equation's at the density of the vapour, because its saturation pressure comes from a fitted curve, off by up to 6e-4 below 1 Pa. Inside a blend's dome everything is linear in quality between the library's two sides at one pressure: there the reference is a rule applied to its sides.
- Deviations are relative; of enthalpy and entropy shares of 200 kJ/kg and 1 kJ/(kg K); of a pressure from density shares of max(p, 0.001 ρRT). "All" is the worst of temperature, density and, inside the dome, quality.
- Bounds: ${power(bounds.pure)} of a pure fluid, ${power(bounds.blend)} of a blend, ${power(bounds.nearCritical)} near the critical point (temperature within 1 % and density within half of critical), ${power(bounds.roundTrip)} of a temperature through (T,p), h, (p,h). Saturation pressure is held to the bound away from the critical point everywhere.
- Cells: worst / median. The reference carries 12 digits (14 inside the dome): what lies below 5e-12, or below 3e-11 for the enthalpy of a fluid whose values are large, is its rounding.`;
}

/** The worst of all fluids, each with its fluid. */
function allFluids(measured: readonly Measured[]): string {
  return `## All fluids, the worst\n\n${matrix((subject, region) => {
    let worst: { deviation: number; fluid: string } | undefined;
    for (const { table, groups } of measured) {
      const group = groups.get(subject)?.get(region);
      if (group !== undefined && !(group.worst <= (worst?.deviation ?? -1))) {
        worst = { deviation: group.worst, fluid: table.refrigerant };
      }
    }
    return worst === undefined ? undefined : `${short(worst.deviation)} ${worst.fluid}`;
  })}`;
}

function oneFluid({ table, groups }: Measured): string {
  const cells = matrix((subject, region) => {
    const group = groups.get(subject)?.get(region);
    return group === undefined ? undefined : inWords(group);
  });
  return `## ${table.refrigerant}\n\n${table.source}. ${stateCount(table)} states, seed "${table.seed}".\n\n${cells}`;
}

function aboveBound(measured: readonly Measured[]): string {
  const lines = exceptions.map((entry) => {
    const own = measured.find(({ table }) => table.refrigerant === entry.fluid)?.checks ?? [];
    const above = own.filter(
      (check) => !(check.deviation <= check.bound) && exceptionFor(entry.fluid, check) === entry,
    );
    const worst = Math.max(...above.map(({ deviation }) => deviation));
    return `| ${entry.fluid} | ${entry.subject} | ${regionWords[entry.region]}, ${entry.where} | ${above.length} | ${short(worst)} | ${entry.cause} |`;
  });
  const head = '| fluid | property | where | states | worst | cause |\n| --- | --- | --- | --- | --- | --- |';
  return `## Above the bound\n\nEverything that lies above its bound, from [exceptions.ts](../../tests/reference/refrigerants/exceptions.ts); the test passes nothing else.\n\n${head}\n${lines.join('\n')}`;
}

function matrix(cell: (subject: Subject, region: Region) => string | undefined): string {
  const rows = subjects.map((subject) => {
    const cells = regions.map((region) => cell(subject, region) ?? '');
    return `| ${subject} | ${cells.join(' | ')} |`;
  });
  const heads = ['', ...regions.map((region) => regionWords[region])];
  return `| ${heads.join(' | ')} |\n| ${heads.map(() => '---').join(' | ')} |\n${rows.join('\n')}`;
}

function grouped(checks: readonly Check[]): ReadonlyMap<Subject, ReadonlyMap<Region, Group>> {
  const lists = new Map<Subject, Map<Region, number[]>>();
  for (const { subject, region, deviation } of checks) {
    const own = lists.get(subject) ?? new Map<Region, number[]>();
    lists.set(subject, own);
    const list = own.get(region);
    if (list === undefined) own.set(region, [deviation]);
    else list.push(deviation);
  }
  return new Map(
    [...lists].map(([subject, own]) => [subject, new Map([...own].map(([region, list]) => [region, group(list)]))]),
  );
}

function group(deviations: readonly number[]): Group {
  const answered = deviations.filter(Number.isFinite).sort((a, b) => a - b);
  const median = answered[Math.floor(answered.length / 2)] ?? 0;
  return { worst: answered.at(-1) ?? 0, median, refused: deviations.length - answered.length };
}

function inWords({ worst, median, refused }: Group): string {
  return `${short(worst)} / ${short(median)}${refused === 0 ? '' : `, ${refused} refused`}`;
}

function stateCount({ single, saturation, twoPhase }: ReferenceTable): number {
  return single.length + 2 * saturation.length + twoPhase.length;
}

/** 1e-9 as it is written by hand. */
function power(bound: number): string {
  return bound.toExponential();
}

function short(deviation: number): string {
  if (deviation === Number.POSITIVE_INFINITY) return 'refused';
  return deviation === 0 ? '0' : deviation.toExponential(1);
}
