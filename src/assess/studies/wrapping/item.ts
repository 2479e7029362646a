// A measure as it stands in the design's list, or would once it is taken into it: the texts of its fields by their names there.

import type { CostRange, UsualWork } from '../../../accounts/index.ts';
import type { DesignDocument } from '../../../design/index.ts';
import { formatNumber } from '../../../quantities/index.ts';
import type { OfferedMeasure } from '../../stages/wrapping/offered.ts';

type Item = Readonly<Record<string, string>>;

/** A cost without a unit is in the currency of the design. */
export function itemOf({ path, usual, name, kind }: OfferedMeasure, document: DesignDocument, cost: CostRange): Item {
  if (usual === null) {
    const index = Number(path!.slice(path!.lastIndexOf('.') + 1));
    return document.wrapping!.measures![index] as Item;
  }
  const number = (value: number) => formatNumber(value, 2);
  const range =
    cost.low === cost.high
      ? number(cost.likely)
      : `${number(cost.likely)} (${number(cost.low)} to ${number(cost.high)})`;
  return { kind, name, ...fieldsOf(usual.work), cost: range };
}

function fieldsOf(work: UsualWork): Item {
  const millimetres = (value: number) => `${Number((1000 * value).toPrecision(6))} mm`;
  switch (work.kind) {
    case 'lid': {
      const { vessel, material, thickness, panes } = work;
      return { ...(vessel === 'tank' ? {} : { vessel }), material, thickness: millimetres(thickness), panes };
    }
    case 'board': {
      const { where, material, thickness, gap } = work;
      const sheet = { material, thickness: millimetres(thickness) };
      if (where.length === 1 && where[0] === 'bottom') return sheet;
      return { where: where.join(), ...sheet, ...(gap === undefined ? {} : { gap: millimetres(gap) }) };
    }
    case 'doubleGlazing':
      return { where: work.where.join(), gap: millimetres(work.gap) };
    case 'cooler':
      return { by: `${work.by} K` };
    case 'nightCover':
      return { hours: `${work.hours / 3600} h`, material: work.material, thickness: millimetres(work.thickness) };
    case 'calmerSurface':
      return { to: work.to };
  }
}
