// Formula records of the coupled steady state, and the steps that show how one state was computed.

import type { Formula, FormulaValues, WorkingStep } from '../quantities/index.ts';
import { backupHeat, heatReachingWater, roomNetHeat, runFraction, systemCop, systemPower } from './delivery.ts';
import type { MachineState, PlantHardware, PlantState, TankHeat } from './state.ts';

const watt = (meaning: string) => ({ meaning, unit: 'W' });
const share = (meaning: string) => ({ meaning, unit: '1' });
const file = 'src/plant/delivery.ts';

export const plantFormulas: readonly Formula[] = [
  {
    id: 'plant.heatReachingWater',
    title: 'Heat reaching the tank water while the machine runs',
    result: { symbol: 'Q_w', ...watt('heat reaching the water') },
    expression: 'Q_c + phi * P_p',
    symbols: {
      Q_c: watt('heat leaving the refrigerant on the tank side'),
      phi: share('share of the loop pump electricity that ends in the water'),
      P_p: watt('electricity of the loop pump'),
    },
    source: 'energy balance',
    validity: 'steady running; pipes of the intermediate loop taken as lossless',
    file,
    compute: (v) => heatReachingWater(v.Q_c!, v.P_p!, v.phi!),
    examples: [
      { Q_c: 182, phi: 0.8, P_p: 5.5 },
      { Q_c: 640, phi: 0.65, P_p: 9 },
    ],
  },
  {
    id: 'plant.runFraction',
    title: 'Share of the time the machine runs',
    result: { symbol: 'x', ...share('share of the time the machine runs') },
    expression: 'min(1, max(0, L) / Q_w)',
    symbols: { L: watt('heat the tank needs'), Q_w: watt('heat reaching the water while running') },
    source: "energy balance of a thermostat's cycle",
    validity: 'no loss at starts',
    file,
    compute: (v) => runFraction(v.L!, v.Q_w!),
    examples: [
      { L: 121, Q_w: 186 },
      { L: 230, Q_w: 186 },
    ],
  },
  {
    id: 'plant.backupHeat',
    title: 'Resistance heat needed on top of the machine',
    result: { symbol: 'Q_b', ...watt('backup heat') },
    expression: 'max(0, L - Q_w)',
    symbols: { L: watt('heat the tank needs'), Q_w: watt('heat reaching the water while running') },
    source: 'energy balance',
    validity: 'steady state',
    file,
    compute: (v) => backupHeat(v.L!, v.Q_w!),
    examples: [
      { L: 230, Q_w: 186 },
      { L: 410.5, Q_w: 377.2 },
    ],
  },
  {
    id: 'plant.systemPower',
    title: 'Electricity of the whole system while the machine runs',
    result: { symbol: 'P_sys', ...watt('electricity of the whole system') },
    expression: 'P_comp + P_fan + P_p + P_ctl',
    symbols: {
      P_comp: watt('electricity of the compressor'),
      P_fan: watt('electricity of the fan'),
      P_p: watt('electricity of the loop pump'),
      P_ctl: watt('electricity of controls'),
    },
    source: 'definition of this project',
    validity: 'while the machine runs',
    file,
    compute: (v) => systemPower(v.P_comp!, v.P_fan!, v.P_p!, v.P_ctl!),
    examples: [
      { P_comp: 52, P_fan: 8, P_p: 5.5, P_ctl: 3 },
      { P_comp: 231, P_fan: 14, P_p: 9, P_ctl: 2.5 },
    ],
  },
  {
    id: 'plant.systemCop',
    title: 'System coefficient of performance while running',
    result: { symbol: 'COP_sys', ...share('heat reaching the water over all electricity of the heat pump') },
    expression: 'Q_w / (P_comp + P_fan + P_p + P_ctl)',
    symbols: {
      Q_w: watt('heat reaching the water'),
      P_comp: watt('electricity of the compressor'),
      P_fan: watt('electricity of the fan'),
      P_p: watt('electricity of the loop pump'),
      P_ctl: watt('electricity of controls'),
    },
    source: 'definition of this project: every part that exists only for the heat pump counts',
    validity: 'while running; standby and backup are in the season figure',
    file,
    compute: (v) => systemCop(v.Q_w!, v.P_comp!, v.P_fan!, v.P_p!, v.P_ctl!),
    examples: [
      { Q_w: 186, P_comp: 52, P_fan: 8, P_p: 5, P_ctl: 3 },
      { Q_w: 640, P_comp: 210, P_fan: 22, P_p: 9, P_ctl: 4 },
    ],
  },
  {
    id: 'plant.roomNetHeat',
    title: "Net sensible heat into the tank's room",
    result: { symbol: 'Q_room', ...watt('net sensible heat into the room; negative chills it') },
    expression: 'Q_tank + x * (P_sh + P_f + Q_pump - Q_taken) + P_ctl',
    symbols: {
      Q_tank: watt('sensible loss of the tank'),
      x: share('share of the time the machine runs'),
      P_sh: watt('shell heat while running, 0 where the shell stands elsewhere'),
      P_f: watt("fan electricity, 0 where the fan blows another room's air"),
      Q_pump: watt('loop pump heat that misses the water'),
      Q_taken: watt("sensible part of the heat taken from this room's air, 0 for another source"),
      P_ctl: watt('electricity of controls, on all the time'),
    },
    source: 'energy balance; vapour is not counted',
    validity: 'room temperature held by what heats or airs the room',
    file,
    compute: (v) => roomNetHeat(v.Q_tank!, v.x!, v.P_sh!, v.P_f!, v.Q_pump!, v.Q_taken!, v.P_ctl!),
    examples: [
      { Q_tank: 90, x: 0.65, P_sh: 15, P_f: 8, Q_pump: 1.2, Q_taken: 130, P_ctl: 3 },
      { Q_tank: 240, x: 0.9, P_sh: 70, P_f: 22, Q_pump: 3, Q_taken: 430, P_ctl: 4 },
    ],
  },
];

/** Where the numbers a state was made from came from: a design path or the name of another step, by symbol. */
export type PlantOrigins = Readonly<Record<string, string>>;

/**
 * The steps behind a state, for the paper that shows the working.
 * @param prefix   put before each result's name: 'coldestSpell' gives 'coldestSpell.runFraction'
 * @param origins  by symbol (Q_c, phi, P_p, L, P_comp, P_fan, P_ctl, Q_tank, P_sh, Q_e); a symbol left out is not linked
 * Empty where the machine has no operating point.
 */
export function plantWorking(
  tank: TankHeat,
  machine: MachineState | null,
  hardware: PlantHardware,
  state: PlantState,
  prefix: string,
  origins: PlantOrigins = {},
): readonly WorkingStep[] {
  if (machine === null || state.heatReachingWaterRunning === null || state.systemCop === null) return [];
  if (state.systemPowerRunning === null) return [];
  const reaching = state.heatReachingWaterRunning;
  const parts = { P_comp: machine.compressorPower, P_fan: hardware.fanPower, P_p: hardware.loopPumpPower };
  const fromState = { ...origins, Q_w: `${prefix}.heatReachingWater`, x: `${prefix}.runFraction` };
  const step = (name: string, formula: string, inputs: FormulaValues, value: number): WorkingStep => ({
    result: `${prefix}.${name}`,
    formula,
    inputs,
    from: linksFor(inputs, fromState),
    value,
  });
  const x = state.runFraction;
  // Room lines are means over time; the formula wants them while running. A machine that never runs adds nothing.
  const running = (mean: number) => (x > 0 ? mean / x : 0);
  return [
    step(
      'heatReachingWater',
      'plant.heatReachingWater',
      { Q_c: machine.condenserHeat, phi: hardware.loopPumpShareToWater, P_p: hardware.loopPumpPower },
      reaching,
    ),
    step('runFraction', 'plant.runFraction', { L: tank.load, Q_w: reaching }, x),
    step('backupHeat', 'plant.backupHeat', { L: tank.load, Q_w: reaching }, state.backupHeat),
    step(
      'systemPower',
      'plant.systemPower',
      { ...parts, P_ctl: hardware.controlsPower },
      state.systemPowerRunning,
    ),
    step('systemCop', 'plant.systemCop', { Q_w: reaching, ...parts, P_ctl: hardware.controlsPower }, state.systemCop),
    step(
      'roomNetHeat',
      'plant.roomNetHeat',
      {
        Q_tank: tank.sensibleToRoom,
        x,
        P_sh: running(state.roomHeat.fromShell),
        P_f: running(state.roomHeat.fromFan),
        Q_pump: running(state.roomHeat.fromLoopPump),
        Q_taken: running(-state.roomHeat.takenBySource),
        P_ctl: hardware.controlsPower,
      },
      state.roomHeat.net,
    ),
  ];
}

function linksFor(inputs: FormulaValues, origins: PlantOrigins): Readonly<Record<string, string>> {
  const links: Record<string, string> = {};
  for (const symbol of Object.keys(inputs)) {
    const origin = origins[symbol];
    if (origin !== undefined) links[symbol] = origin;
  }
  return links;
}
