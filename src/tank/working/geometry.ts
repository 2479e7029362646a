// The working of a vessel's sizes: areas of its faces below and above the water line, its water surface and its water.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { VesselName } from '../built-tank.ts';
import { circleArea, circumference, faceArea, headspaceGap, remainder } from '../geometry/measures.ts';
import { measuresOf, type Shape, type ShapeMeasures } from '../geometry/shapes.ts';
import { placeOf, stepsOf } from './steps.ts';

/** Where the sizes of a vessel's parts are found among the steps, or in the design. */
export interface VesselSizes {
  readonly steps: readonly WorkingStep[];
  /** Area [m²] of a panel below and above the water line. */
  readonly wetArea: (panel: string, area: number) => StepInput;
  readonly dryArea: (panel: string, area: number) => StepInput;
  readonly waterSurface: StepInput;
  readonly waterVolume: StepInput;
  readonly freeboard: StepInput;
}

interface Known {
  readonly waterSurface: number;
  readonly waterVolume: number;
  readonly freeboard: number;
}

/** Sizes of a vessel with where they come from; from nowhere where nobody said its shape. */
export function vesselSizes(vessel: VesselName, shape: Shape | undefined, known: Known): VesselSizes {
  if (shape === undefined) {
    const bare = (_panel: string, area: number): StepInput => [area];
    return {
      steps: [],
      wetArea: bare,
      dryArea: bare,
      waterSurface: [known.waterSurface],
      waterVolume: [known.waterVolume],
      freeboard: [known.freeboard],
    };
  }
  const measures = measuresOf(shape, placeOf(vessel));
  return shape.kind === 'panels' ? pieceSizes(vessel, shape, measures) : shapedSizes(vessel, shape, measures);
}

/** Pieces are given by their areas. */
function pieceSizes(
  vessel: VesselName,
  { pieces }: Extract<Shape, { readonly kind: 'panels' }>,
  { waterSurface, waterVolume, freeboard }: ShapeMeasures,
): VesselSizes {
  const place = placeOf(vessel);
  const index = (panel: string) => pieces.findIndex(({ name }) => name === panel);
  return {
    steps: [],
    wetArea: (panel, area) => [area, `${place}.panels.${index(panel)}.area`],
    dryArea: (panel, area) => [area, `${place}.panels.${index(panel)}.areaAboveWater`],
    waterSurface: [waterSurface, `${place}.waterSurface`],
    waterVolume: [waterVolume, `${place}.waterVolume`],
    freeboard: [freeboard, `${place}.freeboard`],
  };
}

type Shaped = Exclude<Shape, { readonly kind: 'panels' }>;

function shapedSizes(vessel: VesselName, shape: Shaped, measures: ShapeMeasures): VesselSizes {
  const at = `${stepsOf(vessel)}.sizes`;
  const place = placeOf(vessel);
  const D: StepInput = [shape.waterDepth, `${place}.waterDepth`];
  const gap: StepInput = [measures.freeboard, `${at}.freeboard`];
  const surface: StepInput = [measures.waterSurface, `${at}.waterSurface`];
  const volume: StepInput = [measures.waterVolume, `${at}.waterVolume`];
  const plan = planSteps(shape, at, place);
  const faces = measures.faces.filter(({ breadth }) => breadth !== undefined);
  return {
    steps: [
      workingStep(gap[1]!, 'tank.headspaceGap', headspaceGap(shape.height, shape.waterDepth), {
        H: [shape.height, `${place}.height`],
        D,
      }),
      ...plan.steps,
      workingStep(volume[1]!, 'tank.waterVolume', measures.waterVolume, { A: surface, D }),
      ...faces.flatMap(({ name, wetArea, dryArea }) => {
        const b = plan.breadth(name);
        return [
          workingStep(`${at}.${name}.wetArea`, 'tank.faceArea', wetArea, { n: [1], b, h: D }),
          ...(dryArea > 0
            ? [workingStep(`${at}.${name}.dryArea`, 'tank.faceArea', dryArea, { n: [1], b, h: gap })]
            : []),
        ];
      }),
    ],
    wetArea: (panel, area) => (panel === 'bottom' ? surface : [area, `${at}.${panel}.wetArea`]),
    dryArea: (panel, area) => [area, `${at}.${panel}.dryArea`],
    waterSurface: surface,
    waterVolume: volume,
    freeboard: gap,
  };
}

interface Plan {
  readonly steps: readonly WorkingStep[];
  readonly breadth: (face: string) => StepInput;
}

function planSteps(shape: Shaped, at: string, place: string): Plan {
  const own = (side: string, value: number): StepInput => [value, `${place}.${side}`];
  const surface = `${at}.waterSurface`;
  switch (shape.kind) {
    case 'rectangular': {
      const [b, h] = [own('length', shape.length), own('width', shape.width)];
      return {
        steps: [workingStep(surface, 'tank.faceArea', faceArea(1, shape.length, shape.width), { n: [1], b, h })],
        breadth: (face) => (face === 'left' || face === 'right' ? h : b),
      };
    }
    case 'cylinder': {
      const D = own('diameter', shape.diameter);
      const around: StepInput = [circumference(shape.diameter), `${at}.circumference`];
      return {
        steps: [
          workingStep(surface, 'tank.circleArea', circleArea(shape.diameter), { D }),
          workingStep(around[1]!, 'tank.circumference', around[0], { D }),
        ],
        breadth: () => around,
      };
    }
    case 'lShape':
      return lPlan(shape, at, own);
  }
}

function lPlan(
  { length, width, recessLength, recessWidth }: Extract<Shape, { readonly kind: 'lShape' }>,
  at: string,
  own: (side: string, value: number) => StepInput,
): Plan {
  const sides = {
    length: own('length', length),
    width: own('width', width),
    recessLength: own('recessLength', recessLength),
    recessWidth: own('recessWidth', recessWidth),
  };
  const whole: StepInput = [faceArea(1, length, width), `${at}.wholePlan`];
  const recess: StepInput = [faceArea(1, recessLength, recessWidth), `${at}.recessPlan`];
  const back: StepInput = [remainder(length, recessLength), `${at}.back.breadth`];
  const right: StepInput = [remainder(width, recessWidth), `${at}.right.breadth`];
  const breadths: Readonly<Record<string, StepInput>> = {
    front: sides.length,
    right,
    recessBack: sides.recessLength,
    recessSide: sides.recessWidth,
    back,
    left: sides.width,
  };
  return {
    steps: [
      workingStep(whole[1]!, 'tank.faceArea', whole[0], { n: [1], b: sides.length, h: sides.width }),
      workingStep(recess[1]!, 'tank.faceArea', recess[0], { n: [1], b: sides.recessLength, h: sides.recessWidth }),
      workingStep(`${at}.waterSurface`, 'tank.areaLess', remainder(whole[0], recess[0]), { A_1: whole, A_2: recess }),
      workingStep(back[1]!, 'tank.lengthLess', back[0], { b_1: sides.length, b_2: sides.recessLength }),
      workingStep(right[1]!, 'tank.lengthLess', right[0], { b_1: sides.width, b_2: sides.recessWidth }),
    ],
    breadth: (face) => breadths[face]!,
  };
}
