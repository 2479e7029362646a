// The steps behind what each measure is worth, likely values: its lines of the account less those without it, the net saving, the
// paybacks and the net value. The accounts they start from are those of 'plainHeater' on each tank.

import { discountedPaybackOrNever, paybackOrNever } from '../../../accounts/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../../quantities/index.ts';
import { aloneName, type GainPart, stateName, stepName, togetherName } from './numbers.ts';
import type { Said } from './tell.ts';

export function wrappingWorkings(said: Said): readonly WorkingStep[] {
  const { states, order } = said;
  return [
    ...states.applicable.flatMap(({ id }) => gainSteps(said, aloneName(id))),
    ...order.flatMap((_, index) => [
      workingStep(
        `${stepName(index + 1)}.loadSaved`,
        'accounts.lessThanBefore',
        likely(said, `${stepName(index + 1)}.loadSaved`),
        {
          K_before: [likely(said, `${stateName(index)}.load`), 'engine.wrappedTank'],
          K_after: [likely(said, `${stateName(index + 1)}.load`), 'engine.wrappedTank'],
        },
      ),
      ...gainSteps(said, stepName(index + 1)),
      ...gainSteps(said, togetherName(index + 1)),
    ]),
  ];
}

function gainSteps(said: Said, group: string): readonly WorkingStep[] {
  const { terms } = said;
  const value = (part: GainPart) => likely(said, `${group}.${part}`);
  const own = (name: string) => `${group}.${name}`;
  const given = 'engine.wrappedTank';
  const [C, saving] = [value('cost'), value('netSaving')];
  const S: StepInput = [saving, own('netSaving')];
  const cost: StepInput = [C, given];
  const r: StepInput = [terms.discountRate, 'prices.discountRate'];
  const simple = paybackOrNever(C, saving);
  const discounted = discountedPaybackOrNever(C, saving, terms.discountRate);
  return [
    workingStep(own('netSaving'), 'accounts.netSaving', saving, {
      S_el: [value('electricitySaved'), given],
      D_room: [value('roomCreditChange'), given],
      S_cool: [value('coolingSaved'), given],
    }),
    ...(simple === null ? [] : [workingStep(own('payback'), 'accounts.simplePayback', simple, { C: cost, S })]),
    ...(discounted === null
      ? []
      : [workingStep(own('discountedPayback'), 'accounts.discountedPayback', discounted, { C: cost, S, r })]),
    workingStep(own('netValue'), 'accounts.netValue', value('netValue'), {
      C: cost,
      S,
      r,
      n: [terms.years, 'wrapping.years'],
    }),
  ];
}

function likely({ doubt }: Said, name: string): number {
  return doubt.bands[name]!.likely;
}
