// The paths of the loss as symbols of a formula: which symbol stands for which path, and which are warmth and which vapour.

import type { FormulaSymbol } from '../../quantities/index.ts';
import type { HeatPath, PathName } from '../load.ts';

/** Symbol of each path in a sum, with its words; absent paths are 0. */
export const pathSymbols: Readonly<Record<PathName, readonly [string, string]>> = {
  evaporation: ['Q_evaporation', 'evaporation of the open surface'],
  surfaceConvection: ['Q_convection', 'convection from the open surface'],
  surfaceRadiation: ['Q_radiation', 'radiation from the open surface'],
  lid: ['Q_lid', 'through the lid'],
  freeboard: ['Q_freeboard', 'through the panes above the water, under a lid'],
  front: ['Q_front', 'front pane'],
  back: ['Q_back', 'back pane'],
  sides: ['Q_sides', 'both ends'],
  bottom: ['Q_bottom', 'bottom'],
  airStonesVapour: ['Q_bubbleVapour', 'evaporation into air blown through the water'],
  airStones: ['Q_bubbles', 'warming of air blown through the water'],
  makeUpWater: ['Q_makeUp', 'warming of the make-up water'],
  wallsAndSurface: ['Q_dry', 'all dry paths of a measured tank'],
};

const latentPaths: readonly PathName[] = ['evaporation', 'airStonesVapour'];
const paths = Object.keys(pathSymbols) as PathName[];

/** Symbols of all paths, in the order in which the engine adds them. */
export const allSymbols: readonly string[] = paths.map((path) => pathSymbols[path][0]);

/** Symbols of the paths that leave as vapour. */
export const latentSymbols: readonly string[] = latentPaths.map((path) => pathSymbols[path][0]);

/** Symbols of the paths that reach the room as warmth; make-up water is not one of them. */
export const sensibleSymbols: readonly string[] = paths
  .filter((path) => !latentPaths.includes(path) && path !== 'makeUpWater')
  .map((path) => pathSymbols[path][0]);

/** Meaning and unit of these symbols. */
export function symbolsOf(symbols: readonly string[]): Readonly<Record<string, FormulaSymbol>> {
  const meanings = Object.fromEntries(Object.values(pathSymbols));
  return Object.fromEntries(
    symbols.map((symbol) => [symbol, { meaning: meanings[symbol]!, unit: 'W', quantity: 'power' }]),
  );
}

/** The paths whose symbols have a value. */
export function pathsFromSymbols(values: Readonly<Record<string, number>>): HeatPath[] {
  return paths.flatMap((path) => {
    const heat = values[pathSymbols[path][0]];
    return heat === undefined ? [] : [{ path, heat, kind: latentPaths.includes(path) ? 'latent' : 'sensible' }];
  });
}

/** Two sets of values for these symbols. */
export function examplesOf(symbols: readonly string[]): readonly Readonly<Record<string, number>>[] {
  return [3.1, -1.7].map((step) => Object.fromEntries(symbols.map((symbol, i) => [symbol, 5.3 + step * (i + 1)])));
}
