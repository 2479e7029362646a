// Refuses a built tank that cannot be, naming the place: negative layers, an emissivity above 1, a share above 1, a lid larger
// than the opening.

import { conductivityLimits, emissivityLimits } from '../../matter/materials/index.ts';
import { InputError, requireNonNegative, requirePositive, requireWithin } from '../../numerics/index.ts';
import type { BuiltTank, Cover, Panel, Pipe, Vessel } from '../built-tank.ts';
import type { Stack, StackLayer } from '../stack/layers.ts';

/** @throws InputError naming the first place that cannot be. */
export function checkBuilt(tank: BuiltTank): void {
  requireWithin('tank.salinity', tank.salinity, 0, 0.12);
  if (tank.vessels.length === 0) throw new InputError('tank.load', tank.vessels, 'at least one vessel', 'missing');
  tank.vessels.forEach(checkVessel);
  tank.pipes.forEach(checkPipe);
  if (tank.outerFilmFactor !== undefined) requirePositive('outerFilmFactor', tank.outerFilmFactor);
  requireNonNegative('tank.load.airStones', tank.airFlow.airStones);
  requireNonNegative('tank.load.skimmerAir', tank.airFlow.skimmer);
  requireNonNegative('tank.load.waterChange', tank.exchange.changeFlow);
  if (tank.night !== undefined) {
    requireWithin('tank.load.night.share', tank.night.share, 0, 1);
    checkCover('tank.load.night', tank.night.cover);
  }
  if (tank.measuredOverModelled !== undefined) requirePositive('tank.load.meter', tank.measuredOverModelled);
  requireNonNegative('tank.load.pumpPower', tank.pumpHeat);
  requireNonNegative('tank.load.lightPower', tank.lightHeat);
  requireNonNegative('tank.load.ultravioletPower', tank.ultravioletHeat);
}

function checkVessel(vessel: Vessel): void {
  const path = vessel.name === 'tank' ? 'tank.load' : `tank.load.${vessel.name}`;
  requirePositive(`${path}.waterSurface`, vessel.waterSurface);
  requirePositive(`${path}.perimeter`, vessel.perimeter);
  requirePositive(`${path}.waterVolume`, vessel.waterVolume);
  requireNonNegative(`${path}.freeboard`, vessel.freeboard);
  if (vessel.evaporationFactor !== undefined) requirePositive(`${path}.evaporationFactor`, vessel.evaporationFactor);
  if (vessel.airSpeed !== undefined) requireNonNegative(`${path}.airSpeed`, vessel.airSpeed);
  for (const panel of vessel.panels) checkPanel(`${path}.${panel.name}`, panel);
  checkCover(path, vessel.cover);
  if (vessel.cover.kind === 'hood' && vessel.cover.area < vessel.waterSurface) {
    const expected = `at least the water surface under it, ${vessel.waterSurface} m²`;
    throw new InputError(`${path}.hood.area`, vessel.cover.area, expected, 'hoodTooSmall');
  }
}

function checkPanel(path: string, panel: Panel): void {
  requireNonNegative(`${path}.area`, panel.wetArea);
  requireNonNegative(`${path}.areaAboveWater`, panel.dryArea);
  checkStack(path, panel.stack);
  requireEmissivity(`${path}.emissivity`, panel.emissivity);
  const { exposure } = panel;
  if ('resistance' in exposure) requireNonNegative(`${path}.exposure.resistance`, exposure.resistance);
  if (exposure.kind === 'outdoors') requireNonNegative(`${path}.exposure.windSpeed`, exposure.windSpeed);
}

function checkCover(path: string, cover: Cover): void {
  if (cover.kind === 'none') return;
  checkStack(`${path}.lid`, cover.stack);
  requireEmissivity(`${path}.lidMaterial`, cover.emissivity);
  if (cover.kind === 'lid') requireWithin(`${path}.lidOpenShare`, cover.openShare, 0, 1);
  else {
    requirePositive(`${path}.hood.area`, cover.area);
    requireNonNegative(`${path}.hood.airFlow`, cover.airFlow);
  }
}

function checkStack(path: string, stack: Stack): void {
  stack.forEach((layer, index) => {
    checkLayer(layer.origin ?? `${path}.layers.${index}`, layer);
  });
}

function checkLayer(path: string, layer: StackLayer): void {
  if (layer.kind === 'resistance') requirePositive(`${path}.resistance`, layer.resistance);
  else requirePositive(`${path}.thickness`, layer.thickness);
  if (layer.kind === 'solid') {
    requireConductivity(`${path}.conductivity`, layer.conductivity);
    if (layer.bridge !== undefined) {
      requireWithin(`${path}.joint.share`, layer.bridge.share, 0, 1);
      requireConductivity(`${path}.joint.conductivity`, layer.bridge.conductivity);
    }
  }
  if ('emissivity' in layer && layer.emissivity !== undefined) {
    requireEmissivity(`${path}.emissivity`, layer.emissivity);
  }
  if (layer.kind === 'sealedGap') {
    if (layer.innerEmissivity !== undefined) requireEmissivity(`${path}.innerEmissivity`, layer.innerEmissivity);
    if (layer.outerEmissivity !== undefined) requireEmissivity(`${path}.outerEmissivity`, layer.outerEmissivity);
    if (layer.breadth !== undefined) requirePositive(`${path}.breadth`, layer.breadth);
  }
}

function checkPipe(pipe: Pipe, index: number): void {
  const path = `tank.load.pipes.${index}`;
  requirePositive(`${path}.length`, pipe.length);
  requirePositive(`${path}.outerDiameter`, pipe.outerDiameter);
  requirePositive(`${path}.wallThickness`, pipe.wallThickness);
  if (2 * pipe.wallThickness >= pipe.outerDiameter) {
    throw new InputError(`${path}.wallThickness`, pipe.wallThickness, 'less than half the outer diameter', 'noBore');
  }
  requireConductivity(`${path}.conductivity`, pipe.wallConductivity);
  if (pipe.insulation !== undefined) {
    requirePositive(`${path}.insulation.thickness`, pipe.insulation.thickness);
    const { insulation } = pipe;
    requireConductivity(`${path}.insulation.conductivity`, insulation.conductivity);
  }
  requireEmissivity(`${path}.emissivity`, pipe.emissivity);
}

function requireEmissivity(path: string, emissivity: number): void {
  requireWithin(path, emissivity, emissivityLimits.min, emissivityLimits.max);
}

function requireConductivity(path: string, conductivity: number): void {
  requireWithin(path, conductivity, conductivityLimits.min, conductivityLimits.max);
}
