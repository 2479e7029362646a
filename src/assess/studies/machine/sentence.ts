// The plain sentence about a machine, in pieces: built for what, run where, how much heat for how much electricity, and which limit
// comes first.

import { applicationLimits } from '../../../parts/compressor/index.ts';
import type { MachineSentence } from './answer.ts';
import type { LimitsOfMachine } from './limits.ts';
import type { YearState } from './map/marks.ts';
import { type LoopRun, type MachineSubject, settledAt } from './subject.ts';
import { type Variants, variedNumbers } from './variants.ts';

/** The machine in the coldest spell, with the limit that is nearest in any state of the year. */
export function machineSentence(
  { design, results }: Pick<MachineSubject, 'design' | 'results'>,
  variants: Variants<LoopRun>,
  states: readonly YearState[],
  envelope: LimitsOfMachine,
): MachineSentence {
  const { application, compressor, count, refrigerant } = design.machine;
  const { evaporating } = applicationLimits(application);
  const points = states.map((state) => ({ state, point: settledAt(variants.likely, state.month) }));
  const { bands } = variedNumbers(variants, (run) => {
    const point = settledAt(run, null);
    const { current } = point.compressor;
    const share = run.compressor.ratedCurrent === null ? 0 : current / run.compressor.ratedCurrent;
    return { heat: point.heatDelivered, power: point.compressorPower, current, share };
  });
  return {
    count,
    madeFor: compressor.madeFor,
    refrigerant,
    application,
    builtFor: { lowest: evaporating.lowest, highest: evaporating.highest },
    wouldRunAt: {
      evaporating: spanOf(points.map(({ point }) => point.evaporating.temperature)),
      condensing: spanOf(points.map(({ point }) => point.condensing.temperature)),
    },
    heat: bands.heat,
    power: bands.power,
    current: bands.current,
    currentShare: results.compressor.ratedCurrent === null ? null : bands.share,
    firstLimit: firstLimit(points, envelope),
  };
}

type StatePoint = { readonly state: YearState; readonly point: ReturnType<typeof settledAt> };

/** The limit met first over the year: by the nearness in which the margins are told. */
function firstLimit(points: readonly StatePoint[], envelope: LimitsOfMachine): MachineSentence['firstLimit'] {
  const nearest = points
    .map(({ state, point }) => ({ when: state.when, nearest: envelope.nearest(point) }))
    .sort((left, right) => left.nearest.nearness - right.nearest.nearness)[0]!;
  return { ...nearest.nearest.margin, when: nearest.when };
}

function spanOf(temperatures: readonly number[]): { readonly lowest: number; readonly highest: number } {
  return { lowest: Math.min(...temperatures), highest: Math.max(...temperatures) };
}
