// A load map as comma-separated values: one line a point, units of the view in the head, the caution and the error in front.

import type { LoadMapAnswer } from '../assess/index.ts';
import { quantityUnit, sayQuantity, toView, type UnitView } from '../quantities/index.ts';
import { pointOf } from '../tank/index.ts';
import { csvText } from './csv.ts';

/** Digits of a number: more than the model is worth. */
const digits = 6;

export function loadMapCsv({ caution, axes, columns, largestError }: LoadMapAnswer, view: UnitView): string {
  const { roomTemperature: rooms, relativeHumidity: humidities, waterTemperature: waters } = axes;
  const temperature = `[${quantityUnit('temperature', view)}]`;
  const power = `[${quantityUnit('power', view)}]`;
  const text = (value: number) => String(Number(value.toPrecision(digits)));
  const watts = (value: number) => text(toView(value, 'power', view));
  const rows: string[][] = [];
  for (let place = 0; place < columns.load.length; place++) {
    const k = place % waters.count;
    const j = Math.floor(place / waters.count) % humidities.count;
    const i = Math.floor(place / (waters.count * humidities.count));
    rows.push([
      text(toView(pointOf(rooms, i), 'temperature', view)),
      text(100 * pointOf(humidities, j)),
      text(toView(pointOf(waters, k), 'temperature', view)),
      watts(columns.load[place]!),
      watts(columns.sensibleToRoom[place]!),
      watts(columns.latentToRoom[place]!),
      text(toView(columns.evaporation[place]!, 'evaporation', view)),
    ]);
  }
  const head = [
    `room ${temperature}`,
    'relative humidity [%]',
    `water ${temperature}`,
    `heat needed ${power}`,
    `warmth to the room ${power}`,
    `vapour to the room ${power}`,
    `evaporation [${quantityUnit('evaporation', view)}]`,
  ];
  const error = sayQuantity(largestError.load, 'power', view).replaceAll('\u00a0', ' ');
  return csvText(
    [head, ...rows],
    [
      caution,
      `Likely values. Between the points take straight lines: heat needed is then within ${error} of the model.`,
    ],
  );
}
