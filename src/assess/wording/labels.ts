// Plain names of loss paths, scenarios and inputs, as tables, pictures and running text show them.

import { insideSentence } from '../../quantities/index.ts';
import type { ScenarioAccount } from '../assessment.ts';

const pathLabels: Readonly<Record<string, string>> = {
  evaporation: 'evaporation',
  surfaceConvection: 'air over the water',
  surfaceRadiation: 'radiation from the water',
  lid: 'through the lid',
  freeboard: 'panes above the water',
  front: 'front pane',
  back: 'back pane',
  left: 'left end',
  right: 'right end',
  bottom: 'bottom',
  makeUpWater: 'warming make-up water',
  airStonesVapour: 'vapour in blown air',
  airStones: 'warming blown air',
  wallsAndSurface: 'walls and surface',
};

export function pathLabel(path: string): string {
  return pathLabels[path] ?? path;
}

const scenarioLabels: Readonly<Record<ScenarioAccount['scenario'], string>> = {
  plainHeater: 'a plain heater',
  thisLoop: 'this loop',
  certifiedHeatPump: 'a complete certified heat pump',
};

export function scenarioLabel(scenario: ScenarioAccount['scenario']): string {
  return scenarioLabels[scenario];
}

/** Inputs whose label is too short, or a question, when it stands in a sentence. */
const phrases: Readonly<Record<string, string>> = {
  'place.altitude': 'the height of the place above the sea',
  'room.temperature': 'the usual temperature of the room',
  'room.coldest': 'how cold the room gets',
  'room.warmest': 'how warm the room gets in summer',
  'room.monthsHeated': 'for how many months the room is heated',
  'tank.load.energy': 'what the heater used',
  'tank.load.duration': 'how long the heater was measured',
  'tank.load.roomTemperature': 'how warm the room was while measuring',
  'tank.load.waterTemperature': 'how warm the water was while measuring',
  'tank.load.volume': 'how much water the tank holds',
  'tank.load.evaporationShare': 'how much of the loss leaves as vapour',
  'tank.load.evaporationFactor': 'how much water evaporates',
  'tank.load.lidOpenShare': 'how much of the surface the lid leaves open',
  'tank.load.lightHours': 'how long the lights are on',
  'tank.load.length': 'the length of the tank',
  'tank.load.width': 'the width of the tank',
  'tank.load.height': 'the height of the tank',
  'engine.outerFilmFactor': 'how easily the panes give their heat to the room',
  'source.temperature': 'how warm it is where the heat comes from',
  'source.coldest': 'how cold it gets where the heat comes from',
  'source.warmest': 'how warm it gets in summer where the heat comes from',
  'machine.compressor.displacement': 'the volume the compressor sweeps per revolution',
  'machine.compressor.speed': 'how fast the compressor’s shaft turns',
  'machine.compressor.clearanceRatio': 'the clearance ratio of the compressor',
  'machine.compressor.reexpansionExponent': 'the exponent of re-expansion in the compressor',
  'machine.compressor.fillingFactor': 'the filling factor of the compressor',
  'machine.compressor.frictionPressure': 'the constant losses of the compressor',
  'machine.compressor.shellHeatShare': 'how much of the power leaves through the compressor’s shell',
  'machine.compressor.compressionEfficiency': 'the compression efficiency of the compressor',
  'machine.compressor.capacity': 'the rated capacity of the compressor',
  'machine.compressor.power': 'the rated power of the compressor',
  'exchangers.evaporatorApproach': 'how far below the source’s air the refrigerant evaporates',
  'exchangers.condenserApproach': 'how far above the water the refrigerant condenses',
};

/** An input in the middle of a sentence: "the filling factor of the compressor". */
export function inputPhrase(path: string, label: string): string {
  return phrases[path] ?? `the ${insideSentence(label)}`;
}
