// Plain names of loss paths and scenarios, as tables and pictures show them.

import type { PathName } from '../../tank/index.ts';
import type { ScenarioAccount } from '../assessment.ts';

const pathLabels: Readonly<Record<PathName, string>> = {
  evaporation: 'evaporation',
  surfaceConvection: 'air over the water',
  surfaceRadiation: 'radiation from the water',
  lid: 'through the lid',
  freeboard: 'panes above the water',
  front: 'front pane',
  back: 'back pane',
  sides: 'the two ends',
  bottom: 'bottom',
  makeUpWater: 'warming make-up water',
  airStonesVapour: 'vapour in blown air',
  airStones: 'warming blown air',
  wallsAndSurface: 'walls and surface',
};

export function pathLabel(path: PathName): string {
  return pathLabels[path];
}

const scenarioLabels: Readonly<Record<ScenarioAccount['scenario'], string>> = {
  plainHeater: 'a plain heater',
  thisLoop: 'this loop',
  certifiedHeatPump: 'a complete certified heat pump',
};

export function scenarioLabel(scenario: ScenarioAccount['scenario']): string {
  return scenarioLabels[scenario];
}
