// "Start my own": seven questions whose answers make a complete design. The questions are data; the fields they ask are
// fields of the document, with their own records. Everything else starts as an assumption.

import { type FieldRecord, fieldRecord, fieldRecords } from './field-records.ts';
import { checkDesign, type ReadDesign } from './parse.ts';
import { genericPath, type Part, textAt, withPart } from './paths.ts';
import { formatVersion } from './schema/design.ts';

/** A field that a question asks, perhaps only after a choice made in the same question. */
export interface StartField {
  readonly path: string;
  /** Asked only where the field at `path` has been answered with this. */
  readonly when?: { readonly path: string; readonly is: string };
  /** May be left out, though asked. */
  readonly optional: boolean;
  /** Of the choices of the field only these are offered; the others wait in the workbench. */
  readonly among?: readonly string[];
}

export interface StartQuestion {
  readonly id: 'tank' | 'water' | 'room' | 'lid' | 'compressor' | 'electricity' | 'heating';
  readonly question: string;
  readonly help: string;
  readonly fields: readonly StartField[];
}

/** Texts by path, as typed. */
export type StartAnswers = Readonly<Record<string, string>>;

const requiredParts = ['room', 'tank', 'machine', 'prices'] as const;
const loadKind = 'tank.load.kind';

function asked(path: string): StartField {
  return { path, optional: false };
}

function maybe(path: string): StartField {
  return { path, optional: true };
}

function measured(path: string): StartField {
  return { path, when: { path: loadKind, is: 'measured' }, optional: false };
}

function sized(path: string, optional = false): StartField {
  return { path, when: { path: loadKind, is: 'rectangular' }, optional };
}

export const startQuestions: readonly StartQuestion[] = [
  {
    id: 'tank',
    question: 'How do you know your tank?',
    help: 'A meter on the heater for a week is best. Otherwise its inside measures and its panes.',
    fields: [
      { ...asked(loadKind), among: ['measured', 'rectangular'] },
      measured('tank.load.energy'),
      measured('tank.load.duration'),
      sized('tank.load.length'),
      sized('tank.load.width'),
      sized('tank.load.height'),
      sized('tank.load.wall.material'),
      sized('tank.load.wall.thickness'),
    ],
  },
  {
    id: 'water',
    question: 'What water, and how warm?',
    help: 'The temperature it is to be kept at.',
    fields: [asked('tank.waterTemperature'), asked('tank.water')],
  },
  {
    id: 'room',
    question: 'How warm is the room?',
    help: 'As it usually is while you heat. The machine would take its heat from this air.',
    fields: [asked('room.temperature')],
  },
  {
    id: 'lid',
    question: 'What lies on the water?',
    help: 'Water that evaporates is often the largest loss. After a measurement only its share is asked, if you know it.',
    fields: [
      sized('tank.load.lid'),
      sized('tank.load.surface', true),
      { path: 'tank.load.evaporationShare', when: { path: loadKind, is: 'measured' }, optional: true },
    ],
  },
  {
    id: 'compressor',
    question: 'What did the compressor come out of?',
    help: 'And the refrigerant on its plate, to which it belongs; and roughly when it was made. Leave open what you do not know.',
    fields: [
      maybe('machine.compressor.appliance'),
      maybe('machine.compressor.madeFor'),
      maybe('machine.compressor.year'),
    ],
  },
  {
    id: 'electricity',
    question: 'What does electricity cost?',
    help: 'The price of one more kilowatt hour.',
    fields: [asked('prices.currency'), asked('prices.electricity')],
  },
  {
    id: 'heating',
    question: 'How long is the room heated, and at what price?',
    help: 'Heat that leaves the tank helps to heat the room in those months. Leave open what you do not know.',
    fields: [maybe('room.monthsHeated'), maybe('room.houseHeatPrice')],
  },
];

/** The fields of a question that apply after the answers given so far. */
export function askedFields({ fields }: StartQuestion, answers: StartAnswers): readonly StartField[] {
  return fields.filter(({ when }) => when === undefined || answers[when.path]?.trim() === when.is);
}

/** The record of a field as the question asks it. */
export function startRecord({ path, among }: StartField): FieldRecord {
  const record = fieldRecord(path)!;
  if (among === undefined) return record;
  return { ...record, choices: (record.choices ?? []).filter(({ name }) => among.includes(name)) };
}

/** The design that the answers make; any other path of the document may be answered too. */
export function newDesign(answers: StartAnswers, name = 'My tank'): ReadDesign {
  const given = Object.entries(answers).map(([path, text]) => [path, text.trim()] as const);
  const asksOther = new Map(
    startQuestions.flatMap(({ fields }) => fields.map((field) => [field.path, field] as const)),
  );
  let document: Part = {
    formatVersion,
    name,
    room: {},
    tank: {},
    machine: {},
    prices: {},
  };
  for (const [path, text] of given) {
    const when = asksOther.get(path)?.when;
    if (text === '' || (when !== undefined && answers[when.path]?.trim() !== when.is)) continue;
    // Items of lists are added in the workbench: an answer is a text.
    if (fieldRecord(path) === undefined || genericPath(path).includes('*')) {
      return {
        ok: false,
        problems: [{ path, code: 'unknownPath', received: path, expected: 'the path of a field of a design' }],
      };
    }
    document = withPart(document, path.split('.'), text);
  }
  return checkDesign(ordered(document));
}

/** Keys in the order of the schema, so that files look alike. */
function ordered(document: Part): Part {
  let result: Part = { formatVersion: document.formatVersion };
  for (const { path } of fieldRecords) {
    const text = textAt(document, path);
    if (text !== undefined) result = withPart(result, path.split('.'), text);
  }
  // Parts without any answer stay as empty parts, so that the problems name the fields that are missing.
  for (const part of requiredParts) if (result[part] === undefined) result = { ...result, [part]: {} };
  return result;
}
