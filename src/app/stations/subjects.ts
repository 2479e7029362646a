// What lies behind "I know more" of a station, by subject: a station with many fields shows them under headings, one fold each.
// What belongs to a subject follows from the beginning of its path.

import type { FieldRecord, ListRecord } from '../../design/index.ts';
import type { StationName } from '../pages.ts';
import { homeOf, type StationFields } from './fields.ts';

export interface Subject {
  readonly title: string;
  readonly more: readonly FieldRecord[];
  readonly expert: readonly FieldRecord[];
  /** Lists that are shown with their items. */
  readonly lists: readonly ListRecord[];
}

interface SubjectPaths {
  readonly title: string;
  readonly begins: readonly string[];
}

const subjects: Readonly<Partial<Record<StationName, readonly SubjectPaths[]>>> = {
  'what-leaves': [
    { title: 'The tank itself', begins: ['tank.'] },
    {
      title: 'Water surface and lid',
      begins: ['tank.load.surface', 'tank.load.evaporation', 'tank.load.airSpeed', 'tank.load.lid', 'tank.load.hood'],
    },
    {
      title: 'Faces and stand',
      begins: ['tank.load.wall', 'tank.load.insulation', 'tank.load.faces', 'tank.load.panels', 'tank.load.stand'],
    },
    {
      title: 'Other vessels and pipes',
      begins: ['tank.load.sump', 'tank.load.refuge', 'tank.load.overflow', 'tank.load.pipes'],
    },
    { title: 'What warms the water', begins: ['tank.load.pump', 'tank.load.light', 'tank.load.ultraviolet'] },
    {
      title: 'Air and fresh water',
      begins: [
        'tank.load.airStones',
        'tank.load.skimmerAir',
        'tank.load.makeUpFrom',
        'tank.load.waterChange',
        'place.mains',
      ],
    },
    { title: 'Room and outdoors', begins: ['room.', 'place.outdoors'] },
  ],
  'the-machine': [
    {
      title: 'Its dome and nameplate',
      begins: ['machine.compressor.dome', 'machine.compressor.nameplate', 'machine.application'],
    },
    { title: 'Ratings from a sheet', begins: ['machine.compressor.ratings'] },
    { title: 'Ten coefficients', begins: ['machine.compressor.coefficients'] },
    { title: 'A table of points', begins: ['machine.compressor.tables'] },
    { title: 'Measured by yourself', begins: ['machine.compressor.bench'] },
    { title: 'Numbers behind the ratings', begins: ['machine.compressor'] },
    {
      title: 'Mains, heater, valve',
      begins: ['machine.supply', 'power.crankcaseHeater', 'exchangers.suctionPressureLimit'],
    },
    { title: 'Where it stands', begins: ['machine.enclosure', 'machine.sunkenPlace', 'room.', 'source.', 'place.'] },
    { title: 'Circuit and safety', begins: ['machine.', 'safeguards.', 'exchangers.wettedMetal'] },
  ],
};

/** What a station asks beside what it explains, while it has an answer: layers by their panel, the meter by what it says. */
const besideTheAnswer: Readonly<Partial<Record<StationName, RegExp>>> = {
  'what-leaves': /^tank\.load\.(?:faces|lidLayers|meter)|^tank\.load\.panels\.\d+\.(?:wall|inside|outside|exposure)/,
};

export function isBesideTheAnswer(station: StationName, path: string): boolean {
  return besideTheAnswer[station]?.test(path) ?? false;
}

/**
 * The subjects of a station that have anything; none where its fields need no headings. Without an answer everything has to be
 * asked here.
 */
export function subjectsOf(
  station: StationName,
  { more, expert }: Pick<StationFields, 'more' | 'expert'>,
  lists: readonly ListRecord[],
  hasAnswer: boolean,
): readonly Subject[] {
  const own = subjects[station];
  if (own === undefined) return [];
  const isHere = ({ path }: { readonly path: string }) => !hasAnswer || !isBesideTheAnswer(station, path);
  const subjectOf = (path: string) =>
    own
      .flatMap(({ title, begins }) =>
        begins.filter((begin) => path.startsWith(begin)).map((begin) => ({ title, begin })),
      )
      .toSorted((a, b) => b.begin.length - a.begin.length)[0]?.title;
  return own
    .map(({ title }): Subject => {
      const isOwn = (record: { readonly path: string }) => isHere(record) && subjectOf(record.path) === title;
      return {
        title,
        more: more.filter(isOwn),
        expert: expert.filter(isOwn),
        lists: lists.filter((list) => list.item === undefined && homeOf(`${list.path}.`) === station && isOwn(list)),
      };
    })
    .filter((subject) => subject.more.length + subject.expert.length + subject.lists.length > 0);
}
