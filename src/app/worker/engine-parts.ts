// Parts of the engine that a design may need or not are fetched when one first does: what reads printed and measured points of a
// machine, what reckons a tank from its sizes. The first answer waits for neither.

import { hasMachineParts, hasSizedTanks } from '../../assess/index.ts';
import type { EngineProblem, EngineRequest } from './messages.ts';
import { missingPart } from './problems.ts';

type Part = Readonly<Record<string, unknown>>;

interface EnginePart {
  /** Whether it is for a design, as parsed from its text and not yet checked. */
  readonly isFor: (design: Part) => boolean;
  readonly isHere: () => boolean;
  readonly fetch: () => Promise<unknown>;
  readonly code: string;
  /** What it is called when it could not be fetched. */
  readonly name: string;
}

const machineReading: EnginePart = {
  isFor: hasMachinePoints,
  isHere: hasMachineParts,
  fetch: () => import('../../assess/every-machine/index.ts'),
  code: 'readingMissing',
  name: 'What reads ratings, coefficients, tables and measurements of a machine',
};

const sizedTanks: EnginePart = {
  isFor: isTankSized,
  isHere: hasSizedTanks,
  fetch: () => import('../../assess/every-tank/index.ts'),
  code: 'sizedTankMissing',
  name: 'What reckons a tank from its sizes',
};

/** Whether a request is about a design with points of its machine. */
export function needsMachineReading(body: EngineRequest): boolean {
  return machineReading.isFor(designIn(body));
}

/** Whether a request is about a design whose tank is known by its sizes. */
export function needsSizedTanks(body: EngineRequest): boolean {
  return sizedTanks.isFor(designIn(body));
}

/** Sees that the parts a request needs are here; answers what could not be fetched. */
export async function ensureParts(body: EngineRequest): Promise<EngineProblem | undefined> {
  const design = designIn(body);
  const wanted = [machineReading, sizedTanks].filter((part) => part.isFor(design) && !part.isHere());
  const failed = await Promise.all(
    wanted.map((part) =>
      part.fetch().then(
        () => [],
        () => [part],
      ),
    ),
  );
  const [missing] = failed.flat();
  return missing && missingPart(missing.code, missing.name);
}

/** What of a compressor makes points. */
function hasMachinePoints({ machine }: Part): boolean {
  const compressor = partOf(partOf(machine).compressor);
  const lists = ['ratings', 'coefficients', 'tables', 'bench'].map((name) => compressor[name]);
  const plate = partOf(compressor.nameplate);
  const isRating = compressor.kind === 'rating';
  return isRating || [...lists, plate.ratedCurrent, plate.power].some((part) => part !== undefined);
}

function isTankSized({ tank }: Part): boolean {
  const { kind } = partOf(partOf(tank).load);
  return typeof kind === 'string' && kind !== 'measured';
}

/** Whatever a text says that is no design is left to the engine, which refuses it. */
function designIn(body: EngineRequest): Part {
  const text = 'text' in body ? body.text : 'form' in body && 'text' in body.form ? body.form.text : '';
  try {
    return partOf(JSON.parse(text));
  } catch {
    return {};
  }
}

function partOf(value: unknown): Part {
  return Object(value) as Part;
}
