// What is said of the tank: the results of its stages and their bands, as people and programs read them.

import { dewPoint } from '../../matter/air/index.ts';
import type { Band } from '../../quantities/index.ts';
import { fallTimeLinear, type TankLoad, timesToFall } from '../../tank/index.ts';
import type { FallAnswer, LossPath, MeterAnswer, TankAnswer, TankMonth } from '../assessment/tank-answer.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { tankSlice } from '../stages/index.ts';
import { sizedTankParts } from '../stages/sized-tank/handed-over.ts';
import { carriedBy } from '../stages/tank/meter.ts';
import { tankConditions, tankDescription } from '../stages/tank/tank.ts';
import { pathLabel } from '../wording/labels.ts';
import { type Bands, bandOf, bareBand } from './pieces.ts';
import { fallName, fallRate, monthPath, type TankResults, twinOf, usualFalls } from './tank-values.ts';

/** What is told beside the bands. */
export interface TankAnswerOptions {
  /** By how much the water is let fall without heat [K], in rising order. */
  readonly falls?: readonly number[];
  readonly meter?: MeterAnswer | null;
}

export function tankAnswer(
  design: StagedDesign,
  results: TankResults,
  bands: Bands,
  { falls = usualFalls, meter = null }: TankAnswerOptions = {},
): TankAnswer {
  const { tank, surroundings } = results;
  const { roomTemperature } = surroundings.spell;
  const dew = roomDewPoint(tank, roomTemperature);
  return {
    waterTemperature: design.tank.waterTemperature,
    roomTemperature,
    roomDewPoint: dew,
    paths: tank.paths.map(({ path, kind, to, vessel, panel }): LossPath => {
      const heat = bandOf(bands, `tank.paths.${path}`);
      return { path, label: pathLabel(path), kind, to, vessel: vessel ?? null, panel: panel ?? null, heat };
    }),
    ...(design.tank.load.kind === 'measured'
      ? { vessels: [], panels: [] }
      : sizedTankParts().builtAnswers(design, results, bands, dew)),
    loss: bandOf(bands, 'tank.loss'),
    gains: tank.gains,
    gainRanges: {
      pump: bareBand(bands, 'tank.gains.pump'),
      light: bareBand(bands, 'tank.gains.light'),
      ultraviolet: bareBand(bands, 'tank.gains.ultraviolet'),
    },
    load: bandOf(bands, 'tank.load'),
    evaporation: bandOf(bands, 'tank.evaporation'),
    heatCapacity: tank.heatCapacity,
    timePerKelvin: tank.load > 0 ? tank.heatCapacity / tank.load : null,
    timePerKelvinRange: tank.load > 0 ? timeRange(tank.heatCapacity, bareBand(bands, 'tank.load')) : null,
    conductance: bandOf(bands, 'tank.conductance'),
    timeConstant: bandOf(bands, 'tank.timeConstant'),
    falls: fallAnswers(design, results, bands, falls),
    months: monthsOf(results, bands),
    yearHeatNeeded: bandOf(bands, 'year.energies.heatNeeded'),
    meter,
  };
}

/** Dew point of the room's air [K]; null without vapour in it. */
export function roomDewPoint({ intermediates }: TankLoad, roomTemperature: number): number | null {
  const { roomVapour } = intermediates.air;
  return roomVapour > 0 ? dewPoint(roomTemperature, roomVapour) : null;
}

/** The less heat is needed, the longer it takes; without an end where no heat at all might be needed. */
function timeRange(heatCapacity: number, load: Band): TankAnswer['timePerKelvinRange'] {
  return { low: heatCapacity / load.high, high: load.low > 0 ? heatCapacity / load.low : null };
}

function fallAnswers(
  design: StagedDesign,
  { tank, surroundings, meter }: TankResults,
  bands: Bands,
  falls: readonly number[],
): readonly FallAnswer[] {
  const slice = carriedBy(tankSlice(design), meter);
  const { spell, atmosphericPressure } = surroundings;
  const described = tankDescription(slice);
  const times = timesToFall(described, tankConditions(slice, spell, atmosphericPressure), falls);
  return falls.map((by, index) => {
    const time = times[index]!;
    const linear = fallTimeLinear(tank.heatCapacity, tank.conductance, tank.loss, by);
    // The range is that of the closed form, moved onto the integrated time.
    const scale = time === null || linear === null ? 1 : time / linear;
    return { by, time, range: fallRange(bareBand(bands, fallRate(by)), scale), result: fallName(by) };
  });
}

function fallRange({ low, high }: Band, scale: number): FallAnswer['range'] {
  return high > 0 ? { low: scale / high, high: low > 0 ? scale / low : null } : null;
}

function monthsOf(results: TankResults, bands: Bands): readonly TankMonth[] {
  const { surroundings, monthLoads } = results;
  return surroundings.months.map(({ month, duration, roomTemperature }, index) => {
    const at = monthPath(month);
    return {
      month,
      duration,
      roomTemperature,
      loss: bandOf(bands, `${at}.tank.loss`),
      load: bandOf(bands, `${at}.tank.load`),
      paths: monthLoads[index]!.paths.map(({ path }) => {
        const twin = monthPath(surroundings.months[twinOf(results, index)]!.month);
        const heat = bandOf(bands, `${twin}.tank.paths.${path}`);
        return { path, label: pathLabel(path), heat: { ...heat, result: `${at}.tank.paths.${path}` } };
      }),
      evaporation: bandOf(bands, `${at}.tank.evaporation`),
      heatNeeded: bandOf(bands, `${at}.energies.heatNeeded`),
    };
  });
}
