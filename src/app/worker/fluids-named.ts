// Which refrigerants a request is about: their coefficient files have to be here before the engine answers it. Names that
// mean no refrigerant are left to the engine, which refuses them naming the nearest.

import { fluidsOf, parseDesign } from '../../design/index.ts';
import { fluidsNeededBy, refrigerantNamed } from '../../matter/refrigerants/index.ts';
import { compressorFluids } from '../../parts/compressor/index.ts';
import type { EngineRequest } from './messages.ts';

/** Own names of the refrigerants that a request needs, each once. */
export function fluidsNamed(body: EngineRequest): readonly string[] {
  const own = namesIn(body).map((name) => (typeof name === 'string' ? refrigerantNamed(name) : undefined));
  return [...new Set(own.filter((name) => name !== undefined))];
}

/** Refrigerants that the answer is richer by, and does without where they cannot be fetched. */
export function fluidsWished(body: EngineRequest): readonly string[] {
  return body.kind === 'machine' ? compressorFluids : [];
}

function namesIn(body: EngineRequest): readonly unknown[] {
  switch (body.kind) {
    case 'assess':
    case 'workings':
    case 'bothWays':
    case 'wrapping':
    case 'machine':
      return fluidsOfDesign(body.text);
    case 'cycle':
    case 'secondCycle':
      return withNeeded(body.form.request.refrigerant);
    case 'diagram':
      return [body.request.refrigerant];
    case 'compare':
      return [...fluidsOfDesign(body.form.text), ...body.form.fluids];
    case 'brief':
      return fluidsOfDesign(body.form.text);
    // A range belongs to the design answered last, whose fluids are here.
    case 'range':
    case 'formulas':
      return [];
  }
}

/** With the fluids that its viscosity and conductivity are reckoned from. */
function withNeeded(name: unknown): readonly unknown[] {
  const own = typeof name === 'string' ? refrigerantNamed(name) : undefined;
  return own === undefined ? [name] : [own, ...fluidsNeededBy(own)];
}

/** What the machine would run on, and what its compressor was made for; none of a text that is no design. */
export function fluidsOfDesign(text: string): readonly string[] {
  const parsed = parseDesign(text);
  if (!parsed.ok) return [];
  const { refrigerant, madeFor } = fluidsOf(parsed.document);
  return [refrigerant, madeFor];
}
