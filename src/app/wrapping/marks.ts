// What is said of each measure at a glance: whether it pays in turn, and whether it still does once a heat pump is there.

import type { HeatPumpStep, WithHeatPump, WrappingAnswer } from '../../assess/index.ts';
import type { StateKind } from '../ui/state-mark.tsx';

export interface MeasureMark {
  readonly kind: StateKind;
  readonly word: string;
}

/** The marks of one measure; none for a measure that changes nothing and so has no place in the turn. */
export function marksOf(answer: WrappingAnswer, id: string): readonly MeasureMark[] {
  const step = answer.inTurn.find((each) => each.id === id);
  if (step === undefined) return [];
  const { pays, settled, loadSaved, heatSaved } = step.gain;
  if (loadSaved.likely === 0 && heatSaved.likely === 0)
    return [{ kind: 'plain', word: 'adds nothing to those before it' }];
  const own: MeasureMark = settled
    ? { kind: pays ? 'plain' : 'look', word: pays ? 'pays' : 'does not pay' }
    : { kind: 'look', word: pays ? 'likely pays' : 'likely does not pay' };
  const gone = answer.withHeatPump
    .filter(({ steps }) => steps.some((each) => each.id === id && each.stopsPaying))
    .map(({ label }): MeasureMark => ({ kind: 'look', word: `stops paying with ${label}` }));
  return [own, ...gone];
}

/** The step of a measure with each way of making the heat by a heat pump. */
export function heatPumpStepsOf(
  answer: WrappingAnswer,
  id: string,
): readonly { readonly machine: WithHeatPump; readonly step: HeatPumpStep }[] {
  return answer.withHeatPump.flatMap((machine) =>
    machine.steps.filter((step) => step.id === id).map((step) => ({ machine, step })),
  );
}
