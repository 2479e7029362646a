// What is left out or doubted under a hood, under the cover of the night and in a deep headspace, and with fresh water and drawn
// air: each where the tank has such a part.

import type { Finding } from '../../quantities/index.ts';
import type { BuiltTank } from '../built-tank.ts';
import type { BuiltIntermediates, VesselState } from '../load.ts';
import { note, value } from './codes.ts';

/** A headspace higher than this share of the side of a square as large as the water is no wide layer any more: own judgement. */
const DEEP_HEADSPACE = 0.3;

/** Findings of covers, fresh water and drawn air. */
export function coverFindings(tank: BuiltTank, intermediates: BuiltIntermediates): readonly Finding[] {
  const { night, airDrawn } = intermediates;
  const settled = night === undefined ? intermediates.vessels : [...intermediates.vessels, night.vessel];
  const found: Finding[] = [
    ...settled.flatMap(hoodFindings).slice(0, 1),
    ...settled.flatMap(headspaceFindings).slice(0, 1),
  ];
  if (night !== undefined) {
    const facts = { share: value(night.share, 'fraction') };
    const remedy = 'Each path is the mean of both covers over the day, the water as warm by night as by day.';
    found.push(note('nightCoverMixed', facts, 'own simplification', remedy));
  }
  const drawn = airDrawn.reduce((sum, { evaporation }) => sum + evaporation, 0);
  if (airDrawn.length > 0) {
    const remedy = 'Taken to leave as warm as the water and saturated, also where coarse bubbles rise too fast for it.';
    found.push(note('drawnAirSaturated', { evaporation: value(drawn, 'evaporation') }, 'own simplification', remedy));
  }
  const { changeFlow } = tank.exchange;
  if (changeFlow > 0) {
    const remedy =
      'A mean over the time between two changes; on the day itself the heater needs all of it, or the tank cools.';
    found.push(note('waterChangeSpread', { flow: value(changeFlow, 'waterFlow') }, 'energy balance', remedy));
  }
  return found;
}

function hoodFindings({ hood }: VesselState): readonly Finding[] {
  if (hood === undefined) return [];
  const facts = {
    airTemperature: value(hood.airTemperature, 'temperature'),
    carried: value(hood.carriedVapour, 'evaporation'),
  };
  const remedy =
    'Its air is taken as well mixed and what condenses inside as running back; the heat of its fan is left out, and of air stones under it the vapour goes straight to the room.';
  return [note('hoodWellMixed', facts, 'balances of vapour and warmth; own simplification', remedy)];
}

function headspaceFindings({ lid }: VesselState): readonly Finding[] {
  if (lid === undefined || !(lid.gap > DEEP_HEADSPACE * Math.sqrt(lid.area))) return [];
  const source = 'Hollands, Raithby & Konicek 1975, for layers much wider than high; own judgement of the limit';
  const remedy = 'Air so deep for its width is held back by the walls: the lid may lose somewhat less.';
  return [note('headspaceDeep', { gap: value(lid.gap, 'length') }, source, remedy)];
}
