// The working of panels: layers, outer surface and what lies beyond it, heat. Panels of like build share all but their areas, so
// what they share is shown once, under the first of them.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { VesselName } from '../built-tank.ts';
import { faceTemperature, mean, surfaceResistance } from '../stack/films.ts';
import type { StackLayer } from '../stack/layers.ts';
import { radiationToWall, WALL_EMISSIVITY } from '../stack/outer-surface.ts';
import type { PanelState } from '../stack/panel.ts';
import { fluxOf, layerSteps } from './layers.ts';
import type { ConditionInputs } from './steps.ts';

/** A panel with where its numbers come from. */
export interface ShownPanel {
  readonly state: PanelState;
  readonly area: StepInput;
  /** Name of the step of its heat. */
  readonly heat: string;
}

/** What the panels shown together have in common. */
export interface PanelPlace {
  readonly vessel: VesselName;
  /** 'tank.panels', 'tank.lid.panels'. */
  readonly at: string;
  readonly inside: StepInput;
  readonly from: ConditionInputs;
}

/** Steps of the panels, and for each the name of the step of its transmittance, in their order. */
export interface PanelSteps {
  readonly steps: readonly WorkingStep[];
  readonly transmittances: readonly string[];
}

export function panelSteps(panels: readonly ShownPanel[], place: PanelPlace): PanelSteps {
  const shown = new Map<string, string>();
  const steps: WorkingStep[] = [];
  const transmittances: string[] = [];
  for (const panel of panels) {
    const key = buildOf(panel.state);
    let at = shown.get(key);
    if (at === undefined) {
      at = `${place.at}.${panel.state.name}`;
      shown.set(key, at);
      steps.push(...sharedSteps(panel, at, place));
    }
    steps.push(heatStep(panel, at, place));
    transmittances.push(`${at}.transmittance`);
  }
  return { steps, transmittances };
}

/** Equal for panels that differ in nothing but name and area, wherever their layers stand in the design. */
function buildOf({ facing, exposure, layers, innerResistance, outer }: PanelState): string {
  const origins = layers.map(({ layer }) => layer.origin);
  return JSON.stringify([facing, exposure, origins, digits(innerResistance), digits(outer.resistance)]);
}

/** Faces of one build settle to the same numbers but for rounding. */
function digits(value: number): string {
  return value.toPrecision(12);
}

function heatStep({ state, area, heat }: ShownPanel, at: string, { inside, from }: PanelPlace): WorkingStep {
  return workingStep(heat, 'tank.paneHeat', state.heat, {
    A: area,
    T_i: inside,
    T_r: sinkOf(state, from),
    R_inner: [state.innerResistance, `${at}.innerResistance`],
    R_s: [state.outer.resistance, `${at}.surfaceResistance`],
  });
}

/** What lies beyond, with where its temperature came from. */
export function sinkOf({ exposure, sink }: PanelState, from: ConditionInputs): StepInput {
  if (exposure.kind === 'outdoors') return [sink, from.outdoors];
  return exposure.kind === 'slab' ? [sink, from.ground] : from.room;
}

function sharedSteps(panel: ShownPanel, at: string, place: PanelPlace): readonly WorkingStep[] {
  const { state, area } = panel;
  const { inside, from } = place;
  const outward: StepInput = [state.outer.resistance, `${at}.surfaceResistance`];
  const inner: StepInput = [state.innerResistance, `${at}.innerResistance`];
  const transmittance: StepInput = [state.transmittance, `${at}.transmittance`];
  return [
    ...layerSteps(state, { at, inside, outward, area, from }),
    ...outerSteps(state, at, place),
    workingStep(transmittance[1]!, 'tank.transmittance', state.transmittance, { R_inner: inner, R_s: outward }),
    workingStep(`${at}.flux`, 'tank.heatFlux', fluxOf(state), {
      U: transmittance,
      T_i: inside,
      T_r: sinkOf(state, from),
    }),
    workingStep(`${at}.outerTemperature`, 'tank.outerTemperature', state.outer.temperature, {
      T_i: inside,
      T_r: sinkOf(state, from),
      R_inner: inner,
      R_s: outward,
    }),
  ];
}

/** The film of the outer surface and what lies beyond, ending in `<at>.surfaceResistance`. */
function outerSteps(state: PanelState, at: string, place: PanelPlace): readonly WorkingStep[] {
  const { exposure, outer } = state;
  const { vessel, from } = place;
  const total = `${at}.surfaceResistance`;
  const stands = from.exposure(vessel, state.name);
  if (exposure.kind === 'slab') {
    return [
      workingStep(total, 'tank.outerResistance', outer.resistance, {
        R_f: [0],
        R_b: [outer.beyondResistance, `${stands}.resistance`],
      }),
    ];
  }
  const isStand = exposure.kind === 'closedStand';
  const film: StepInput = [outer.filmResistance, isStand ? `${at}.filmResistance` : total];
  const h_r: StepInput = [outer.radiativeCoefficient, `${at}.radiativeCoefficient`];
  const h_c: StepInput =
    exposure.kind === 'outdoors'
      ? [outer.convectiveCoefficient, `${at}.windConvection`]
      : [outer.convectiveCoefficient];
  return [
    ...(exposure.kind === 'outdoors'
      ? [
          workingStep(`${at}.windConvection`, 'tank.windConvection', outer.convectiveCoefficient, {
            v: [exposure.windSpeed, 'place.outdoors.windSpeed'],
          }),
        ]
      : []),
    ...radiationSteps(state, at, place),
    workingStep(film[1]!, 'tank.surfaceResistance', surfaceResistance(h_c[0], h_r[0], outer.factor), {
      h_c,
      h_r,
      f: [outer.factor, from.filmFactor],
    }),
    ...(isStand
      ? [
          workingStep(total, 'tank.outerResistance', outer.resistance, {
            R_f: film,
            R_b: [outer.beyondResistance, `${stands}.thickness`],
          }),
        ]
      : []),
  ];
}

function radiationSteps(state: PanelState, at: string, place: PanelPlace): readonly WorkingStep[] {
  const { exposure, outer, layers, countedLayers } = state;
  const { vessel, from, inside } = place;
  const surface: StepInput = [outer.temperature, `${at}.outerTemperature`];
  const epsilon: StepInput = [outer.emissivity, emissivityFrom(layers[countedLayers - 1]?.layer, from)];
  const sink = sinkOf(state, from);
  const meanOf = (other: StepInput): readonly [StepInput, WorkingStep] => {
    const T_m: StepInput = [mean(surface[0], other[0]), `${at}.meanTemperature`];
    return [T_m, workingStep(T_m[1]!, 'tank.meanTemperature', T_m[0], { x_1: surface, x_2: other })];
  };
  const h_r = `${at}.radiativeCoefficient`;
  if (exposure.kind === 'againstWall') {
    const wall: StepInput = [outer.wallTemperature!, `${at}.wallTemperature`];
    const [T_m, meanStep] = meanOf(wall);
    const direct: StepInput = [radiationToWall(outer.emissivity, WALL_EMISSIVITY, T_m[0]), `${at}.radiationToWall`];
    const onward: StepInput = [outer.radiativeCoefficient, h_r];
    return [
      workingStep(wall[1]!, 'tank.wallFaceTemperature', wall[0], {
        T_s: surface,
        T_r: sink,
        h_onward: onward,
        h_direct: direct,
      }),
      meanStep,
      workingStep(direct[1]!, 'tank.radiationToWall', direct[0], { epsilon, epsilon_w: [WALL_EMISSIVITY], T_m }),
      workingStep(h_r, 'tank.radiationByWall', onward[0], {
        h_r: direct,
        h_c: [outer.convectiveCoefficient],
        R_w: [exposure.resistance, `${from.exposure(vessel, state.name)}.resistance`],
        f: [outer.factor, from.filmFactor],
      }),
    ];
  }
  const inStand = exposure.kind === 'closedStand';
  const before = state.innerResistance + outer.filmResistance;
  const air: StepInput = inStand ? [faceTemperature(state.inside, fluxOf(state), before), `${at}.airBeyond`] : sink;
  const [T_m, meanStep] = meanOf(air);
  return [
    ...(inStand
      ? [
          workingStep(`${at}.upToAir`, 'tank.innerResistance', before, {
            R_before: [state.innerResistance, `${at}.innerResistance`],
            R_layer: [outer.filmResistance, `${at}.filmResistance`],
          }),
          workingStep(`${at}.airBeyond`, 'tank.faceTemperature', air[0], {
            T_i: inside,
            q: [fluxOf(state), `${at}.flux`],
            R: [before, `${at}.upToAir`],
          }),
        ]
      : []),
    meanStep,
    workingStep(h_r, 'tank.radiativeCoefficient', outer.radiativeCoefficient, { epsilon, T_m }),
  ];
}

/** The emissivity of an outer face is that of its layer. */
function emissivityFrom(layer: StackLayer | undefined, from: ConditionInputs): string | undefined {
  return layer?.kind === 'solid' && layer.origin !== undefined ? from.layerPart(layer.origin, 'emissivity') : undefined;
}
