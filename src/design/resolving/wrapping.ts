// What may be wrapped -> resolved: every measure with its cost, and the years that are counted.

import type { Estimate } from '../../quantities/index.ts';
import type { ResolvedDesign } from '../plain.ts';
import type { WrappingMeasureOf } from '../plain-tank.ts';
import { usualLidThickness } from './defaults.ts';
import { resolveItems } from './items.ts';
import type { Resolver } from './resolver.ts';

export function resolveWrapping(take: Resolver): ResolvedDesign['wrapping'] {
  const list = 'wrapping.measures';
  const years = take.quantity('wrapping.years');
  if (!take.hasPart(list)) return { years };
  return { measures: resolveItems(take, list, (path) => resolveMeasure(take, path)), years };
}

function resolveMeasure(take: Resolver, path: string): WrappingMeasureOf<Estimate> {
  type Measure = WrappingMeasureOf<Estimate>;
  type Of<Kind extends Measure['kind']> = Extract<Measure, { readonly kind: Kind }>;
  const kind = take.choice<Measure['kind']>(`${path}.kind`);
  const name = take.text(`${path}.name`);
  const shared = { ...(name === undefined ? {} : { name }), cost: take.quantity(`${path}.cost`) };
  const material = () => take.choice<string>(`${path}.material`);
  const thickness = () => take.quantity(`${path}.thickness`);
  switch (kind) {
    case 'lid': {
      const sheet = material();
      return {
        ...shared,
        kind,
        vessel: take.choice<Of<'lid'>['vessel']>(`${path}.vessel`),
        material: sheet,
        thickness: take.quantity(`${path}.thickness`, () => usualLidThickness(sheet)),
        panes: take.choice<'one' | 'two'>(`${path}.panes`),
      };
    }
    case 'board': {
      const gap = take.quantityIfGiven(`${path}.gap`);
      const where = take.choice<Of<'board'>['where']>(`${path}.where`);
      const board = { material: material(), thickness: thickness() };
      return { ...shared, kind, where, ...board, ...(gap === undefined ? {} : { gap }) };
    }
    case 'mat':
      return { ...shared, kind, material: material(), thickness: thickness() };
    case 'doubleGlazing': {
      const where = take.choice<Of<'doubleGlazing'>['where']>(`${path}.where`);
      return { ...shared, kind, where, gap: take.quantity(`${path}.gap`) };
    }
    case 'cooler':
      return { ...shared, kind, by: take.quantity(`${path}.by`) };
    case 'nightCover':
      return { ...shared, kind, hours: take.quantity(`${path}.hours`), material: material(), thickness: thickness() };
    case 'calmerSurface':
      return { ...shared, kind, to: take.choice<'still' | 'rippled'>(`${path}.to`) };
  }
}
