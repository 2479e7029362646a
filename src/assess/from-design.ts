// From a design, as the text of a file or a document that was parsed before, to an answer made from it. Whatever is asked of a
// design, it is refused in the same two ways.

import { type DesignDocument, type DesignProblem, isPlaceInDesign, parseDesign } from '../design/index.ts';
import { InputError, KettlefinError, OutOfModelError } from '../numerics/index.ts';

/** What went wrong, as plain data that can be printed, serialised and posted. */
export interface EngineError {
  readonly code: string;
  readonly message: string;
  readonly facts: Readonly<Record<string, unknown>>;
}

/**
 * `unusable`: the document breaks its rules, or the engine found a value in it that cannot be; each problem with its path.
 * `noSolution`: the document is understood, and physics or the models give no answer for it.
 */
export type Refusal =
  | { readonly ok: false; readonly kind: 'unusable'; readonly problems: readonly DesignProblem[] }
  | { readonly ok: false; readonly kind: 'noSolution'; readonly error: EngineError };

/**
 * What is made from a design, or why nothing is.
 * @param design  the text of a design file, or a document that was parsed before
 * @param make    its own errors are refusals; any other error is passed on
 */
export function fromDesign<Made extends object>(
  design: string | DesignDocument,
  make: (document: DesignDocument) => Made,
): ({ readonly ok: true } & Made) | Refusal {
  const parsed = typeof design === 'string' ? parseDesign(design) : { ok: true as const, document: design };
  if (!parsed.ok) return { ok: false, kind: 'unusable', problems: parsed.problems };
  try {
    return { ok: true, ...make(parsed.document) };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return problemOf(error) ?? refusalOf(error);
  }
}

/** An error that blames a place in the design is a problem of it; undefined for any other. */
function problemOf(error: KettlefinError): Refusal | undefined {
  const blamed = blamedIn(error);
  if (blamed === undefined) return undefined;
  const { code, message } = error;
  const engine = { code, message, facts: error.facts() };
  return { ok: false, kind: 'unusable', problems: [{ code: 'impossible', ...blamed, engine }] };
}

function blamedIn(error: KettlefinError): Pick<DesignProblem, 'path' | 'received' | 'expected'> | undefined {
  if (error instanceof InputError && isPlaceInDesign(error.path)) {
    const { received, expected } = error.facts();
    return { path: error.path, received, expected };
  }
  if (error instanceof OutOfModelError && isPlaceInDesign(error.quantity)) {
    const { quantity, value, unit, low, high } = error;
    return { path: quantity, received: `${value} ${unit}`, expected: `${low} to ${high} ${unit}` };
  }
  return undefined;
}

/** What an error of the engine says about the design. */
export function refusalOf(error: KettlefinError): Extract<Refusal, { readonly kind: 'noSolution' }> {
  const { code, message } = error;
  return { ok: false, kind: 'noSolution', error: { code, message, facts: error.facts() } };
}
