// Which fluids stand side by side and on which basis: what a design begins with, and what the browser keeps of a choice.

import type { MachineBasis } from '../../../assess/index.ts';
import { type DesignDocument, fluidsOf } from '../../../design/index.ts';

export interface FluidChoice {
  /** In the order of the list of refrigerants. */
  readonly fluids: readonly string[];
  readonly basis: MachineBasis;
}

/** As many columns as still stand side by side; the engine refuses fewer and more. */
export const fewestFluids = 2;
export const mostFluids = 5;

/** So many are shown before anybody has chosen. */
const shownAtFirst = 3;

export const basisLabels: readonly (readonly [MachineBasis, string])[] = [
  ['sameDome', 'The same temperatures'],
  ['sameHeat', 'The same heat'],
  ['sameParts', 'The same parts'],
];

/**
 * The design's own fluid and the one its compressor was made for, filled up from the head of the list.
 * @param document  the open design
 * @param known     every refrigerant, in the order of the list
 */
export function choiceAtFirst(document: DesignDocument, known: readonly string[]): FluidChoice {
  const { refrigerant, madeFor } = fluidsOf(document);
  const own = new Set<string>([refrigerant, madeFor]);
  const others = known.filter((fluid) => !own.has(fluid)).slice(0, shownAtFirst - own.size);
  return { fluids: known.filter((fluid) => own.has(fluid) || others.includes(fluid)), basis: 'sameDome' };
}

/** The choice with one fluid more or less. */
export function withFluid(choice: FluidChoice, fluid: string, isIn: boolean, known: readonly string[]): FluidChoice {
  return { ...choice, fluids: known.filter((name) => (name === fluid ? isIn : choice.fluids.includes(name))) };
}

export function keptChoice(choice: FluidChoice): string {
  return JSON.stringify(choice);
}

/** A choice kept by the browser; undefined where nothing usable was kept. */
export function readKeptChoice(text: string | undefined, known: readonly string[]): FluidChoice | undefined {
  if (text === undefined) return undefined;
  try {
    const { fluids, basis } = JSON.parse(text) as FluidChoice;
    const isKnown = basisLabels.some(([name]) => name === basis);
    const present = known.filter((fluid) => fluids.includes(fluid));
    return isKnown && present.length >= fewestFluids && present.length <= mostFluids
      ? { fluids: present, basis }
      : undefined;
  } catch {
    return undefined;
  }
}
