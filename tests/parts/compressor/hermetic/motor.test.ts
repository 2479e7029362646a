// The motor of a hermetic machine: what defines its best load holds there, losses and currents follow the theory of one-phase
// induction motors, worked values of the doc comments.

import { describe, expect, test } from 'vitest';
import {
  fluxRatio,
  magnetisingCurrent,
  motorBestPower,
  motorCurrent,
  motorLoad,
  motorLosses,
  motorPoint,
  motorSlip,
  settledShaftPower,
  stallingPower,
  stallingSlip,
} from '../../../../src/parts/compressor/hermetic/motor.ts';
import { machine } from './machines.ts';

const rated = machine.ratedSupply;
const best = motorBestPower(machine.motorPressure, machine.displacement, rated.frequency);

test('worked values', () => {
  expect(motorBestPower(3e5, 1e-5, 50)).toBeCloseTo(150, 9);
  expect(fluxRatio(230, 230, 60, 50)).toBeCloseTo(0.8333, 4);
  expect(motorLoad(120, 150, 50, 50)).toBeCloseTo(0.8, 12);
  expect(motorLosses(150, 0.75, 1, 1, 50, 50)).toBeCloseTo(50, 9);
  expect(motorSlip(0.03, 1.2, 0.9)).toBeCloseTo(0.04444, 5);
  expect(magnetisingCurrent(150, 0.75, 230, 0.8)).toBeCloseTo(0.652, 3);
  expect(motorCurrent(200, 230, 0.652, 1)).toBeCloseTo(1.087, 3);
  expect(settledShaftPower(88, 10, 3e-4)).toBeCloseTo(97.71, 2);
});

describe('law: at its best load and rated supply', () => {
  const point = motorPoint(machine, rated, best);

  test('the motor has the efficiency, power factor and slip that describe it', () => {
    expect(point.load).toBeCloseTo(1, 12);
    expect(best / point.power).toBeCloseTo(machine.motorEfficiency, 12);
    expect(point.power / (rated.voltage * point.current)).toBeCloseTo(machine.powerFactor, 12);
    expect(point.speed).toBeCloseTo(rated.frequency * (1 - machine.slip), 12);
  });

  test('no other load is better', () => {
    for (const share of [0.3, 0.7, 0.95, 1.05, 1.4, 2]) {
      const other = motorPoint(machine, rated, share * best);
      expect((share * best) / other.power).toBeLessThan(machine.motorEfficiency);
    }
  });
});

describe('law: other mains', () => {
  test('voltage in step with frequency keeps flux, slip and efficiency but for the losses of the faster field', () => {
    const faster = { frequency: 60, voltage: (230 * 60) / 50 };
    const point = motorPoint(machine, faster, (best * 60) / 50);
    expect(point.load).toBeCloseTo(1, 12);
    expect(point.speed / 60).toBeCloseTo(1 - machine.slip, 12);
    const half = (best * (1 / machine.motorEfficiency - 1)) / 2;
    expect(point.losses).toBeCloseTo(half * (60 / 50 + 1), 9);
  });

  test('less voltage slips more and stalls sooner: as its square', () => {
    const slipAt = (voltage: number) => 1 - motorPoint(machine, { frequency: 50, voltage }, best).speed / 50;
    expect(slipAt(115) / slipAt(230)).toBeCloseTo(4, 9);
    expect(stallingPower(machine, { frequency: 50, voltage: 115 }) / stallingPower(machine, rated)).toBeCloseTo(
      1 / 4,
      12,
    );
  });

  test('stalls at the slip that says so, with the largest load', () => {
    const most = stallingPower(machine, rated);
    expect(1 - motorPoint(machine, rated, most * (1 - 1e-9)).speed / 50).toBeCloseTo(stallingSlip, 6);
    expect(() => motorPoint(machine, rated, most * (1 + 1e-9))).toThrow(
      expect.objectContaining({ code: 'motorStalls' }),
    );
    expect(motorPoint({ ...machine, slip: 0 }, rated, 100 * best).speed).toBe(50);
  });

  test('friction that follows the speed and speed that follows the shaft power meet', () => {
    const slipPerPower = stallingSlip / stallingPower(machine, rated);
    const friction = machine.frictionPressure * machine.displacement * 50;
    const shaftPower = settledShaftPower(90, friction, slipPerPower);
    const { speed } = motorPoint(machine, rated, shaftPower);
    expect(90 + machine.frictionPressure * machine.displacement * speed).toBeCloseTo(shaftPower, 10);
  });
});
