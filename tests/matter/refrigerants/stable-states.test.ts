// States from pressure and enthalpy or entropy, over the whole range and a little beyond it: whatever is asked, the answer
// meets what was asked and is the stable one, or it is a typed error; and it is the same to the last bit whatever was asked
// before. Property-based, with a fixed seed.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equilibriumAtTemperature } from '../../../src/matter/refrigerants/dome/dome.ts';
import {
  type Refrigerant,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import { loadRefrigerant } from '../../../src/matter/refrigerants/load.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';
import { scales } from './deviation.ts';

const seed = 20240301;
/** A run that takes longer than this has met something that hangs [ms]. */
const endless = { interruptAfterTimeLimit: 20000, markInterruptAsFailure: true } as const;
const kinds = ['enthalpy', 'entropy'] as const;
type Kind = (typeof kinds)[number];

/** Evenly between two numbers: a double of the library lies evenly among doubles, most of which are tiny. */
const between = (low: number, high: number) =>
  fc.integer({ min: 0, max: 2 ** 30 }).map((whole) => low + ((high - low) * whole) / 2 ** 30);

/** A pressure evenly in its logarithm, and a share of the way between the ends of its isobar, a little beyond them too. */
const request = fc.record({
  kind: fc.constantFrom(...kinds),
  pressure: between(0, 1),
  share: between(-0.02, 1.02),
});

function requestOf(
  fluid: Refrigerant,
  { kind, pressure: place, share }: { kind: Kind; pressure: number; share: number },
) {
  const { limits, triplePoint, critical } = fluid;
  const lowest = Math.min(1e-2 * triplePoint.pressure, 1e-4 * critical.pressure);
  const pressure = lowest * (limits.pressureMax / lowest) ** place;
  const [low, high] = endsOf(fluid, pressure, kind);
  return { pressure, value: low + share * (high - low) };
}

/** Values at the cold and the warm end of an isobar, of the fluid as a liquid or, where that cannot be, as a gas. */
function endsOf({ equation, limits, gasConstant }: Refrigerant, pressure: number, kind: Kind): [number, number] {
  const { temperatureMin, temperatureMax, densityMax } = limits;
  const cold = equation.at(temperatureMin, densityMax)[kind];
  const warm = equation.at(temperatureMax, pressure / (gasConstant * temperatureMax))[kind];
  return [cold, warm];
}

/** The state, or undefined for a refusal; any other error is the caller's to see. */
function answer(fluid: Refrigerant, given: StateInput): State | undefined {
  try {
    return stateAt(fluid, given);
  } catch (error) {
    if (!(error instanceof KettlefinError) || error.code === 'notConverged') throw error;
    return undefined;
  }
}

/** Whether the equation at T and ρ has the pressure and the value: pressure by as much as a rounding of ρ changes it. */
function expectMet(fluid: Refrigerant, state: State, kind: Kind, value: number): void {
  const { temperature, density, pressure } = state;
  expect(Math.abs(state[kind] - value) / scales[kind]).toBeLessThan(1e-9);
  if (state.quality !== null) return;
  const { equation } = fluid;
  equation.at(temperature, density);
  const stiff = density * fluid.gasConstant * temperature;
  expect(Math.abs(equation.pressure - pressure) / Math.max(pressure, stiff)).toBeLessThan(1e-10);
  expect(Math.abs(equation[kind] - value) / scales[kind]).toBeLessThan(1e-9);
  expect(equation.stiffness).toBeGreaterThan(0);
}

/** The side of the dome, and the Gibbs energy against that of the other phase at the same T and p, where it has one. */
function expectStable(fluid: Refrigerant, state: State): void {
  const { critical, equation, gasConstant } = fluid;
  const { temperature, pressure, density, quality } = state;
  if (quality !== null || temperature >= critical.temperature * (1 - 1e-6)) return;
  const dome = equilibriumAtTemperature(fluid, temperature);
  const isLiquid = density > critical.density;
  const rounding = 1e-7;
  if (isLiquid) expect(pressure).toBeGreaterThan(dome.bubblePressure * (1 - rounding));
  else expect(pressure).toBeLessThan(dome.dewPressure * (1 + rounding));
  const gibbs = () => equation.enthalpy - temperature * equation.entropy;
  equation.at(temperature, density);
  const own = gibbs();
  const other = metastable(fluid, temperature, pressure, isLiquid ? dome.vapourDensity : dome.liquidDensity, isLiquid);
  if (other === undefined) return;
  equation.at(temperature, other);
  expect((gibbs() - own) / (gasConstant * temperature)).toBeGreaterThan(-1e-8);
}

/** Density of the other phase at T and p, followed from its side of the dome as far as it is stiff; undefined beyond. */
function metastable(
  { equation }: Refrigerant,
  temperature: number,
  pressure: number,
  from: number,
  isVapour: boolean,
): number | undefined {
  let density = from;
  for (let step = 0; step < 200; step++) {
    const { pressure: found, pressureByDensity, stiffness } = equation.residualAt(temperature, density);
    if (!(stiffness > 0)) return undefined;
    const change = (pressure - found) / pressureByDensity / density;
    if (isVapour ? change < -1e-9 : change > 1e-9) return undefined;
    if (Math.abs(change) < 1e-13) return density;
    density *= 1 + Math.min(Math.max(change, -0.02), 0.02);
  }
  return undefined;
}

describe.each(refrigerantNames)(`%s, seed ${seed}`, (name) => {
  const fluid = refrigerant(name);

  test('a state that was asked for and is stable, or a typed error', () => {
    let states = 0;
    fc.assert(
      fc.property(request, (asked) => {
        const { pressure, value } = requestOf(fluid, asked);
        const given = (
          asked.kind === 'enthalpy' ? { pressure, enthalpy: value } : { pressure, entropy: value }
        ) as StateInput;
        const state = answer(fluid, given);
        if (state === undefined) return;
        states += 1;
        expect(state.pressure).toBe(pressure);
        expectMet(fluid, state, asked.kind, value);
        if (fluid.bubbleAndDew === undefined) expectStable(fluid, state);
      }),
      { seed, numRuns: 400, ...endless },
    );
    expect(states).toBeGreaterThan(150);
  });

  test('close to the dome, on either side of it and within', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        between(1e-6, 1),
        fc.constantFrom('liquid', 'vapour'),
        fc.tuple(fc.constantFrom(1, -1), between(-12, -2)),
        (kind, place, side, [sign, power]) => {
          const { triplePoint, critical } = fluid;
          const pressure = critical.pressure * (triplePoint.pressure / critical.pressure) ** place;
          if (pressure < triplePoint.pressure) return;
          const liquid = answer(fluid, { pressure, quality: 0 });
          const vapour = answer(fluid, { pressure, quality: 1 });
          if (liquid === undefined || vapour === undefined) return;
          const line = side === 'liquid' ? liquid : vapour;
          const value = line[kind] + sign * 10 ** power * scales[kind];
          const state = answer(fluid, { pressure, [kind]: value } as unknown as StateInput);
          if (state === undefined) return;
          // Within a billionth of R T the value counts as on the line.
          const away = (side === 'liquid' ? -sign : sign) * 10 ** power * scales[kind];
          const scale = fluid.gasConstant * (kind === 'enthalpy' ? line.temperature : 1);
          if (away > 2e-9 * scale) expect(state.quality).toBeNull();
          if (away < -2e-9 * scale && away > liquid[kind] - vapour[kind] + 2e-9 * scale)
            expect(state.quality).not.toBeNull();
          expectMet(fluid, state, kind, state.quality === 0 || state.quality === 1 ? state[kind] : value);
          if (fluid.bubbleAndDew === undefined) expectStable(fluid, state);
        },
      ),
      { seed, numRuns: 300, ...endless },
    );
  });

  test('the same to the last bit, whatever was asked before', async () => {
    const file = await import(`../../../data/refrigerants/${name}.json`);
    const requests = fc.sample(request, { seed, numRuns: 60 });
    const [one, other] = [loadRefrigerant(file.default, name), loadRefrigerant(file.default, name)];
    const ask = (asked: Refrigerant, wanted: (typeof requests)[number]) => {
      const { pressure, value } = requestOf(asked, wanted);
      return answer(asked, { pressure, [wanted.kind]: value } as unknown as StateInput);
    };
    const forwards = requests.map((wanted) => ask(one, wanted));
    const backwards = [...requests].reverse().map((wanted) => ask(other, wanted));
    expect(backwards.reverse()).toEqual(forwards);
  });
});
