// The waterfall as a picture and its table in one: a bar in every row, and the line that hands its end on to the next.

import { type ReactNode, useId } from 'react';
import type { WrappingAnswer } from '../../assess/index.ts';
import { sayQuantity, type UnitView } from '../../quantities/index.ts';
import { sayParts, sentenceStart } from '../ui/say.ts';
import { type WaterfallLook, type WaterfallRow, waterfallRows, waterfallScale } from './waterfall.ts';

interface WaterfallProps {
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
}

export function Waterfall({ answer, view }: WaterfallProps): ReactNode {
  const rows = waterfallRows(answer);
  const scale = waterfallScale(rows);
  const hatch = useId();
  const watts = (value: number) => sayQuantity(value, 'power', view, 2);
  return (
    <div className="table-scroll">
      <table className="bars waterfall">
        <caption>
          Heat in the coldest spell: room at {sayQuantity(answer.basis.roomTemperature, 'temperature', view)}, water at{' '}
          {sayQuantity(answer.basis.waterTemperature, 'temperature', view)}. Each measure beside all those above it.
          {rows.some(({ look }) => look === 'savesWithoutPaying') && ' Hatched: saves heat and does not pay.'}
        </caption>
        <thead>
          <tr>
            <th scope="col">In turn</th>
            <th scope="col">Heat</th>
            <th scope="col" className="number">
              Likely
            </th>
            <th scope="col" className="number">
              Range
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => {
            const { likely, range } =
              row.band === undefined
                ? { likely: watts(row.amount), range: undefined }
                : sayParts(row.band, 'power', view);
            return (
              <tr key={row.key} className={isTotal(row.look) ? 'total' : undefined}>
                <th scope="row">
                  {sentenceStart(row.label)}
                  {row.look === 'savesWithoutPaying' && <span className="bar-note">does not pay</span>}
                </th>
                <td className="bar-cell">
                  <Bar row={row} before={rows[index - 1]} scale={scale} hatch={`${hatch}-${index}`} />
                </td>
                <td className="number">
                  {isSaving(row.look) ? 'less ' : ''}
                  {likely}
                </td>
                <td className="number unit">{range}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

const inks: Readonly<Record<WaterfallLook, string>> = {
  leaving: 'var(--leaving-fill)',
  gains: 'var(--electricity-fill)',
  needed: 'var(--into-water-fill)',
  saves: 'var(--from-source-fill)',
  savesWithoutPaying: 'var(--from-source-fill)',
  left: 'var(--into-water-fill)',
};

interface BarProps {
  readonly row: WaterfallRow;
  readonly before: WaterfallRow | undefined;
  readonly scale: readonly [number, number];
  readonly hatch: string;
}

/** The row's height is 40 in the drawing, whatever it is on the page; lines keep their width. */
function Bar({ row, before, scale: [low, high], hatch }: BarProps): ReactNode {
  const at = (value: number) => (1000 * (value - low)) / (high - low);
  const [left, right] = [at(Math.min(row.from, row.to)), at(Math.max(row.from, row.to))];
  const isHatched = row.look === 'savesWithoutPaying';
  const ink = inks[row.look];
  return (
    <svg className="waterfall-bar" viewBox="0 0 1000 40" preserveAspectRatio="none" aria-hidden="true">
      {isHatched && (
        <pattern id={hatch} width="18" height="40" patternUnits="userSpaceOnUse">
          <rect width="7" height="40" fill={ink} />
        </pattern>
      )}
      {before?.passedOn !== undefined && <Passing x={at(before.passedOn)} from={0} to={10} />}
      {row.passedOn !== undefined && <Passing x={at(row.passedOn)} from={30} to={40} />}
      <rect
        x={left}
        y="9"
        width={Math.max(2, right - left)}
        height="22"
        fill={isHatched ? `url(#${hatch})` : ink}
        stroke={isHatched ? ink : undefined}
        vectorEffect="non-scaling-stroke"
      />
    </svg>
  );
}

function Passing({ x, from, to }: { readonly x: number; readonly from: number; readonly to: number }): ReactNode {
  return <line x1={x} x2={x} y1={from} y2={to} className="waterfall-passing" vectorEffect="non-scaling-stroke" />;
}

function isTotal(look: WaterfallLook): boolean {
  return look === 'needed' || look === 'left';
}

function isSaving(look: WaterfallLook): boolean {
  return look === 'saves' || look === 'savesWithoutPaying';
}
