// Lays out the heat path: what comes in on one side, the machine and the water in the middle, every way out on the other.
// From the flows of the Assessment (W, averaged over the coldest spell) to rectangles and ribbons whose width is watts.
// Placing is d3-sankey's; the grouping of small ways out and the choice of nodes are made here.

import { type SankeyGraph, type SankeyLink, type SankeyNode, sankey } from 'd3-sankey';
import type { InkRole } from '../../charts/index.ts';

export type HeatNodeName =
  | 'source'
  | 'socket'
  | 'room'
  | 'machine'
  | 'heater'
  | 'appliances'
  | 'water'
  | `out.${string}`;

/** A flow of heat or electricity before it is laid out. */
export interface HeatFlow {
  readonly from: HeatNodeName;
  readonly to: HeatNodeName;
  readonly watts: number;
  readonly ink: InkRole;
  /** Flows drawn hatched: heat that a separate resistance heater would have to add. */
  readonly hatched?: boolean;
}

export interface PlacedNode {
  readonly name: HeatNodeName;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PlacedRibbon {
  readonly from: HeatNodeName;
  readonly to: HeatNodeName;
  readonly ink: InkRole;
  readonly hatched: boolean;
  readonly watts: number;
  /** Ends of the middle line, and the width across it. */
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly thickness: number;
}

export interface PlacedHeatPath {
  readonly nodes: readonly PlacedNode[];
  readonly ribbons: readonly PlacedRibbon[];
}

export interface HeatPathFrame {
  readonly width: number;
  readonly height: number;
  /** Length of a node along the flow, and least distance between two nodes of a column. */
  readonly nodeLength: number;
  readonly spacing: number;
  /** Empty margin before the first and after the last column. */
  readonly before: number;
  readonly after: number;
  readonly above: number;
}

type Node = SankeyNode<{ name: HeatNodeName }, { ink: InkRole; hatched: boolean }>;
type Link = SankeyLink<{ name: HeatNodeName }, { ink: InkRole; hatched: boolean }>;

/** Columns along the flow: sources, machine, water, ways out. */
function columnOf(name: HeatNodeName): number {
  if (name === 'source' || name === 'socket' || name === 'room') return 0;
  if (name === 'machine' || name === 'heater' || name === 'appliances') return 1;
  if (name === 'water') return 2;
  return 3;
}

/** Flows without width are left out: a ribbon of no watts says nothing. */
export function layHeatPath(flows: readonly HeatFlow[], frame: HeatPathFrame): PlacedHeatPath {
  const drawn = flows.filter((flow) => flow.watts > 0);
  if (drawn.length === 0) return { nodes: [], ribbons: [] };
  const names = [...new Set(drawn.flatMap((flow) => [flow.from, flow.to]))];
  const graph: SankeyGraph<{ name: HeatNodeName }, { ink: InkRole; hatched: boolean }> = {
    nodes: names.map((name) => ({ name })),
    links: drawn.map((flow) => ({
      source: names.indexOf(flow.from),
      target: names.indexOf(flow.to),
      value: flow.watts,
      ink: flow.ink,
      hatched: flow.hatched ?? false,
    })),
  };
  const place = sankey<{ name: HeatNodeName }, { ink: InkRole; hatched: boolean }>()
    .nodeAlign((node) => columnOf(node.name))
    .nodeWidth(frame.nodeLength)
    .nodePadding(frame.spacing)
    .nodeSort(
      (a, b) =>
        drawn.findIndex((flow) => flow.from === a.name || flow.to === a.name) -
        drawn.findIndex((flow) => flow.from === b.name || flow.to === b.name),
    )
    .linkSort(null)
    .iterations(24)
    .extent([
      [frame.before, frame.above],
      [frame.width - frame.after, frame.height],
    ]);
  const placed = place(graph);
  return { nodes: placed.nodes.map(placedNode), ribbons: placed.links.map(placedRibbon) };
}

function placedNode(node: Node): PlacedNode {
  const { x0 = 0, x1 = 0, y0 = 0, y1 = 0 } = node;
  return { name: node.name, x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}

function placedRibbon(link: Link): PlacedRibbon {
  const from = link.source as Node;
  const to = link.target as Node;
  return {
    from: from.name,
    to: to.name,
    ink: link.ink,
    hatched: link.hatched,
    watts: link.value,
    x0: from.x1 ?? 0,
    y0: link.y0 ?? 0,
    x1: to.x0 ?? 0,
    y1: link.y1 ?? 0,
    thickness: link.width ?? 0,
  };
}
