// What is unusual of a machine and accepted all the same: a plate goes before what is usual.

import { applianceClass, likelyFluid } from '../../parts/compressor/index.ts';
import type { DesignNotice } from '../notices.ts';
import type { DesignDocument } from '../schema/design.ts';
import { valueAt } from './reading.ts';

/** What is told of a valid document, whatever version it was of. */
export function noticesOf(document: DesignDocument): readonly DesignNotice[] {
  const { appliance, madeFor, year } = document.machine.compressor ?? {};
  if (madeFor === undefined) return [];
  const path = 'machine.compressor.madeFor';
  const { title, fluids } = appliance === undefined ? { title: '', fluids: [madeFor] } : applianceClass(appliance);
  if (!fluids.includes(madeFor)) {
    const now = `a ${title} was usually built for ${fluids.join(', ')}`;
    return [{ code: 'unusualFluid', path, received: madeFor, now }];
  }
  const when = valueAt(document, 'machine.compressor.year');
  if (when === undefined) return [];
  const { fluid, others } = likelyFluid(appliance, when, document.place?.region === 'unitedStates');
  if (fluid === madeFor || others.includes(madeFor)) return [];
  const now = `in ${year} it was mostly ${[fluid, ...others].join(', ')}`;
  return [{ code: 'unusualYear', path, received: madeFor, now }];
}
