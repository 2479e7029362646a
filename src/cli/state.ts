// One line of JSON in, one line of JSON out: states of a refrigerant for programs, and one state in words for people.
// No input or output happens here. SI, mass basis, full precision.

import { refrigerant, type State, stateAt } from '../matter/refrigerants/index.ts';
import { InputError, KettlefinError } from '../numerics/index.ts';

/**
 * Answers one request of `kettlefin state --batch`.
 * @param line  {"refrigerant": name, "given": {two properties}}, base SI
 * @returns     the state as one line of JSON; or `{"error":{"code":…,"message":…}}` for whatever is wrong with the line:
 *              not JSON, not such an object, unknown fluid or pair, values no state can have, (T,p) on the saturation line
 */
export function answerStateLine(line: string): string {
  try {
    const { name, given } = request(line);
    return JSON.stringify(stateAt(refrigerant(name), given));
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return JSON.stringify({ error: { code: error.code, message: error.message } });
  }
}

function request(line: string): { name: string; given: Parameters<typeof stateAt>[1] } {
  const record = parse(line);
  const expected = 'an object with "refrigerant" (a name) and "given" (two properties)';
  if (typeof record !== 'object' || record === null || Array.isArray(record)) {
    throw new InputError('line', shortened(line), expected, 'badRequest');
  }
  for (const key of Object.keys(record)) {
    if (key !== 'refrigerant' && key !== 'given') throw new InputError(key, 'unknown key', expected, 'unknownKey');
  }
  const { refrigerant: name, given } = record as { refrigerant?: unknown; given?: unknown };
  if (typeof name !== 'string') throw new InputError('refrigerant', name, 'the name of a refrigerant', 'badRequest');
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new InputError('given', given, 'an object of two properties', 'badRequest');
  }
  return { name, given: given as Parameters<typeof stateAt>[1] };
}

function parse(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw new InputError('line', shortened(line), 'one JSON object', 'notJson');
  }
}

function shortened(line: string): string {
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}

/**
 * One state in words: a line a property, SI with the usual prefixes. For people; programs read answerStateLine.
 * @param name   the refrigerant
 * @param state  from stateAt
 */
export function sayState(name: string, state: State): string {
  const rows: readonly (readonly [string, number | null, number, string])[] = [
    ['temperature', state.temperature, 1, 'K'],
    ['pressure', state.pressure, 1e-5, 'bar (absolute)'],
    ['density', state.density, 1, 'kg/m³'],
    ['enthalpy', state.enthalpy, 1e-3, 'kJ/kg'],
    ['entropy', state.entropy, 1e-3, 'kJ/(kg K)'],
    ['internal energy', state.internalEnergy, 1e-3, 'kJ/kg'],
    ['heat capacity cp', state.cp, 1e-3, 'kJ/(kg K)'],
    ['heat capacity cv', state.cv, 1e-3, 'kJ/(kg K)'],
    ['speed of sound', state.soundSpeed, 1, 'm/s'],
    ['surface tension', state.surfaceTension, 1e3, 'mN/m'],
    ['quality', state.quality, 1, ''],
  ];
  const said = rows
    .filter(([, value]) => value !== null)
    .map(
      ([title, value, scale, unit]) => `  ${title.padEnd(18)} ${Number(((value ?? 0) * scale).toPrecision(6))} ${unit}`,
    );
  const words = { liquid: 'liquid', vapour: 'vapour', twoPhase: 'liquid and vapour', supercritical: 'supercritical' };
  return [
    `${name}, ${words[state.phase]}`,
    ...said.map((row) => row.trimEnd()),
    '  enthalpy and entropy count from 200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C',
  ].join('\n');
}
