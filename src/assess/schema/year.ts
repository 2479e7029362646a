// The year in the published answer: month by month, in energy and in money, and the loop against each other way.

import { z } from 'zod';
import { band, bandWithUnit, si, text } from './values.ts';

export const month = z.strictObject({
  month: text('january to december'),
  roomTemperature: si('[K]'),
  sourceTemperature: si('[K]'),
  heatNeeded: si('[J]'),
  heatDelivered: si('[J]'),
  electricity: si('[J]'),
  backup: si('[J]'),
  runFraction: si('share of the time'),
  heatTaken: si('from the source [J]'),
  roomHeat: si(
    'net sensible heat into the tank’s room, that of a dehumidifier included [J]; negative is heat taken out of it',
  ),
  heated: si('share of the month in which the room is heated'),
  vapourHeat: si('leaves the tank as vapour [J]; it warms the room only where a dehumidifier condenses it'),
});

const monthOfAccount = z.strictObject({
  month: text('january to december'),
  heated: si('share of the month in which the room is heated'),
  electricity: si('[J]'),
  electricityCost: si('in `currency`'),
  roomHeat: si('net sensible heat into the room while it is heated [J]; negative is heat taken from it'),
  roomCredit: si('what that heat is worth, in `currency`'),
  coolingCost: si('of cooling the room in summer, in `currency`'),
  dehumidifierElectricity: si('of a dehumidifier for what the tank evaporates [J]; null without one').nullable(),
  dehumidifierCost: si('what that costs, in `currency`; null without one').nullable(),
  runningCost: si('electricity less room credit plus cooling plus dehumidifier, in `currency`'),
});

export const account = z.strictObject({
  scenario: z
    .enum(['plainHeater', 'insulationOnly', 'thisLoop', 'certifiedHeatPump'])
    .describe('insulationOnly: a plain heater on the tank wrapped with what pays; left out where nothing does'),
  label: text('the same in words'),
  electricity: bandWithUnit('[J] a year'),
  electricityCost: bandWithUnit('a year, in `currency`'),
  roomHeat: bandWithUnit('heat given to the room in heated months [J]; negative is heat taken from it'),
  roomCredit: bandWithUnit('what that heat is worth a year, in `currency`; negative where it is taken'),
  coolingCost: bandWithUnit('of cooling the room in summer, a year, in `currency`'),
  dehumidifierElectricity: bandWithUnit(
    'of a dehumidifier for what the tank evaporates, not in `electricity` [J] a year; null in a room without one',
  ).nullable(),
  dehumidifierCost: bandWithUnit('what that costs a year, in `currency`; null in a room without one').nullable(),
  runningCost: bandWithUnit('electricity less room credit plus cooling plus dehumidifier, a year, in `currency`'),
  purchase: si('price, in `currency`'),
  purchaseRange: band.describe('its range'),
  lifeCostPerYear: bandWithUnit('running plus purchase spread over its life, a year, in `currency`'),
  months: z.array(monthOfAccount).describe('likely values; they add up to those of the year'),
});

const breakEven = z.strictObject({
  loopCostsLess: z
    .enum(['below', 'above', 'always', 'never'])
    .describe('where this loop costs less: below or above `at`, at every value asked about, or at none'),
  at: z
    .strictObject({
      low: z.number().nullable().describe('lower end; null where the range has none'),
      likely: si('likely value'),
      high: z.number().nullable().describe('upper end; null where the range has none'),
      unit: text('SI unit of the numbers'),
      result: text('name of this result; the step of `workings` of the same name shows how it was computed'),
    })
    .nullable()
    .describe('where both cost the same; null with always and never'),
});

export const loopAgainst = z.strictObject({
  against: z.enum(['plainHeater', 'insulationOnly', 'certifiedHeatPump']),
  label: text('the same in words'),
  isCheapest: z.boolean().describe('whether it is the cheapest of the other ways over its life, likely values'),
  lifeCost: bandWithUnit('cost of this loop less that of the other, a year over its life, both varied together'),
  ifBuilt: si('what the loop would cost a year more, were it built and the unfavourable end true, in `currency`'),
  ifNotBuilt: si('what the other would cost a year more, were the loop not built and the favourable end true'),
  houseHeatPrice: breakEven.describe('price of house heat, from 0 up [1/J, in `currency`]'),
  seasonCop: breakEven.nullable().describe('COP over the year of this loop, from 1 up; null where seasonCop is'),
});
