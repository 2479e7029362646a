// What a field alone cannot tell: water above the rim, a coldest spell above the usual temperature, a fluid the appliance was
// never built for, a price in another currency. Runs on documents whose fields are valid one by one.

import { layerConductivity } from '../../matter/materials/index.ts';
import { KettlefinError } from '../../numerics/index.ts';
import { applianceClass } from '../../parts/compressor/index.ts';
import { type Estimate, readQuantity, sayQuantity } from '../../quantities/index.ts';
import { fieldsOf } from '../field-records.ts';
import { textAt } from '../paths.ts';
import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';

/** All problems between fields. */
export function crossProblems(document: DesignDocument): readonly DesignProblem[] {
  return [
    ...currencyProblems(document),
    ...temperatureProblems(document),
    ...tankProblems(document),
    ...compressorProblems(document),
  ];
}

function currencyProblems(document: DesignDocument): DesignProblem[] {
  const { currency } = document.prices;
  return fieldsOf(document).flatMap(({ path, quantity }) => {
    if (quantity !== 'energyPrice' && quantity !== 'money') return [];
    const text = textAt(document, path);
    if (text === undefined) return [];
    const read = readQuantity(text, quantity, { currency });
    return read.ok ? [] : [{ path, ...read.problem }];
  });
}

function temperatureProblems(document: DesignDocument): DesignProblem[] {
  const rooms = document.source?.kind === 'otherRoom' ? ['room', 'source'] : ['room'];
  return rooms.flatMap((room) => {
    const usual = valueAt(document, `${room}.temperature`);
    const coldest = valueAt(document, `${room}.coldest`);
    const warmest = valueAt(document, `${room}.warmest`);
    if (usual === undefined) return [];
    const said = sayQuantity(usual.likely, 'temperature', 'metric');
    const problems: DesignProblem[] = [];
    if (coldest !== undefined && coldest.likely > usual.likely + hair) {
      problems.push(
        problem(document, `${room}.coldest`, 'coldestAboveUsual', `at most ${said}, the usual temperature`),
      );
    }
    if (warmest !== undefined && warmest.likely < usual.likely - hair) {
      problems.push(
        problem(document, `${room}.warmest`, 'warmestBelowUsual', `at least ${said}, the usual temperature`),
      );
    }
    return problems;
  });
}

function tankProblems(document: DesignDocument): DesignProblem[] {
  const { load } = document.tank;
  if (load.kind === 'measured') return measuredProblems(document);
  const problems: DesignProblem[] = [];
  const height = valueAt(document, 'tank.load.height');
  const depth = valueAt(document, 'tank.load.waterDepth');
  // The ends are compared crosswise: every combination of depth and height must be possible.
  if (height !== undefined && depth !== undefined && depth.high > height.low + hair) {
    const expected = `at most the height of the tank, ${sayQuantity(height.low, 'length', 'metric')}`;
    problems.push(problem(document, 'tank.load.waterDepth', 'waterAboveRim', expected));
  }
  const thickness = valueAt(document, 'tank.load.lidThickness');
  if (thickness !== undefined) {
    for (const end of [thickness.low, thickness.high]) {
      try {
        layerConductivity(load.lidMaterial ?? 'glass', end);
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        problems.push(problem(document, 'tank.load.lidThickness', 'lidThicknessUnknown', knownThickness(error)));
        break;
      }
    }
  }
  return problems;
}

function measuredProblems(document: DesignDocument): DesignProblem[] {
  const room = valueAt(document, 'tank.load.roomTemperature') ?? valueAt(document, 'room.temperature');
  const water = valueAt(document, 'tank.load.waterTemperature') ?? valueAt(document, 'tank.waterTemperature');
  if (room === undefined || water === undefined || room.high < water.low) return [];
  const given = textAt(document, 'tank.load.roomTemperature');
  const path = given === undefined ? 'room.temperature' : 'tank.load.roomTemperature';
  const said = sayQuantity(water.low, 'temperature', 'metric');
  return [
    problem(
      document,
      path,
      'measuredRoomTooWarm',
      `a room colder than the water's ${said}: otherwise a heater tells nothing about losses`,
    ),
  ];
}

function compressorProblems(document: DesignDocument): DesignProblem[] {
  const { compressor } = document.machine;
  if (compressor.kind !== 'salvaged') return [];
  const { fluids, title } = applianceClass(compressor.appliance);
  if (fluids.includes(compressor.madeFor)) return [];
  const expected = `a refrigerant that a ${title} was built for: ${fluids.join(', ')}; if the rating plate says otherwise, describe the compressor by displacement or rating`;
  return [problem(document, 'machine.compressor.madeFor', 'fluidNotOfThisClass', expected)];
}

/** Rounding of unit conversions [SI]. */
const hair = 1e-9;

function problem(document: DesignDocument, path: string, code: DesignProblem['code'], expected: string): DesignProblem {
  return { path, code, received: textAt(document, path) ?? '', expected };
}

function knownThickness(error: KettlefinError): string {
  const facts = error.facts();
  return 'low' in facts && 'high' in facts
    ? `${sayQuantity(Number(facts.low), 'length', 'metric')} to ${sayQuantity(Number(facts.high), 'length', 'metric')}`
    : error.message;
}

function valueAt(document: DesignDocument, path: string): Estimate | undefined {
  const text = textAt(document, path);
  const quantity = fieldsOf(document).find((field) => field.path === path)?.quantity;
  if (text === undefined || quantity === undefined) return undefined;
  const read = readQuantity(text, quantity);
  return read.ok ? read.estimate : undefined;
}
