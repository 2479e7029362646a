// What the page opens with: the design of the link it was opened by, the design kept from the last visit, or the first
// invented example. What gives way to another is set aside.

import { type DesignDocument, parseDesign, sayProblem, serialiseDesign } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { setAside } from '../keeping/set-aside.ts';
import type { OpenedLink } from '../links/open-link.ts';
import type { LightChoice } from '../ui/light.tsx';
import { firstDemo, isFirstDemo } from './demos.ts';
import { noticeOfReading, saidOfReading } from './reading-notice.ts';
import type { Keeper } from './storage.ts';
import type { Notice } from './workbench.ts';

export interface Start {
  readonly document: DesignDocument;
  /** What would have been open without the link; one step back. */
  readonly before: DesignDocument | undefined;
  readonly view: UnitView;
  readonly light: LightChoice;
  readonly notice: Notice | undefined;
  /** The text that the browser keeps, as it was found. */
  readonly kept: string | undefined;
  /** The kept text could not be set aside: nothing takes its place before the design is changed. */
  readonly holdsKept: boolean;
}

type Found = Pick<Start, 'document' | 'notice' | 'kept' | 'holdsKept'>;

/**
 * @param keeper    what the browser keeps
 * @param now       date and time, ISO 8601
 * @param link      what came of the link that the page was opened by, where there was one
 * @param language  of the browser, such as 'en-US'; asked at a first visit only, before any view was kept
 */
export function startFrom(keeper: Keeper, now: string, link?: OpenedLink, language = ''): Start {
  const kept = keeper.read('view');
  const view = (kept ?? viewOf(language)) === 'us' ? 'us' : 'metric';
  const light = keeper.read('light');
  const shown = { view, light: light === 'light' || light === 'dark' ? light : 'system' } as const;
  const found = keptOrExample(keeper, now);
  if (link === undefined) return { ...found, ...shown, before: undefined };
  if (!link.ok) return { ...found, ...shown, before: undefined, notice: together(link.notice, found.notice) };
  const notice = together(noticeOfLinked(keeper, found.document, link, now), found.notice);
  return { ...found, ...shown, document: link.document, before: found.document, notice };
}

/** The units a reader of that language most likely thinks in. */
function viewOf(language: string): UnitView {
  return language.toLowerCase() === 'en-us' ? 'us' : 'metric';
}

/** Two things to be read at once. */
function together(notice: Notice, other: Notice | undefined): Notice {
  if (other === undefined) return notice;
  return {
    ...notice,
    problems: [...notice.problems, { path: undefined, message: other.title }],
    offers: [...(notice.offers ?? []), ...(other.offers ?? [])],
  };
}

/** Says that a link's design is open, and sets aside the one before unless it is an example or the same. */
export function noticeOfLinked(
  keeper: Keeper,
  before: DesignDocument,
  { document: linked, notices }: Extract<OpenedLink, { readonly ok: true }>,
  now: string,
): Notice {
  const text = serialiseDesign(before);
  const isOwn = !isFirstDemo(text) && text !== serialiseDesign(linked);
  const isAside = isOwn && setAside(keeper, { why: 'link', at: now, text });
  const where = isAside ? 'one step back, and is set aside under Designs' : 'one step back';
  return {
    tone: 'note',
    title: `The design that came with the link is open: “${linked.name}”`,
    problems: [
      { path: undefined, message: `What was open before, “${before.name}”, is ${where}.` },
      ...saidOfReading(notices),
    ],
    offers: [{ kind: 'undo' }],
  };
}

function keptOrExample(keeper: Keeper, now: string): Found {
  const kept = keeper.read('design');
  if (kept === undefined) return { document: exampleDocument(), notice: undefined, kept, holdsKept: false };
  const outcome = parseDesign(kept);
  if (outcome.ok) {
    const notice = noticeOfReading(outcome.document.name, outcome.notices);
    return { document: outcome.document, notice, kept, holdsKept: false };
  }
  const isAside = setAside(keeper, { why: 'unreadable', at: now, text: kept });
  const problems = outcome.problems.map((problem) => ({ path: problem.path, message: sayProblem(problem) }));
  const where = isAside
    ? 'It was set aside and is found under Designs.'
    : 'It could not be set aside: save it to a file, for the first change takes its place.';
  const title = `The design kept in this browser cannot be read. ${where}`;
  const offers = [{ kind: 'saveText', text: kept, name: 'kept-design.json' }] as const;
  return { document: exampleDocument(), notice: { title, problems, offers }, kept, holdsKept: !isAside };
}

function exampleDocument(): DesignDocument {
  const outcome = parseDesign(firstDemo.text);
  if (outcome.ok) return outcome.document;
  throw new Error(`The example ${firstDemo.file} cannot be read: ${outcome.problems.map(sayProblem).join(' ')}`);
}
