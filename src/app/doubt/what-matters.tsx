// What matters most: for each of the uncertain inputs that move the verdict furthest, the margin with this input alone at its
// low and at its high end, drawn around zero, where the machine just carries the load. Picture and table in one.

import { type ReactNode, useId } from 'react';
import type { Assessment, Influence, LoadStanding } from '../../assess/index.ts';
import { type Band, isQuantityName, sayRange, type UnitView } from '../../quantities/index.ts';
import { ResultLink } from '../ui/result-link.tsx';
import { say, sentenceStart } from '../ui/say.ts';
import './doubt.css';

/** Inputs that explain less than this share of the doubt are not listed. */
const smallest = 0.005;

/** More rows than this would hide what matters. */
const mostRows = 8;

export interface WhatMattersProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function WhatMatters({ assessment, view }: WhatMattersProps): ReactNode {
  const { currency, margin } = assessment;
  const caption = useId();
  const rows = assessment.influences.filter(({ share }) => share >= smallest).slice(0, mostRows);
  if (rows.length === 0) return <p className="quiet">No input is uncertain enough to move the verdict.</p>;
  const ends = rows.flatMap(({ marginAtLow, marginAtHigh }) => [marginAtLow, marginAtHigh]);
  const scale = scaleFor(ends);
  return (
    <>
      <p>{flipSentence(rows)}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-labelledby={caption}>
        <table className="bars moves">
          <caption id={caption}>
            Margin: heat delivered less heat needed, with this input alone at its ends and all others likely. All
            together it runs from{' '}
            <ResultLink workings={assessment.workings} result="plant.margin" of="margin">
              {sayRange(margin, 'power', view)}
            </ResultLink>
            . At 0 the machine just carries the load; left of it, hatched, it falls short. The hollow dot is the input’s
            low end, the full one its high end.
          </caption>
          <thead>
            <tr>
              <th scope="col">Input</th>
              <th scope="col">
                <span className="for-reader">Margin as a bar, on a scale </span>
                <span className="moves-scale">
                  <span>{sayRounded(scale.from, scale, view)}</span>
                  <span>{sayRounded(scale.to, scale, view)}</span>
                </span>
              </th>
              <th scope="col" className="number">
                At its low end
              </th>
              <th scope="col" className="number">
                At its high end
              </th>
              <th scope="col" className="number">
                Share of the doubt
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((influence) => (
              <Row key={influence.path} influence={influence} scale={scale} currency={currency} view={view} />
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

interface Scale {
  readonly from: number;
  readonly to: number;
}

/** From the lowest to the highest end, with zero always on it and a little room. */
function scaleFor(ends: readonly number[]): Scale {
  const from = Math.min(0, ...ends);
  const to = Math.max(0, ...ends);
  const room = 0.04 * (to - from);
  return { from: from < 0 ? from - room : 0, to: to > 0 ? to + room : 0 };
}

/** A margin to a hundredth of the scale: more digits would pretend to know. */
function sayRounded(margin: number, { from, to }: Scale, view: UnitView): string {
  const step = 10 ** Math.floor(Math.log10((to - from) / 50));
  return say(Math.round(margin / step) * step, 'power', view);
}

interface RowProps {
  readonly influence: Influence;
  readonly scale: Scale;
  readonly currency: string;
  readonly view: UnitView;
}

function Row({ influence, scale, currency, view }: RowProps): ReactNode {
  const { label, input, quantity, marginAtLow, marginAtHigh, share } = influence;
  return (
    <tr>
      <th scope="row">
        {sentenceStart(label)}
        <span className="bar-note">{flipWords(influence, currency, view)}</span>
      </th>
      <td className="bar-cell">
        <MoveBar low={marginAtLow} high={marginAtHigh} scale={scale} />
      </td>
      <td className="number">
        {sayRounded(marginAtLow, scale, view)}
        <span className="bar-note">at {sayInput(input.low, quantity, currency, view)}</span>
      </td>
      <td className="number">
        {sayRounded(marginAtHigh, scale, view)}
        <span className="bar-note">at {sayInput(input.high, quantity, currency, view)}</span>
      </td>
      <td className="number">{say(share, 'fraction', view)}</td>
    </tr>
  );
}

/** The part of a bar that lies below zero is hatched: there the machine falls short. */
function MoveBar({ low, high, scale }: { low: number; high: number; scale: Scale }): ReactNode {
  const place = (value: number) => `${(100 * (value - scale.from)) / (scale.to - scale.from)}%`;
  const part = (from: number, to: number) => ({ left: place(from), right: `calc(100% - ${place(to)})` });
  const [least, most] = [Math.min(low, high), Math.max(low, high)];
  return (
    <div className="move" aria-hidden="true">
      {least < 0 && <div className="move-part move-short" style={part(least, Math.min(0, most))} />}
      {most > 0 && <div className="move-part move-carries" style={part(Math.max(0, least), most)} />}
      <div className="move-end move-low" style={{ left: place(low) }} />
      <div className="move-end move-high" style={{ left: place(high) }} />
      <div className="move-zero" style={{ left: place(0) }} />
    </div>
  );
}

const thenWords: Readonly<Record<LoadStanding, string>> = {
  fallsShort: 'it would fall short',
  uncertain: 'nobody could know',
  carriesLoad: 'it would carry the load',
};

/** "Known to be 20 cm³, it would carry the load." */
function flipWords({ input, quantity, flipsAtLow, flipsAtHigh }: Influence, currency: string, view: UnitView): string {
  const flips = [
    [input.low, flipsAtLow],
    [input.high, flipsAtHigh],
  ] as const;
  const said = flips.flatMap(([value, then]) =>
    then === null ? [] : [`known to be ${sayInput(value, quantity, currency, view)}, ${thenWords[then]}`],
  );
  return said.length === 0 ? '' : `${sentenceStart(said.join('; '))}.`;
}

function flipSentence(rows: readonly Influence[]): string {
  const flipping = rows.filter(({ flipsAtLow, flipsAtHigh }) => flipsAtLow !== null || flipsAtHigh !== null);
  if (flipping.length === 0) {
    return 'No single input, were it known to lie at one of its ends, would change what can be said of the load.';
  }
  return flipping.length === 1
    ? 'One input alone, were it known to lie at one of its ends, would change what can be said of the load: it says so below.'
    : `${flipping.length} inputs, each alone, would change what can be said of the load, were they known to lie at one of their ends: they say so below.`;
}

/** A value of an input in the units of the view. */
export function sayInput(value: number, quantity: string, currency: string, view: UnitView): string {
  if (!isQuantityName(quantity)) return String(value);
  const band: Band = { low: value, likely: value, high: value };
  return sayRange(band, quantity, view, { currency });
}
