// The tank in the published answer: losses by path, panels with their temperatures, months, cooling, and the meter.

import { z } from 'zod';
import { band, bandWithUnit, si, text } from './values.ts';

const facing = z.enum(['side', 'bottom', 'top']);

const lossPath = z.strictObject({
  path: text(
    'stable name: evaporation, surfaceConvection, surfaceRadiation, lid, freeboard, hoodAir, hoodVapour, hoodWalls, the name of a panel such as front or bottom, makeUpWater, waterChange, airStones, skimmer, wallsAndSurface; of another vessel with its name before: sump.front; pipes.return',
  ),
  label: text('the same in words'),
  kind: z.enum(['sensible', 'latent']).describe('latent heat leaves as vapour and does not warm the room'),
  to: z.enum(['room', 'outdoors', 'ground', 'freshWater']).describe('where it ends'),
  vessel: z.string().nullable().describe('tank, sump, refuge, overflow; null where it is of the whole tank'),
  panel: z.string().nullable().describe('name of the panel it passes; null where it passes none'),
  heat: bandWithUnit('heat by this path [W]'),
});

const sizes = { height: si('inner [m]'), waterDepth: si('of the water [m]') };

const shape = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('rectangular'), length: si('inner [m]'), width: si('inner [m]'), ...sizes }),
    z.strictObject({ kind: z.literal('cylinder'), diameter: si('inner [m]'), ...sizes }),
    z.strictObject({
      kind: z.literal('lShape'),
      length: si('inner [m]'),
      width: si('inner [m]'),
      recessLength: si('of the corner cut out at the back right [m]'),
      recessWidth: si('of that corner [m]'),
      ...sizes,
    }),
    z.strictObject({
      kind: z.literal('panels'),
      pieces: z.array(
        z.strictObject({
          name: text('as the design says'),
          facing,
          area: si('below the water line [m²]'),
          areaAboveWater: si('[m²]'),
        }),
      ),
      waterSurface: si('[m²]'),
      waterVolume: si('[m³]'),
      freeboard: si('air between water and rim [m]'),
    }),
  ])
  .describe('inner sizes, likely values');

const vessel = z.strictObject({
  vessel: text('tank, sump, refuge, overflow'),
  label: text('the same in words'),
  loss: bandWithUnit('heat that leaves by it [W]'),
  waterSurface: si('[m²]'),
  waterVolume: si('[m³]'),
  shape,
  cover: z.union([
    z.strictObject({ kind: z.enum(['none', 'lid']) }),
    z.strictObject({ kind: z.literal('hood'), height: si('[m]') }),
  ]),
});

const layer = z.strictObject({
  kind: text('solid, resistance, sealedGap, openGap, waterGap'),
  label: text('its material, or what else it is, in words'),
  thickness: z.number().nullable().describe('[m]; null for a layer known by its resistance alone'),
  resistance: si('[m² K/W]'),
  innerTemperature: si('of its face towards the water [K]'),
  outerTemperature: si('of its face away from the water [K]'),
  origin: z.string().nullable().describe('where in the design it stands'),
});

const panel = z.strictObject({
  vessel: text('tank, sump, refuge, overflow'),
  panel: text('unique in its vessel: front, bottom, recessBack, lid, hood'),
  label: text('the same in words'),
  facing,
  exposure: text('roomAir, againstWall, closedStand, slab, outdoors'),
  area: si('below the water line, or the covered surface of a lid [m²]'),
  dryArea: si('above the water line [m²]'),
  heat: bandWithUnit('through `area` [W]'),
  transmittance: si('from the inside to what lies beyond [W/(m² K)]'),
  insideTemperature: si('water, or the damp air below a lid [K]'),
  waterFilmResistance: si('[m² K/W]; 0 where damp air lies inside'),
  layers: z.array(layer).describe('from the water outwards, likely values'),
  outerTemperature: si('of the outer face [K]'),
  outerResistance: si('from it to what lies beyond [m² K/W]'),
  sinkTemperature: si('of what lies beyond [K]'),
  condenses: z.boolean().describe('whether the room’s air leaves water on the outer face'),
});

const fall = z.strictObject({
  by: si('how far the water falls [K]'),
  time: z.number().nullable().describe('[s]; null where it never falls so far'),
  range: z
    .strictObject({ low: si('[s]'), high: z.number().nullable().describe('[s]; null where it might never') })
    .nullable()
    .describe('null where even the fastest end never falls so far'),
  result: text('name of this result in `workings`'),
});

const month = z.strictObject({
  month: text('in English, lower case'),
  duration: si('[s]'),
  roomTemperature: si('[K]'),
  loss: bandWithUnit('all heat that leaves [W]'),
  load: bandWithUnit('loss less gains [W]'),
  paths: z.array(z.strictObject({ path: z.string(), label: z.string(), heat: bandWithUnit('[W]') })),
  evaporation: bandWithUnit('water that evaporates [kg/s]'),
  heatNeeded: bandWithUnit('in the month [J]'),
});

const explanation = z.strictObject({
  path: text('of the input in the design, or "engine." and the name of an assumption of the models'),
  label: text('the same in words'),
  quantity: text('name of the quantity of the input'),
  input: band.describe('range of the input, base SI'),
  value: z
    .number()
    .nullable()
    .describe('that alone would make the model lose what was measured; null where none would'),
  isWithin: z.boolean().describe('whether that value lies within the range of the input'),
  ratioAtLow: si('measured over modelled loss with this input at its low end'),
  ratioAtHigh: si('the same at its high end'),
  measure: text('how one could find out'),
});

const meter = z.strictObject({
  roomTemperature: si('while it was measured [K]'),
  waterTemperature: si('while it was measured [K]'),
  meanPower: bandWithUnit('electricity of the heater [W]'),
  measuredLoss: bandWithUnit('heater, pumps and lights together [W]'),
  modelledLoss: bandWithUnit('what the sizes say at those temperatures [W]'),
  ratio: bandWithUnit('measured over modelled loss, both varied together'),
  agrees: z.boolean().describe('whether 1 lies within the range of the ratio'),
  adopted: z.boolean().describe('whether every loss is multiplied by the ratio'),
  explanations: z.array(explanation).describe('inputs that could explain the difference alone first'),
});

export const tank = z
  .strictObject({
    waterTemperature: si('[K]'),
    roomTemperature: si('at the coldest spell [K]'),
    roomDewPoint: z
      .number()
      .nullable()
      .describe('of the room’s air at the coldest spell [K]; null for air without vapour'),
    paths: z.array(lossPath).describe('they sum to `loss`'),
    vessels: z.array(vessel).describe('the display tank first; empty for a measured tank'),
    panels: z.array(panel).describe('of all vessels, lids and hoods among them; empty for a measured tank'),
    loss: bandWithUnit('all heat that leaves [W]'),
    gains: z
      .strictObject({ pump: si('[W]'), light: si('[W]'), ultraviolet: si('[W]') })
      .describe('heat that pumps, lights and ultraviolet lamp give the water'),
    gainRanges: z.strictObject({ pump: band, light: band, ultraviolet: band }).describe('their ranges [W]'),
    load: bandWithUnit('loss less gains: heat needed [W]'),
    evaporation: bandWithUnit('water that evaporates [kg/s]'),
    heatCapacity: si('of the water alone [J/K]'),
    timePerKelvin: z
      .number()
      .nullable()
      .describe('time for the water to fall by 1 K without heat [s]; null where it needs none'),
    timePerKelvinRange: z
      .strictObject({
        low: si('[s]'),
        high: z.number().nullable().describe('[s]; null where it might not cool at all'),
      })
      .nullable()
      .describe('from the range of the load; null as timePerKelvin is'),
    conductance: bandWithUnit('change of the loss per kelvin of water temperature [W/K]'),
    timeConstant: bandWithUnit('heat capacity over conductance [s]'),
    falls: z.array(fall).describe('how long the water takes to fall with heater, pumps and lights off'),
    months: z.array(month).describe('January first'),
    yearHeatNeeded: bandWithUnit('in the year [J]'),
    meter: meter.nullable().describe('a meter on the heater beside the sizes; null without one'),
  })
  .describe('the tank at the coldest spell and through the year');
