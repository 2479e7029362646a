// The refrigerants that can be chosen, in groups whose names say where a person meets them, and how a typed word finds them:
// by number, by any of their names, or by what they are used in.

import { sayStudyOnly } from '../../assess/index.ts';
import { fieldRecord } from '../../design/index.ts';
import { catalogueEntry, isStudyOnly, refrigerantAliases, refrigerantNamed } from '../../matter/refrigerants/index.ts';
import { applianceClasses } from '../../parts/compressor/index.ts';

export interface FluidItem {
  /** 'R290' */
  readonly name: string;
  /** 'R290 (propane, flammable)' */
  readonly label: string;
  readonly usedIn: string;
}

export interface FluidGroup {
  readonly title: string;
  readonly fluids: readonly FluidItem[];
}

const items: readonly FluidItem[] = (fieldRecord('machine.refrigerant')?.choices ?? []).map(({ name, label }) => ({
  name,
  label,
  usedIn: catalogueEntry(name).usedIn,
}));

/** Own names of all refrigerants, in the order they are offered. */
export const fluidNames: readonly string[] = items.map(({ name }) => name);

const titles = [
  'In common machines',
  'In older machines',
  'Other blends',
  'Other hydrocarbons',
  'Other fluorinated fluids',
  'Ammonia and carbon dioxide',
  'For study only',
] as const;
type GroupTitle = (typeof titles)[number];

/** Offered at once; the others are one step away. */
const atOnce: readonly GroupTitle[] = ['In common machines', 'In older machines'];

/** The first that fits, so that each refrigerant stands once. */
function titleOf(name: string): GroupTitle {
  const { composition, kind, ozoneDepletionPotential } = catalogueEntry(name);
  if (isStudyOnly(name)) return 'For study only';
  if ((ozoneDepletionPotential ?? 0) > 0) return 'In older machines';
  if (applianceClasses.some(({ fluids }) => fluids.includes(name))) return 'In common machines';
  if (composition !== null) return 'Other blends';
  if (kind === 'hydrocarbon') return 'Other hydrocarbons';
  return /fluoro/.test(kind) ? 'Other fluorinated fluids' : 'Ammonia and carbon dioxide';
}

/** Every refrigerant once. */
export const fluidGroups: readonly FluidGroup[] = titles
  .map((title) => ({ title, fluids: items.filter(({ name }) => titleOf(name) === title) }))
  .filter(({ fluids }) => fluids.length > 0);

/** The groups without the fluids that `isIn` leaves out, and without groups that are empty then. */
function only(groups: readonly FluidGroup[], isIn: (fluid: FluidItem, group: FluidGroup) => boolean) {
  return groups
    .map((group) => ({ ...group, fluids: group.fluids.filter((fluid) => isIn(fluid, group)) }))
    .filter(({ fluids }) => fluids.length > 0);
}

/**
 * What is offered at once.
 * @param offered  names that may be chosen here
 * @param chosen   names that are chosen, which are always among them
 */
export function shortGroups(offered: readonly string[], chosen: readonly string[]): readonly FluidGroup[] {
  return only(
    fluidGroups,
    ({ name }, { title }) =>
      offered.includes(name) && (chosen.includes(name) || atOnce.some((first) => first === title)),
  );
}

/**
 * The refrigerants that typed words mean. Each step is taken where the ones before found nothing: one of that very name or
 * formula; names, with or without the R, that begin so, and uses that have the word whole; what it is; what it is used in.
 * All of them while nothing is typed.
 */
export function groupsFor(typed: string, offered: readonly string[]): readonly FluidGroup[] {
  const all = only(fluidGroups, ({ name }) => offered.includes(name));
  if (typed.trim() === '') return all;
  const whole = folded(typed);
  const words = wordsOf(typed).map(singular);
  const namesOf = ({ name }: FluidItem) => [name, name.slice(1), ...refrigerantAliases(name)].map(folded);
  const beginSo = (fluid: FluidItem) => whole !== '' && namesOf(fluid).some((own) => own.startsWith(whole));
  const named = refrigerantNamed(typed);
  const steps: readonly ((fluid: FluidItem, group: FluidGroup) => boolean)[] = [
    (fluid) =>
      named === undefined ? folded(catalogueEntry(fluid.name).formula ?? '') === whole && whole !== '' : beginSo(fluid),
    (fluid) => beginSo(fluid) || (words.length > 0 && words.every((word) => wordsOf(fluid.usedIn).includes(word))),
    ({ name, label }, { title }) => areBeginnings(words, `${label} ${catalogueEntry(name).kind} ${title}`),
    ({ name, label, usedIn }, { title }) =>
      areBeginnings(words, `${label} ${catalogueEntry(name).kind} ${usedIn} ${title}`),
  ];
  for (const step of steps) {
    const found = only(all, step);
    if (found.length > 0) return found;
  }
  return [];
}

/** 'blends' means what 'blend' does. */
function singular(word: string): string {
  return word.length > 3 && word.endsWith('s') ? word.slice(0, -1) : word;
}

/** Whether each word is the beginning of one of the text. */
function areBeginnings(words: readonly string[], text: string): boolean {
  const known = wordsOf(text);
  return words.length > 0 && words.every((word) => known.some((other) => other.startsWith(word)));
}

/** The one refrigerant that a typed word means: by one of its names, or the only one found; undefined for none or several. */
export function fluidFor(typed: string, offered: readonly string[]): string | undefined {
  const named = refrigerantNamed(typed);
  if (named !== undefined && offered.includes(named)) return named;
  const found = groupsFor(typed, offered).flatMap(({ fluids }) => fluids);
  return typed.trim() !== '' && found.length === 1 ? found[0]?.name : undefined;
}

/** Why a refrigerant is for study only; undefined where it is not, and for a name that means none. */
export function studyOnlyWords(name: string): string | undefined {
  return fluidNames.includes(name) ? sayStudyOnly(name) : undefined;
}

function folded(text: string): string {
  return text.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '');
}
