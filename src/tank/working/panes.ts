// The working of panes: areas, layers, the outer surface, the heat through each face.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { RectangularTank } from '../description.ts';
import type { PaneState, RectangularIntermediates, WetFace } from '../load.ts';
import { mean } from '../stack/films.ts';
import type { ConditionInputs } from './steps.ts';

/** Origins of a face's layers in the design. */
export interface FaceSource {
  readonly name: string;
  /** n, b, h of the area. */
  readonly area: Readonly<Record<'n' | 'b' | 'h', StepInput>>;
  readonly sheet: Readonly<Record<'k' | 'd', StepInput>> | undefined;
  readonly insulation: Readonly<Record<'k' | 'd', StepInput>> | undefined;
  readonly inside: StepInput;
  /** Where the emissivity of the outer surface came from; undefined where it is the model's own. */
  readonly emissivity: string | undefined;
}

/** One face: its layers, its outer surface as it settles, its heat. */
export function paneSteps(pane: PaneState, source: FaceSource, from: ConditionInputs, result: string): WorkingStep[] {
  const at = `tank.panes.${source.name}`;
  const { outer } = pane;
  const { room } = from;
  const layers: WorkingStep[] = [];
  if (source.sheet !== undefined) {
    layers.push(workingStep(`${at}.paneResistance`, 'tank.layerResistance', pane.paneResistance, source.sheet));
  }
  if (source.insulation !== undefined) {
    layers.push(
      workingStep(`${at}.insulationResistance`, 'tank.layerResistance', pane.insulationResistance, source.insulation),
    );
  }
  const ends = {
    T_i: source.inside,
    T_r: room,
    R_inner: [pane.innerResistance, `${at}.innerResistance`] as StepInput,
    R_s: [outer.resistance, `${at}.surfaceResistance`] as StepInput,
  };
  return [
    workingStep(`${at}.area`, 'tank.faceArea', pane.area, source.area),
    ...layers,
    workingStep(`${at}.innerResistance`, 'tank.innerResistance', pane.innerResistance, {
      R_film: [pane.waterFilmResistance],
      R_pane: [pane.paneResistance, source.sheet === undefined ? 'tank.load.lidMaterial' : `${at}.paneResistance`],
      R_insulation: source.insulation === undefined ? [0] : [pane.insulationResistance, `${at}.insulationResistance`],
    }),
    workingStep(`${at}.outerTemperature`, 'tank.outerTemperature', outer.temperature, ends),
    workingStep(`${at}.meanTemperature`, 'tank.meanTemperature', mean(outer.temperature, room[0]), {
      x_1: [outer.temperature, `${at}.outerTemperature`],
      x_2: room,
    }),
    workingStep(`${at}.radiativeCoefficient`, 'tank.radiativeCoefficient', outer.radiativeCoefficient, {
      epsilon: source.emissivity === undefined ? [outer.emissivity] : [outer.emissivity, source.emissivity],
      T_m: [mean(outer.temperature, room[0]), `${at}.meanTemperature`],
    }),
    workingStep(`${at}.surfaceResistance`, 'tank.surfaceResistance', outer.resistance, {
      h_c: [outer.convectiveCoefficient],
      h_r: [outer.radiativeCoefficient, `${at}.radiativeCoefficient`],
      f: from.filmFactor === undefined ? [outer.factor] : [outer.factor, from.filmFactor],
    }),
    workingStep(`${at}.transmittance`, 'tank.transmittance', pane.transmittance, {
      R_inner: ends.R_inner,
      R_s: ends.R_s,
    }),
    workingStep(result, 'tank.paneHeat', pane.heat, { A: [pane.area, `${at}.area`], ...ends }),
  ];
}

/** The four faces that water touches. */
export function wetPaneSteps(
  tank: RectangularTank,
  known: RectangularIntermediates,
  from: ConditionInputs,
): WorkingStep[] {
  return (['front', 'back', 'sides', 'bottom'] as const).flatMap((name) => {
    const insulation = name === 'front' ? undefined : tank.insulation[name];
    const source: FaceSource = {
      name,
      area: wetArea(tank, name),
      sheet: wallSource(tank),
      insulation: insulation && layerSource(insulation, `tank.load.insulation.${name}`),
      inside: from.water,
      emissivity: insulation === undefined ? wallEmissivity(tank) : undefined,
    };
    return paneSteps(known.panes[name], source, from, `tank.paths.${name}`);
  });
}

/** The pane itself. */
export function wallSource(tank: RectangularTank) {
  return layerSource(tank.wall, 'tank.load.wall');
}

/** Where the emissivity of a pane without wrapping came from. */
export function wallEmissivity(tank: RectangularTank): string | undefined {
  return tank.wall.emissivity === undefined ? undefined : 'tank.load.wall.material';
}

/** A layer's numbers with their design paths. */
export function layerSource(layer: { conductivity: number; thickness: number }, path: string) {
  return {
    d: [layer.thickness, `${path}.thickness`] as StepInput,
    k: [layer.conductivity, `${path}.material`] as StepInput,
  };
}

function wetArea(tank: RectangularTank, name: WetFace): FaceSource['area'] {
  const length: StepInput = [tank.length, 'tank.load.length'];
  const width: StepInput = [tank.width, 'tank.load.width'];
  const depth: StepInput = [tank.waterDepth, 'tank.load.waterDepth'];
  switch (name) {
    case 'sides':
      return { n: [2], b: width, h: depth };
    case 'bottom':
      return { n: [1], b: length, h: width };
    default:
      return { n: [1], b: length, h: depth };
  }
}
