// The working of a lid: what crosses the trapped air, the temperature of the damp inner faces, what leaves through them.
// The inner temperature depends on steps that depend on it: it was found by root search, and the steps show it settled.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { HeadspaceFlux } from '../cover/headspace.ts';
import type { RectangularTank } from '../description.ts';
import { type AirState, freeboardConductance, type LidState, type TankLoad } from '../load.ts';
import { type FaceSource, layerSource, paneSteps, wallEmissivity, wallSource } from './panes.ts';
import { type ConditionInputs, openShareOrigin } from './steps.ts';
import { heatOf } from './totals.ts';

/** The trapped air, the lid and the panes above the water. */
export function lidSteps(
  tank: RectangularTank,
  lid: LidState,
  air: AirState,
  load: TankLoad,
  from: ConditionInputs,
): WorkingStep[] {
  const sheet = tank.lidLayer!;
  const inside: StepInput =
    lid.headspace === undefined ? from.water : [lid.innerTemperature, 'tank.lid.innerTemperature'];
  const lidSource: FaceSource = {
    name: 'lid',
    area: {
      n: [lid.coveredShare, openShareOrigin(tank)],
      b: [tank.length, 'tank.load.length'],
      h: [tank.width, 'tank.load.width'],
    },
    sheet:
      'conductance' in sheet
        ? undefined
        : {
            d: [sheet.thickness, 'tank.load.lidThickness'],
            k: [sheet.conductivity, 'tank.load.lidMaterial'],
          },
    insulation: undefined,
    inside,
    emissivity: sheet.emissivity === undefined ? undefined : 'tank.load.lidMaterial',
  };
  return [
    workingStep('tank.lid.gap', 'tank.headspaceGap', lid.gap, {
      H: [tank.height, 'tank.load.height'],
      D: [tank.waterDepth, 'tank.load.waterDepth'],
    }),
    ...headspaceSteps(lid, air, from),
    ...paneSteps(lid.lid, lidSource, from, 'tank.paths.lid'),
    ...freeboardSteps(tank, lid, load, inside, from),
  ];
}

function headspaceSteps(lid: LidState, air: AirState, from: ConditionInputs): WorkingStep[] {
  const { headspace, freeboard } = lid;
  if (headspace === undefined || freeboard === undefined) return [];
  const d: StepInput = [lid.gap, 'tank.lid.gap'];
  const Nu: StepInput = [headspace.nusselt, 'tank.lid.nusselt'];
  const k: StepInput = [headspace.airConductivity, 'tank.lid.airConductivity'];
  const T_l: StepInput = [lid.innerTemperature, 'tank.lid.innerTemperature'];
  const ends = { T_w: from.water, T_l };
  return [
    ...trappedAirSteps(headspace, air, T_l, from),
    workingStep('tank.lid.rayleigh', 'tank.rayleigh', headspace.rayleigh, {
      dT_v: [headspace.virtualDifference, 'tank.lid.virtualDifference'],
      T_vm: [headspace.meanVirtualTemperature, 'tank.lid.meanVirtualTemperature'],
      d,
      nu: [headspace.kinematicViscosity, 'tank.lid.kinematicViscosity'],
      alpha: [headspace.thermalDiffusivity, 'tank.lid.thermalDiffusivity'],
    }),
    workingStep('tank.lid.nusselt', 'tank.nusseltHollands', headspace.nusselt, {
      Ra: [headspace.rayleigh, 'tank.lid.rayleigh'],
    }),
    workingStep('tank.lid.convectiveFlux', 'tank.headspaceConvection', headspace.convectiveFlux, { Nu, k, d, ...ends }),
    workingStep('tank.lid.radiativeFlux', 'tank.headspaceRadiation', headspace.radiativeFlux, ends),
    workingStep('tank.lid.circulation', 'tank.headspaceVapour', headspace.circulation, {
      Nu,
      D: [headspace.diffusivity, 'tank.lid.diffusivity'],
      d,
      rho_w: [headspace.waterVapourDensity, 'tank.lid.waterVapourDensity'],
      rho_l: [headspace.lidVapourDensity, 'tank.lid.lidVapourDensity'],
    }),
    workingStep('tank.lid.freeboardConductance', 'tank.freeboardConductance', freeboardConductance(freeboard), {
      A_front: [freeboard.front.area, 'tank.panes.freeboardFront.area'],
      U_front: [freeboard.front.transmittance, 'tank.panes.freeboardFront.transmittance'],
      A_back: [freeboard.back.area, 'tank.panes.freeboardBack.area'],
      U_back: [freeboard.back.transmittance, 'tank.panes.freeboardBack.transmittance'],
      A_sides: [freeboard.sides.area, 'tank.panes.freeboardSides.area'],
      U_sides: [freeboard.sides.transmittance, 'tank.panes.freeboardSides.transmittance'],
    }),
    workingStep('tank.lid.innerTemperature', 'tank.lidTemperature', lid.innerTemperature, {
      T_r: from.room,
      A: [lid.area, 'tank.panes.lid.area'],
      q_c: [headspace.convectiveFlux, 'tank.lid.convectiveFlux'],
      q_r: [headspace.radiativeFlux, 'tank.lid.radiativeFlux'],
      m_v: [headspace.circulation, 'tank.lid.circulation'],
      h_fg: [air.latentHeat, 'tank.air.latentHeat'],
      U_lid: [lid.lid.transmittance, 'tank.panes.lid.transmittance'],
      H_dry: [freeboardConductance(freeboard), 'tank.lid.freeboardConductance'],
    }),
  ];
}

/** State of the trapped air: at the water, at the lid, and in the middle of the two. */
function trappedAirSteps(known: HeadspaceFlux, air: AirState, T_l: StepInput, from: ConditionInputs): WorkingStep[] {
  const p = from.pressure;
  const p_w: StepInput = [air.waterVapour, 'tank.air.waterVapour'];
  const p_l: StepInput = [known.lidVapour, 'tank.lid.vapour'];
  const p_ws: StepInput = [known.lidSaturation, 'tank.lid.saturation'];
  const T_vw: StepInput = [known.waterVirtual, 'tank.lid.waterVirtual'];
  const T_vl: StepInput = [known.lidVirtual, 'tank.lid.lidVirtual'];
  const T: StepInput = [known.meanTemperature, 'tank.lid.meanTemperature'];
  const rho: StepInput = [known.density, 'tank.lid.density'];
  const rho_w: StepInput = [known.waterVapourDensity, 'tank.lid.waterVapourDensity'];
  const k: StepInput = [known.airConductivity, 'tank.lid.airConductivity'];
  const mean = (name: string, value: number, x_1: StepInput, x_2: StepInput) =>
    workingStep(`tank.lid.${name}`, 'tank.meanTemperature', value, { x_1, x_2 });
  return [
    workingStep('tank.lid.saturation', 'air.saturationVapourPressure', known.lidSaturation, { T: T_l }),
    workingStep('tank.lid.vapour', 'tank.lidVapour', known.lidVapour, { p_ws, p_w }),
    workingStep('tank.lid.waterVirtual', 'air.virtualTemperature', known.waterVirtual, { T: from.water, p_w, p }),
    workingStep('tank.lid.lidVirtual', 'air.virtualTemperature', known.lidVirtual, { T: T_l, p_w: p_l, p }),
    workingStep('tank.lid.virtualDifference', 'tank.virtualDifference', known.virtualDifference, { T_vw, T_vl }),
    mean('meanVirtualTemperature', known.meanVirtualTemperature, T_vw, T_vl),
    mean('meanTemperature', known.meanTemperature, from.water, T_l),
    workingStep('tank.lid.meanVapour', 'tank.meanVapourPressure', known.meanVapour, { x_1: p_w, x_2: p_l }),
    workingStep('tank.lid.density', 'air.moistAirDensity', known.density, {
      T,
      p_w: [known.meanVapour, 'tank.lid.meanVapour'],
      p,
    }),
    workingStep('tank.lid.airConductivity', 'air.conductivity', known.airConductivity, { T }),
    workingStep('tank.lid.viscosity', 'air.viscosity', known.viscosity, { T }),
    workingStep('tank.lid.kinematicViscosity', 'tank.kinematicViscosity', known.kinematicViscosity, {
      mu: [known.viscosity, 'tank.lid.viscosity'],
      rho,
    }),
    workingStep('tank.lid.thermalDiffusivity', 'tank.thermalDiffusivity', known.thermalDiffusivity, { k, rho }),
    workingStep('tank.lid.diffusivity', 'air.vapourDiffusivity', known.diffusivity, { T, p }),
    workingStep('tank.lid.waterVapourDensity', 'air.vapourDensity', known.waterVapourDensity, { T: from.water, p_w }),
    workingStep('tank.lid.lidVapourDensity', 'tank.lidVapourDensity', known.lidVapourDensity, { T_l, p_ws, rho_w }),
  ];
}

function freeboardSteps(
  tank: RectangularTank,
  lid: LidState,
  load: TankLoad,
  inside: StepInput,
  from: ConditionInputs,
): WorkingStep[] {
  const { freeboard } = lid;
  if (freeboard === undefined) return [];
  const length: StepInput = [tank.length, 'tank.load.length'];
  const width: StepInput = [tank.width, 'tank.load.width'];
  const faces = [
    ['front', 'freeboardFront', 1, length, undefined],
    ['back', 'freeboardBack', 1, length, tank.insulation.back],
    ['sides', 'freeboardSides', 2, width, tank.insulation.sides],
  ] as const;
  const steps = faces.flatMap(([face, name, count, b, layer]) => {
    const insulation = layer && layerSource(layer, `tank.load.insulation.${face}`);
    const n: StepInput = [count * lid.coveredShare, openShareOrigin(tank)];
    const area = { n, b, h: [lid.gap, 'tank.lid.gap'] as StepInput };
    const emissivity = layer === undefined ? wallEmissivity(tank) : undefined;
    const source: FaceSource = { name, area, sheet: wallSource(tank), insulation, inside, emissivity };
    return paneSteps(freeboard[face], source, from, `tank.panes.${name}.heat`);
  });
  return [
    ...steps,
    workingStep('tank.paths.freeboard', 'tank.freeboardHeat', heatOf(load, 'freeboard'), {
      Q_front: [freeboard.front.heat, 'tank.panes.freeboardFront.heat'],
      Q_back: [freeboard.back.heat, 'tank.panes.freeboardBack.heat'],
      Q_sides: [freeboard.sides.heat, 'tank.panes.freeboardSides.heat'],
    }),
  ];
}
