// The zero of enthalpy and entropy as people name it: by its short name, or by what it says ("zero at -40 °C").

import type { ReferenceStateName } from '../../matter/refrigerants/index.ts';
import { InputError } from '../../numerics/index.ts';
import { nearestWord } from '../../quantities/index.ts';

/** What each is called; the first stands in messages. Minus forty is the same in both scales. */
const phrases: Readonly<Record<ReferenceStateName, readonly [string, ...string[]]>> = {
  iir: ['200 kJ/kg at 0 °C', 'iir', '200 kJ/kg', '200 kJ/kg and 1 kJ/(kg K) at 0 °C', '200 kJ/kg at 32 °F'],
  ashrae: [
    'zero at -40 °C',
    'ashrae',
    'zero at -40 °F',
    'zero at -40',
    '0 at -40 °C',
    '0 at -40 °F',
    '-40 °C',
    '-40 °F',
  ],
  normalBoilingPoint: [
    'normal boiling point',
    'zero at the normal boiling point',
    'zero at normal boiling point',
    'nbp',
  ],
};

/**
 * @param text  as typed
 * @throws InputError 'unknownChoice' with what is accepted, and the nearest of it
 */
export function referenceStateGiven(text: string): ReferenceStateName {
  const wanted = compact(text);
  const names = Object.keys(phrases) as ReferenceStateName[];
  const found = names.find((name) => phrases[name].some((phrase) => compact(phrase) === wanted));
  if (found !== undefined) return found;
  const accepted = names.map((name) => `"${phrases[name][0]}"`).join(', ');
  const nearest = nearestWord(
    text,
    names.flatMap((name) => phrases[name]),
  );
  const hint = nearest === undefined ? '' : `; did you mean "${nearest}"?`;
  throw new InputError(
    '--reference-state',
    `"${text}"`,
    `${accepted}, or iir, ashrae, normalBoilingPoint${hint}`,
    'unknownChoice',
  );
}

/** Letters, digits and minus signs alone, in small letters. */
function compact(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/deg(rees)?|celsius|fahrenheit/g, (word) => (word.startsWith('deg') ? '' : word.charAt(0)))
    .replace(/[^a-z0-9-]/g, '');
}
