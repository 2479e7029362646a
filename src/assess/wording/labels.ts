// Plain names of loss paths, scenarios and inputs, as tables, pictures and running text show them.

import { insideSentence } from '../../quantities/index.ts';
import type { ScenarioAccount } from '../assessment/assessment.ts';

/** What leaves by the water and its cover, by drawn air, by fresh water; panels of the known shapes. */
const partLabels: Readonly<Record<string, string>> = {
  evaporation: 'evaporation',
  surfaceConvection: 'air over the water',
  surfaceRadiation: 'radiation from the water',
  lid: 'through the lid',
  freeboard: 'panes above the water',
  freeboardOutdoors: 'panes above the water, to outdoors',
  freeboardGround: 'panes above the water, to the ground',
  hoodAir: 'warming the air of the hood',
  hoodVapour: 'vapour in the air of the hood',
  hoodWalls: 'through the hood',
  makeUpWater: 'warming make-up water',
  waterChange: 'warming changed water',
  airStonesVapour: 'vapour in the air of air stones',
  airStones: 'warming the air of air stones',
  skimmerVapour: 'vapour in the air of the skimmer',
  skimmer: 'warming the air of the skimmer',
  wallsAndSurface: 'walls and surface',
};

const panelLabels: Readonly<Record<string, string>> = {
  front: 'front pane',
  back: 'back pane',
  left: 'left end',
  right: 'right end',
  side: 'round wall',
  recessBack: 'back of the recess',
  recessSide: 'side of the recess',
  bottom: 'bottom',
  lid: 'lid',
  hood: 'hood',
};

const vesselLabels: Readonly<Record<string, string>> = {
  tank: 'display tank',
  sump: 'sump',
  refuge: 'refuge',
  overflow: 'overflow',
};

/** 'display tank', 'sump', … */
export function vesselLabel(vessel: string): string {
  return vesselLabels[vessel] ?? vessel;
}

/** 'front pane'; 'bottom of the sump'; a panel that the person named by that name. */
export function panelLabel(vessel: string, panel: string): string {
  const own = panelLabels[panel] ?? panel;
  return vessel === 'tank' ? own : `${own} of the ${vesselLabel(vessel)}`;
}

/** What stands before a path of the whole system's pipes. */
const pipes = 'pipes.';

/** A way heat leaves: 'evaporation', 'evaporation, sump', 'front pane', 'pipe “return”'. */
export function pathLabel(path: string): string {
  if (path.startsWith(pipes)) return pipeLabel(path.slice(pipes.length));
  const dot = path.indexOf('.');
  const vessel = dot > 0 ? path.slice(0, dot) : 'tank';
  if (vesselLabels[vessel] === undefined) return path;
  const part = path.slice(dot + 1);
  const label = partLabels[part] ?? panelLabels[part] ?? part;
  return vessel === 'tank' ? label : `${label}, ${vesselLabel(vessel)}`;
}

/** Pipes without a name are counted. */
function pipeLabel(name: string): string {
  const counted = /^pipe(\d+)$/.exec(name);
  return counted === null ? `pipe “${name}”` : `pipe ${counted[1]}`;
}

const scenarioLabels: Readonly<Record<ScenarioAccount['scenario'], string>> = {
  plainHeater: 'a plain heater on the tank as it is',
  insulationOnly: 'a plain heater on the wrapped tank',
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
  'machine.compressor.clearanceRatio': 'the clearance ratio of the compressor',
  'machine.compressor.suctionVelocity': 'how narrow the suction path of the compressor is',
  'machine.compressor.dischargeVelocity': 'how narrow the discharge path of the compressor is',
  'machine.compressor.suctionHeatingUnits': 'how much the gas is warmed before it enters the cylinder',
  'machine.compressor.dischargeCoolingUnits': 'how much the discharge gas warms the shell',
  'machine.compressor.leakageRatio': 'how much gas leaks back inside the compressor',
  'machine.compressor.proportionalLoss': 'how far the compressor’s losses grow with its work',
  'machine.compressor.frictionPressure': 'the constant losses of the compressor',
  'machine.compressor.motorEfficiency': 'the efficiency of the compressor’s motor',
  'machine.compressor.motorPressure': 'how strong the compressor’s motor is for its size',
  'machine.compressor.slip': 'how far the compressor’s motor slows under load',
  'machine.compressor.powerFactor': 'the power factor of the compressor’s motor',
  'machine.compressor.shellConductance': 'how easily the compressor’s shell gives off its heat',
  'engine.machineFlowDoubt': 'how far the model of the compressor is off in flow',
  'engine.machinePowerDoubt': 'how far the model of the compressor is off in power',
  'exchangers.evaporatorApproach': 'how far below the source’s air the refrigerant evaporates',
  'exchangers.condenserApproach': 'how far above the water the refrigerant condenses',
};

/** An input in the middle of a sentence: "the filling factor of the compressor". */
export function inputPhrase(path: string, label: string): string {
  return phrases[path] ?? `the ${insideSentence(label)}`;
}
