// The five standings, and which comes first where several apply.

import { expect, test } from 'vitest';
import { judge, type VerdictInput } from '../../src/assess/verdict.ts';
import type { Band, Finding } from '../../src/quantities/index.ts';

const band = (low: number, high: number): Band => ({ low, likely: (low + high) / 2, high });
const stop: Finding = {
  code: 'x',
  severity: 'stop',
  subject: 'person',
  facts: {},
  source: 'test',
  remedy: '',
  needsLicensedPerson: true,
};
const carries: VerdictInput = {
  findings: [{ ...stop, severity: 'look' }],
  heatDelivered: band(400, 500),
  tankLoad: band(200, 300),
  lifeCostThisLoop: 100,
  lifeCostCheapestOther: 150,
};

test('carries the load when the whole delivered range is above the whole load range and nothing is cheaper', () => {
  expect(judge(carries)).toBe('carriesLoad');
});

test('is not worth it when another scenario costs less over its life', () => {
  expect(judge({ ...carries, lifeCostThisLoop: 151 })).toBe('notWorthIt');
});

test('is uncertain when the ranges overlap, at either edge', () => {
  expect(judge({ ...carries, heatDelivered: band(299, 500) })).toBe('uncertain');
  expect(judge({ ...carries, heatDelivered: band(100, 201) })).toBe('uncertain');
  expect(judge({ ...carries, heatDelivered: band(300, 500) })).toBe('carriesLoad');
});

test('falls short when the top of what is delivered is below the bottom of the load', () => {
  expect(judge({ ...carries, heatDelivered: band(100, 199) })).toBe('fallsShort');
});

test('a stop finding comes before everything else', () => {
  expect(judge({ ...carries, findings: [stop] })).toBe('doNotBuild');
  expect(judge({ ...carries, findings: [stop], heatDelivered: band(100, 150) })).toBe('doNotBuild');
});
