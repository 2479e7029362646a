// What is asked of the technician, in plain words: a judgement, never work. Where the answer is not to build, that nothing
// is asked to be built stands first, with the reasons.

import { type Assessment, distanceQuantity, type LimitMargin, sayFinding } from '../assess/index.ts';
import type { ResolvedDesign } from '../design/index.ts';
import { sayBand, sayQuantity, type UnitView } from '../quantities/index.ts';
import type { BriefDocument, BriefInput } from './document.ts';

export interface AskedRequest {
  readonly assessment: Assessment;
  readonly resolved: ResolvedDesign;
  readonly parts: readonly BriefInput[];
  readonly view: UnitView;
}

export function asked(request: AskedRequest): BriefDocument['asked'] {
  const { assessment, view } = request;
  if (assessment.standing !== 'doNotBuild') {
    return {
      text: `The person who hands you these pages asks you, as a licensed technician, to judge whether ${loop(request)}, could keep ${tank(request)}. They ask for your judgement only: nothing is to be opened, filled or built on the strength of these pages.`,
      reasons: [],
      questions: questions(request),
    };
  }
  const stops = [...assessment.cautions, ...assessment.findings].filter(({ severity }) => severity === 'stop');
  return {
    text: `Nothing is asked to be built. The design was ${loop(request)}, for ${tank(request)}. It must not be built, for the reasons below. All figures that follow are for study.`,
    reasons: stops.map((finding) => sayFinding(finding, view).title),
    questions: questionsAboutStopping(request),
  };
}

/** "a heat pump on R134a, built around a compressor out of a dehumidifier and drawing its heat from …". */
function loop({ assessment, parts, view }: AskedRequest): string {
  const { refrigerant, sourceTemperature } = assessment.operating;
  const source = sayQuantity(sourceTemperature, 'temperature', view);
  const { count } = assessment.machine;
  const from = `heat from air that is at ${source} in the coldest spell`;
  if (count === 1) {
    return `a heat pump on ${refrigerant}, built around ${compressor(parts)} and drawing its ${from}`;
  }
  return `${count} heat pumps alike on ${refrigerant}, each with a circuit of its own, built around ${compressor(parts)} and drawing their ${from}`;
}

function compressor(parts: readonly BriefInput[]): string {
  const value = (path: string) => parts.find((part) => part.path === path)?.value;
  const madeFor = value('machine.compressor.madeFor');
  const fluid = madeFor === undefined ? '' : ` made for ${madeFor.split(' ')[0]}`;
  const appliance = value('machine.compressor.appliance');
  if (appliance !== undefined) return `a compressor${fluid} out of ${withArticle(appliance)}`;
  const capacity = value('machine.compressor.ratings.0.capacity');
  if (capacity !== undefined) return `a compressor${fluid} rated at ${capacity}`;
  const displacement = value('machine.compressor.displacement');
  return displacement === undefined ? `a compressor${fluid}` : `a compressor${fluid} that sweeps ${displacement}`;
}

function withArticle(noun: string): string {
  const lower = noun.charAt(0).toLowerCase() + noun.slice(1);
  return `${/^[aeiou]/.test(lower) ? 'an' : 'a'} ${lower}`;
}

/** "an aquarium of 520 L at 25.5 °C". */
function tank({ assessment, resolved, view }: AskedRequest): string {
  const { load } = resolved.tank;
  const volume = waterVolume(load);
  const water = sayQuantity(assessment.tank.waterTemperature, 'temperature', view);
  return `an aquarium of about ${sayQuantity(volume, 'volume', view, 2)} at ${water}`;
}

function questions({ assessment, view }: AskedRequest): readonly string[] {
  const { operating, flows } = assessment;
  const say = (kelvin: number) => sayQuantity(kelvin, 'temperature', view);
  const evaporating = say(operating.evaporatingTemperature.likely);
  const condensing = say(operating.condensingTemperature.likely);
  const nearest = operating.limits[0];
  return [
    'Does local law allow such work on a circuit at all, which parts of it need a licence, and who may do them?',
    `Is this compressor, with its motor and its oil, suited to evaporating at ${evaporating} and condensing at ${condensing}, running ${sayQuantity(flows.runFraction, 'fraction', view)} of the time in the coldest spell?`,
    ...(nearest === undefined ? [] : [limitQuestion(nearest, view)]),
    'What should meter the refrigerant, and which cut-outs for pressure, temperature and current does such a circuit need?',
    certifiedQuestion(assessment, view),
  ];
}

function limitQuestion({ label, quantity, bound, margin, passed }: LimitMargin, view: UnitView): string {
  const limit = sayQuantity(bound, quantity, view);
  const distance = sayQuantity(Math.abs(margin), distanceQuantity(quantity), view);
  return passed
    ? `The ${label} usual for such a machine (${limit}) is passed by ${distance}. What does its own data sheet say?`
    : `The limit it comes nearest to is the ${label} usual for such a machine (${limit}), ${distance} away. What does its own data sheet say?`;
}

function questionsAboutStopping({ assessment, view }: AskedRequest): readonly string[] {
  return [
    'Do you judge any of these reasons otherwise, and on what grounds?',
    'Who may recover the refrigerant of the appliance and take it back, if it is given up?',
    certifiedQuestion(assessment, view),
  ];
}

function certifiedQuestion({ tankLoad, tank: { waterTemperature } }: Assessment, view: UnitView): string {
  const need = tankLoad.high > 0 ? `${sayBand(tankLoad, 'power', view)} ` : 'little heat ';
  return `Which complete, certified heat pump would you rather advise for ${need}into water at ${sayQuantity(waterTemperature, 'temperature', view)}?`;
}

/** Water in the tank, by its sizes or as it was said [m³]; what sump and pipes hold is left out. */
function waterVolume(load: AskedRequest['resolved']['tank']['load']): number {
  switch (load.kind) {
    case 'measured':
      return load.volume.likely;
    case 'panels':
      return load.waterVolume.likely;
    case 'rectangular':
      return load.length.likely * load.width.likely * load.waterDepth.likely;
    case 'cylinder':
      return (Math.PI / 4) * load.diameter.likely ** 2 * load.waterDepth.likely;
    case 'lShape':
      return (
        (load.length.likely * load.width.likely - load.recessLength.likely * load.recessWidth.likely) *
        load.waterDepth.likely
      );
  }
}
