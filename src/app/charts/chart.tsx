// A chart on the page: the picture, drawn when it comes near the view, and under it the table that says the same.
// Until the drawing library has arrived, and if it never does, the table stands alone; on paper a still picture stands there.

import { type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import type { ChartSpecification } from '../../charts/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import { saveAddress } from '../state/files.ts';
import { DataTable } from '../ui/data-table.tsx';
import { paperWidth, useLight, usePaper } from '../ui/light.tsx';
import { NotDrawnYet, usualProportion } from './picture-place.tsx';
import { StillPicture } from './still-picture.tsx';
import { useNear } from './use-near.ts';

type Adapter = typeof import('./plotly-adapter.ts');

let adapter: Promise<Adapter> | undefined;

/** The drawing library is fetched once, at the first chart. A failed fetch may be tried again. */
function loadAdapter(): Promise<Adapter> {
  adapter ??= import('./plotly-adapter.ts').catch((error: unknown) => {
    adapter = undefined;
    throw error;
  });
  return adapter;
}

export interface ChartProps {
  readonly chart: ChartSpecification;
  readonly tableOpen?: boolean;
  /** The steps behind the numbers of the table. */
  readonly workings?: readonly WorkingStep[];
}

export function Chart({ chart, tableOpen = false, workings = [] }: ChartProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  const words = useId();
  const light = useLight();
  const isPaper = usePaper();
  const [state, setState] = useState<'waiting' | 'drawn' | 'failed'>('waiting');
  const near = useNear(host, state === 'waiting');

  /** Draws, and answers how to leave off. */
  const draw = () => {
    const element = host.current;
    if (!near || element === null) return;
    let dropped = false;
    loadAdapter()
      .then(async ({ drawChart }) => {
        if (dropped) return;
        await drawChart(element, chart, isPaper ? paperWidth : undefined);
        setState('drawn');
      })
      .catch(() => setState('failed'));
    return () => {
      dropped = true;
    };
  };
  // The light decides the inks that drawing reads from the page.
  useEffect(draw, [near, chart, light]);
  // Paper is laid out at once, so what goes on it cannot wait for the next frame as the screen can.
  useLayoutEffect(draw, [isPaper]);

  useEffect(() => {
    const element = host.current;
    return () => {
      if (element !== null) void adapter?.then(({ eraseChart }) => eraseChart(element));
    };
  }, []);

  const save = async () => {
    const element = host.current;
    if (element === null) return;
    const { chartImage } = await loadAdapter();
    saveAddress(
      await chartImage(element, chart, 'png'),
      `${chart.title.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}.png`,
    );
  };

  return (
    <figure className="chart" aria-describedby={words}>
      <figcaption>
        <h3>{chart.title}</h3>
        <p id={words}>{chart.description}</p>
      </figcaption>
      <div
        className="chart-picture"
        data-state={state}
        ref={host}
        style={{ aspectRatio: `1 / ${chart.proportion ?? usualProportion}` }}
        aria-hidden="true"
      />
      {isPaper && state !== 'drawn' ? <StillPicture chart={chart} /> : state === 'waiting' && <NotDrawnYet />}
      {state === 'failed' && !isPaper && (
        <p className="quiet">The picture could not be drawn here; the table below says the same.</p>
      )}
      <div className="chart-foot">
        {state === 'drawn' && (
          <button type="button" className="plain" onClick={() => void save()}>
            Save this picture
          </button>
        )}
        <details open={tableOpen || state === 'failed'}>
          <summary>Table of this picture</summary>
          <DataTable table={chart.table} workings={workings} />
        </details>
      </div>
    </figure>
  );
}
