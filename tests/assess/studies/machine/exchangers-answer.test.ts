// Exchangers of given size answer a changed machine: each passes its heat with a difference in proportion, the loop is that of these
// differences, and a change that leads nowhere is told.

import { describe, expect, test } from 'vitest';
import { type Approaches, exchangersAnswer } from '../../../../src/assess/studies/machine/exchangers-answer.ts';
import { type OperatingPoint, operatingPoint } from '../../../../src/loop/index.ts';
import { refrigerant } from '../../../../src/matter/refrigerants/index.ts';
import { ConvergenceError } from '../../../../src/numerics/index.ts';
import { ofAnotherSize } from '../../../../src/parts/compressor/index.ts';
import { machineFor } from '../../../loop/running-machine.ts';

const fluid = refrigerant('R134a');
const machine = machineFor('R134a', {});
const temperatures = { sourceTemperature: 285, waterTemperature: 298.65 };
const held: Approaches = { evaporatorApproach: 9, condenserApproach: 10 };

function loop(approaches: Approaches, size = 1, suctionPressureLimit?: number): OperatingPoint {
  const limit = suctionPressureLimit === undefined ? {} : { suctionPressureLimit };
  const sized = ofAnotherSize(machine, size);
  return operatingPoint({
    fluid,
    machine: sized,
    ...temperatures,
    ...approaches,
    superheat: 6,
    subcooling: 3,
    ...limit,
  });
}

const before = loop(held);

/** Differences that a point works with [K]. */
function differences(point: OperatingPoint): Approaches {
  return {
    evaporatorApproach: temperatures.sourceTemperature - point.evaporating.temperature,
    condenserApproach: point.condensing.temperature - temperatures.waterTemperature,
  };
}

const changes: readonly (readonly [string, (approaches: Approaches) => OperatingPoint, number])[] = [
  ['nothing', (approaches) => loop(approaches), 1],
  ['half the machine', (approaches) => loop(approaches, 0.5), 1],
  ['twice the machine', (approaches) => loop(approaches, 2), 1],
  ['a valve', (approaches) => loop(approaches, 1, 0.7 * before.evaporating.pressure), 1],
  ['twice the condenser', (approaches) => loop(approaches), 2],
];

describe('law', () => {
  test.each(changes)('%s: heat over difference stays, over the surface', (_name, settle, surface) => {
    const after = exchangersAnswer(settle, before, held, { evaporator: 1, condenser: surface });
    const [was, is] = [differences(before), differences(after)];
    const evaporator = (after.heatTaken / is.evaporatorApproach) * (was.evaporatorApproach / before.heatTaken);
    const condenser = (after.heatDelivered / is.condenserApproach) * (was.condenserApproach / before.heatDelivered);
    expect(Math.abs(evaporator - 1)).toBeLessThan(1e-6);
    expect(Math.abs(condenser / surface - 1)).toBeLessThan(1e-6);
  });

  test('with nothing changed the point is the one before', () => {
    expect(exchangersAnswer((approaches) => loop(approaches), before, held)).toEqual(before);
  });

  test('twice the machine gives less than twice the heat, half of it more than half', () => {
    const heat = (size: number) => exchangersAnswer((at) => loop(at, size), before, held).heatDelivered;
    expect(heat(2)).toBeLessThan(1.9 * before.heatDelivered);
    expect(heat(0.5)).toBeGreaterThan(0.52 * before.heatDelivered);
  });
});

test('a loop that jumps finds no place', () => {
  let turn = 0;
  const jumping = (approaches: Approaches): OperatingPoint => {
    turn++;
    return { ...loop(approaches), heatTaken: before.heatTaken * (turn % 2 === 0 ? 2 : 0.5) };
  };
  expect(() => exchangersAnswer(jumping, before, held)).toThrow(ConvergenceError);
});
