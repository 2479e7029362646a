// Our states against the reference states: every pair of properties at every row, one deviation each, with the region it lies
// in and the bound it is held to. The tests assert them; docs/validation shows the worst and the median of each group.

import {
  type Refrigerant,
  refrigerant,
  type State,
  type StateInput,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import type { ReferenceTable, SaturationRow, SingleRow, TwoPhaseRow } from './states.ts';

export const regions = ['liquid', 'vapour', 'supercritical', 'nearCritical', 'saturation', 'twoPhase'] as const;
export type Region = (typeof regions)[number];

/** What is compared, by the pair it was asked for. `all`: the worst of temperature, density and, inside the dome, quality. */
export const subjects = [
  'density from (T,p)',
  'pressure from (ρ,T)',
  'enthalpy from (ρ,T)',
  'entropy from (ρ,T)',
  'cp from (ρ,T)',
  'cv from (ρ,T)',
  'sound speed from (ρ,T)',
  'temperature by (T,p), (p,h)',
  'saturation pressure',
  'density from (T,x)',
  'enthalpy from (T,x)',
  'entropy from (T,x)',
  'cp from (T,x)',
  'cv from (T,x)',
  'sound speed from (T,x)',
  'all from (p,x)',
  'all from (p,h)',
  'all from (p,s)',
  'all from (h,s)',
  'all from (T,s)',
  'all from (ρ,T)',
] as const;
export type Subject = (typeof subjects)[number];

export interface Check {
  readonly region: Region;
  readonly subject: Subject;
  /** Relative; of enthalpy and entropy as a share of the scales below; Infinity where a state was refused or took another phase. */
  readonly deviation: number;
  readonly bound: number;
  /** Where: the row of the reference. */
  readonly row: SingleRow | TwoPhaseRow;
  /** What was wrong, where no number can say it. */
  readonly failure?: string;
}

/** Enthalpy and entropy have no natural zero: their deviations are shares of these [J/kg, J/(kg K)]. */
export const scales = { enthalpy: 200e3, entropy: 1e3 } as const;

/** Bounds: of a pure fluid, of a blend under one equation, of any near the critical point, and of a round trip. */
export const bounds = { pure: 1e-9, blend: 1e-8, nearCritical: 1e-6, roundTrip: 1e-10 } as const;

/** Near critical: the temperature within 1 % of critical and the density within half of it on both sides. */
export function isNearCritical({ critical }: Refrigerant, temperature: number, density: number): boolean {
  return (
    Math.abs(temperature / critical.temperature - 1) < 0.01 &&
    density > 0.5 * critical.density &&
    density < 1.5 * critical.density
  );
}

/** Every deviation of a fluid from its reference states. */
export function checksOf(table: ReferenceTable): readonly Check[] {
  const fluid = refrigerant(table.refrigerant);
  return [
    ...table.single.flatMap((row) => singleChecks(fluid, row)),
    ...table.saturation.flatMap((row) => saturationChecks(fluid, row)),
    ...table.twoPhase.flatMap((row) => twoPhaseChecks(fluid, row)),
  ];
}

function singleChecks(fluid: Refrigerant, row: SingleRow): readonly Check[] {
  const { temperature, density, pressure, enthalpy, entropy } = row;
  const region = singleRegion(fluid, row);
  const found = new Checks(fluid, region, row);
  const phase = phaseOf(fluid, row);
  found.ask({ density, temperature }, phase, (state) => {
    const scale = Math.max(pressure, 1e-3 * density * fluid.gasConstant * temperature);
    found.add('pressure from (ρ,T)', Math.abs(state.pressure - pressure) / scale);
    found.caloric(state, row, '(ρ,T)');
  });
  found.ask({ temperature, pressure }, phase, (state) => {
    found.add('density from (T,p)', relative(state.density, density));
    const back = stateAt(fluid, { pressure, enthalpy: state.enthalpy });
    found.add('temperature by (T,p), (p,h)', relative(back.temperature, temperature), bounds.roundTrip);
  });
  const pairs = {
    'all from (p,h)': { pressure, enthalpy },
    'all from (p,s)': { pressure, entropy },
    'all from (h,s)': { enthalpy, entropy },
    'all from (T,s)': { temperature, entropy },
  } as const;
  for (const [subject, given] of Object.entries(pairs) as [Subject, StateInput][]) {
    found.ask(
      given,
      phase,
      (state) => {
        found.add(subject, Math.max(relative(state.temperature, temperature), relative(state.density, density)));
      },
      subject,
    );
  }
  return found.list;
}

function saturationChecks(fluid: Refrigerant, { liquid, vapour }: SaturationRow): readonly Check[] {
  return [liquid, vapour].flatMap((row, quality) => {
    const { temperature, pressure, density } = row;
    const near = isNearCritical(fluid, temperature, density);
    const found = new Checks(fluid, near ? 'nearCritical' : 'saturation', row);
    found.ask({ temperature, quality }, 'twoPhase', (state) => {
      found.add('saturation pressure', relative(state.pressure, pressure), found.away);
      found.add('density from (T,x)', relative(state.density, density));
      found.caloric(state, row, '(T,x)');
    });
    // At the end of the line its pressure, rounded to the digits of the file, may lie a hair beyond it.
    if (temperature > fluid.limits.temperatureMin) {
      found.ask({ pressure, quality }, 'twoPhase', (state) => {
        found.add(
          'all from (p,x)',
          Math.max(relative(state.temperature, temperature), relative(state.density, density)),
        );
      });
    }
    return found.list;
  });
}

function twoPhaseChecks(fluid: Refrigerant, row: TwoPhaseRow): readonly Check[] {
  const { temperature, pressure, quality, density, enthalpy, entropy } = row;
  const near = Math.abs(temperature / fluid.critical.temperature - 1) < 0.01;
  const found = new Checks(fluid, near ? 'nearCritical' : 'twoPhase', row);
  const isBlend = fluid.bubbleAndDew !== undefined;
  if (!isBlend) {
    found.ask({ temperature, quality }, 'twoPhase', (state) => {
      found.add('saturation pressure', relative(state.pressure, pressure), found.away);
      found.add('density from (T,x)', relative(state.density, density));
      found.add('enthalpy from (T,x)', Math.abs(state.enthalpy - enthalpy) / scales.enthalpy);
      found.add('entropy from (T,x)', Math.abs(state.entropy - entropy) / scales.entropy);
    });
  }
  const pairs = {
    'all from (p,x)': { pressure, quality },
    'all from (p,h)': { pressure, enthalpy },
    'all from (p,s)': { pressure, entropy },
    'all from (h,s)': { enthalpy, entropy },
    'all from (T,s)': { temperature, entropy },
    'all from (ρ,T)': { density, temperature },
  } as const;
  for (const [subject, given] of Object.entries(pairs) as [Subject, StateInput][]) {
    found.ask(
      given,
      'twoPhase',
      (state) => {
        const parts = [
          relative(state.temperature, temperature),
          relative(state.density, density),
          Math.abs((state.quality ?? Number.NaN) - quality),
        ];
        found.add(subject, Math.max(...parts));
      },
      subject,
    );
  }
  return found.list;
}

/** Gathers the deviations at one row. */
class Checks {
  readonly list: Check[] = [];
  /** The bound away from the critical point. */
  readonly away: number;

  constructor(
    private readonly fluid: Refrigerant,
    private readonly region: Region,
    private readonly row: SingleRow | TwoPhaseRow,
  ) {
    this.away = fluid.bubbleAndDew === undefined ? bounds.pure : bounds.blend;
  }

  add(
    subject: Subject,
    deviation: number,
    bound = this.region === 'nearCritical' ? bounds.nearCritical : this.away,
  ): void {
    const { region, row } = this;
    this.list.push({ region, subject, deviation, bound, row });
  }

  /** Asks for a state; a refusal or another phase is a deviation without limit. */
  ask(
    given: StateInput,
    phase: State['phase'],
    compare: (state: State) => void,
    subject: Subject = subjectOf(given),
  ): void {
    const { region, row } = this;
    const fail = (failure: string) => {
      this.list.push({ region, subject, deviation: Number.POSITIVE_INFINITY, bound: this.away, row, failure });
    };
    try {
      const state = stateAt(this.fluid, given);
      if (state.phase === phase) compare(state);
      else fail(`${JSON.stringify(given)}: ${state.phase} in place of ${phase}`);
    } catch (error) {
      fail(`${JSON.stringify(given)}: ${(error as Error).message}`);
    }
  }

  /** Enthalpy, entropy, heat capacities and the speed of sound. */
  caloric(state: State, row: SingleRow, pair: '(ρ,T)' | '(T,x)'): void {
    this.add(`enthalpy from ${pair}`, Math.abs(state.enthalpy - row.enthalpy) / scales.enthalpy);
    this.add(`entropy from ${pair}`, Math.abs(state.entropy - row.entropy) / scales.entropy);
    this.add(`cp from ${pair}`, relative(state.cp ?? Number.NaN, row.cp));
    this.add(`cv from ${pair}`, relative(state.cv ?? Number.NaN, row.cv));
    this.add(`sound speed from ${pair}`, relative(state.soundSpeed ?? Number.NaN, row.soundSpeed));
  }
}

/** What a refusal of a pair is counted under. */
function subjectOf(given: StateInput): Subject {
  if ('quality' in given) return 'temperature' in given ? 'density from (T,x)' : 'all from (p,x)';
  return 'density' in given ? 'pressure from (ρ,T)' : 'density from (T,p)';
}

function singleRegion(fluid: Refrigerant, row: SingleRow): Region {
  return isNearCritical(fluid, row.temperature, row.density) ? 'nearCritical' : phaseOf(fluid, row);
}

/** The name DESIGN gives a single phase: by the critical point, and below it by the side of the dome. */
function phaseOf({ critical }: Refrigerant, { temperature, pressure, density }: SingleRow) {
  if (pressure > critical.pressure) return temperature > critical.temperature ? 'supercritical' : 'liquid';
  if (temperature > critical.temperature) return 'vapour';
  return density > critical.density ? 'liquid' : 'vapour';
}

function relative(ours: number, reference: number): number {
  return Math.abs(ours - reference) / Math.abs(reference);
}
