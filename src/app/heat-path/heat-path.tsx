// The heat path: what comes in from the source and the wall socket, through the machine into the water and out by each
// way, as ribbons whose width is watts. Every node is a button that opens its station and shows one number and a state.

import { type ReactNode, useMemo, useRef } from 'react';
import type { Assessment } from '../../assess/index.ts';
import type { ChartTable } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { PageName, StationName } from '../pages.ts';
import { DataTable } from '../ui/data-table.tsx';
import { paperWidth, usePaper } from '../ui/light.tsx';
import { say } from '../ui/say.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { useWidth } from '../ui/use-width.ts';
import { heatPathFlows } from './flows.ts';
import { type HeatNodeName, layHeatPath, type PlacedHeatPath, type PlacedNode } from './layout.ts';
import { type NodeWords, wordsOfNodes } from './nodes.ts';
import { DomeShape, Ribbon, TankShape } from './shapes.tsx';

export interface HeatPathProps {
  readonly assessment: Assessment;
  readonly view: UnitView;
  readonly current: PageName;
  readonly open: (station: StationName) => void;
}

/** Below this width of the page the labels stand in narrower margins [px]. */
const narrowWidth = 640;

export function HeatPath({ assessment, view, current, open }: HeatPathProps): ReactNode {
  const host = useRef<HTMLDivElement>(null);
  const isPaper = usePaper();
  const windowWidth = useWidth(host);
  const width = isPaper ? paperWidth : windowWidth;
  const path = useMemo(() => heatPathFlows(assessment), [assessment]);
  const words = useMemo(() => wordsOfNodes(assessment, path, view), [assessment, path, view]);
  const narrow = width < narrowWidth;
  const ways = path.waysOut.length + 1 + (path.surplus > 0 ? 1 : 0);
  const height = Math.max(narrow ? 330 : 300, ways * (narrow ? 72 : 60) + (narrow ? 128 : 84));
  const nodeLength = narrow ? 34 : Math.min(88, width * 0.075);
  const placed = useMemo(
    () =>
      layHeatPath(path.flows, {
        width,
        height: height - (narrow ? 66 : 44),
        nodeLength,
        spacing: narrow ? 62 : 52,
        before: narrow ? (view === 'us' ? 58 : 40) : Math.max(48, 126 - nodeLength),
        after: narrow ? 60 : 96,
        above: narrow ? 66 : 62,
      }),
    [path, width, height, narrow, nodeLength, view],
  );
  return (
    <section className="heat-path" aria-labelledby="heat-path-title">
      <h2 id="heat-path-title" className="for-reader">
        Heat path, averaged over the coldest spell
      </h2>
      <div className="heat-path-picture" ref={host} style={isPaper ? { height, width } : { height }}>
        <svg width={width} height={height} aria-hidden="true" focusable="false">
          <Hatches />
          {placed.ribbons.map((ribbon) => (
            <Ribbon key={`${ribbon.from} ${ribbon.to}`} ribbon={ribbon} />
          ))}
          {placed.nodes.map((node) => (
            <NodeShape key={node.name} node={node} />
          ))}
        </svg>
        {placed.nodes.map((node) => {
          const own = words.get(node.name);
          if (own === undefined) return null;
          return (
            <NodeButton
              key={node.name}
              node={node}
              words={own}
              narrow={narrow}
              width={width}
              current={current}
              open={open}
            />
          );
        })}
      </div>
      <p className="heat-path-foot quiet">
        Width is heat or electricity in watts, averaged over the coldest spell you described.
        {view === 'us' && ' 1 W is 3.41 BTU/h.'} {footWords(assessment, placed, view)}
      </p>
      <details className="heat-path-table">
        <summary>Table of this picture</summary>
        <DataTable table={tableOf(placed, words)} workings={assessment.workings} />
      </details>
    </section>
  );
}

/** The same numbers as a table; each leads to its working. */
function tableOf(placed: PlacedHeatPath, words: ReadonlyMap<HeatNodeName, NodeWords>): ChartTable {
  const nodes = placed.nodes.flatMap(({ name }) => words.get(name) ?? []);
  return {
    caption: 'Heat path, averaged over the coldest spell.',
    columns: [
      { label: 'Where' },
      { label: 'Heat or electricity', numeric: true },
      { label: 'Range', numeric: true },
      { label: 'State' },
    ],
    rows: nodes.map(({ name, number, range = '–', stateWord }) => [name, number, range, stateWord]),
    results: nodes.map(({ result }) => [undefined, result]),
  };
}

function footWords(assessment: Assessment, placed: PlacedHeatPath, view: UnitView): string {
  const share = assessment.flows.runFraction;
  const run =
    share >= 1
      ? 'The machine would run without a stop.'
      : share <= 0
        ? 'The machine would not run.'
        : `The machine would run ${Math.round(share * 100)} % of the time.`;
  const heater = placed.nodes.some((node) => node.name === 'heater')
    ? ` Hatched: ${say(assessment.flows.backup, 'power', view)} that a plain heater would still have to add.`
    : '';
  return run + heater;
}

function Hatches(): ReactNode {
  return (
    <defs>
      {(['electricity', 'into-water'] as const).map((ink) => (
        <pattern
          key={ink}
          id={`hatch-${ink}`}
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="3.2" height="7" fill={`var(--${ink}-fill)`} />
        </pattern>
      ))}
    </defs>
  );
}

/** Sources and ways out are thin bars; the machine is a dome, the water a tank. */
function NodeShape({ node }: { node: PlacedNode }): ReactNode {
  const { name, x, y, width, height } = node;
  const bar = 7;
  if (name === 'machine') return <DomeShape x={x} y={y} width={width} height={height} />;
  if (name === 'water') return <TankShape x={x} y={y} width={width} height={height} />;
  const isIncoming = name === 'source' || name === 'socket' || name === 'room';
  const ink =
    name === 'source'
      ? 'from-source'
      : name === 'socket' || name === 'heater' || name === 'appliances'
        ? 'electricity'
        : 'leaving';
  if (name === 'heater' || name === 'appliances') {
    return <rect x={x} y={y} width={width} height={Math.max(3, height)} rx={2} fill={`var(--${ink})`} />;
  }
  return (
    <rect x={isIncoming ? x + width - bar : x} y={y} width={bar} height={Math.max(2, height)} fill={`var(--${ink})`} />
  );
}

interface NodeButtonProps {
  readonly node: PlacedNode;
  readonly words: NodeWords;
  readonly narrow: boolean;
  readonly width: number;
  readonly current: PageName;
  readonly open: (station: StationName) => void;
}

function NodeButton({ node, words, narrow, width, current, open }: NodeButtonProps): ReactNode {
  const side = sideOf(node.name);
  return (
    <button
      type="button"
      className={`heat-node heat-node-${side}`}
      style={placeOf(node, side, narrow, width)}
      aria-pressed={words.station === current ? true : undefined}
      title={words.range === undefined ? undefined : `${words.name}: ${words.number}, range ${words.range}`}
      onClick={() => open(words.station)}
      data-node={node.name}
    >
      <span className="heat-node-name">{words.name}</span> <span className="heat-node-number">{words.number}</span>{' '}
      {words.range !== undefined && <span className="for-reader">(range {words.range}) </span>}
      <StateMark kind={words.state} word={words.stateWord} />
      <span className="for-reader">. Opens {words.stationTitle}.</span>
    </button>
  );
}

type Side = 'before' | 'after' | 'over' | 'under' | 'beneath';

function sideOf(name: HeatNodeName): Side {
  if (name === 'source' || name === 'socket' || name === 'room') return 'before';
  if (name === 'machine') return 'over';
  if (name === 'water') return 'under';
  if (name === 'heater' || name === 'appliances') return 'beneath';
  return 'after';
}

function placeOf(node: PlacedNode, side: Side, narrow: boolean, width: number): React.CSSProperties {
  const middle = node.y + node.height / 2;
  switch (side) {
    case 'before':
      return { right: width - (node.x + node.width) + 12, top: middle, maxWidth: node.x + node.width - 12 };
    case 'after':
      return { left: node.x + 12, top: middle, maxWidth: width - node.x - 12 };
    case 'over':
      return { left: node.x + node.width / 2, top: node.y - 4, maxWidth: narrow ? 96 : 200 };
    case 'under':
      return {
        left: node.x + node.width / 2,
        top: node.y + Math.max(26, node.height) + 8,
        maxWidth: narrow ? 82 : 200,
      };
    case 'beneath':
      return { left: node.x + node.width / 2, top: node.y + node.height + 1, maxWidth: narrow ? 84 : 220 };
  }
}
