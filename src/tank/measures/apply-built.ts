// Measures applied to a tank of known build. Lids and surfaces go first, layers then, the cover at night last, whatever the order
// of the list; within one kind the better one goes first and the others change nothing. So the order of the list matters only for
// two sets of layers on one panel, which lie in that order.

import { InputError } from '../../numerics/index.ts';
import type { BuiltTank, Cover, Panel, Surface, Vessel, VesselName } from '../built-tank.ts';
import { surfaceMethods } from '../water-surface/surface.ts';
import type { WrappedTank } from './apply.ts';
import { compareCovers, lidOf } from './covers.ts';
import type { ChangedPart, Measure, MeasureOutcome, NoEffect, PanelPlace } from './measure.ts';
import { changedOnly, type MeasureOfTank, panelPart } from './outcomes.ts';

/** From the roughest to the calmest. */
const bySurface: readonly Surface[] = ['rough', 'rippled', 'still'];

const kindsInOrder: readonly Measure['kind'][] = ['lid', 'calmerSurface', 'outside', 'cooler', 'nightCover'];

interface Applied {
  readonly tank: BuiltTank;
  readonly outcome: MeasureOutcome;
}

/** Measures were checked by the caller. */
export function applyToBuilt(
  tank: BuiltTank,
  waterTemperature: number,
  measures: readonly Measure[],
): WrappedTank<BuiltTank> {
  const outcomes: MeasureOutcome[] = [];
  let now = tank;
  let temperature = waterTemperature;
  for (const kind of kindsInOrder) {
    for (const index of placesOf(measures, kind)) {
      const measure = measures[index]!;
      if (measure.kind === 'cooler') {
        temperature -= measure.by;
        outcomes[index] = changedOnly({ part: 'waterTemperature' });
        continue;
      }
      const applied = applyOne(now, measure);
      now = applied.tank;
      outcomes[index] = applied.outcome;
    }
  }
  return { tank: now, waterTemperature: temperature, outcomes };
}

/** Places of the measures of a kind in the list, those that leave the others nothing to change first. */
function placesOf(measures: readonly Measure[], kind: Measure['kind']): readonly number[] {
  const places = [...measures.keys()].filter((index) => measures[index]!.kind === kind);
  return places.sort((left, right) => compareMeasures(measures[right]!, measures[left]!));
}

/** Above 0 where the first does more of the same kind. */
function compareMeasures(first: Measure, second: Measure): number {
  if (first.kind === 'lid' && second.kind === 'lid') return compareCovers(lidOf(first), lidOf(second));
  if (first.kind === 'nightCover' && second.kind === 'nightCover') {
    return compareCovers(lidOf(first), lidOf(second)) || first.share - second.share;
  }
  if (first.kind === 'calmerSurface' && second.kind === 'calmerSurface') {
    return bySurface.indexOf(first.to) - bySurface.indexOf(second.to);
  }
  return 0;
}

function applyOne(tank: BuiltTank, measure: MeasureOfTank): Applied {
  switch (measure.kind) {
    case 'lid':
      return withLid(tank, measure.vessel, lidOf(measure));
    case 'calmerSurface':
      return withSurface(tank, measure.to);
    case 'outside':
      return withLayers(tank, measure);
    case 'nightCover':
      return withNightCover(tank, measure.share, lidOf(measure));
  }
}

/** A lid that keeps better than what lies there; a cover at night that the new lid outdoes is no longer laid. */
function withLid(tank: BuiltTank, vesselName: VesselName, cover: Cover): Applied {
  const part: ChangedPart = { part: 'cover', vessel: vesselName };
  const vessel = tank.vessels.find(({ name }) => name === vesselName);
  if (vessel === undefined) return nothing(tank, { part, reason: 'noSuchPart' });
  if (compareCovers(cover, vessel.cover) <= 0) return nothing(tank, { part, reason: 'noBetterThanPresent' });
  const covered = replaceVessel(tank, { ...vessel, cover });
  const { night, ...withoutNight } = covered;
  const isOutdone = vesselName === 'tank' && night !== undefined && compareCovers(night.cover, cover) <= 0;
  return { tank: isOutdone ? withoutNight : covered, outcome: changedOnly(part) };
}

/** Keeps how far the person's own factor departs from what is usual for the surface. */
function withSurface(tank: BuiltTank, to: Surface): Applied {
  const display = displayOf(tank);
  const part: ChangedPart = { part: 'surface' };
  if (bySurface.indexOf(to) <= bySurface.indexOf(display.surface))
    return nothing(tank, { part, reason: 'alreadyCalm' });
  const { evaporationFactor } = display;
  const usual = surfaceMethods[to].factor.likely / surfaceMethods[display.surface].factor.likely;
  const calmer: Vessel = {
    ...display,
    surface: to,
    ...(evaporationFactor === undefined ? {} : { evaporationFactor: evaporationFactor * usual }),
  };
  return { tank: replaceVessel(tank, calmer), outcome: changedOnly(part) };
}

function withLayers(tank: BuiltTank, measure: Extract<Measure, { kind: 'outside' }>): Applied {
  const { panels, stack, emissivity } = measure;
  const wrapped = (panel: Panel): Panel => ({ ...panel, stack: [...panel.stack, ...stack], emissivity });
  const has = (place: PanelPlace) =>
    tank.vessels.some(({ name, panels: own }) => name === place.vessel && own.some((p) => p.name === place.panel));
  const vessels = tank.vessels.map((vessel): Vessel => {
    const names = panels.filter((place) => place.vessel === vessel.name).map((place) => place.panel);
    if (names.length === 0) return vessel;
    return { ...vessel, panels: vessel.panels.map((panel) => (names.includes(panel.name) ? wrapped(panel) : panel)) };
  });
  return {
    tank: { ...tank, vessels },
    outcome: {
      changed: panels.filter(has).map(panelPart),
      unchanged: panels
        .filter((place) => !has(place))
        .map((place): NoEffect => ({ part: panelPart(place), reason: 'noSuchPart' })),
    },
  };
}

/** Laid only where it keeps better than what covers the tank by day; of two covers for the night the better one stays. */
function withNightCover(tank: BuiltTank, share: number, cover: Cover): Applied {
  const part: ChangedPart = { part: 'night' };
  const { night } = tank;
  const better = compareCovers(cover, displayOf(tank).cover) > 0;
  const betterThanNight =
    night === undefined ||
    compareCovers(cover, night.cover) > 0 ||
    (compareCovers(cover, night.cover) === 0 && share > night.share);
  if (!better || !betterThanNight) return nothing(tank, { part, reason: 'noBetterThanPresent' });
  return { tank: { ...tank, night: { share, cover } }, outcome: changedOnly(part) };
}

function displayOf(tank: BuiltTank): Vessel {
  const display = tank.vessels.find(({ name }) => name === 'tank');
  if (display === undefined) throw new InputError('vessels', tank.vessels.length, 'a display tank among the vessels');
  return display;
}

function replaceVessel(tank: BuiltTank, vessel: Vessel): BuiltTank {
  return { ...tank, vessels: tank.vessels.map((each) => (each.name === vessel.name ? vessel : each)) };
}

function nothing(tank: BuiltTank, why: NoEffect): Applied {
  return { tank, outcome: { changed: [], unchanged: [why] } };
}
