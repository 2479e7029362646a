// Everything the p-h and T-s pictures of one loop are made of, gathered from the engine in one answer: line families,
// the path of the cycle through them, and the pressures that belong to the levels of source and water.

import {
  type CyclePoint,
  cyclePath,
  diagramRegion,
  type PathPoint,
  type PropertyDiagram,
  propertyDiagram,
} from '../../loop/index.ts';
import {
  type ReferenceStateName,
  referenceOffset,
  refrigerant,
  type State,
  saturationAtTemperature,
} from '../../matter/refrigerants/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { linesWithin } from './families.ts';

/** A temperature outside the refrigerant that its pictures show as a level. */
export interface LevelRequest {
  readonly name: 'source' | 'water';
  readonly temperature: number;
}

/** A limit of the machine that is a saturation temperature, of a blend a dew temperature: beyond it the pictures are hatched. */
export interface LimitRequest {
  readonly label: string;
  readonly temperature: number;
  readonly beyond: 'above' | 'below';
}

/** The part of a state that the pictures need. */
export interface DiagramState {
  readonly name: string;
  readonly temperature: number;
  readonly pressure: number;
  readonly enthalpy: number;
  readonly entropy: number;
}

export interface DiagramRequest {
  readonly refrigerant: string;
  readonly points: readonly DiagramState[];
  readonly levels: readonly LevelRequest[];
  readonly limits: readonly LimitRequest[];
  /** Isotherms and isobars round in the view's own units [K], [Pa]. */
  readonly isotherms: readonly number[];
  readonly isobars: readonly number[];
  /** Zero of enthalpy and entropy of the points; 'iir' where absent. */
  readonly referenceState?: ReferenceStateName;
}

/** A level with the saturation pressure of its temperature; undefined above the critical point. */
export interface DiagramLevel extends LevelRequest {
  readonly pressure: number | undefined;
}

export interface DiagramLimit extends LimitRequest {
  readonly pressure: number | undefined;
}

export interface Diagram {
  readonly refrigerant: string;
  readonly referenceState: ReferenceStateName;
  /** What the reference state adds to enthalpy [J/kg] and entropy [J/(kg K)] of the engine: so that two can be told apart. */
  readonly offset: { readonly enthalpy: number; readonly entropy: number };
  readonly pressureEnthalpy: PropertyDiagram;
  readonly temperatureEntropy: PropertyDiagram;
  readonly path: readonly PathPoint[];
  readonly points: readonly DiagramState[];
  readonly levels: readonly DiagramLevel[];
  readonly limits: readonly DiagramLimit[];
}

/** How far beside the region a line may still be seen in a corner of the picture: temperatures [K], pressures by this factor. */
const besideRegion = 25;
const timesRegion = 4;

export function makeDiagram(request: DiagramRequest): Diagram {
  const fluid = refrigerant(request.refrigerant);
  const { referenceState = 'iir' } = request;
  const offset = referenceOffset(fluid, referenceState);
  const around = diagramRegion(fluid, request.points as unknown as readonly State[]);
  const { temperatureLow, temperatureHigh, pressureLow, pressureHigh } = around;
  const region = {
    ...around,
    isotherms: linesWithin(request.isotherms, temperatureLow - besideRegion, temperatureHigh + besideRegion),
    isobars: linesWithin(request.isobars, pressureLow / timesRegion, pressureHigh * timesRegion),
  };
  const withPressure = <Place extends { readonly temperature: number }>(place: Place, line: 'bubble' | 'dew') => ({
    ...place,
    pressure: saturationPressure(request.refrigerant, place.temperature, line),
  });
  return {
    refrigerant: request.refrigerant,
    referenceState,
    offset,
    pressureEnthalpy: withEntropiesFrom(
      offset.entropy,
      propertyDiagram(fluid, 'pressureEnthalpy', region, referenceState),
    ),
    temperatureEntropy: propertyDiagram(fluid, 'temperatureEntropy', region, referenceState),
    path: cyclePath(fluid, request.points as unknown as readonly CyclePoint[], referenceState),
    points: request.points,
    // A blend boils up to its dew temperature and condenses down to its bubble temperature: these meet source and water.
    levels: request.levels.map((level) => withPressure(level, level.name === 'water' ? 'bubble' : 'dew')),
    limits: request.limits.map((limit) => withPressure(limit, 'dew')),
  };
}

/** The values of the isentropes counted from the same zero as their entropies elsewhere. */
function withEntropiesFrom(offset: number, diagram: PropertyDiagram): PropertyDiagram {
  if (offset === 0) return diagram;
  const lines = diagram.lines.map((line) =>
    line.kind === 'isentrope' ? { ...line, value: line.value + offset } : line,
  );
  return { ...diagram, lines };
}

function saturationPressure(name: string, temperature: number, line: 'bubble' | 'dew'): number | undefined {
  try {
    const { liquid, vapour } = saturationAtTemperature(refrigerant(name), temperature);
    return line === 'bubble' ? liquid.pressure : vapour.pressure;
  } catch (error) {
    if (error instanceof KettlefinError) return undefined;
    throw error;
  }
}
