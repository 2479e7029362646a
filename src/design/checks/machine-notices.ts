// What is unusual of a machine and accepted all the same: a plate goes before what is usual.

import { applianceClass, likelyFluid, ratingPoint, usualOil } from '../../parts/compressor/index.ts';
import type { DesignNotice } from '../notices.ts';
import type { DesignDocument } from '../schema/design.ts';
import { valueAt } from './reading.ts';

const path = 'machine.compressor';

/** What is told of a valid document, whatever version it was of. */
export function noticesOf(document: DesignDocument): readonly DesignNotice[] {
  return [
    ...fluidNotices(document),
    ...oilNotices(document),
    ...horsepowerNotices(document),
    ...applicationNotices(document),
  ];
}

function fluidNotices(document: DesignDocument): readonly DesignNotice[] {
  const { appliance, madeFor, year } = document.machine.compressor ?? {};
  if (madeFor === undefined) return [];
  const at = `${path}.madeFor`;
  const { title, fluids } = appliance === undefined ? { title: '', fluids: [madeFor] } : applianceClass(appliance);
  if (!fluids.includes(madeFor)) {
    const now = `a ${title} was usually built for ${fluids.join(', ')}`;
    return [{ code: 'unusualFluid', path: at, received: madeFor, now }];
  }
  const when = valueAt(document, `${path}.year`);
  if (when === undefined) return [];
  const { fluid, others } = likelyFluid(appliance, when, document.place?.region === 'unitedStates');
  if (fluid === madeFor || others.includes(madeFor)) return [];
  const now = `in ${year} it was mostly ${[fluid, ...others].join(', ')}`;
  return [{ code: 'unusualYear', path: at, received: madeFor, now }];
}

function oilNotices(document: DesignDocument): readonly DesignNotice[] {
  const { madeFor, nameplate } = document.machine.compressor ?? {};
  const oil = nameplate?.oil;
  if (madeFor === undefined || oil === undefined || oil === 'unknown') return [];
  const usual = usualOil(madeFor);
  if (usual.length === 0 || usual.includes(oil)) return [];
  const now = `machines for ${madeFor} are usually filled with ${usual.join(', ')}`;
  return [{ code: 'unusualOil', path: `${path}.nameplate.oil`, received: oil, now }];
}

/** Watts of electricity that stand beside one nominal horsepower on plates of small machines; wide, from memory. */
const wattsBesideHorsepower = { low: 300, high: 3000 } as const;

function horsepowerNotices(document: DesignDocument): readonly DesignNotice[] {
  const name = document.machine.compressor?.nameplate?.horsepower;
  const power = valueAt(document, `${path}.nameplate.power`);
  const size = name === undefined ? undefined : nominalSize(name);
  if (name === undefined || size === undefined || power === undefined) return [];
  const isMore = power.low > wattsBesideHorsepower.high * size;
  if (!isMore && power.high >= wattsBesideHorsepower.low * size) return [];
  const now = `is usually the name of a much ${isMore ? 'smaller' : 'larger'} machine than one of ${document.machine.compressor!.nameplate!.power}`;
  return [{ code: 'horsepowerBesidePower', path: `${path}.nameplate.horsepower`, received: name, now }];
}

/** "1/5 hp", "1 1/2 HP", "0,25 hp" as a number; undefined for a name that holds none. */
function nominalSize(name: string): number | undefined {
  const parts = /^\s*(?:(\d+(?:[.,]\d+)?)(?!\s*\/))?\s*(?:(\d+)\s*\/\s*(\d+))?\s*(?:hp|horsepower)?\s*$/i.exec(name);
  if (parts === null || (parts[1] === undefined && parts[2] === undefined)) return undefined;
  const whole = Number((parts[1] ?? '0').replace(',', '.'));
  const fraction = parts[2] === undefined ? 0 : Number(parts[2]) / Number(parts[3]);
  const size = whole + fraction;
  return Number.isFinite(size) && size > 0 ? size : undefined;
}

function applicationNotices(document: DesignDocument): readonly DesignNotice[] {
  const { application, compressor } = document.machine;
  const at = compressor?.ratings?.[0]?.at;
  if (application === undefined || at?.kind !== 'named') return [];
  const { application: rated, title } = ratingPoint(at.point);
  if (rated === application) return [];
  const now = `back pressure stands beside a rating at ${title}, a point of ${rated} back pressure`;
  return [{ code: 'applicationBesideRating', path: 'machine.application', received: application, now }];
}
