// The working of a panel's layers: each layer's resistance by the formula of its kind, joints, and all of them one behind the
// other. A gap's temperatures follow from its resistance and it from them: they were found by repetition and are shown settled.

import {
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from '../../matter/water/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { airLayerConvection, airLayerRadiation, isNarrow, narrowAirLayerRadiation } from '../stack/air-gap.ts';
import { heatFlux, mean } from '../stack/films.ts';
import { besideResistance, combinedResistance, jointShare, jointTakes } from '../stack/joints.ts';
import type { SealedGap, SolidLayer, StackLayer, WaterGap } from '../stack/layers.ts';
import { gapEmissivities, gapHeight, type LayerState, type PanelState } from '../stack/panel.ts';
import { slimness, waterLayerNusselt, waterOfLayer } from '../stack/water-gap.ts';
import type { ConditionInputs } from './steps.ts';
import { sumOf } from './sums.ts';

/** What the layers of a panel need beside their own states. */
export interface LayerPlace {
  /** Name that the steps of the panel begin with. */
  readonly at: string;
  readonly inside: StepInput;
  /** Of the whole outer side, film and what lies beyond [m² K/W]. */
  readonly outward: StepInput;
  readonly area: StepInput;
  readonly from: ConditionInputs;
}

const up = { horizontal: 'Sideways', up: 'Up', down: 'Down' } as const;

/** All layers that count, and the resistance from the inside to the outer surface, `<at>.innerResistance`. */
export function layerSteps(state: PanelState, place: LayerPlace): readonly WorkingStep[] {
  const counted = state.layers.slice(0, state.countedLayers);
  const jointed = counted.some(({ layer }) => jointShare(layer) > 0);
  const own = counted.flatMap((layer, index) => plainSteps(state, layer, index, place));
  const joints = jointed ? jointSteps(state, counted, place) : [];
  return [...own, ...joints, ...innerSteps(state, counted, place)];
}

/** Name of a layer's resistance among the steps; undefined where the design gives it. */
function resistanceName({ layer }: LayerState, index: number, { at, from }: LayerPlace): string | undefined {
  if (layer.kind !== 'resistance') return `${at}.layers.${index}.resistance`;
  return layer.origin === undefined ? undefined : from.layerPart(layer.origin, 'resistance');
}

/** Away from joints, where the layer has one. */
function mainName(state: LayerState, index: number, place: LayerPlace): string | undefined {
  return jointShare(state.layer) > 0 ? `${place.at}.layers.${index}.main` : resistanceName(state, index, place);
}

function plainSteps(state: PanelState, layer: LayerState, index: number, place: LayerPlace): readonly WorkingStep[] {
  const known = layer.layer;
  switch (known.kind) {
    case 'solid':
      return [solidStep(mainName(layer, index, place)!, known, known.conductivity, 'conductivity', place.from)];
    case 'sealedGap':
      return airGapSteps(state, layer, known, index, place);
    case 'waterGap':
      return waterGapSteps(state, layer, known, index, place);
    case 'resistance':
    case 'openGap':
      return [];
  }
}

function solidStep(
  name: string,
  { thickness, origin }: SolidLayer & Pick<StackLayer, 'origin'>,
  conductivity: number,
  part: 'conductivity' | 'joint',
  from: ConditionInputs,
): WorkingStep {
  return workingStep(name, 'tank.layerResistance', thickness / conductivity, {
    d: [thickness, origin === undefined ? undefined : from.layerPart(origin, 'thickness')],
    k: [conductivity, origin === undefined ? undefined : from.layerPart(origin, part)],
  });
}

/** Temperatures of a gap's faces: of the one towards the water, of the other one, their mean and difference. */
function faceSteps(state: PanelState, layer: LayerState, index: number, place: LayerPlace) {
  const at = `${place.at}.layers.${index}`;
  const face = (name: string, temperature: number, before: StepInput): WorkingStep => {
    const q: StepInput = [fluxOf(state), `${place.at}.flux`];
    return workingStep(`${at}.${name}`, 'tank.faceTemperature', temperature, { T_i: place.inside, q, R: before });
  };
  const inner: StepInput = [layer.innerTemperature, `${at}.innerTemperature`];
  const outer: StepInput = [layer.outerTemperature, `${at}.outerTemperature`];
  const before = innerUpTo(state, index, place);
  const after = innerUpTo(state, index + 1, place);
  const difference = Math.abs(layer.innerTemperature - layer.outerTemperature);
  const warmer = layer.innerTemperature >= layer.outerTemperature ? [inner, outer] : [outer, inner];
  return {
    T_m: [mean(layer.innerTemperature, layer.outerTemperature), `${at}.meanTemperature`] as StepInput,
    dT: [difference, `${at}.difference`] as StepInput,
    steps: [
      face('innerTemperature', layer.innerTemperature, before),
      face('outerTemperature', layer.outerTemperature, after),
      workingStep(`${at}.meanTemperature`, 'tank.meanTemperature', mean(inner[0], outer[0]), {
        x_1: inner,
        x_2: outer,
      }),
      workingStep(`${at}.difference`, 'tank.temperatureDifference', difference, {
        inside: warmer[0]!,
        outside: warmer[1]!,
      }),
    ],
  };
}

function airGapSteps(
  state: PanelState,
  layer: LayerState,
  gap: SealedGap & Pick<StackLayer, 'origin'>,
  index: number,
  place: LayerPlace,
): readonly WorkingStep[] {
  const at = `${place.at}.layers.${index}`;
  const { flow, countedLayers, layers, outer } = state;
  const faces = faceSteps(state, layer, index, place);
  const { T_m, dT } = faces;
  const stack = layers.slice(0, countedLayers).map((each) => each.layer);
  const [one, other] = gapEmissivities(stack, index, gap, outer.emissivity);
  const epsilon = { epsilon1: [one] as StepInput, epsilon2: [other] as StepInput };
  const d: StepInput = [
    gap.thickness,
    gap.origin === undefined ? undefined : place.from.layerPart(gap.origin, 'thickness'),
  ];
  const convective = airLayerConvection(gap.thickness, flow, dT[0]);
  const narrow = isNarrow(gap.thickness, gap.breadth);
  const radiative = narrow
    ? narrowAirLayerRadiation(one, other, T_m[0], gap.thickness, gap.breadth!)
    : airLayerRadiation(one, other, T_m[0]);
  return [
    ...faces.steps,
    workingStep(`${at}.convection`, `tank.airLayerConvection${up[flow]}`, convective, { dT, d }),
    narrow
      ? workingStep(`${at}.radiation`, 'tank.narrowAirLayerRadiation', radiative, {
          T_m,
          ...epsilon,
          d,
          b: [gap.breadth!],
        })
      : workingStep(`${at}.radiation`, 'tank.airLayerRadiation', radiative, { T_m, ...epsilon }),
    workingStep(resistanceName(layer, index, place)!, 'tank.airLayerResistance', layer.resistance, {
      h_a: [convective, `${at}.convection`],
      h_r: [radiative, `${at}.radiation`],
    }),
  ];
}

function waterGapSteps(
  state: PanelState,
  layer: LayerState,
  gap: WaterGap & Pick<StackLayer, 'origin'>,
  index: number,
  place: LayerPlace,
): readonly WorkingStep[] {
  const at = `${place.at}.layers.${index}`;
  const faces = faceSteps(state, layer, index, place);
  const water = waterOfLayer(state.inside);
  const height = gapHeight(state);
  const isOfArea = !(state.height !== undefined && state.height > 0) && state.area > 0;
  const d: StepInput = [
    gap.thickness,
    gap.origin === undefined ? undefined : place.from.layerPart(gap.origin, 'thickness'),
  ];
  const named = (name: string, value: number): StepInput => [value, `${at}.${name}`];
  const rayleigh = water.buoyancy * faces.dT[0] * gap.thickness ** 3;
  const nusselt = waterLayerNusselt(water, gap.thickness, height, state.flow, faces.dT[0]);
  const Ra = named('rayleigh', rayleigh);
  const Pr = named('prandtl', water.prandtl);
  const stands = nusselt === 1;
  const slim = slimness(height, gap.thickness);
  const upright = state.flow === 'horizontal';
  const moving: readonly WorkingStep[] = stands
    ? []
    : [
        ...waterSteps(at, state.inside, place.inside, water),
        workingStep(Ra[1]!, 'tank.waterLayerRayleigh', rayleigh, {
          B: named('buoyancy', water.buoyancy),
          dT: faces.dT,
          d,
        }),
        ...(upright
          ? [
              ...(isOfArea ? [workingStep(`${at}.height`, 'tank.squareSide', height, { A: place.area })] : []),
              workingStep(`${at}.slimness`, 'tank.slimness', slim, {
                H: isOfArea ? named('height', height) : [height],
                d,
              }),
              workingStep(`${at}.nusselt`, 'tank.waterLayerNusselt', nusselt, { Ra, Pr, s: named('slimness', slim) }),
            ]
          : [workingStep(`${at}.nusselt`, 'tank.waterLayerNusseltFromBelow', nusselt, { Ra, Pr })]),
      ];
  return [
    ...(stands ? [] : faces.steps.filter(({ result }) => !result.endsWith('.meanTemperature'))),
    workingStep(`${at}.conductivity`, 'water.conductivity', water.conductivity, { T: place.inside, S: [0] }),
    ...moving,
    workingStep(resistanceName(layer, index, place)!, 'tank.waterLayerResistance', layer.resistance, {
      d,
      Nu: stands ? [1] : named('nusselt', nusselt),
      k: named('conductivity', waterConductivity(state.inside, 0)),
    }),
  ];
}

/** Properties of the water in a gap, at the temperature inside. */
function waterSteps(
  at: string,
  temperature: number,
  T: StepInput,
  { buoyancy, prandtl, conductivity }: ReturnType<typeof waterOfLayer>,
): readonly WorkingStep[] {
  const S: StepInput = [0];
  const named = (name: string, value: number): StepInput => [value, `${at}.${name}`];
  const beta = named('expansion', waterExpansion(temperature, 0));
  const rho = named('density', waterDensity(temperature, 0));
  const c_p = named('heatCapacity', waterHeatCapacity(temperature, 0));
  const mu = named('viscosity', waterViscosity(temperature, 0));
  const k = named('conductivity', conductivity);
  return [
    workingStep(beta[1]!, 'water.expansion', beta[0], { T, S }),
    workingStep(rho[1]!, 'water.density', rho[0], { T, S }),
    workingStep(c_p[1]!, 'water.heatCapacity', c_p[0], { T, S }),
    workingStep(mu[1]!, 'water.viscosity', mu[0], { T, S }),
    workingStep(`${at}.buoyancy`, 'tank.waterLayerBuoyancy', buoyancy, { beta, rho, c_p, mu, k }),
    workingStep(`${at}.prandtl`, 'tank.waterPrandtl', prandtl, { mu, c_p, k }),
  ];
}

/** From the inside up to a layer [m² K/W], with the step that gives it. */
function innerUpTo(state: PanelState, count: number, { at }: LayerPlace): StepInput {
  if (count === 0) return [state.waterFilmResistance];
  const sum = state.layers
    .slice(0, count)
    .reduce((total, { resistance }) => total + resistance, state.waterFilmResistance);
  return [sum, count === state.countedLayers ? `${at}.innerResistance` : `${at}.innerResistance.${count}`];
}

/** Heat per area through the panel [W/m²]. */
export function fluxOf({ transmittance, inside, sink }: PanelState): number {
  return heatFlux(transmittance, inside, sink);
}

/** One layer added to those before it, until the outer surface. */
function innerSteps(state: PanelState, counted: readonly LayerState[], place: LayerPlace): readonly WorkingStep[] {
  if (counted.length === 0) {
    const nothing: StepInput = [0];
    const inner = state.innerResistance;
    return [
      workingStep(`${place.at}.innerResistance`, 'tank.innerResistance', inner, {
        R_before: [inner],
        R_layer: nothing,
      }),
    ];
  }
  return counted.map((layer, index) => {
    const [value, name] = innerUpTo(state, index + 1, place);
    return workingStep(name!, 'tank.innerResistance', value, {
      R_before: innerUpTo(state, index, place),
      R_layer: [layer.resistance, resistanceName(layer, index, place)],
    });
  });
}

/** A section of the stack, through a joint or beside all of them. */
interface Section {
  readonly share: number;
  readonly shareFrom: string | undefined;
  readonly parts: readonly StepInput[];
}

/** Both limits of the stack, their mean, and what it makes of each layer. */
function jointSteps(state: PanelState, counted: readonly LayerState[], place: LayerPlace): readonly WorkingStep[] {
  const { at, outward, from } = place;
  const known = counted.map((layer, index) => {
    const share = jointShare(layer.layer);
    const main: StepInput = [mainResistance(layer), mainName(layer, index, place)];
    if (share === 0) return { layer, share, main, joint: main, beside: main, shareFrom: undefined, steps: [] };
    const solid = layer.layer as SolidLayer & Pick<StackLayer, 'origin'>;
    const base = `${at}.layers.${index}`;
    const conductivity = solid.bridge!.conductivity;
    const joint: StepInput = [solid.thickness / conductivity, `${base}.joint`];
    const beside: StepInput = [besideResistance(main[0], joint[0], share), `${base}.beside`];
    const shareFrom = solid.origin === undefined ? undefined : `${solid.origin}.joint.share`;
    return {
      layer,
      share,
      main,
      joint,
      beside,
      shareFrom,
      steps: [
        solidStep(joint[1]!, solid, conductivity, 'joint', from),
        workingStep(beside[1]!, 'tank.besideResistance', beside[0], {
          f: [share, shareFrom],
          R_main: main,
          R_joint: joint,
        }),
        workingStep(`${base}.jointTakes`, 'tank.jointTakes', jointTakes(main[0], beside[0]), {
          R_main: main,
          R_beside: beside,
        }),
      ],
    };
  });
  const rest: readonly StepInput[] = [[state.waterFilmResistance], outward];
  const lower = sumOf(`${at}.lowerLimit`, 'resistance', [...rest, ...known.map(({ beside }) => beside)]);
  // The section through all joints first; each next one has the narrowest joint less.
  const byShare = known
    .map((each, index) => ({ share: each.share, shareFrom: each.shareFrom, index }))
    .filter(({ share }) => share > 0)
    .toSorted((left, right) => left.share - right.share);
  const sections = [...byShare.keys(), byShare.length].map((passed): Section => {
    const without = new Set(byShare.slice(0, passed).map(({ index }) => index));
    const ended = byShare[passed];
    return {
      share: ended?.share ?? 1,
      shareFrom: ended?.shareFrom,
      parts: [...rest, ...known.map(({ main, joint }, index) => (without.has(index) ? main : joint))],
    };
  });
  const upper = upperLimit(at, sections);
  const meanLimit: StepInput = [combinedResistance(upper.value[0], lower.value[0]), `${at}.meanOfLimits`];
  const taken = known.flatMap(({ share, main, beside }, index): StepInput[] =>
    share > 0 ? [[jointTakes(main[0], beside[0]), `${at}.layers.${index}.jointTakes`]] : [],
  );
  const all = sumOf(`${at}.jointsTake`, 'resistance', taken);
  return [
    ...known.flatMap(({ steps }) => steps),
    ...lower.steps,
    ...upper.steps,
    workingStep(meanLimit[1]!, 'tank.combinedResistance', meanLimit[0], { R_upper: upper.value, R_lower: lower.value }),
    ...all.steps,
    ...known.flatMap(({ layer, share, main, beside }, index) =>
      share === 0
        ? []
        : [
            workingStep(resistanceName(layer, index, place)!, 'tank.jointedResistance', layer.resistance, {
              R_beside: beside,
              R_mean: meanLimit,
              R_lower: lower.value,
              dR: [jointTakes(main[0], beside[0]), `${at}.layers.${index}.jointTakes`],
              dR_all: all.value,
            }),
          ],
    ),
  ];
}

function mainResistance({ layer, resistance }: LayerState): number {
  return layer.kind === 'solid' ? layer.thickness / layer.conductivity : resistance;
}

/** Sections side by side, joined two by two, the narrowest first. */
function upperLimit(at: string, sections: readonly Section[]) {
  const sums = sections.map(({ parts }, index) => sumOf(`${at}.sections.${index + 1}`, 'resistance', parts));
  const steps: WorkingStep[] = sums.flatMap((sum) => sum.steps);
  let value = sums[0]!.value;
  sections.slice(1).forEach((section, index) => {
    const before = sections[index]!;
    const isLast = index === sections.length - 2;
    // Of both together, the share that the ones before have.
    const f: StepInput = [before.share / section.share, isLast && section.share === 1 ? before.shareFrom : undefined];
    const name = isLast ? `${at}.upperLimit` : `${at}.upperLimit.${index + 1}`;
    const main = sums[index + 1]!.value;
    const joined = besideResistance(main[0], value[0], f[0]);
    steps.push(workingStep(name, 'tank.besideResistance', joined, { f, R_main: main, R_joint: value }));
    value = [joined, name];
  });
  return { value, steps };
}
