// The coupled steady state: energy accounts that close, run time, backup, and whose room gets which heat.
// All expected numbers are hand sums of an energy balance.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import {
  EnergyAccountError,
  type MachineState,
  type PlantHardware,
  type PlantOrigins,
  plantFormulas,
  plantState,
  plantWorking,
  runFraction,
  severalMachines,
  severalMachinesWorking,
  systemCop,
  type TankHeat,
} from '../../src/plant/index.ts';
import type { WorkingStep } from '../../src/quantities/index.ts';
import { expectTraced } from '../traced-steps.ts';

const tank: TankHeat = { load: 120, sensibleToRoom: 80, latentToRoom: 50 };
const machine: MachineState = { condenserHeat: 180, heatTaken: 150, compressorPower: 50, shellHeat: 20 };
const hardware: PlantHardware = {
  sourceIsTankRoom: true,
  shellPlace: 'tankRoom',
  fanPower: 8,
  loopPumpPower: 5,
  loopPumpShareToWater: 0.8,
  controlsPower: 3,
  crankcaseHeaterPower: 0,
  sensibleShareOfHeatTaken: 1,
};

describe('plant state', () => {
  it('runs as long as the load asks, by hand: 180 + 0.8·5 = 184 W, 120/184 of the time', () => {
    const state = plantState(tank, machine, hardware);
    expect(state.heatReachingWaterRunning).toBeCloseTo(184, 12);
    expect(state.runFraction).toBeCloseTo(120 / 184, 12);
    expect(state.backupHeat).toBe(0);
    expect(state.electricity.total).toBeCloseTo((120 / 184) * 63 + 3, 12);
    expect(state.systemCop).toBeCloseTo(184 / 66, 12);
    expect(state.systemPowerRunning).toBe(66);
    expect(state.seasonCop).toBeCloseTo(120 / ((120 / 184) * 63 + 3), 12);
  });

  it('gives the room tank loss, shell, fan, pump and controls, and takes the source heat out of it', () => {
    const state = plantState(tank, machine, hardware);
    const x = 120 / 184;
    expect(state.roomHeat.net).toBeCloseTo(80 + x * (20 + 8 + 1 - 150) + 3, 12);
    const { net, ...lines } = state.roomHeat;
    expect(Object.values(lines).reduce((total, line) => total + line, 0)).toBeCloseTo(net, 12);
  });

  it('closes the room against the whole: electricity is all the room gains but vapour and other paths of the tank', () => {
    // Everything stands in one room, so all heat is the electricity plus what the tank had: net room heat
    // equals electricity + tank sensible − heat needed.
    const state = plantState(tank, machine, hardware);
    expect(state.roomHeat.net).toBeCloseTo(state.electricity.total + 80 - 120, 10);
  });

  it('leaves the tank room alone when source and shell are elsewhere', () => {
    const state = plantState(tank, machine, { ...hardware, sourceIsTankRoom: false, shellPlace: 'sourceRoom' });
    expect(state.roomHeat.takenBySource).toBeCloseTo(0, 12);
    expect(state.roomHeat.fromShell).toBe(0);
    expect(state.roomHeat.fromFan).toBe(0);
    expect(state.shellHeat.sourceRoom).toBeCloseTo((120 / 184) * 20, 12);
  });

  it('counts a shell in the source room for the tank room where the two are one', () => {
    const state = plantState(tank, machine, { ...hardware, shellPlace: 'sourceRoom' });
    expect(state.roomHeat.fromShell).toBeCloseTo((120 / 184) * 20, 12);
    expect(plantState(tank, machine, { ...hardware, shellPlace: 'outdoors' }).roomHeat.fromShell).toBe(0);
  });

  it('debits the room only the sensible part of the heat taken', () => {
    const dry = plantState(tank, machine, hardware);
    const wet = plantState(tank, machine, { ...hardware, sensibleShareOfHeatTaken: 0.75 });
    expect(wet.roomHeat.takenBySource).toBeCloseTo(0.75 * dry.roomHeat.takenBySource, 12);
  });

  it('says what is missing, never caps in silence', () => {
    const state = plantState({ ...tank, load: 220 }, machine, hardware);
    expect(state.runFraction).toBe(1);
    expect(state.backupHeat).toBeCloseTo(36, 12);
    expect(state.electricity.backupHeater).toBeCloseTo(36, 12);
    expect(state.seasonCop).toBeCloseTo(220 / (66 + 36), 12);
  });

  it('is a plain heater with standby where the machine has no operating point', () => {
    const state = plantState(tank, null, hardware);
    expect(state.machineRuns).toBe(false);
    expect(state.backupHeat).toBe(120);
    expect(state.electricity.total).toBe(123);
    expect(state.systemCop).toBeNull();
  });

  it('reports surplus heat of a tank that needs none', () => {
    const state = plantState({ ...tank, load: -15 }, machine, hardware);
    expect(state.runFraction).toBe(0);
    expect(state.surplusHeat).toBe(15);
    expect(state.heatNeeded).toBe(0);
    // No heat is asked for: there is nothing that standby electricity could be a fraction of.
    expect(state.seasonCop).toBeNull();
  });

  it('refuses a machine whose account is open by more than a billionth', () => {
    expect(() => plantState(tank, { ...machine, heatTaken: 150.000001 }, hardware)).toThrow(EnergyAccountError);
    expect(() => plantState(tank, { ...machine, heatTaken: 150 + 1e-8 }, hardware)).not.toThrow();
  });

  it('closes for any machine, load and arrangement', () => {
    const watts = fc.double({ min: 0.5, max: 3000, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 5000, noNaN: true }),
        watts,
        watts,
        share,
        share,
        fc.boolean(),
        fc.constantFrom('tankRoom', 'sourceRoom', 'outdoors'),
        (load, compressorPower, heatTaken, shellShare, pumpShare, sourceIsTankRoom, shellPlace) => {
          const shellHeat = shellShare * compressorPower;
          const any = { compressorPower, heatTaken, shellHeat, condenserHeat: heatTaken + compressorPower - shellHeat };
          const state = plantState({ load, sensibleToRoom: 60, latentToRoom: 30 }, any, {
            ...hardware,
            sourceIsTankRoom,
            shellPlace: shellPlace as PlantHardware['shellPlace'],
            loopPumpShareToWater: pumpShare,
          });
          expect(Math.abs(state.closure.machine)).toBeLessThan(1e-9);
          expect(Math.abs(state.closure.plant)).toBeLessThan(1e-9);
          expect(state.heatFromMachine + state.backupHeat).toBeCloseTo(Math.max(0, load), 6);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  it('heats the crankcase while it rests, into the room of the shell: by hand 20 W for 64/184 of the time', () => {
    const heated = { ...hardware, crankcaseHeaterPower: 20 };
    const state = plantState(tank, machine, heated);
    const resting = (64 / 184) * 20;
    expect(state.electricity.crankcaseHeater).toBeCloseTo(resting, 12);
    expect(state.electricity.total).toBeCloseTo((120 / 184) * 63 + 3 + resting, 12);
    expect(state.roomHeat.net).toBeCloseTo(plantState(tank, machine, hardware).roomHeat.net + resting, 12);
    expect(state.systemPowerRunning).toBe(66);
    const outdoors = plantState(tank, machine, { ...heated, shellPlace: 'outdoors' });
    expect(outdoors.roomHeat.fromCrankcaseHeater).toBe(0);
    expect(plantState(tank, null, heated).electricity.total).toBeCloseTo(123 + 20, 12);
  });

  it('adds machines alike: three of them bring 3 · 180 + 0.8 · 5 = 544 W and their account closes', () => {
    const three = severalMachines(machine, 3);
    expect(three).toEqual({ condenserHeat: 540, heatTaken: 450, compressorPower: 150, shellHeat: 60 });
    const state = plantState({ ...tank, load: 400 }, three, hardware);
    expect(state.heatReachingWaterRunning).toBeCloseTo(544, 12);
    expect(state.runFraction).toBeCloseTo(400 / 544, 12);
    expect(Math.abs(state.closure.plant)).toBeLessThan(1e-9);
    expect(() => severalMachines(machine, 1.5)).toThrow(/machine.count/);
    expect(() => severalMachines(machine, 0)).toThrow(InputError);
  });

  it('bears a shell that is colder than the air around it', () => {
    const warmed = { condenserHeat: 205, heatTaken: 150, compressorPower: 50, shellHeat: -5 };
    const state = plantState(tank, warmed, hardware);
    expect(state.shellHeat.tankRoom).toBeCloseTo((120 / 209) * -5, 12);
    expect(Math.abs(state.closure.plant)).toBeLessThan(1e-9);
  });

  it('names the impossible input', () => {
    expect(() => plantState(tank, machine, { ...hardware, loopPumpShareToWater: 1.2 })).toThrow(/loopPumpShareToWater/);
    expect(() => plantState({ ...tank, load: Number.NaN }, machine, hardware)).toThrow(InputError);
    expect(() => runFraction(100, 0)).toThrow(/heatReachingWater/);
    expect(() => systemCop(100, 0, 0, 0, 0)).toThrow(/compressorPower/);
  });
});

describe('plant working', () => {
  const origins: PlantOrigins = {
    Q_c: 'given.Q_c',
    phi: 'given.phi',
    P_p: 'given.P_p',
    L: 'given.L',
    P_comp: 'given.P_comp',
    P_fan: 'given.P_fan',
    P_ctl: 'given.P_ctl',
    P_cr: 'given.P_cr',
    Q_tank: 'given.Q_tank',
    P_sh: 'given.P_sh',
    Q_e: 'given.Q_e',
    shellPlace: 'given.shellPlace',
    sourceKind: 'given.sourceKind',
  };

  const traced = (steps: readonly WorkingStep[], unlinked: readonly string[]) =>
    expectTraced(steps, plantFormulas, (origin) => origin.startsWith('given.'), unlinked);

  it('repeats each result from its own inputs and links them', () => {
    const state = plantState(tank, machine, hardware);
    const steps = plantWorking(tank, machine, hardware, state, 'coldestSpell', origins);
    const values = traced(steps, ['s']);
    expect(Object.fromEntries(values)).toEqual({
      'coldestSpell.heatNeeded': state.heatNeeded,
      'coldestSpell.heatReachingWater': state.heatReachingWaterRunning,
      'coldestSpell.runFraction': state.runFraction,
      'coldestSpell.margin': 184 - 120,
      'coldestSpell.systemPower': state.systemPowerRunning,
      'coldestSpell.systemCop': state.systemCop,
      'coldestSpell.heatFromMachine': state.heatFromMachine,
      'coldestSpell.heatTaken': state.heatTakenFromSource,
      'coldestSpell.backupHeat': state.backupHeat,
      'coldestSpell.restingHeat': 0,
      'coldestSpell.electricity': state.electricity.total,
      'coldestSpell.pumpHeatToRoom': expect.closeTo(1, 12),
      'coldestSpell.sensibleHeatTaken': 150,
      'coldestSpell.roomNetHeat': state.roomHeat.net,
    });
    const sources = Object.fromEntries(steps.map((step) => [step.result, step.from]));
    expect(sources['coldestSpell.runFraction']).toEqual({ L: 'given.L', Q_w: 'coldestSpell.heatReachingWater' });
  });

  it('shows how several machines were made of one', () => {
    const of = { condenserHeat: 'given.a', heatTaken: 'given.b', compressorPower: 'given.c', shellHeat: 'given.d' };
    const steps = severalMachinesWorking(machine, 3, { count: 'given.count', machine: of }, 'plant.all');
    expect(Object.fromEntries(traced(steps, []))).toEqual({
      'plant.all.condenserHeat': 540,
      'plant.all.heatTaken': 450,
      'plant.all.compressorPower': 150,
      'plant.all.shellHeat': 60,
    });
  });

  it('names the choice that keeps shell, fan and source out of the room', () => {
    const elsewhere = { ...hardware, sourceIsTankRoom: false, shellPlace: 'outdoors' as const };
    const steps = plantWorking(tank, machine, elsewhere, plantState(tank, machine, elsewhere), 'x', origins);
    traced(steps, []);
    const room = steps.find((step) => step.result === 'x.roomNetHeat')!;
    expect(room.inputs).toMatchObject({ P_sh: 0, P_f: 0, Q_taken: 0 });
    expect(room.from).toMatchObject({
      P_sh: 'given.shellPlace',
      P_f: 'given.sourceKind',
      Q_taken: 'given.sourceKind',
    });
  });

  it('shows a machine without an operating point as a plain heater with standby', () => {
    const state = plantState(tank, null, hardware);
    const values = traced(plantWorking(tank, null, hardware, state, 'x', origins), [
      'x',
      'Q_w',
      'Q_e',
      'P_comp',
      'P_sh',
      'Q_taken',
    ]);
    expect(values.get('x.backupHeat')).toBe(120);
    expect(values.get('x.electricity')).toBe(123);
    expect(values.has('x.systemCop')).toBe(false);
  });
});
