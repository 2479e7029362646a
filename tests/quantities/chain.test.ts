// The chain behind a result on small workings written here: order, each step once, steps that rest on one another.

import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import { chainOf, type WorkingStep, workingStep } from '../../src/quantities/index.ts';

const step = (result: string, ...from: string[]): WorkingStep =>
  workingStep(result, 'any', 1, Object.fromEntries(from.map((origin, index) => [`x${index}`, [1, origin]])));

const workings = [
  step('power', 'design.speed', 'torque'),
  step('torque', 'force', 'design.arm'),
  step('force', 'design.mass'),
  step('lever', 'force', 'torque'),
  step('apart', 'design.colour'),
];

describe('chain', () => {
  test('holds each step once, after those it rests on, the result last', () => {
    const { steps } = chainOf(workings, 'lever');
    expect(steps.map(({ result }) => result)).toEqual(['force', 'torque', 'lever']);
  });

  test('begins with what no step gives, in the order first used', () => {
    expect(chainOf(workings, 'power').origins).toEqual(['design.speed', 'design.mass', 'design.arm']);
    expect(chainOf(workings, 'force').origins).toEqual(['design.mass']);
  });

  test('comes to an end where steps were found together', () => {
    const together = [
      step('flow', 'level', 'design.pump'),
      step('level', 'flow', 'design.height'),
      step('self', 'self'),
    ];
    expect(chainOf(together, 'flow').steps.map(({ result }) => result)).toEqual(['level', 'flow']);
    expect(chainOf(together, 'level').origins).toEqual(['design.pump', 'design.height']);
    expect(chainOf(together, 'self')).toEqual({ steps: [together[2]], origins: [] });
  });

  test('of nothing that anybody computed is refused, with the nearest name', () => {
    expect(() => chainOf(workings, 'torqe')).toThrow(InputError);
    expect(() => chainOf(workings, 'torqe')).toThrow(/did you mean torque/);
    try {
      chainOf(workings, 'design.mass');
    } catch (error) {
      expect((error as InputError).code).toBe('unknownResult');
    }
    expect.assertions(3);
  });
});
