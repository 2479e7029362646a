// Changes of the list of measures in the design. Where the design has no list, the usual measures are offered; whoever
// changes or removes one of those takes all that are offered into the design first.

import type { WrappingAnswer } from '../../assess/index.ts';
import { addItem, checkDesign, type DesignDocument, type EditResult, itemsOf, removeItem } from '../../design/index.ts';

/** Path of the list in the design. */
export const measuresPath = 'wrapping.measures';

/** Whether the design has a list of its own, be it an empty one. */
export function hasOwnMeasures(document: DesignDocument): boolean {
  return document.wrapping?.measures !== undefined;
}

/** The design with one more measure, behind those of its own or behind those that are offered. */
export function withMeasure(document: DesignDocument, answer: WrappingAnswer | undefined, item: unknown): EditResult {
  if (hasOwnMeasures(document) || answer === undefined) return addItem(document, measuresPath, item);
  return withMeasures(document, [...offered(answer), item]);
}

/** The design with what is offered as a list of its own. */
export function withOffered(document: DesignDocument, answer: WrappingAnswer): EditResult {
  return withMeasures(document, offered(answer));
}

/** The design without one measure of the answer; undefined where it is not in the list any more. */
export function withoutMeasure(document: DesignDocument, answer: WrappingAnswer, id: string): EditResult | undefined {
  if (!hasOwnMeasures(document)) {
    return withMeasures(
      document,
      offered(answer).filter((item) => item !== itemOf(answer, id)),
    );
  }
  const place = placeOf(document, answer, id);
  return place === undefined ? undefined : removeItem(document, measuresPath, place);
}

/** The design without a list of its own, so that the usual measures are offered again. */
export function withUsual(document: DesignDocument): EditResult {
  const { measures: _, ...others } = document.wrapping ?? {};
  const { wrapping: __, ...rest } = document;
  return checkDesign(Object.keys(others).length === 0 ? rest : { ...rest, wrapping: others });
}

/**
 * Where a measure of the answer stands in the design's list, counted from 0, or would stand once what is offered is the
 * design's own: what is offered keeps its order. The answer may be older than the list: then the item itself tells its place,
 * and one that is neither there nor can be told by its number has none.
 */
export function placeOf(document: DesignDocument, answer: WrappingAnswer, id: string): number | undefined {
  const { path } = answer.measures.find((measure) => measure.id === id) ?? {};
  const before = path == null ? inOrder(answer).findIndex((measure) => measure.id === id) : indexOf(path);
  if (!hasOwnMeasures(document)) return before;
  const items = itemsOf(document, measuresPath).map((item) => JSON.stringify(item));
  const item = JSON.stringify(itemOf(answer, id));
  if (items[before] === item) return before;
  const found = items.indexOf(item);
  if (found >= 0) return found;
  return items.length === answer.measures.length ? before : undefined;
}

function indexOf(path: string): number {
  return Number(path.slice(path.lastIndexOf('.') + 1));
}

/** How many measures the design's list has, or would have. */
export function countOf(document: DesignDocument, answer: WrappingAnswer | undefined): number {
  return hasOwnMeasures(document) ? itemsOf(document, measuresPath).length : (answer?.measures.length ?? 0);
}

function withMeasures(document: DesignDocument, items: readonly unknown[]): EditResult {
  return checkDesign({ ...document, wrapping: { ...document.wrapping, measures: items } });
}

/** In the best order, so that the list reads as the page does. */
export function inOrder({ inTurn, measures }: WrappingAnswer): WrappingAnswer['measures'] {
  const turn = new Map(inTurn.map(({ id }, index) => [id, index]));
  return measures.toSorted((a, b) => (turn.get(a.id) ?? Infinity) - (turn.get(b.id) ?? Infinity));
}

function offered(answer: WrappingAnswer): readonly Readonly<Record<string, string>>[] {
  return inOrder(answer).map(({ item }) => item);
}

function itemOf(answer: WrappingAnswer, id: string): Readonly<Record<string, string>> | undefined {
  return answer.measures.find((measure) => measure.id === id)?.item;
}
