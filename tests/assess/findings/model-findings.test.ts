// What the models leave out is said beside the result that it shapes.

import { expect, test } from 'vitest';
import { type Assessment, assessDesign } from '../../../src/assess/index.ts';
import { changedDesign, demoTexts } from '../../designs.ts';

function assessed(demo: string): Assessment {
  const outcome = assessDesign(demoTexts[demo]!, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

test.each([
  ['reef-in-the-study.json', 'the other room', /50 to 100 W\/K/],
  ['propane-in-the-cabinet.json', 'the room of the tank', /charge the room/],
])('%s: what the machine takes out of %s on average is taken not to cool it', (demo, place, remedy) => {
  const { findings, flows } = assessed(demo);
  const held = findings.find(({ code }) => code === 'surroundingsHeld');
  expect(held?.facts.place).toEqual({ word: place });
  expect(held?.facts.heatTaken).toEqual({ value: flows.heatTaken * flows.runFraction, quantity: 'power' });
  expect(held?.remedy).toMatch(remedy);
});

test('that pumps and lights are in none of the accounts', () => {
  expect(assessed('reef-in-the-study.json').findings.map(({ code }) => code)).toContain('accountsLeaveOut');
});

test('that a blend glides, by how much, and from where its approaches count', () => {
  const outcome = assessDesign(
    changedDesign(demoTexts['reef-in-the-study.json']!, { 'machine.refrigerant': 'R407C' }),
    'metric',
  );
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { findings, operating } = outcome.assessment;
  const glide = findings.find(({ code }) => code === 'glideApproximated');
  expect(glide?.facts.condensingGlide).toEqual({
    value: operating.blend!.condensingGlide.likely,
    quantity: 'temperatureDifference',
  });
  expect(glide?.remedy).toMatch(/from dew in the evaporator and from bubble in the condenser/);
  const single = assessed('reef-in-the-study.json');
  expect(single.findings.map(({ code }) => code)).not.toContain('glideApproximated');
  expect(single.operating.blend).toBeNull();
});
