// What a textbook cycle could run between where a level asked for lies outside the fluid's dome, so that nothing boils or
// condenses there: the nearest round temperatures of the view.

import type { TextbookCycleRequest } from '../../loop/index.ts';
import { type Refrigerant, saturationAtPressure } from '../../matter/refrigerants/index.ts';
import type { UnitView } from '../../quantities/index.ts';

/** Dew temperatures in place of those asked for, as a person would type them: '-5 °C'. A level that may stay is not in it. */
export interface CycleOffer {
  readonly evaporating?: string;
  readonly condensing?: string;
}

/** Distances from the ends of the dome [K]: a textbook cycle is of little use close to them. */
const aboveLowest = 2;
const belowCritical = 5;
/** A smaller lift makes no cycle worth drawing [K]. */
const smallestLift = 10;

/** Undefined where both levels lie inside the dome: whatever is wrong with the request, other levels would not mend it. */
export function cycleOffer(request: TextbookCycleRequest, fluid: Refrigerant, view: UnitView): CycleOffer | undefined {
  const evaporating = inside(fluid, request.evaporating, request.evaporatingPressure);
  const condensing = inside(fluid, request.condensing, request.condensingPressure);
  if (evaporating !== undefined && condensing !== undefined) return undefined;
  const [from, to] = [lowestOf(fluid) + aboveLowest, fluid.critical.temperature - belowCritical];
  const low = Math.min(evaporating ?? nearest(request.evaporating ?? from, from, to), to - smallestLift);
  const high = Math.max(condensing ?? nearest(request.condensing ?? to, from, to), low + smallestLift);
  return {
    ...(low === evaporating
      ? {}
      : { evaporating: round(low, evaporating === undefined ? Math.ceil : Math.floor, view) }),
    ...(high === condensing ? {} : { condensing: round(high, Math.floor, view) }),
  };
}

/** The dew temperature of a level that lies inside the dome [K]; undefined of any other. */
function inside(fluid: Refrigerant, temperature: number | undefined, pressure: number | undefined): number | undefined {
  const { critical, triplePoint } = fluid;
  if (temperature !== undefined) {
    return temperature >= lowestOf(fluid) && temperature < critical.temperature ? temperature : undefined;
  }
  if (pressure === undefined || pressure < triplePoint.pressure || pressure >= critical.pressure) return undefined;
  return saturationAtPressure(fluid, pressure).vapour.temperature;
}

/** The coldest that has a dome [K]. */
function lowestOf({ triplePoint, limits }: Refrigerant): number {
  return Math.max(triplePoint.temperature, limits.temperatureMin);
}

function nearest(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}

/** A multiple of five degrees of the view. */
function round(kelvin: number, towards: (value: number) => number, view: UnitView): string {
  const celsius = kelvin - 273.15;
  const degrees = view === 'us' ? celsius * 1.8 + 32 : celsius;
  return `${towards(degrees / 5) * 5} ${view === 'us' ? '°F' : '°C'}`;
}
