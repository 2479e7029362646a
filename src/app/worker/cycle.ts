// The textbook cycle for the paper "Cycle alone": plain numbers of its small form in, the cycle with its pictures out.

import { type TextbookCycle, textbookCycle } from '../../loop/index.ts';
import { type Diagram, makeDiagram } from './diagram.ts';

/** Temperatures [K], differences [K], efficiency as a share. */
export interface CycleForm {
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly isentropicEfficiency: number;
  readonly isotherms: readonly number[];
  readonly isobars: readonly number[];
}

export interface CycleAnswer {
  readonly cycle: TextbookCycle;
  readonly diagram: Diagram;
}

export function answerCycle(form: CycleForm): CycleAnswer {
  const { isotherms, isobars, ...request } = form;
  const cycle = textbookCycle(request);
  const diagram = makeDiagram({
    refrigerant: form.refrigerant,
    points: cycle.points,
    levels: [],
    limits: [],
    isotherms,
    isobars,
  });
  return { cycle, diagram };
}
