// The working of a lid: what crosses the trapped air, the temperature of the damp inner faces, what leaves through them. The
// inner temperature depends on steps that depend on it: it was found by root search, and the steps show it settled.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { Vessel } from '../built-tank.ts';
import type { HeadspaceFlux } from '../cover/headspace.ts';
import type { LidState } from '../load.ts';
import type { PanelState } from '../stack/panel.ts';
import { sumOfConductances } from '../totals.ts';
import type { VesselSizes } from './geometry.ts';
import { panelSteps, type ShownPanel, sinkOf } from './panels.ts';
import { sumOf } from './sums.ts';
import { airInputs, type VesselSteps } from './surface.ts';

/** The trapped air, the lid and the panels above the water. */
export function lidSteps(
  lid: LidState,
  { name }: Vessel,
  sizes: VesselSizes,
  vessel: VesselSteps,
): readonly WorkingStep[] {
  const { at, place, from, waterSurface, path } = vessel;
  const isWhole = lid.coveredShare === 1;
  const area: StepInput = isWhole ? waterSurface : [lid.area, `${at}.lid.area`];
  const share: StepInput = [lid.coveredShare, `${place}.lidOpenShare`];
  const inside: StepInput =
    lid.headspace === undefined ? from.water : [lid.innerTemperature, `${at}.lid.innerTemperature`];
  const dry = lid.freeboard.map((state) => dryPanel(state, share, sizes, at));
  const shown: ShownPanel[] = [{ state: lid.lid, area, heat: path('lid') }, ...dry.map((each) => each.panel)];
  const panels = panelSteps(shown, { vessel: name, at: `${at}.dry`, inside, from });
  return [
    ...(isWhole ? [] : [workingStep(`${at}.lid.area`, 'tank.shareOfArea', lid.area, { s: share, A: waterSurface })]),
    ...dry.flatMap(({ steps }) => steps),
    ...panels.steps,
    ...headspaceSteps(lid, area, shown, panels.transmittances, sizes, vessel),
    ...freeboardSums(lid.freeboard, shown.slice(1), vessel),
  ];
}

/** The share of a panel above the water that lies under the lid. */
export function dryPanel(state: PanelState, share: StepInput, sizes: VesselSizes, at: string) {
  const whole = sizes.dryArea(state.name, state.area / share[0]);
  const heat = `${at}.dry.${state.name}.heat`;
  if (share[0] === 1) return { panel: { state, area: whole, heat }, steps: [] };
  const area: StepInput = [state.area, `${at}.dry.${state.name}.area`];
  const step = workingStep(area[1]!, 'tank.shareOfArea', state.area, { s: share, A: whole });
  return { panel: { state, area, heat }, steps: [step] };
}

/** Heat through the panels above the water, by where it ends. */
export function freeboardSums(
  freeboard: readonly PanelState[],
  shown: readonly ShownPanel[],
  { path, heat }: VesselSteps,
): readonly WorkingStep[] {
  const ends = [
    ['freeboard', ['roomAir', 'againstWall', 'closedStand']],
    ['freeboardOutdoors', ['outdoors']],
    ['freeboardGround', ['slab']],
  ] as const;
  return ends.flatMap(([name, kinds]) => {
    const parts = freeboard.flatMap((state, index): StepInput[] =>
      (kinds as readonly string[]).includes(state.exposure.kind) ? [[state.heat, shown[index]!.heat]] : [],
    );
    return parts.length === 0 ? [] : sumOf(path(name), 'heat', parts, heat(name)).steps;
  });
}

function headspaceSteps(
  lid: LidState,
  A: StepInput,
  shown: readonly ShownPanel[],
  transmittances: readonly string[],
  sizes: VesselSizes,
  vessel: VesselSteps,
): readonly WorkingStep[] {
  const { headspace } = lid;
  const { at, air, from } = vessel;
  if (headspace === undefined) return [];
  const own = (name: string, value: number): StepInput => [value, `${at}.lid.${name}`];
  const d: StepInput = [lid.gap, sizes.freeboard[1]];
  const Nu = own('nusselt', headspace.nusselt);
  const k = own('airConductivity', headspace.airConductivity);
  const T_l = own('innerTemperature', lid.innerTemperature);
  const ends = { T_w: from.water, T_l };
  const flux = {
    q_c: own('convectiveFlux', headspace.convectiveFlux),
    q_r: own('radiativeFlux', headspace.radiativeFlux),
    m_v: own('circulation', headspace.circulation),
    h_fg: airInputs(air).h_fg,
  };
  return [
    ...trappedAirSteps(headspace, T_l, vessel),
    workingStep(`${at}.lid.rayleigh`, 'tank.rayleigh', headspace.rayleigh, {
      dT_v: own('virtualDifference', headspace.virtualDifference),
      T_vm: own('meanVirtualTemperature', headspace.meanVirtualTemperature),
      d,
      nu: own('kinematicViscosity', headspace.kinematicViscosity),
      alpha: own('thermalDiffusivity', headspace.thermalDiffusivity),
    }),
    workingStep(Nu[1]!, 'tank.nusseltHollands', headspace.nusselt, { Ra: own('rayleigh', headspace.rayleigh) }),
    workingStep(flux.q_c[1]!, 'tank.headspaceConvection', flux.q_c[0], { Nu, k, d, ...ends }),
    workingStep(flux.q_r[1]!, 'tank.headspaceRadiation', flux.q_r[0], ends),
    workingStep(flux.m_v[1]!, 'tank.headspaceVapour', headspace.circulation, {
      Nu,
      D: own('diffusivity', headspace.diffusivity),
      d,
      rho_w: own('waterVapourDensity', headspace.waterVapourDensity),
      rho_l: own('lidVapourDensity', headspace.lidVapourDensity),
    }),
    ...balanceSteps(lid, A, shown, transmittances, flux, { d, Nu, k }, vessel),
  ];
}

interface Flux {
  readonly q_c: StepInput;
  readonly q_r: StepInput;
  readonly m_v: StepInput;
  readonly h_fg: StepInput;
}

/** The temperature of the inner faces: from conductances where all face the room, else from the heat that leaves. */
function balanceSteps(
  lid: LidState,
  A: StepInput,
  shown: readonly ShownPanel[],
  transmittances: readonly string[],
  { q_c, q_r, m_v, h_fg }: Flux,
  air: Readonly<Record<'d' | 'Nu' | 'k', StepInput>>,
  { at, from }: VesselSteps,
): readonly WorkingStep[] {
  const name = `${at}.lid.innerTemperature`;
  const inRoom = shown.every(({ state }) => sinkOf(state, from) === from.room);
  if (!inRoom) {
    const heats = shown.map(({ state, heat }): StepInput => [state.heat, heat]);
    const leaving = sumOf(`${at}.lid.leaving`, 'heat', heats);
    return [
      ...leaving.steps,
      workingStep(name, 'tank.innerFacesTemperature', lid.innerTemperature, {
        T_w: from.water,
        Q: leaving.value,
        A,
        q_r,
        m_v,
        h_fg,
        ...air,
      }),
    ];
  }
  const parts = lid.freeboard.map((state, index) => {
    const panel = shown[index + 1]!;
    const H: StepInput = [state.area * state.transmittance, `${at}.dry.${state.name}.conductance`];
    return {
      H,
      step: workingStep(H[1]!, 'tank.conductance', H[0], {
        A: panel.area,
        U: [state.transmittance, transmittances[index + 1]],
      }),
    };
  });
  const H_dry = sumOf(
    `${at}.lid.freeboardConductance`,
    'conductance',
    parts.map(({ H }) => H),
    sumOfConductances(lid.freeboard),
  );
  return [
    ...parts.map(({ step }) => step),
    ...H_dry.steps,
    workingStep(name, 'tank.lidTemperature', lid.innerTemperature, {
      T_r: from.room,
      A,
      q_c,
      q_r,
      m_v,
      h_fg,
      U_lid: [lid.lid.transmittance, transmittances[0]],
      H_dry: H_dry.value,
    }),
  ];
}

/** State of the trapped air: at the water, at the lid, and in the middle of the two. */
function trappedAirSteps(known: HeadspaceFlux, T_l: StepInput, { at, air, from }: VesselSteps): readonly WorkingStep[] {
  const own = (name: string, value: number): StepInput => [value, `${at}.lid.${name}`];
  const p = from.pressure;
  const { p_w } = airInputs(air);
  const p_l = own('vapour', known.lidVapour);
  const p_ws = own('saturation', known.lidSaturation);
  const T_vw = own('waterVirtual', known.waterVirtual);
  const T_vl = own('lidVirtual', known.lidVirtual);
  const T = own('meanTemperature', known.meanTemperature);
  const rho = own('density', known.density);
  const rho_w = own('waterVapourDensity', known.waterVapourDensity);
  const k = own('airConductivity', known.airConductivity);
  const step = (name: string, formula: string, value: number, inputs: Readonly<Record<string, StepInput>>) =>
    workingStep(`${at}.lid.${name}`, formula, value, inputs);
  return [
    step('saturation', 'air.saturationVapourPressure', known.lidSaturation, { T: T_l }),
    step('vapour', 'tank.lidVapour', known.lidVapour, { p_ws, p_w }),
    step('waterVirtual', 'air.virtualTemperature', known.waterVirtual, { T: from.water, p_w, p }),
    step('lidVirtual', 'air.virtualTemperature', known.lidVirtual, { T: T_l, p_w: p_l, p }),
    step('virtualDifference', 'tank.virtualDifference', known.virtualDifference, { T_vw, T_vl }),
    step('meanVirtualTemperature', 'tank.meanTemperature', known.meanVirtualTemperature, { x_1: T_vw, x_2: T_vl }),
    step('meanTemperature', 'tank.meanTemperature', known.meanTemperature, { x_1: from.water, x_2: T_l }),
    step('meanVapour', 'tank.meanVapourPressure', known.meanVapour, { x_1: p_w, x_2: p_l }),
    step('density', 'air.moistAirDensity', known.density, { T, p_w: own('meanVapour', known.meanVapour), p }),
    step('airConductivity', 'air.conductivity', known.airConductivity, { T }),
    step('viscosity', 'air.viscosity', known.viscosity, { T }),
    step('kinematicViscosity', 'tank.kinematicViscosity', known.kinematicViscosity, {
      mu: own('viscosity', known.viscosity),
      rho,
    }),
    step('thermalDiffusivity', 'tank.thermalDiffusivity', known.thermalDiffusivity, { k, rho }),
    step('diffusivity', 'air.vapourDiffusivity', known.diffusivity, { T, p }),
    step('waterVapourDensity', 'air.vapourDensity', known.waterVapourDensity, { T: from.water, p_w }),
    step('lidVapourDensity', 'tank.lidVapourDensity', known.lidVapourDensity, { T_l, p_ws, rho_w }),
  ];
}
