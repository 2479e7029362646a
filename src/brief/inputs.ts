// The values of the design as the brief shows them: the machine's parts, what was given of room, tank and source, and what
// nobody knows. Fields come from the design's own records, so that a new field appears by itself.

import { type Assessment, isCharge, withheldWord, withholdsCharge } from '../assess/index.ts';
import { type DesignDocument, type FieldRecord, fieldsOf, type ResolvedDesign, textAt } from '../design/index.ts';
import { type Estimate, sayBand, type UnitView } from '../quantities/index.ts';
import type { BriefInput } from './document.ts';

export interface InputsRequest {
  readonly assessment: Assessment;
  readonly document: DesignDocument;
  readonly resolved: ResolvedDesign;
  readonly view: UnitView;
}

const machineGroups = ['machine', 'exchangers', 'power', 'safeguards'];
const placeGroups = ['place', 'room', 'tank', 'source'];

const notKnown = 'not known';

/** The machine as it is described. What only experts know is among the assumptions unless somebody gave it. */
export function parts(request: InputsRequest): readonly BriefInput[] {
  const assumed = new Set(request.assessment.assumptions.map(({ path }) => path));
  return inputsOf(request, machineGroups).filter(({ path, level, value, origin }) => {
    if (value === notKnown) return false;
    return origin !== 'assumed' || (level !== 'expert' && assumed.has(path));
  });
}

/** Parts of a tank that only its load needs: further vessels, pipes, layers. The load stands in the brief, they stay in the file. */
const onlyForTheLoad =
  /^tank\.load\.(sump|refuge|overflow|pipes|faces|panels|lidLayers|stand|insulation|waterChange|meter|airStones)\b/;

/** What the person gave about place, room, tank and source, without the details of the tank that end in its load. */
export function given(request: InputsRequest): readonly BriefInput[] {
  return inputsOf(request, placeGroups).filter(
    ({ path, value, origin }) => origin !== 'assumed' && value !== notKnown && !onlyForTheLoad.test(path),
  );
}

/** What the design leaves open, as the labels of its fields say it. */
export function openQuestions(request: InputsRequest): readonly string[] {
  return inputsOf(request, [...placeGroups, ...machineGroups])
    .filter(({ value }) => value === notKnown)
    .map(({ label }) => label);
}

type Input = BriefInput & { readonly level: FieldRecord['level'] };

function inputsOf(request: InputsRequest, groups: readonly string[]): readonly Input[] {
  return fieldsOf(request.document)
    .filter(({ path, type, quantity }) => {
      const isPrice = quantity === 'energyPrice' || quantity === 'money';
      return type !== 'text' && !isPrice && groups.includes(path.split('.')[0] ?? '');
    })
    .flatMap((record) => {
      const said = sayInput(record, request);
      return said === undefined ? [] : [{ ...said, path: record.path, label: record.label, level: record.level }];
    });
}

function sayInput(record: FieldRecord, request: InputsRequest): Pick<BriefInput, 'value' | 'origin'> | undefined {
  const { assessment, document, resolved, view } = request;
  const value = valueAt(resolved, record.path);
  const typed = textAt(document, record.path) !== undefined;
  if (typeof value === 'string') {
    const label = record.choices?.find(({ name }) => name === value)?.label ?? value;
    return { value: value === 'unknown' ? notKnown : inQuotes(label), origin: typed ? 'typed' : 'assumed' };
  }
  if (record.quantity === undefined || !isEstimate(value)) return undefined;
  if (withholdsCharge(assessment.standing, record.path)) return { value: withheldWord, origin: value.origin };
  const said = sayBand(value, record.quantity, view, { currency: assessment.currency });
  return { value: isCharge(record.path) ? onlyRoughly(said) : said, origin: value.origin };
}

/** A kind in the person's own voice, "I measured …", stays theirs. */
function inQuotes(label: string): string {
  return label.startsWith('I ') ? `“${label}”` : label;
}

/** A charge is never an amount to fill in, however exactly a rating plate states it. */
function onlyRoughly(charge: string): string {
  return `${charge.startsWith('about') ? charge : `about ${charge}`}, to hold against limits`;
}

function valueAt(resolved: ResolvedDesign, path: string): unknown {
  let part: unknown = resolved;
  for (const key of path.split('.')) part = (part as Readonly<Record<string, unknown>> | undefined)?.[key];
  return part;
}

function isEstimate(value: unknown): value is Estimate {
  return typeof value === 'object' && value !== null && 'likely' in value && 'origin' in value;
}
