// How the machine runs over the evaporating temperature: heat, electricity and COP, each a picture with its table. One condensing
// temperature is chosen for all three: its range is shaded and its limits are hatched.

import { type ReactNode, useMemo, useState } from 'react';
import type { MachineStudy } from '../../assess/index.ts';
import { machineMapChart, nearestFamily, sayMachineMap } from '../../charts/index.ts';
import type { Band, UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { Choice } from '../ui/choice.tsx';
import { Fold } from '../ui/fold.tsx';
import { say } from '../ui/say.ts';

interface MapChartsProps {
  readonly study: MachineStudy;
  readonly needed: Band;
  readonly view: UnitView;
}

export function MapCharts({ study, needed, view }: MapChartsProps): ReactNode {
  const [wanted, setWanted] = useState<number | undefined>(undefined);
  const chosen = nearestFamily(study, wanted);
  const charts = useMemo(
    () => (['heat', 'power', 'cop'] as const).map((of) => machineMapChart(study, { of, chosen, needed, view })),
    [study, chosen, needed, view],
  );
  if (study.map.length === 0) return null;
  return (
    <section className="block">
      <h3 id="machine-map-title" tabIndex={-1}>
        How it runs over the evaporating temperature
      </h3>
      <p className="quiet">
        The source decides the evaporating temperature, the water the condensing one. Where it would run is marked.
      </p>
      <Choice
        legend="Range and limits at condensing"
        options={study.map.map(
          ({ condensing }, index) => [String(index), say(condensing, 'temperature', view)] as const,
        )}
        value={String(chosen)}
        choose={(index) => setWanted(study.map[Number(index)]?.condensing)}
      />
      <div className="map-charts">
        {charts.map((chart) => (
          <Chart key={chart.title} chart={chart} />
        ))}
      </div>
      <Fold className="fields-more" summary="How to read these pictures">
        <p className="quiet">{sayMachineMap(study, chosen, view).join(' ')}</p>
      </Fold>
    </section>
  );
}
