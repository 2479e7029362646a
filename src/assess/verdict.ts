// The standing of a design: the first of five that applies, judged at the coldest spell with the backup off.

import type { Band, Finding } from '../quantities/index.ts';
import type { LoadStanding, Standing } from './assessment/assessment.ts';

export interface VerdictInput {
  readonly findings: readonly Finding[];
  /** Heat reaching the tank water with the machine running without a pause [W]. */
  readonly heatDelivered: Band;
  /** Heat the tank needs [W]. */
  readonly tankLoad: Band;
  /** Cost over its life, spread per year, of this loop and of the cheapest other scenario. */
  readonly lifeCostThisLoop: number;
  readonly lifeCostCheapestOther: number;
}

/**
 * @returns doNotBuild on any finding of severity stop; fallsShort when the top of the delivered range is below the bottom
 * of the load range; uncertain when the two overlap; notWorthIt when it carries the load but costs more over its life than
 * the cheapest other scenario (likely values); carriesLoad otherwise.
 */
export function judge(input: VerdictInput): Standing {
  if (input.findings.some((finding) => finding.severity === 'stop')) return 'doNotBuild';
  const ofLoad = judgeLoad(input.heatDelivered, input.tankLoad);
  if (ofLoad === 'carriesLoad' && input.lifeCostThisLoop > input.lifeCostCheapestOther) return 'notWorthIt';
  return ofLoad;
}

/**
 * What can be said of the load alone.
 * @param heatDelivered  [W]
 * @param tankLoad       [W]
 */
export function judgeLoad(heatDelivered: Band, tankLoad: Band): LoadStanding {
  if (heatDelivered.high < tankLoad.low) return 'fallsShort';
  return heatDelivered.low < tankLoad.high ? 'uncertain' : 'carriesLoad';
}
