// The display tank covered otherwise for a share of the day: each path's mean over day and night. The water stays as warm.

import type { BuiltIntermediates, HeatPath, VesselState } from '../load.ts';

/** Paths of all vessels, the display tank's mixed over day and night. */
export function mixedPaths(vessels: readonly VesselState[], night: BuiltIntermediates['night']): readonly HeatPath[] {
  const [display, ...others] = vessels;
  const rest = others.flatMap(({ paths }) => paths);
  if (display === undefined) return rest;
  if (night === undefined) return [...display.paths, ...rest];
  const { share, vessel } = night;
  const byNight = new Map(vessel.paths.map((path) => [path.path, path]));
  const daily = display.paths.map((path) => {
    const heat = meanOverDay(path.heat, byNight.get(path.path)?.heat ?? 0, share);
    byNight.delete(path.path);
    return { ...path, heat };
  });
  const onlyByNight = [...byNight.values()].map((path) => ({ ...path, heat: meanOverDay(0, path.heat, share) }));
  return [...daily, ...onlyByNight, ...rest];
}

/**
 * Mean over day and night.
 *     Q = (1 − s) Q_day + s Q_night
 * @param day    Q_day [W]
 * @param night  Q_night [W]
 * @param share  s [-], of the day that counts as night
 * @returns      Q [W]
 * Source: definition of a mean. Worked value: 120, 40, 0.4 → 88 W.
 */
export function meanOverDay(day: number, night: number, share: number): number {
  return (1 - share) * day + share * night;
}
