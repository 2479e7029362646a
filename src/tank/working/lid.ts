// The working of a lid: what crosses the trapped air, the temperature of the damp inner faces, what leaves through them.
// The inner temperature depends on steps that depend on it: it was found by root search, and the steps show it settled.

import type { WorkingStep } from '../../quantities/index.ts';
import type { RectangularTank } from '../description.ts';
import type { AirState, LidState, TankLoad } from '../load.ts';
import { type FaceSource, layerSource, paneSteps, wallSource } from './panes.ts';
import { type ConditionInputs, type Input, step } from './steps.ts';
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
  const inside: Input = lid.headspace === undefined ? from.water : [lid.innerTemperature, 'tank.lid.innerTemperature'];
  const lidSource: FaceSource = {
    name: 'lid',
    area: {
      n: [lid.coveredShare, 'tank.load.lid'],
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
  };
  return [
    step('tank.lid.gap', 'tank.headspaceGap', lid.gap, {
      H: [tank.height, 'tank.load.height'],
      D: [tank.waterDepth, 'tank.load.waterDepth'],
    }),
    ...headspaceSteps(lid, air, from),
    ...paneSteps(lid.lid, lidSource, from.room, 'tank.paths.lid'),
    ...freeboardSteps(tank, lid, load, inside, from),
  ];
}

function headspaceSteps(lid: LidState, air: AirState, from: ConditionInputs): WorkingStep[] {
  const { headspace, freeboard } = lid;
  if (headspace === undefined || freeboard === undefined) return [];
  const d: Input = [lid.gap, 'tank.lid.gap'];
  const Nu: Input = [headspace.nusselt, 'tank.lid.nusselt'];
  const ends = { T_w: from.water, T_l: [lid.innerTemperature, 'tank.lid.innerTemperature'] as Input };
  const dry = Object.values(freeboard).reduce((sum, face) => sum + face.area * face.transmittance, 0);
  return [
    step('tank.lid.rayleigh', 'tank.rayleigh', headspace.rayleigh, {
      dT_v: [headspace.virtualDifference, 'tank.lid.innerTemperature'],
      T_vm: [headspace.meanVirtualTemperature, 'tank.lid.innerTemperature'],
      d,
      nu: [headspace.kinematicViscosity],
      alpha: [headspace.thermalDiffusivity],
    }),
    step('tank.lid.nusselt', 'tank.nusseltHollands', headspace.nusselt, {
      Ra: [headspace.rayleigh, 'tank.lid.rayleigh'],
    }),
    step('tank.lid.convectiveFlux', 'tank.headspaceConvection', headspace.convectiveFlux, {
      Nu,
      k: [headspace.airConductivity],
      d,
      ...ends,
    }),
    step('tank.lid.radiativeFlux', 'tank.headspaceRadiation', headspace.radiativeFlux, ends),
    step('tank.lid.circulation', 'tank.headspaceVapour', headspace.circulation, {
      Nu,
      D: [headspace.diffusivity],
      d,
      rho_w: [headspace.waterVapourDensity, 'tank.air.waterVapour'],
      rho_l: [headspace.lidVapourDensity, 'tank.lid.innerTemperature'],
    }),
    step('tank.lid.innerTemperature', 'tank.lidTemperature', lid.innerTemperature, {
      T_r: from.room,
      A: [lid.area, 'tank.panes.lid.area'],
      q_c: [headspace.convectiveFlux, 'tank.lid.convectiveFlux'],
      q_r: [headspace.radiativeFlux, 'tank.lid.radiativeFlux'],
      m_v: [headspace.circulation, 'tank.lid.circulation'],
      h_fg: [air.latentHeat, 'tank.air.latentHeat'],
      U_lid: [lid.lid.transmittance, 'tank.panes.lid.surfaceResistance'],
      H_dry: [dry, 'tank.panes.freeboardFront.surfaceResistance'],
    }),
  ];
}

function freeboardSteps(
  tank: RectangularTank,
  lid: LidState,
  load: TankLoad,
  inside: Input,
  from: ConditionInputs,
): WorkingStep[] {
  const { freeboard } = lid;
  if (freeboard === undefined) return [];
  const length: Input = [tank.length, 'tank.load.length'];
  const width: Input = [tank.width, 'tank.load.width'];
  const faces = [
    ['front', 'freeboardFront', 1, length, undefined],
    ['back', 'freeboardBack', 1, length, tank.insulation.back],
    ['sides', 'freeboardSides', 2, width, tank.insulation.sides],
  ] as const;
  const steps = faces.flatMap(([face, name, count, b, layer]) => {
    const insulation = layer && layerSource(layer, `tank.load.insulation.${face}`);
    const n: Input = [count * lid.coveredShare, 'tank.load.lid'];
    const area = { n, b, h: [lid.gap, 'tank.lid.gap'] as Input };
    const source: FaceSource = { name, area, sheet: wallSource(tank), insulation, inside };
    return paneSteps(freeboard[face], source, from.room, `tank.panes.${name}.heat`);
  });
  return [
    ...steps,
    step('tank.paths.freeboard', 'tank.freeboardHeat', heatOf(load, 'freeboard'), {
      Q_front: [freeboard.front.heat, 'tank.panes.freeboardFront.heat'],
      Q_back: [freeboard.back.heat, 'tank.panes.freeboardBack.heat'],
      Q_sides: [freeboard.sides.heat, 'tank.panes.freeboardSides.heat'],
    }),
  ];
}
