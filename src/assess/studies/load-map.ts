// The load map of a design's tank: from the coldest to the warmest its room is said to get, over humidities that rooms have, and
// over the water temperatures around its own. Outdoors, ground and water main as at the coldest spell.

import { caution } from '../../cautions/index.ts';
import { type DesignDocument, resolveDesign } from '../../design/index.ts';
import { loadMap, type MapAxes, type MapColumn, mapColumns, tankValidity } from '../../tank/index.ts';
import { fromDesign, type Refusal } from '../from-design.ts';
import { StageRunner } from '../stage.ts';
import { type TankAloneResults, tankAloneStages } from '../stages/accounts/heater.ts';
import { stagedDesign } from '../stages/engine-assumptions.ts';
import { tankSlice } from '../stages/index.ts';
import { carriedBy } from '../stages/tank/meter.ts';
import { tankDescription } from '../stages/tank/tank.ts';

/** Plain data in base SI, as `kettlefin load --map --json` gives it. */
export interface LoadMapAnswer {
  readonly mapVersion: 1;
  readonly caution: string;
  readonly designName: string;
  readonly axes: MapAxes;
  /** [Pa] */
  readonly atmosphericPressure: number;
  /** By room temperature, then humidity, then water temperature, the last one fastest; likely values. */
  readonly columns: Readonly<Record<MapColumn, readonly number[]>>;
  /** Largest difference to the model in the middle of a cell. */
  readonly largestError: Readonly<Record<MapColumn, number>>;
}

export type LoadMapOutcome = { readonly ok: true; readonly answer: LoadMapAnswer } | Refusal;

/** How far the water's axis reaches to either side, and the room's beyond the design's own [K]. */
const waterReach = 3;
const roomReach = 2;
const humidities = { low: 0.2, high: 0.9, count: 8 } as const;
const points = { room: 15, water: 7 } as const;

/** @param design  the text of a design file, or a document that was parsed before */
export function assessLoadMap(design: string | DesignDocument): LoadMapOutcome {
  return fromDesign(design, (document) => ({ answer: answerFor(document) }));
}

function answerFor(document: DesignDocument): LoadMapAnswer {
  const design = stagedDesign(resolveDesign(document).design);
  const { surroundings, meter } = new StageRunner<TankAloneResults>(tankAloneStages).run(design);
  const { spell, months, atmosphericPressure } = surroundings;
  const tank = tankDescription(carriedBy(tankSlice(design), meter));
  const rooms = [spell.roomTemperature, ...months.map(({ roomTemperature }) => roomTemperature)];
  const water = design.tank.waterTemperature;
  const axes: MapAxes = {
    roomTemperature: {
      ...reaching(Math.min(...rooms) - roomReach, Math.max(...rooms) + roomReach, tankValidity.roomTemperature),
      count: points.room,
    },
    relativeHumidity: humidities,
    waterTemperature: {
      ...reaching(water - waterReach, water + waterReach, tankValidity.waterTemperature),
      count: points.water,
    },
  };
  const { outdoorTemperature, groundTemperature, mainsTemperature } = spell;
  const map = loadMap(tank, { atmosphericPressure, outdoorTemperature, groundTemperature, mainsTemperature }, axes);
  return {
    mapVersion: 1,
    caution,
    designName: document.name,
    axes,
    atmosphericPressure,
    columns: Object.fromEntries(
      mapColumns.map((name) => [name, [...map.columns[name]]]),
    ) as unknown as LoadMapAnswer['columns'],
    largestError: map.largestError,
  };
}

/** As far as wished, and no further than the model holds. */
function reaching(low: number, high: number, valid: { readonly min: number; readonly max: number }) {
  return { low: Math.max(valid.min, low), high: Math.min(valid.max, high) };
}
