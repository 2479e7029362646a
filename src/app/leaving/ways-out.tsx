// Every way out of the water as bars, the largest first; the ways of another vessel are one bar that opens.

import type { ReactNode } from 'react';
import type { Assessment, LossPath } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { sayRange } from '../../quantities/index.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { say, sayParts, sentenceStart } from '../ui/say.ts';

export interface LeavingProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
}

export function WaysOut({ assessment, view }: LeavingProps): ReactNode {
  const { tank } = assessment;
  return (
    <section className="block">
      <h3>Every way out of the water</h3>
      <p className="quiet">
        In the coldest spell: room at {say(tank.roomTemperature, 'temperature', view)}, water at{' '}
        {say(tank.waterTemperature, 'temperature', view)}. Dotted: heat that leaves as vapour and does not warm the
        room.
      </p>
      <Bars
        caption="Heat by way out, the largest first. The thin line is the range."
        heads={['Way out', 'Heat', 'Likely', 'Range']}
        rows={wayRows(tank, view)}
        workings={assessment.workings}
      />
    </section>
  );
}

/** Of the display tank and the whole system one by one, of every other vessel together. */
export function wayRows(tank: Assessment['tank'], view: UnitView): readonly BarRow[] {
  const vessels = tank.vessels.filter(({ vessel }) => vessel !== 'tank');
  const isFolded = (path: LossPath) => vessels.some(({ vessel }) => vessel === path.vessel);
  const single = tank.paths.filter((path) => !isFolded(path)).map((path) => pathRow(path, view));
  const folded = vessels.map(({ vessel, label, loss }): BarRow => {
    const own = tank.paths.filter((path) => path.vessel === vessel);
    return {
      ...bandRow(loss, view),
      key: vessel,
      label: sentenceStart(label),
      look: 'sensible',
      parts: largestFirst(own.map((path) => pathRow(path, view))),
    };
  });
  const total: BarRow = {
    ...bandRow(tank.loss, view),
    key: 'total',
    label: 'All ways together',
    look: 'sensible',
    total: true,
  };
  return [...largestFirst([...single, ...folded]), total];
}

function pathRow({ path, label, kind, to, heat }: LossPath, view: UnitView): BarRow {
  const where = { room: undefined, outdoors: 'to outdoors', ground: 'into the ground', freshWater: 'into fresh water' }[
    to
  ];
  return {
    ...bandRow(heat, view),
    key: path,
    label: sentenceStart(label),
    look: kind,
    ...(where === undefined ? {} : { note: where }),
  };
}

function bandRow(band: LossPath['heat'], view: UnitView): Pick<BarRow, 'band' | 'likely' | 'range' | 'result'> {
  return {
    band,
    likely: sayParts(band, 'power', view).likely,
    range: sayRange(band, 'power', view),
    result: band.result,
  };
}

function largestFirst(rows: readonly BarRow[]): readonly BarRow[] {
  return rows.toSorted((a, b) => b.band.likely - a.band.likely);
}
