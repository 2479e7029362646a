// What may be wrong with a design document, as data with a path; and the sentence for a person.

import type { QuantityProblemCode } from '../quantities/index.ts';

export type DesignProblemCode =
  | QuantityProblemCode
  | 'outOfRange'
  | 'tooLarge'
  | 'truncated'
  | 'notJson'
  | 'duplicateKey'
  | 'tooDeep'
  | 'notADesign'
  | 'badFormatVersion'
  | 'newerFormat'
  | 'missing'
  | 'wrongType'
  | 'unknownKey'
  | 'unknownChoice'
  | 'badText'
  | 'unknownPath'
  | 'notOptional'
  | 'tooManyItems'
  | 'notWhole'
  | 'notInOrder'
  | 'plateContradictsItself'
  | 'domeAgainstClass'
  | 'aboveVoltAmperes'
  | 'notTenNumbers'
  | 'tableUnreadable'
  | 'waterAboveRim'
  | 'coldestAboveUsual'
  | 'warmestBelowUsual'
  | 'measuredRoomTooWarm'
  | 'sheetThicknessUnknown'
  | 'recessTooLarge'
  | 'noSuchFace'
  | 'namedTwice'
  | 'nameTaken'
  | 'givenTwice'
  | 'gapOpen'
  | 'largerThanOpening'
  | 'wallTooThick'
  | 'tooMuchWater'
  | 'waterTooCold'
  /** What the engine found impossible of a design whose fields are valid. */
  | 'impossible';

export interface DesignProblem {
  /** Dotted path in the document; empty for the document as a whole. */
  readonly path: string;
  readonly code: DesignProblemCode;
  readonly received: string;
  readonly expected: string;
  readonly nearest?: string;
  /** Place in the text, counted from 1: of the file where it is not JSON, of a table pasted into a field. */
  readonly line?: number;
  readonly column?: number;
  /** Of `impossible`: the engine's own code, sentence and facts, numbers in base SI. */
  readonly engine?: {
    readonly code: string;
    readonly message: string;
    readonly facts: Readonly<Record<string, unknown>>;
  };
}

export type Result<Value> =
  | ({ readonly ok: true } & Value)
  | { readonly ok: false; readonly problems: readonly DesignProblem[] };

const reasons: Readonly<Record<DesignProblemCode, string>> = {
  empty: 'is empty',
  tooLong: 'is too long',
  notANumber: 'does not begin with a number',
  ambiguousNumber: 'can be read in two ways',
  notFinite: 'is not a usable number',
  unitMissing: 'has no unit',
  unknownUnit: 'has a unit that is not known here',
  wrongUnit: 'has the unit of something else',
  gaugeOrAbsolute: 'may be gauge or absolute pressure',
  atmosphereMissing: 'is a gauge pressure, and the air pressure of the place is not known here',
  otherCurrency: 'is in another currency',
  lowAboveHigh: 'has its lower end above its upper end',
  likelyOutsideRange: 'has its likely value outside its range',
  spreadUnclear: 'has an unclear range',
  belowAbsoluteZero: 'is below absolute zero',
  negative: 'is negative',
  notPositive: 'is not above zero',
  outOfRange: 'is outside what can be computed',
  tooLarge: 'is too large for a design',
  truncated: 'ends too early: the file is cut off',
  notJson: 'is not valid JSON',
  duplicateKey: 'is given twice',
  tooDeep: 'is nested too deeply',
  notADesign: 'is not a design',
  badFormatVersion: 'is not a format version',
  newerFormat: 'is of a format newer than this program',
  missing: 'is missing',
  wrongType: 'is of the wrong type',
  unknownKey: 'is not known',
  unknownChoice: 'is not one of the choices',
  badText: 'is not acceptable',
  unknownPath: 'does not exist in this design',
  notOptional: 'cannot be left out',
  tooManyItems: 'has too many items',
  notWhole: 'is not one whole number',
  notInOrder: 'is out of order',
  plateContradictsItself: 'contradicts the rest of the plate',
  aboveVoltAmperes: 'is more than volts times amperes',
  domeAgainstClass: 'does not go with what else is said of the machine',
  notTenNumbers: 'are not ten coefficients',
  tableUnreadable: 'cannot be read',
  waterAboveRim: 'lies above the rim',
  coldestAboveUsual: 'is warmer than the usual temperature',
  warmestBelowUsual: 'is colder than the usual temperature',
  measuredRoomTooWarm: 'is not below the water temperature',
  sheetThicknessUnknown: 'is outside what is known of such a sheet',
  recessTooLarge: 'is as large as the tank',
  noSuchFace: 'is not a face of this tank',
  namedTwice: 'is named twice',
  nameTaken: 'is a name with another meaning',
  givenTwice: 'says again what is said elsewhere',
  gapOpen: 'is closed on one side only',
  largerThanOpening: 'is larger than the opening',
  wallTooThick: 'leaves no room for water',
  tooMuchWater: 'is more than there is',
  waterTooCold: 'makes the water too cold',
  impossible: 'is not possible',
};

const withoutReceived: ReadonlySet<DesignProblemCode> = new Set([
  'missing',
  'empty',
  'truncated',
  'notJson',
  'tooLarge',
  'unknownKey',
  'duplicateKey',
  'notOptional',
  'unknownPath',
]);

/** One sentence or two: where, what was read, what is accepted; what the engine found is in base SI. */
export function sayProblem(problem: DesignProblem): string {
  if (problem.engine !== undefined) return `${problem.engine.message}.`.replace(/\.\.$/, '.');
  const { path, code, received, expected, nearest, line, column } = problem;
  const where = path === '' ? 'The design' : path;
  const place = line === undefined ? '' : ` (line ${line}, column ${column})`;
  const what = withoutReceived.has(code) || received === '' ? '' : `: "${received}"`;
  const hint = nearest === undefined ? '' : ` Did you mean "${nearest}"?`;
  return `${where}${what} ${reasons[code]}${place}. Expected ${expected}.${hint}`.replace(/\.\.$/, '.');
}
