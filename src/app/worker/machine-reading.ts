// What reads printed and measured points of a machine is fetched when a design first has any: most have none, and the first answer
// does not wait for it.

import { hasMachineReading } from '../../parts/compressor/index.ts';
import type { EngineRequest } from './messages.ts';

/** Whether a request is about a design with points of its machine. */
export function needsMachineReading(body: EngineRequest): boolean {
  const text = 'text' in body ? body.text : 'form' in body && 'text' in body.form ? body.form.text : undefined;
  return text !== undefined && hasPoints(text);
}

/** False where it could not be fetched. */
export async function ensureMachineReading(body: EngineRequest): Promise<boolean> {
  if (hasMachineReading() || !needsMachineReading(body)) return true;
  return import('../../parts/every-machine-reading/index.ts').then(
    () => true,
    () => false,
  );
}

/** What of a compressor makes points; whatever a text says that is no design is left to the engine, which refuses it. */
function hasPoints(text: string): boolean {
  const compressor = compressorIn(text);
  const lists = ['ratings', 'coefficients', 'tables', 'bench'].map((name) => compressor[name]);
  const plate = Object(compressor.nameplate) as Part;
  const isRating = compressor.kind === 'rating';
  return isRating || [...lists, plate.ratedCurrent, plate.power].some((part) => part !== undefined);
}

type Part = Readonly<Record<string, unknown>>;

function compressorIn(text: string): Part {
  try {
    const { machine } = Object(JSON.parse(text)) as Part;
    return Object((Object(machine) as Part).compressor) as Part;
  } catch {
    return {};
  }
}
