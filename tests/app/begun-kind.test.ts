// A tank described panel by panel begins with the panels it has as a shape: with their layers, and with the same heat.

import { expect, test } from 'vitest';
import { begunKind, firstItemFields, withFirstItem } from '../../src/app/fields/begun-kind.ts';
import { itemsOf, parseDesign, serialiseDesign, setKind } from '../../src/design/index.ts';
import { exampleText, replyTo } from './answers.ts';

const file = 'frag-tank-cold-garage.json';

function documentOf(text: string) {
  const outcome = parseDesign(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.document;
}

function tankOf(text: string) {
  const reply = replyTo(text);
  if (reply.kind !== 'assess' || !reply.ok) throw new Error(JSON.stringify(reply));
  return reply.answer.assessment.tank;
}

test('sizes become panels that lose the same heat, within what is rounded away', () => {
  const start = documentOf(exampleText(file));
  const tank = tankOf(exampleText(file));
  const outcome = setKind(start, 'tank.load', 'panels', begunKind(start, 'tank.load', 'panels', tank));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const own = tank.panels.filter(({ vessel, facing }) => vessel === 'tank' && facing !== 'top');
  expect(itemsOf(outcome.document, 'tank.load.panels')).toHaveLength(own.length);
  const panels = tankOf(serialiseDesign(outcome.document));
  expect(panels.loss.likely / tank.loss.likely).toBeGreaterThan(0.98);
  expect(panels.loss.likely / tank.loss.likely).toBeLessThan(1.02);
});

test('a measured tank begins with the first panel that is asked for', () => {
  const start = documentOf(exampleText('reef-in-the-study.json'));
  expect(begunKind(start, 'tank.load', 'panels', tankOf(exampleText('reef-in-the-study.json')))).toEqual({});
  const paths = firstItemFields('tank.load', 'panels').map(({ path }) => path.split('.').at(-1));
  expect(paths).toEqual(['name', 'facing', 'area']);
  const texts = { 'tank.load.panels.*.name': 'front', 'tank.load.panels.*.facing': 'side' };
  expect(withFirstItem('tank.load', 'panels', texts)).toEqual(texts);
  const whole = withFirstItem('tank.load', 'panels', { ...texts, 'tank.load.panels.*.area': '0.6 m2' });
  expect(whole['tank.load.panels']).toEqual([{ name: 'front', facing: 'side', area: '0.6 m2' }]);
  expect(firstItemFields('tank.load', 'cylinder')).toEqual([]);
});
