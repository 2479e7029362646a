// Assessment and design -> the brief for a licensed technician, as data. What must be withheld is withheld here, so that no
// form of the brief can show it. The date and who asks come from outside.

import { type Assessment, sayFinding, standingTitles, withoutCharge } from '../assess/index.ts';
import { makeDiagram, pressureEnthalpyChart, settledLoop } from '../charts/index.ts';
import { type DesignDocument, resolveDesign } from '../design/index.ts';
import { InputError } from '../numerics/index.ts';
import {
  type Finding,
  isQuantityName,
  sayBand,
  sayQuantity,
  sentenceStart,
  type UnitView,
} from '../quantities/index.ts';
import { asked } from './asked.ts';
import { type BriefAssumption, type BriefDocument, type BriefFinding, longestContact } from './document.ts';
import { given, openQuestions, parts } from './inputs.ts';
import { duty, limits, operatingRange, states } from './operation.ts';

/** Assumptions that are shown one by one, and the share of the doubt that is worth a line. */
const mostAssumptions = 5;
const smallestShare = 0.005;

/** Findings to look at that are told in full, unless those to stop at are more already. */
const mostFindings = 6;

export interface BriefRequest {
  readonly assessment: Assessment;
  /** The design that was assessed. */
  readonly design: DesignDocument;
  /** The view the assessment was made in; everything is said in it. */
  readonly view: UnitView;
  /** Year, month and day: "2031-03-14". */
  readonly date: string;
  /** Who asks and how to reach them, if somebody typed it. */
  readonly contact?: string;
}

/** @throws InputError for a date of another form, or a longer contact than `longestContact` */
export function brief({ assessment: whole, design, view, date, contact = '' }: BriefRequest): BriefDocument {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) throw new InputError('date', date, 'year, month and day, as 2031-03-14');
  if (contact.length > longestContact) {
    throw new InputError('contact', contact, `at most ${longestContact} characters`, 'tooLong');
  }
  const assessment = withoutCharge(whole);
  const { design: resolved } = resolveDesign(design);
  const request = { assessment, document: design, resolved, view };
  const described = parts(request);
  return {
    briefVersion: 1,
    caution: assessment.caution,
    designName: assessment.designName,
    date,
    contact: contact.trim() === '' ? null : contact.trim(),
    units: view,
    refrigerant: assessment.operating.refrigerant,
    standing: assessment.standing,
    standingTitle: standingTitles[assessment.standing],
    sentence: assessment.sentence,
    forStudyOnly: forStudyOnly(assessment, view),
    asked: asked({ assessment, resolved, parts: described, view }),
    duty: duty(assessment, view),
    states: states(assessment, view),
    diagram: pressureEnthalpyChart(makeDiagram(settledLoop(assessment.operating, view)), view),
    operatingRange: operatingRange(assessment, view),
    limits: limits(assessment.operating.limits, view),
    parts: described,
    impliedSizes: impliedSizes(assessment, view),
    openQuestions: [...alwaysOpen, ...openQuestions(request)],
    findings: findings(assessment, view),
    given: given(request),
    assumptions: assumptions(assessment, view),
  };
}

/** What no field of a design describes, and a technician would ask first. */
const alwaysOpen = [
  'What meters the refrigerant; no length or setting is proposed here',
  'Age, condition, oil and data sheet of the compressor',
];

/** The heading of a machine on a fluid that its compressor was not made for. */
function forStudyOnly({ findings: machine, cautions }: Assessment, view: UnitView): string | null {
  const finding = [...machine, ...cautions].find(({ code }) => code === 'notForThisMachine');
  if (finding === undefined) return null;
  const { title, text } = sayFinding(finding, view);
  return `${title}. ${text}`;
}

function impliedSizes({ sizing: { condenser, evaporator } }: Assessment, view: UnitView): readonly string[] {
  const apart = (kelvin: number) => sayQuantity(kelvin, 'temperatureDifference', view);
  return [
    `Condensing ${apart(condenser.approach)} above the water implies ${sayBand(condenser.coilLength, 'length', view)} of ${sayQuantity(condenser.tubeDiameter, 'length', view)} tube in the tank, ${sayBand(condenser.coilArea, 'area', view)}.`,
    `Evaporating ${apart(evaporator.approach)} below the source’s air implies a face of ${sayBand(evaporator.faceArea, 'area', view)} and an air flow of ${sayBand(evaporator.airFlow, 'volumeFlow', view)}.`,
  ];
}

function findings({ findings: machine, cautions }: Assessment, view: UnitView): BriefDocument['findings'] {
  const order = { stop: 0, look: 1, note: 2 };
  const all = [...cautions, ...machine].sort((left, right) => order[left.severity] - order[right.severity]);
  const titles = (some: readonly Finding[]) => some.map((finding) => sayFinding(finding, view).title);
  const telling = all.filter(({ severity }) => severity !== 'note');
  const stops = telling.filter(({ severity }) => severity === 'stop').length;
  const most = Math.max(stops, mostFindings);
  return {
    shown: telling.slice(0, most).map((finding) => told(finding, view)),
    alsoLookAt: titles(telling.slice(most)),
    noted: titles(all.filter(({ severity }) => severity === 'note')),
  };
}

function told(finding: Finding, view: UnitView): BriefFinding {
  const { title, text, remedy } = sayFinding(finding, view);
  return { code: finding.code, severity: finding.severity, title, text, remedy };
}

function assumptions(assessment: Assessment, view: UnitView): BriefDocument['assumptions'] {
  const { assumptions: all, influences, currency } = assessment;
  const shares = new Map(influences.map(({ path, share }) => [path, share]));
  const share = (path: string) => shares.get(path) ?? 0;
  const telling = all
    .filter(({ path }) => share(path) >= smallestShare)
    .sort((left, right) => share(right.path) - share(left.path))
    .slice(0, mostAssumptions);
  const shown = telling.map(({ path, label, quantity, value }): BriefAssumption => {
    const isBand = typeof value !== 'string' && isQuantityName(quantity);
    return {
      path,
      label: sentenceStart(label),
      value: isBand ? sayBand(value, quantity, view, { currency }) : String(value),
      share: sayQuantity(share(path), 'fraction', view),
    };
  });
  return { shown, rest: sayRest(all.length - shown.length, shown.length) };
}

function sayRest(rest: number, shown: number): string {
  if (rest === 0) return shown === 0 ? 'Nothing is assumed: every value was given.' : 'No other value is assumed.';
  const count = rest === 1 ? 'One' : String(rest);
  const values = rest === 1 ? 'value is assumed' : 'values are assumed';
  const more = shown === 0 ? '' : ' more';
  return `${count}${more} ${values}, each with little weight for the verdict. The person has the whole list, with sources.`;
}
