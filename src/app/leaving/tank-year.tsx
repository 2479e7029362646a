// The tank through the year: heat it needs each month with its range, and the water that evaporates.

import type { ReactNode } from 'react';
import { sayRange } from '../../quantities/index.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { say, sayParts, sentenceStart } from '../ui/say.ts';
import type { LeavingProps } from './ways-out.tsx';

export function TankYear({ assessment, view }: LeavingProps): ReactNode {
  const { tank, workings } = assessment;
  const year = sayParts(tank.yearHeatNeeded, 'energy', view);
  return (
    <section className="block">
      <h3>The year, month by month</h3>
      <p className="quiet">
        Heat the tank needs: likely {year.likely} in the year{year.range === undefined ? '' : ` (${year.range})`}. Each
        month at its own mean temperatures.
      </p>
      <Bars
        caption="Heat needed by month. The thin line is the range."
        heads={['Month', 'Heat needed', 'Likely', 'Range']}
        rows={tank.months.map(
          ({ month, heatNeeded, roomTemperature, evaporation }): BarRow => ({
            key: month,
            label: sentenceStart(month),
            note: `room ${say(roomTemperature, 'temperature', view)}, ${say(evaporation.likely, 'evaporation', view)} evaporate`,
            band: heatNeeded,
            likely: sayParts(heatNeeded, 'energy', view).likely,
            range: sayRange(heatNeeded, 'energy', view),
            look: 'into',
            result: heatNeeded.result,
          }),
        )}
        workings={workings}
      />
    </section>
  );
}
