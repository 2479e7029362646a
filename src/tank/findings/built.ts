// What the model of a built tank leaves out or doubts, as findings: every simplification is named where the result is seen.

import type { Finding } from '../../quantities/index.ts';
import type { BuiltTank } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { BuiltIntermediates } from '../load.ts';
import { look, note, value, word } from './codes.ts';
import { coverFindings } from './covers.ts';
import { noHeatNeeded } from './measured.ts';
import { stackFindings } from './stacks.ts';
import { surfaceFindings } from './surfaces.ts';

export function builtFindings(
  tank: BuiltTank,
  intermediates: BuiltIntermediates,
  evaporation: number,
  range: { readonly low: number; readonly high: number },
  load: number,
  conditions: TankConditions,
): readonly Finding[] {
  const { vessels } = intermediates;
  const surface = vessels.find((vessel) => vessel.surface !== undefined)?.surface;
  const lid = vessels.find((vessel) => vessel.lid !== undefined)?.lid;
  const makeUp = tank.exchange.makeUpFrom === 'room' ? ', make-up water at room temperature' : '';
  const found = [
    note(
      'tankSimplifications',
      {},
      'ISO 6946 surface resistances; own simplification',
      `Water surface as warm as the bulk, room surfaces as warm as the air${makeUp}, corners flat. The strip of pane above open water is left out.`,
    ),
  ];
  if (tank.vessels[0]?.panels.some(({ facing, exposure }) => facing === 'bottom' && exposure.kind === 'roomAir')) {
    found.push(
      note(
        'tankBottomFacesRoomAir',
        {},
        'ISO 6946, heat flow downwards',
        'Air of the room is taken to reach the whole bottom; in a closed stand or on a solid top it loses less. Say so at the bottom’s surroundings.',
      ),
    );
  }
  if (surface !== undefined) {
    const facts = {
      surface: word(surface.surface),
      low: value(range.low, 'massFlow'),
      likely: value(evaporation, 'massFlow'),
      high: value(range.high, 'massFlow'),
    };
    found.push(
      note(
        'evaporationMethodsDiffer',
        facts,
        'Shah 2014 for quiet water, ASHRAE Handbook HVAC Applications for active water',
        'Measure the water lost in a few days without top-up; it settles this.',
      ),
    );
  }
  if (lid !== undefined) {
    found.push(
      note(
        'lidCondensateReturns',
        { lidTemperature: value(lid.innerTemperature, 'temperature') },
        'Hollands, Raithby & Konicek 1975; Sherwood analogy',
        'All that condenses on the lid is taken to run back into the tank.',
      ),
    );
  }
  const loose = vessels.find((vessel) => vessel.lid !== undefined && vessel.surface !== undefined)?.surface;
  if (loose !== undefined) {
    found.push(
      note(
        'looseLidAsOpenShare',
        { openShare: value(loose.openShare, 'fraction') },
        'own simplification, no source',
        'A loose lid is computed as a tight one with this share of the surface open; measure the gaps.',
      ),
    );
  }
  if (evaporation < 0) {
    found.push(
      look(
        'condensationOnWater',
        { condensing: value(-evaporation, 'massFlow') },
        'vapour pressure of the room above that of the water',
        'The room is so humid that it condenses on the water; check the relative humidity.',
      ),
    );
  }
  found.push(
    ...coverFindings(tank, intermediates),
    ...surfaceFindings(tank, intermediates, conditions),
    ...stackFindings(vessels),
  );
  return load < 0 ? [...found, noHeatNeeded(load)] : found;
}
