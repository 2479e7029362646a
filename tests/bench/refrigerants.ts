// What an evaluation of an equation of state, a state and a table cost, by fluid, pair of properties and phase. Measured
// when asked for by name (`npm run bench -- refrigerants`); every state is another one, none is on the saturation line.

import { answerStateLine } from '../../src/cli/state.ts';
import {
  loopRegion,
  type Refrigerant,
  refrigerant,
  type State,
  type StateInput,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
  tabulated,
} from '../../src/matter/refrigerants/index.ts';
import type { BenchCase } from './cases.ts';

const names = ['R134a', 'R600a', 'R290', 'R410A'];
const count = 64;

/** Shares from 0 to 1, and a second row of them in another order, so that two properties do not rise together. */
const shares = Array.from({ length: count }, (_, k) => ({ first: k / count, second: ((37 * k) % count) / count }));

type Phase = 'liquid' | 'twoPhase' | 'vapour' | 'supercritical';

/** States of one phase about where a loop has them; above the critical point up to 2.5 times its pressure. */
function statesOf(fluid: Refrigerant, phase: Phase): readonly State[] {
  const { temperature, pressure } = fluid.critical;
  return shares.map(({ first, second }) => {
    switch (phase) {
      case 'liquid':
        return stateAt(fluid, {
          temperature: temperature * (0.68 + 0.12 * first),
          pressure: pressure * (0.3 + 0.3 * second),
        });
      case 'vapour':
        return stateAt(fluid, {
          temperature: temperature * (0.86 + 0.2 * first),
          pressure: pressure * (0.03 + 0.12 * second),
        });
      case 'supercritical':
        return stateAt(fluid, {
          temperature: temperature * (1.01 + 0.1 * first),
          pressure: pressure * (1.1 + 1.4 * second),
        });
      case 'twoPhase':
        return stateAt(fluid, { pressure: pressure * (0.05 + 0.5 * first), quality: 0.05 + 0.9 * second });
      default:
        return phase satisfies never;
    }
  });
}

const pairs: readonly {
  readonly id: string;
  readonly title: string;
  readonly phases: readonly Phase[];
  readonly given: (state: State) => StateInput;
}[] = [
  {
    id: 'temperaturePressure',
    title: '(T,p)',
    phases: ['liquid', 'vapour', 'supercritical'],
    given: ({ temperature, pressure }) => ({ temperature, pressure }),
  },
  {
    id: 'pressureEnthalpy',
    title: '(p,h)',
    phases: ['liquid', 'twoPhase', 'vapour', 'supercritical'],
    given: ({ pressure, enthalpy }) => ({ pressure, enthalpy }),
  },
  {
    id: 'pressureEntropy',
    title: '(p,s)',
    phases: ['liquid', 'twoPhase', 'vapour', 'supercritical'],
    given: ({ pressure, entropy }) => ({ pressure, entropy }),
  },
  {
    id: 'densityTemperature',
    title: '(ρ,T)',
    phases: ['liquid', 'twoPhase', 'vapour', 'supercritical'],
    given: ({ density, temperature }) => ({ density, temperature }),
  },
  {
    id: 'enthalpyEntropy',
    title: '(h,s)',
    phases: ['liquid', 'twoPhase', 'vapour', 'supercritical'],
    given: ({ enthalpy, entropy }) => ({ enthalpy, entropy }),
  },
  {
    id: 'temperatureEntropy',
    title: '(T,s)',
    phases: ['liquid', 'twoPhase', 'vapour', 'supercritical'],
    given: ({ temperature, entropy }) => ({ temperature, entropy }),
  },
  {
    id: 'pressureQuality',
    title: '(p,x)',
    phases: ['twoPhase'],
    given: ({ pressure, quality }) => ({ pressure, quality: quality! }),
  },
];

const words: Readonly<Record<Phase, string>> = {
  liquid: 'liquid',
  twoPhase: 'mixture',
  vapour: 'vapour',
  supercritical: 'supercritical',
};

/** Budgets of one phase: 10 µs, for (p,h) and (p,s). */
function budgetOf(id: string, phase: Phase): number | undefined {
  return (id === 'pressureEnthalpy' || id === 'pressureEntropy') && phase !== 'twoPhase' ? 10e-6 : undefined;
}

function casesOf(name: string): readonly BenchCase[] {
  const fluid = refrigerant(name);
  const { equation, critical } = fluid;
  const make = (id: string, title: string, budget: number | undefined, prepare: BenchCase['prepare']): BenchCase => ({
    id: `refrigerants.${name}.${id}`,
    title: `${name}: ${title}`,
    budget,
    judged: 'median',
    isDetail: true,
    prepare,
  });
  return [
    make('equation', 'one evaluation, both parts, all derivatives', 1e-6, () => {
      const states = [...statesOf(fluid, 'liquid'), ...statesOf(fluid, 'vapour')];
      return inTurn(states, ({ temperature, density }) => equation.at(temperature, density).entropy + equation.cv);
    }),
    make('residual', 'one evaluation of the residual part', 1e-6, () => {
      const states = [...statesOf(fluid, 'liquid'), ...statesOf(fluid, 'vapour')];
      return inTurn(states, ({ temperature, density }) => equation.residualAt(temperature, density).pressure);
    }),
    ...pairs.flatMap(({ id, title, phases, given }) =>
      phases.map((phase) =>
        make(`${id}.${phase}`, `${title}, ${words[phase]}`, budgetOf(id, phase), () => {
          const requests = statesOf(fluid, phase).map(given);
          return inTurn(requests, (request) => stateAt(fluid, request).temperature);
        }),
      ),
    ),
    make('saturation.temperature', 'both sides at T', undefined, () =>
      inTurn(
        shares.map(({ first }) => critical.temperature * (0.68 + 0.29 * first)),
        (temperature) => saturationAtTemperature(fluid, temperature).vapour.density,
      ),
    ),
    make('saturation.pressure', 'both sides at p', undefined, () =>
      inTurn(
        shares.map(({ first }) => critical.pressure * (0.02 + 0.9 * first)),
        (pressure) => saturationAtPressure(fluid, pressure).vapour.density,
      ),
    ),
    make('table', 'table look-up of T, ρ, s from (p,h)', 0.3e-6, () => {
      const { table } = tabulated(fluid).table;
      const states = [...statesOf(fluid, 'liquid'), ...statesOf(fluid, 'vapour')];
      return inTurn(states, ({ pressure, enthalpy }) => {
        table.lookUp(pressure, enthalpy);
        return table.found[0]! + table.found[1]! + table.found[2]!;
      });
    }),
    make('table.build', 'table, made anew', 0.15, () => {
      const region = loopRegion(fluid);
      return () => tabulated(fluid, { ...region }).table.table.bytes;
    }),
    {
      ...make('table.memory', 'memory of the table', undefined, undefined),
      bytes: () => tabulated(fluid).table.table.bytes,
    },
  ];
}

/** Requests as a batch has them: each fluid and pair in turn. */
function batchLines(): readonly string[] {
  return names.flatMap((name) => {
    const fluid = refrigerant(name);
    const { limits } = fluid;
    const asked = pairs.filter(({ id }) => id !== 'pressureQuality');
    return (['liquid', 'vapour'] as const).flatMap((phase) =>
      statesOf(fluid, phase)
        .filter(({ temperature }) => temperature > limits.temperatureMin)
        .map((state, k) => JSON.stringify({ refrigerant: name, given: asked[k % asked.length]!.given(state) })),
    );
  });
}

export const refrigerantCases: readonly BenchCase[] = [
  {
    id: 'refrigerants.batch',
    title: 'states of a batch, line by line, all pairs',
    budget: 100e3 / 3,
    judged: 'median',
    isDetail: true,
    isRate: true,
    prepare: () => inTurn(batchLines(), (line) => answerStateLine(line).length),
  },
  ...names.flatMap(casesOf),
];

function inTurn<T>(given: readonly T[], work: (input: T) => number): (index: number) => number {
  return (index) => work(given[index % given.length]!);
}
