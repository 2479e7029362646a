// The cycle as it runs through the property diagrams: its processes as polylines that follow the real curves, as pure data.
// Heat at constant pressure, or at a pressure that falls where some is lost, with the corners at the dome; isenthalpic
// expansion; compression between its ends; with a liquid-to-suction heat exchanger its two sides too.

import {
  type ReferenceStateName,
  type Refrigerant,
  referenceOffset,
  type State,
  saturationAtPressure,
  stateInLoop,
} from '../matter/refrigerants/index.ts';
import { findRoot, InputError } from '../numerics/index.ts';

/** In order of flow; liquidCooling and gasHeating are the two sides of a liquid-to-suction heat exchanger. */
export type Process = 'compression' | 'condensation' | 'liquidCooling' | 'expansion' | 'evaporation' | 'gasHeating';

/** The part of a state that a diagram needs. */
export type DiagramState = Pick<State, 'temperature' | 'pressure' | 'enthalpy' | 'entropy'>;

/** One vertex of the path; h and s on the reference state of the cycle's own points. */
export interface PathPoint extends DiagramState {
  readonly process: Process;
}

/** Vertices of a process away from the dome, and of a short single-phase stretch beside it. */
const longStretch = 16;
const shortStretch = 8;

/** Pressures nearer to each other than this share are one. */
const samePressure = 1e-9;

/**
 * The path of a cycle through its processes, closed (the last vertex is the first state again).
 * @param fluid           the refrigerant of the cycle
 * @param points          the states of a textbook cycle or an operating point, by their names
 * @param referenceState  of those points; 'iir' where absent
 * @returns               vertices in the order of flow, about sixty
 * Pitfall: inside a compressor the true path is unknown; it is drawn with entropy going evenly with log pressure between
 *          the two ends, which is the polytropic path of a perfect gas. Where pressure is lost in evaporator, condenser or
 *          exchanger, it is drawn falling evenly with the heat.
 */
export function cyclePath(
  fluid: Refrigerant,
  points: readonly (DiagramState & { readonly name: string })[],
  referenceState: ReferenceStateName = 'iir',
): readonly PathPoint[] {
  const offset = referenceOffset(fluid, referenceState);
  const named = (name: string): DiagramState => {
    const point = points.find((candidate) => candidate.name === name);
    if (point === undefined) throw new InputError('points', 'no such point', `a point named ${name}`);
    return { ...point, enthalpy: point.enthalpy - offset.enthalpy, entropy: point.entropy - offset.entropy };
  };
  const hasExchanger = points.some(({ name }) => name === 'expansionInlet');
  const inlet = named('compressorInlet');
  const outlet = named('compressorOutlet');
  const liquid = named('condenserOutlet');
  const expanded = named('evaporatorInlet');
  const path: PathPoint[] = [];
  const add = (process: Process, states: readonly DiagramState[]) => {
    for (const { temperature, pressure, enthalpy, entropy } of states) {
      const shifted = { enthalpy: enthalpy + offset.enthalpy, entropy: entropy + offset.entropy };
      path.push({ process, temperature, pressure, ...shifted });
    }
  };
  add('compression', compression(fluid, inlet, outlet));
  add('condensation', heating(fluid, outlet, liquid));
  if (hasExchanger) {
    const feed = named('expansionInlet');
    const gas = named('evaporatorOutlet');
    add('liquidCooling', heating(fluid, liquid, feed));
    add('expansion', expansion(fluid, feed, expanded));
    add('evaporation', heating(fluid, expanded, gas));
    add('gasHeating', heating(fluid, gas, inlet));
  } else {
    add('expansion', expansion(fluid, liquid, expanded));
    add('evaporation', heating(fluid, expanded, inlet));
  }
  return path;
}

function compression(fluid: Refrigerant, inlet: DiagramState, outlet: DiagramState): DiagramState[] {
  const states = between(longStretch).map((share) => {
    const pressure = inlet.pressure * (outlet.pressure / inlet.pressure) ** share;
    return stateInLoop(fluid, { pressure, entropy: inlet.entropy + share * (outlet.entropy - inlet.entropy) });
  });
  return [inlet, ...states, outlet];
}

function expansion(fluid: Refrigerant, liquid: DiagramState, expanded: DiagramState): DiagramState[] {
  const states = between(longStretch).map((share) => {
    const pressure = liquid.pressure * (expanded.pressure / liquid.pressure) ** share;
    return stateInLoop(fluid, { pressure, enthalpy: liquid.enthalpy });
  });
  return [liquid, ...states, expanded];
}

/** Heat taken up or given from one state to another, with a vertex at each side of the dome that is crossed. */
function heating(fluid: Refrigerant, from: DiagramState, to: DiagramState): DiagramState[] {
  const isIsobar = Math.abs(to.pressure / from.pressure - 1) <= samePressure;
  return isIsobar ? isobar(fluid, from, to) : withFallingPressure(fluid, from, to);
}

function isobar(fluid: Refrigerant, from: DiagramState, to: DiagramState): DiagramState[] {
  const pressure = from.pressure;
  const { liquid, vapour } = saturationAtPressure(fluid, pressure);
  const low = Math.min(from.enthalpy, to.enthalpy);
  const high = Math.max(from.enthalpy, to.enthalpy);
  const corners = [liquid, vapour].filter((corner) => corner.enthalpy > low && corner.enthalpy < high);
  if (from.enthalpy > to.enthalpy) corners.reverse();
  const stops = [from, ...corners, to];
  const states: DiagramState[] = [from];
  for (let stop = 1; stop < stops.length; stop++) {
    const start = stops[stop - 1]!;
    const end = stops[stop]!;
    // Inside the dome the isobar is straight in both diagrams.
    const middle = (start.enthalpy + end.enthalpy) / 2;
    const isInside = middle > liquid.enthalpy && middle < vapour.enthalpy;
    for (const share of isInside ? [] : between(shortStretch)) {
      const enthalpy = start.enthalpy + share * (end.enthalpy - start.enthalpy);
      states.push(stateInLoop(fluid, { pressure, enthalpy }));
    }
    states.push(end);
  }
  return states;
}

function withFallingPressure(fluid: Refrigerant, from: DiagramState, to: DiagramState): DiagramState[] {
  const pressureAt = (share: number) => from.pressure + share * (to.pressure - from.pressure);
  const enthalpyAt = (share: number) => from.enthalpy + share * (to.enthalpy - from.enthalpy);
  /** Where the path crosses one side of the dome, as a share of the way; none where it does not. */
  const crossing = (side: 'liquid' | 'vapour'): number[] => {
    const inside = (share: number) => enthalpyAt(share) - saturationAtPressure(fluid, pressureAt(share))[side].enthalpy;
    return inside(0) * inside(1) < 0 ? [findRoot(inside, 0, 1, { absoluteTolerance: 1e-9 }).root] : [];
  };
  const shares = [...between(longStretch), ...crossing('liquid'), ...crossing('vapour')].sort((a, b) => a - b);
  const states = shares.map((share) =>
    stateInLoop(fluid, { pressure: pressureAt(share), enthalpy: enthalpyAt(share) }),
  );
  return [from, ...states, to];
}

/** Even shares strictly between 0 and 1, for `count` stretches. */
function between(count: number): number[] {
  return Array.from({ length: count - 1 }, (_, index) => (index + 1) / count);
}
