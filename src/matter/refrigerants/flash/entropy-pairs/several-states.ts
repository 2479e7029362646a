// The error for a pair that belongs to more than one stable state: none of them is picked silently.

import { InputError } from '../../../../numerics/index.ts';
import type { State } from '../../types.ts';

/**
 * @param received  the pair, with units
 * @param states    at least two
 */
export function severalStates(received: string, states: readonly State[]): InputError {
  const all = states.map(({ temperature, pressure, quality, phase }) => {
    const what = quality === null ? phase : `quality ${quality}`;
    return `${what} at ${temperature} K and ${pressure} Pa`;
  });
  const expected = `another pair, such as pressure and entropy: this one belongs to ${all.join(', to ')}`;
  return new InputError('given', received, expected, 'severalStates');
}
