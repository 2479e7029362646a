// What the ranking of measures, the study of wrapping and the load map cost. Each call has another water temperature.

import demo from '../../data/designs/frag-tank-cold-garage.json?raw';
import { bestInTurn } from '../../src/accounts/index.ts';
import { assessWrapping } from '../../src/assess/index.ts';
import { StageRunner } from '../../src/assess/stage.ts';
import { type TankAloneResults, tankAloneStages } from '../../src/assess/stages/accounts/heater.ts';
import { type StagedDesign, stagedDesign } from '../../src/assess/stages/engine-assumptions.ts';
import { heaterPricesOf, wrappingSlice, wrappingSubject } from '../../src/assess/stages/index.ts';
import { WrappedStates } from '../../src/assess/stages/wrapping/states.ts';
import { parseDesign, resolveDesign } from '../../src/design/index.ts';
import { fromLoadMap, type LoadMap, loadMap, type MapAxes, rectangularTank } from '../../src/tank/index.ts';
import type { BenchCase } from './cases.ts';

const inputs = 16;

const texts: readonly string[] = Array.from({ length: inputs }, (_, index) => {
  const design = JSON.parse(demo) as { tank: { waterTemperature: string } };
  const waterTemperature = `${(24 + index / 10).toFixed(1)} °C`;
  return JSON.stringify({ ...design, tank: { ...design.tank, waterTemperature } });
});

/** The usual measures, of which ten apply to this tank without a sump. */
function rankings(): readonly (() => number)[] {
  return texts.map((text) => {
    const parsed = parseDesign(text);
    if (!parsed.ok) throw new Error('the demo is a design');
    const design: StagedDesign = stagedDesign(resolveDesign(parsed.document).design);
    const results = new StageRunner<TankAloneResults>(tankAloneStages).run(design);
    const prices = heaterPricesOf(design);
    return () => {
      const states = new WrappedStates(wrappingSubject(wrappingSlice(design), results));
      const candidates = states.applicable.map(({ id, cost }) => ({ id, cost: cost.likely }));
      if (candidates.length !== 10) throw new Error(`ten measures, not ${candidates.length}`);
      const steps = bestInTurn(candidates, (ids) => states.accountWith(ids, prices).runningCost, {
        discountRate: 0.03,
        years: 10,
      });
      return steps[0]!.netValue;
    };
  });
}

const tank = rectangularTank({
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.46,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.9 },
  insulation: {},
  surface: 'rippled',
  lid: 'tight',
  lidLayer: { conductivity: 0.18, thickness: 0.004 },
  pumpHeat: 10,
  lightHeat: 5,
});
const axes: MapAxes = {
  roomTemperature: { low: 283.15, high: 303.15, count: 11 },
  relativeHumidity: { low: 0.3, high: 0.9, count: 5 },
  waterTemperature: { low: 295.15, high: 301.15, count: 4 },
};
const makeMap = (pressure: number): LoadMap => loadMap(tank, { atmosphericPressure: pressure }, axes);

export const wrappingCases: readonly BenchCase[] = [
  {
    id: 'wrapping.ranking',
    title: 'ranking of ten measures, the next best in turn',
    budget: 30e-3,
    judged: 'median',
    prepare: () => {
      const all = rankings();
      return (index) => all[index % all.length]!();
    },
  },
  {
    id: 'wrapping.study',
    title: 'the whole study of wrapping with all its ranges, prices and curves',
    budget: undefined,
    judged: 'median',
    prepare: () => (index) => {
      const outcome = assessWrapping(texts[index % texts.length]!);
      return outcome.ok ? outcome.answer.asItIs.load.likely : Number.NaN;
    },
  },
  {
    id: 'tank.loadMapMade',
    title: 'load map of 220 points with its error made',
    budget: undefined,
    judged: 'median',
    prepare: () => (index) => makeMap(101325 - index).columns.load[0]!,
  },
  {
    id: 'tank.loadMapRead',
    title: 'a load read from the map',
    budget: undefined,
    judged: 'median',
    prepare: () => {
      const map = makeMap(101325);
      return (index) =>
        fromLoadMap(map, 'load', 284 + (index % 18), 0.3 + 0.6 * ((index * 0.37) % 1), 296 + (index % 5));
    },
  },
];
