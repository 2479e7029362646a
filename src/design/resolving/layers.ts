// Layers, boards and what lies beyond them -> resolved.

import type { Estimate } from '../../quantities/index.ts';
import type { BoardOf, ExposureOf, FacePartsOf, LayerOf, SheetOf } from '../plain-tank.ts';
import { resolveItems } from './items.ts';
import type { Resolver } from './resolver.ts';

export function resolveFaceParts(take: Resolver, path: string): FacePartsOf<Estimate> {
  const exposure = resolveExposure(take, `${path}.exposure`);
  return {
    ...(take.hasPart(`${path}.wall`) ? { wall: resolveSheet(take, `${path}.wall`) } : {}),
    inside: resolveLayers(take, `${path}.inside`),
    outside: resolveLayers(take, `${path}.outside`),
    ...(exposure === undefined ? {} : { exposure }),
  };
}

/** What lies beyond; undefined where it was not named and a rule in words decides. */
export function resolveExposure(take: Resolver, path: string): ExposureOf<Estimate> | undefined {
  if (!take.hasPart(path) && take.isByRule(`${path}.kind`)) return undefined;
  const kind = take.choice<ExposureOf<Estimate>['kind']>(`${path}.kind`);
  switch (kind) {
    case 'roomAir':
    case 'openStand':
    case 'outdoors':
      return { kind };
    case 'againstWall':
    case 'slab':
      return { kind, resistance: take.quantity(`${path}.resistance`) };
    case 'closedStand': {
      const boardArea = take.quantityIfGiven(`${path}.boardArea`);
      return { kind, ...resolveSheet(take, path), ...(boardArea === undefined ? {} : { boardArea }) };
    }
  }
}

export function resolveLayers(take: Resolver, list: string): readonly LayerOf<Estimate>[] {
  return resolveItems(take, list, (path) => resolveLayer(take, path));
}

function resolveLayer(take: Resolver, path: string): LayerOf<Estimate> {
  const kind = take.choice<LayerOf<Estimate>['kind']>(`${path}.kind`);
  switch (kind) {
    case 'material': {
      const joint = `${path}.joint`;
      return {
        kind,
        ...resolveSheet(take, path),
        ...(take.hasPart(joint)
          ? { joint: { material: take.choice<string>(`${joint}.material`), share: take.quantity(`${joint}.share`) } }
          : {}),
      };
    }
    case 'own':
      return {
        kind,
        conductivity: take.quantity(`${path}.conductivity`),
        thickness: take.quantity(`${path}.thickness`),
        emissivity: take.quantity(`${path}.emissivity`),
      };
    case 'resistance':
      return { kind, resistance: take.quantity(`${path}.resistance`) };
    case 'sealedGap': {
      const inner = take.quantityIfGiven(`${path}.innerEmissivity`);
      const outer = take.quantityIfGiven(`${path}.outerEmissivity`);
      return {
        kind,
        thickness: take.quantity(`${path}.thickness`),
        ...(inner === undefined ? {} : { innerEmissivity: inner }),
        ...(outer === undefined ? {} : { outerEmissivity: outer }),
      };
    }
    case 'openGap':
    case 'waterGap':
      return { kind, thickness: take.quantity(`${path}.thickness`) };
  }
}

export function resolveSheet(take: Resolver, path: string): SheetOf<Estimate> {
  return { material: take.choice<string>(`${path}.material`), thickness: take.quantity(`${path}.thickness`) };
}

export function resolveBoard(take: Resolver, path: string): BoardOf<Estimate> {
  const gap = take.quantityIfGiven(`${path}.gap`);
  return { ...resolveSheet(take, path), ...(gap === undefined ? {} : { gap }) };
}
