// The waterfall as rows: what leaves the tank now, what of it comes from pumps and lights by itself, what is still needed, what
// each measure takes off that in turn, and what is left. Lengths are watts in the coldest spell.

import type { BandWithUnit, WrappingAnswer } from '../../assess/index.ts';

export type WaterfallLook = 'leaving' | 'gains' | 'needed' | 'saves' | 'savesWithoutPaying' | 'left';

export interface WaterfallRow {
  readonly key: string;
  readonly label: string;
  readonly look: WaterfallLook;
  /** Where the bar begins and ends [W]. */
  readonly from: number;
  readonly to: number;
  /** What the row is about [W]: what is needed, or what a measure saves. */
  readonly amount: number;
  /** Of a measure and of what is needed; what leaves and what comes by itself stand with their ranges at What leaves. */
  readonly band: BandWithUnit | undefined;
  /** Where the line to the next row goes down [W]. */
  readonly passedOn: number | undefined;
}

/** Heat that is too little to be drawn [W]. */
const leastShown = 0.05;

export function waterfallRows(answer: WrappingAnswer): readonly WaterfallRow[] {
  const { asItIs, inTurn, waterfall } = answer;
  const loss = asItIs.paths.reduce((sum, { heat }) => sum + heat, 0);
  const gains = loss - asItIs.load.likely;
  let done = 0;
  // What adds nothing to those before it, such as a lid under another, would be a row without a bar.
  const shown = waterfall.filter(({ from, to }) => Math.abs(from - to) >= leastShown);
  const rows = shown.map((bar, index): WaterfallRow => {
    const step = inTurn.find(({ id }) => id === bar.id);
    if (step !== undefined) done = inTurn.indexOf(step) + 1;
    if (bar.kind === 'left') done = inTurn.length;
    const state = done === 0 ? asItIs : inTurn[done - 1]!.after;
    const isEnd = step === undefined;
    return {
      key: bar.id ?? bar.kind,
      label: bar.kind === 'asItIs' ? 'Heat needed as it is' : bar.label,
      look: bar.kind === 'asItIs' ? 'needed' : bar.kind,
      from: gains + bar.from,
      to: gains + bar.to,
      amount: isEnd ? bar.to - bar.from : Math.abs(bar.from - bar.to),
      band: isEnd ? state.load : step.gain.loadSaved,
      passedOn: index === shown.length - 1 ? undefined : gains + state.load.likely,
    };
  });
  // Without anything that comes by itself, what leaves is what is needed.
  if (Math.abs(gains) <= 1e-9 * Math.abs(loss)) return rows;
  const common = { band: undefined, from: 0 };
  return [
    {
      ...common,
      key: 'leaving',
      label: 'Leaves the tank now',
      look: 'leaving',
      to: loss,
      amount: loss,
      passedOn: undefined,
    },
    {
      ...common,
      key: 'gains',
      label: 'Comes from pumps and lights',
      look: 'gains',
      to: gains,
      amount: gains,
      passedOn: gains,
    },
    ...rows,
  ];
}

/** The ends of the scale that all rows share [W]; 0 is always on it. */
export function waterfallScale(rows: readonly WaterfallRow[]): readonly [number, number] {
  const ends = rows.flatMap(({ from, to }) => [from, to]);
  return [Math.min(0, ...ends), Math.max(1e-9, ...ends)];
}
