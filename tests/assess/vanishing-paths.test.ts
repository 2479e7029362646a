// A path of heat that exists at the likely value and not at an end of a range: its watts there are 0, never "not a number".

import { expect, test } from 'vitest';
import { assessDesign, assessTankLoad } from '../../src/assess/index.ts';
import { demoTexts } from '../designs.ts';

// Filled to the rim at the upper end: there are no panes above the water then.
const design = JSON.parse(demoTexts['propane-in-the-cabinet.json']!);
design.tank.load.waterDepth = '50 to 60 cm';
const text = JSON.stringify(design);

test('panes above the water, up to no pane at all', () => {
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const load = assessTankLoad(text);
  if (!load.ok) throw new Error(JSON.stringify(load));
  for (const { tank } of [outcome.assessment, load.answer]) {
    const freeboard = tank.paths.find(({ path }) => path === 'freeboard')!.heat;
    expect(freeboard.likely).toBeGreaterThan(0);
    expect(Math.abs(freeboard.low)).toBeLessThan(0.2);
    expect(freeboard.high).toBeGreaterThan(freeboard.likely);
  }
});
