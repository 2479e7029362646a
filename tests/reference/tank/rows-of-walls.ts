// Films, air layers and natural convection at walls and pipes, against ISO 6946 and textbooks.

import { nusseltHollands1975 } from '../../../src/tank/cover/headspace.ts';
import { nusseltCylinderChurchillChu1975 } from '../../../src/tank/pipes.ts';
import { airLayerResistance } from '../../../src/tank/stack/air-gap.ts';
import {
  INTERNAL_CONVECTION,
  radiativeCoefficient,
  surfaceResistance,
  windConvection,
} from '../../../src/tank/stack/films.ts';
import { nusseltFromBelowHollands1984 } from '../../../src/tank/stack/water-gap.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import {
  airLayerTable,
  blackBodyTable,
  conventionalSurfaceResistance,
  foilLayerTable,
  hollandsTable,
  plainPlates,
} from './published.ts';

const kelvin = (celsius: number) => celsius + 273.15;
/** ISO 6946 rounds its tables to this much either way. */
const halfOf = (digit: number, ours: number, published: number) =>
  Math.abs(ours - published) <= digit / 2 + 1e-9 ? 'inside the printed rounding' : deviationInPercent(ours, published);

export function wallRows(): readonly ValidationRow[] {
  return [...filmRows(), ...airLayerRows(), ...plateRows(), ...layerRows()];
}

function filmRows(): ValidationRow[] {
  const subject = 'Surface resistances';
  const source = 'ISO 6946, surface resistances (2017 annex C), values read in a public copy';
  const black = blackBodyTable.map(([celsius, published]): ValidationRow => {
    const ours = radiativeCoefficient(1, kelvin(celsius));
    const quantity = `black body at ${celsius} °C, h_r0 [W/(m² K)]`;
    return { subject, quantity, source, published, ours, deviation: halfOf(0.1, ours, published), status: 'reference' };
  });
  const inner = (['up', 'horizontal', 'down'] as const).map((flow): ValidationRow => {
    const published = conventionalSurfaceResistance[flow];
    const ours = surfaceResistance(INTERNAL_CONVECTION[flow], radiativeCoefficient(0.9, kelvin(20)));
    const quantity = `indoors, heat flow ${flow}, R_si [m² K/W]`;
    return {
      subject,
      quantity,
      source,
      published,
      ours,
      deviation: halfOf(0.01, ours, published),
      status: 'reference',
    };
  });
  const wind = surfaceResistance(windConvection(4), radiativeCoefficient(0.9, kelvin(10)));
  return [
    ...black,
    ...inner,
    {
      subject,
      quantity: 'outdoors at 4 m/s, R_se [m² K/W]',
      source,
      published: 0.04,
      ours: wind,
      deviation: halfOf(0.01, wind, 0.04),
      status: 'reference',
      reason: 'The standard prints two digits',
    },
  ];
}

function airLayerRows(): ValidationRow[] {
  const printed = airLayerTable.map(([thickness, flow, published]): ValidationRow => {
    const ours = airLayerResistance(thickness / 1000, flow, 0.9, 0.9, kelvin(10));
    return {
      subject: 'Sealed air layers',
      quantity: `R [m² K/W], ${thickness} mm, heat flow ${flow}`,
      source: 'ISO 6946, table of airspace resistances, from memory of the source',
      published,
      ours,
      deviation: halfOf(0.01, ours, published),
      status: 'reference',
    };
  });
  const foil = foilLayerTable.map(([thickness, flow, published]): ValidationRow => {
    const ours = airLayerResistance(thickness / 1000, flow, 0.05, 0.9, kelvin(10));
    return {
      subject: 'Sealed air layers with a foil of 0.05 on one face',
      quantity: `R [m² K/W], ${thickness} mm, heat flow ${flow}`,
      source: 'ISO 6946, constants of the annex on airspaces, evaluated with other software',
      published,
      ours,
      deviation: halfOf(0.001, ours, published),
      status: 'reference',
    };
  });
  return [...printed, ...foil];
}

function plateRows(): ValidationRow[] {
  return plainPlates.map(([which, flow, published]): ValidationRow => {
    const ours = INTERNAL_CONVECTION[flow];
    return {
      subject: 'Natural convection in the room, h_c [W/(m² K)]',
      quantity: which,
      source: 'Bergman, Incropera, Dewitt & Lavine, chapter 9 (constants from memory), evaluated with other software',
      published,
      ours,
      deviation: deviationInPercent(ours, published),
      status: 'reference',
      reason:
        'ISO 6946 holds the film fixed for all sizes and differences; radiation of about 5 W/(m² K) stands beside it, and the range of the outer film carries the rest',
    };
  });
}

function layerRows(): ValidationRow[] {
  const row = (quantity: string, source: string, published: number, ours: number, reason?: string): ValidationRow => ({
    subject: 'Natural convection in layers and at pipes, Nu [-]',
    quantity,
    source,
    published,
    ours,
    deviation: deviationInPercent(ours, published),
    status: 'reference',
    ...(reason === undefined ? {} : { reason }),
  });
  const hollands =
    'Hollands, Raithby & Konicek, Int. J. Heat Mass Transfer 18 (1975) 879, evaluated with other software';
  const textbook = 'Çengel & Ghajar, Heat and Mass Transfer, example 9-1, from memory of the source';
  return [
    ...hollandsTable.map(([rayleigh, nusselt]) =>
      row(`air heated from below, Ra ${rayleigh}`, hollands, nusselt, nusseltHollands1975(rayleigh)),
    ),
    row(
      'water heated from below, Pr 5.54, Gr 3.21e8',
      'Hollands 1984 as printed in the documentation of the open library ht 1.x',
      69.02668649510164,
      nusseltFromBelowHollands1984(5.54 * 3.21e8, 5.54),
      'There 5803 stands for the 5830 taken here',
    ),
    row(
      'level hot-water pipe, Ra 1.867e6, Pr 0.7241',
      textbook,
      17.4,
      nusseltCylinderChurchillChu1975(1.867e6, 0.7241),
    ),
  ];
}
