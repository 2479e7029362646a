// A file that holds a machine and no tank: what the machine needs of the rest of a design, so that it can be read by the same rules.
// What is put in decides nothing that is told: no answer about a machine alone speaks of tank, room or prices.

import { checkDesign, type DesignDocument, type DesignNotice, parseDesign, readJson } from '../../../design/index.ts';
import type { Refusal } from '../../from-design.ts';

/** A design for a question about its machine, and whether it has a tank of its own. */
export interface ReadMachine {
  readonly document: DesignDocument;
  readonly isAlone: boolean;
  /** What to know of the file although it is accepted. */
  readonly notices: readonly DesignNotice[];
}

/** What every design must hold beside its machine. */
const rest = {
  name: 'A machine alone',
  room: { temperature: '20 °C' },
  tank: {
    waterTemperature: '25 °C',
    water: 'fresh',
    load: { kind: 'measured', energy: '1 kWh', duration: '1 day' },
  },
  prices: { currency: 'EUR', electricity: '0.3 /kWh' },
} as const;

/** The design, or the machine alone, that a text holds; or every problem with it. */
export function readMachine(text: string): ({ readonly ok: true } & ReadMachine) | Refusal {
  const json = readJson(text);
  const alone = json.ok ? machineAlone(json.value) : undefined;
  const parsed = alone === undefined ? parseDesign(text) : checkDesign(alone);
  if (!parsed.ok) return { ok: false, kind: 'unusable', problems: parsed.problems };
  const { document, notices } = parsed;
  return { ok: true, document, isAlone: alone !== undefined, notices };
}

/** The parts put in where there is a machine and no tank; undefined where there is anything else. */
function machineAlone(value: unknown): Readonly<Record<string, unknown>> | undefined {
  if (!isPart(value) || !isPart(value.machine) || Object.hasOwn(value, 'tank')) return undefined;
  const { machine } = value;
  const madeFor = isPart(machine.compressor) ? machine.compressor.madeFor : undefined;
  const isNamed = Object.hasOwn(machine, 'refrigerant') || madeFor === undefined;
  return { ...rest, ...value, machine: isNamed ? machine : { refrigerant: madeFor, ...machine } };
}

function isPart(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
