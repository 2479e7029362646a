// Loops of several refrigerants in coordinates without units, gathered from the engine: pressure over the critical pressure,
// and enthalpy counted from boiling liquid at the loop's own evaporating pressure in parts of the latent heat there. So 0 to
// 1 along an evaporating line is the share of vapour, for every fluid, and domes of unlike fluids nearly meet.

import { type CyclePoint, cyclePath } from '../../loop/index.ts';
import {
  type Refrigerant,
  refrigerant,
  saturationAtPressure,
  saturationAtTemperature,
} from '../../matter/refrigerants/index.ts';
import type { DiagramState } from './loop-diagram.ts';

export interface ReducedLoopRequest {
  readonly refrigerant: string;
  /** The states of its loop by their names, enthalpies on the reference state 'iir'. */
  readonly points: readonly DiagramState[];
}

/** A polyline of the picture: reduced enthalpy and reduced pressure. */
export interface ReducedLine {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

export interface ReducedLoop {
  readonly refrigerant: string;
  /** Critical pressure [Pa], and what the enthalpy is counted from and in [J/kg]. */
  readonly criticalPressure: number;
  readonly liquidEnthalpy: number;
  readonly latentHeat: number;
  /** Boiling liquid up to the critical point and dry vapour down again. */
  readonly dome: ReducedLine;
  readonly loop: ReducedLine;
  readonly points: readonly { readonly name: string; readonly x: number; readonly y: number }[];
}

/** Vertices of one side of the dome; how far it reaches below the evaporating temperature [K], and up to the critical one. */
const domePoints = 40;
const domeReach = 30;
const lastSaturation = 0.9995;

/** The loops in reduced coordinates, from the engine. */
export function makeReducedLoops(requests: readonly ReducedLoopRequest[]): readonly ReducedLoop[] {
  return requests.map(reducedLoop);
}

function reducedLoop({ refrigerant: name, points }: ReducedLoopRequest): ReducedLoop {
  const fluid = refrigerant(name);
  const evaporating = saturationAtPressure(fluid, points.find((point) => point.name === 'compressorInlet')!.pressure);
  const liquidEnthalpy = evaporating.liquid.enthalpy;
  const latentHeat = evaporating.vapour.enthalpy - liquidEnthalpy;
  const x = ({ enthalpy }: { readonly enthalpy: number }) => (enthalpy - liquidEnthalpy) / latentHeat;
  const y = ({ pressure }: { readonly pressure: number }) => pressure / fluid.critical.pressure;
  const dome = domeStates(fluid, evaporating.vapour.temperature);
  const path = cyclePath(fluid, points as unknown as readonly CyclePoint[]);
  return {
    refrigerant: fluid.name,
    criticalPressure: fluid.critical.pressure,
    liquidEnthalpy,
    latentHeat,
    dome: { x: dome.map(x), y: dome.map(y) },
    loop: { x: path.map(x), y: path.map(y) },
    points: points.map((point) => ({ name: point.name, x: x(point), y: y(point) })),
  };
}

function domeStates(fluid: Refrigerant, evaporating: number) {
  const low = Math.max(fluid.limits.temperatureMin, evaporating - domeReach);
  const high = lastSaturation * fluid.critical.temperature;
  const pairs = Array.from({ length: domePoints }, (_, index) => {
    const left = (1 - index / (domePoints - 1)) ** 2;
    return saturationAtTemperature(fluid, high - left * (high - low));
  });
  return [...pairs.map(({ liquid }) => liquid), ...pairs.toReversed().map(({ vapour }) => vapour)];
}
