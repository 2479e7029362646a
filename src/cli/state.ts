// One line of JSON in, one line of JSON out: states of a refrigerant for programs, and one state in words for people.
// No input or output happens here. SI, mass basis, full precision.

import {
  type Derived,
  derivedAt,
  type Refrigerant,
  refrigerant,
  type State,
  type StateInput,
  stateAt,
  type TransportMethods,
  transportAt,
  transportMethods,
} from '../matter/refrigerants/index.ts';
import { InputError } from '../numerics/index.ts';
import { formatNumber, fromView, type QuantityName, sayQuantity, type UnitView } from '../quantities/index.ts';
import { columns, paragraph } from './report/text-table.ts';
import { answerLine } from './request-line.ts';

/**
 * Answers one request of `kettlefin state --batch`.
 * @param line  {"refrigerant": name, "given": {two properties}}, base SI
 * @returns     the state as one line of JSON; or `{"error":{"code":…,"message":…}}` for whatever is wrong with the line:
 *              not JSON, not such an object, unknown fluid or pair, values no state can have, (T,p) on the saturation line
 */
export function answerStateLine(line: string): string {
  return answerLine(line, (request) => {
    const { name, given } = checkedRequest(request);
    const fluid = refrigerant(name);
    return JSON.stringify(stateAnswer(fluid, stateAt(fluid, given)));
  });
}

/** A state with the keys of the contract, in its order, and nothing else. */
export function stateAnswer(fluid: Refrigerant, state: State) {
  const { viscosity, conductivity } = transportAt(fluid, state);
  return {
    temperature: state.temperature,
    pressure: state.pressure,
    density: state.density,
    enthalpy: state.enthalpy,
    entropy: state.entropy,
    internalEnergy: state.internalEnergy,
    cp: state.cp,
    cv: state.cv,
    soundSpeed: state.soundSpeed,
    viscosity,
    conductivity,
    surfaceTension: state.surfaceTension,
    quality: state.quality,
    phase: state.phase,
    // Left out of the text where undefined.
    glideApproximation: state.glideApproximation,
  };
}

function checkedRequest(record: unknown): { name: string; given: StateInput } {
  const expected = 'an object with "refrigerant" (a name) and "given" (two properties)';
  if (typeof record !== 'object' || record === null || Array.isArray(record)) {
    throw new InputError('line', record, expected, 'badRequest');
  }
  for (const key of Object.keys(record)) {
    if (key !== 'refrigerant' && key !== 'given') throw new InputError(key, 'unknown key', expected, 'unknownKey');
  }
  const { refrigerant: name, given } = record as { refrigerant?: unknown; given?: unknown };
  if (typeof name !== 'string') throw new InputError('refrigerant', name, 'the name of a refrigerant', 'badRequest');
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new InputError('given', given, 'an object of two properties', 'badRequest');
  }
  return { name, given: given as StateInput };
}

/** A state with what a person is shown beside the answer of a batch. */
export interface ToldState {
  /** The refrigerant. */
  readonly name: string;
  readonly answer: ReturnType<typeof stateAnswer>;
  readonly derived: Derived | null;
  /** How viscosity, conductivity and surface tension were come by. */
  readonly methods: TransportMethods;
  /** Of viscosity and conductivity those beyond the range of their source. */
  readonly extrapolated: readonly ('viscosity' | 'conductivity')[];
}

/** The state of a request, complete. @throws KettlefinError */
export function toldState(named: string, given: StateInput): ToldState {
  const fluid = refrigerant(named);
  const state = stateAt(fluid, given);
  return {
    name: fluid.name,
    answer: stateAnswer(fluid, state),
    derived: derivedAt(fluid, state),
    methods: transportMethods(fluid),
    extrapolated: transportAt(fluid, state).extrapolated ?? [],
  };
}

/**
 * One state in words: a line a property, in the units of a view, five or six digits. For people; programs read
 * answerStateLine. Properties that a state does not have are left out.
 * @param told        the state
 * @param view        'metric' or 'us'
 * @param atmosphere  air pressure [Pa]; where given, the gauge pressure is said too
 */
export function sayState(told: ToldState, view: UnitView, atmosphere?: number): string {
  const { name, answer: state, derived } = told;
  const say = (value: number | null, quantity: QuantityName, digits: number) =>
    value === null ? undefined : sayQuantity(value, quantity, view, digits);
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['temperature', say(state.temperature, 'temperature', 5)],
    ['pressure', say(state.pressure, 'pressure', 6)],
    ...(atmosphere === undefined ? [] : gaugeRows(state.pressure, atmosphere, view)),
    ['density', say(state.density, 'density', 6)],
    ['enthalpy', say(state.enthalpy, 'enthalpy', 6)],
    ['entropy', say(state.entropy, 'entropy', 6)],
    ['internal energy', say(state.internalEnergy, 'enthalpy', 6)],
    ['heat capacity cp', say(state.cp, 'entropy', 5)],
    ['heat capacity cv', say(state.cv, 'entropy', 5)],
    ['speed of sound', say(state.soundSpeed, 'speed', 5)],
    ...derivedRows(derived, view),
    ['viscosity', withDoubt(say(state.viscosity, 'viscosity', 4), 'viscosity', told)],
    ['conductivity', withDoubt(say(state.conductivity, 'conductivity', 4), 'conductivity', told)],
    [
      'surface tension',
      state.surfaceTension === null ? undefined : `${formatNumber(1e3 * state.surfaceTension, 4)} mN/m`,
    ],
    ['quality', say(state.quality, 'fraction', 6)],
  ];
  const said = rows.flatMap(([title, text]) => (text === undefined ? [] : [[title, text]]));
  const lines = notes(told).map((note) => `  ${paragraph(note, '  ')}`.replace(/^ {4}/, '  '));
  return [`${name}, ${phaseWords(state)}`, columns(said), ...lines].join('\n');
}

/** A value with what it is to be trusted for: "12.04 µPa s, estimate". */
function withDoubt(
  said: string | undefined,
  property: 'viscosity' | 'conductivity',
  { methods, extrapolated }: ToldState,
): string | undefined {
  if (said === undefined) return undefined;
  const estimate = methods[property].isEstimate ? ', estimate' : '';
  return `${said}${estimate}${extrapolated.includes(property) ? ', beyond the range of its source' : ''}`;
}

function notes({ answer, methods }: ToldState): readonly string[] {
  const titles = { viscosity: 'Viscosity', conductivity: 'Conductivity', surfaceTension: 'Surface tension' } as const;
  const truths = (['viscosity', 'conductivity', 'surfaceTension'] as const).flatMap((property) => {
    const { truth } = methods[property];
    return answer[property] === null || truth === undefined ? [] : [`${titles[property]}: ${truth}`];
  });
  return [
    ...(answer.glideApproximation === true
      ? ['Between the lines of this blend, volume, enthalpy, entropy and temperature are taken as linear in quality.']
      : []),
    ...truths,
    'Enthalpy and entropy count from 200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C.',
  ];
}

/** 1 °F is 5/9 K. */
const fahrenheitDegree = 5 / 9;

function derivedRows(derived: Derived | null, view: UnitView): readonly (readonly [string, string])[] {
  if (derived === null) return [];
  const { jouleThomsonCoefficient, isentropicExponent, isobaricExpansion, isothermalCompressibility } = derived;
  const degree = view === 'us' ? fahrenheitDegree : 1;
  const [pressure, pressureUnit] = view === 'us' ? [fromView(1, 'pressureDifference', 'us'), 'psi'] : [1e5, 'bar'];
  const degreeUnit = view === 'us' ? '°F' : 'K';
  return [
    [
      'Joule–Thomson coefficient',
      `${formatNumber((jouleThomsonCoefficient * pressure) / degree, 5)} ${degreeUnit}/${pressureUnit}`,
    ],
    ['isentropic exponent', formatNumber(isentropicExponent, 5)],
    ['expansion at constant pressure', `${formatNumber(isobaricExpansion * degree, 5)} /${degreeUnit}`],
    ['compressibility', `${formatNumber(isothermalCompressibility * pressure, 5)} /${pressureUnit}`],
  ];
}

function phaseWords({ phase, quality }: Pick<State, 'phase' | 'quality'>): string {
  if (phase !== 'twoPhase') return phase;
  if (quality === 0) return 'saturated liquid';
  return quality === 1 ? 'saturated vapour' : 'liquid and vapour';
}

function gaugeRows(pressure: number, atmosphere: number, view: UnitView): readonly (readonly [string, string])[] {
  return [
    ['  above the air’s', sayQuantity(pressure - atmosphere, 'gaugePressure', view, 6)],
    ['  air pressure', sayQuantity(atmosphere, 'pressure', view, 5)],
  ];
}
