// The workbench: holds the state, keeps it in the browser, asks the engine at every change, and lays out the page.

import { type ComponentType, lazy, type ReactNode, Suspense, useEffect, useMemo, useReducer, useState } from 'react';
import { type DesignProblem, type EditResult, parseDesign, sayProblem, serialiseDesign } from '../design/index.ts';
import type { UnitView } from '../quantities/index.ts';
import { Caution, CautionLine } from './frame/caution.tsx';
import { ExampleNote } from './frame/example-note.tsx';
import { NoticeBox } from './frame/notice.tsx';
import { TopBar } from './frame/top-bar.tsx';
import { Verdict } from './frame/verdict.tsx';
import { HeatPath } from './heat-path/heat-path.tsx';
import { useKeeping } from './keeping/use-keeping.ts';
import { useLinks } from './links/use-links.ts';
import {
  addressOf,
  isStation,
  type PageName,
  type PaperName,
  type Place,
  pageTitles,
  paperNames,
  type StationName,
  stationNames,
} from './pages.ts';
import type { PaperProps } from './papers/paper.tsx';
import { type Workbench, WorkbenchContext } from './state/context.tsx';
import { isFirstDemo } from './state/demos.ts';
import { fileNameFor, readFileText, saveText, useFileDrop } from './state/files.ts';
import type { Start } from './state/start.ts';
import type { Keeper } from './state/storage.ts';
import { useAssessment } from './state/use-assessment.ts';
import { usePage } from './state/use-page.ts';
import { reduce, stateAtStart } from './state/workbench.ts';
import { type StationProps, StationWithoutAnswer } from './stations/station.tsx';
import { WhereItSettles } from './stations/where-it-settles.tsx';
import { saidFindings } from './ui/findings.tsx';
import { LightProvider } from './ui/light.tsx';
import type { EngineClient } from './worker/client.ts';
import type { AssessAnswer } from './worker/messages.ts';

// Not needed to show the first verdict, so loaded when they are opened.
const TheMachine = lazy(() => import('./stations/the-machine.tsx').then((part) => ({ default: part.TheMachine })));
const TwoBills = lazy(() => import('./stations/two-bills.tsx').then((part) => ({ default: part.TwoBills })));
const WhatLeaves = lazy(() => import('./stations/what-leaves.tsx').then((part) => ({ default: part.WhatLeaves })));
const SideBySide = lazy(() =>
  import('./papers/side-by-side/side-by-side.tsx').then((part) => ({ default: part.SideBySide })),
);
const CycleAlone = lazy(() =>
  import('./papers/cycle-alone/cycle-alone.tsx').then((part) => ({ default: part.CycleAlone })),
);
const Working = lazy(() => import('./papers/working/working.tsx').then((part) => ({ default: part.Working })));
const Cautions = lazy(() => import('./papers/cautions/cautions.tsx').then((part) => ({ default: part.Cautions })));
const Brief = lazy(() => import('./papers/brief/brief.tsx').then((part) => ({ default: part.Brief })));
const StartMyOwn = lazy(() => import('./stations/start-my-own.tsx').then((part) => ({ default: part.StartMyOwn })));
const Assumptions = lazy(() => import('./frame/assumptions.tsx').then((part) => ({ default: part.Assumptions })));
const KeepingNotes = lazy(() => import('./keeping/keeping-notes.tsx').then((part) => ({ default: part.KeepingNotes })));

export interface AppProps {
  readonly engine: EngineClient;
  readonly keeper: Keeper;
  readonly start: Start;
}

export function App({ engine, keeper, start }: AppProps): ReactNode {
  const [state, dispatch] = useReducer(reduce, start, stateAtStart);
  const [place, open] = usePage();
  const { page } = place;
  const [dialog, setDialog] = useState<'assumptions' | 'start' | undefined>(undefined);
  const document = state.designs.present;
  const serialised = useMemo(() => serialiseDesign(document), [document]);
  const { working, stopped, cancel, again } = useAssessment(engine, document, state.view, dispatch);
  const { keeping, theirs, refused } = useKeeping(keeper, start, serialised);
  const openLink = useLinks(keeper, document, place, dispatch);

  useEffect(() => {
    keeper.write('view', state.view);
    keeper.write('light', state.light);
  }, [keeper, state.view, state.light]);
  useUndoKeys(
    () => dispatch({ type: 'undone' }),
    () => dispatch({ type: 'redone' }),
  );

  const workbench = useMemo((): Workbench => {
    const edit = (outcome: EditResult, path: string): readonly DesignProblem[] => {
      if (!outcome.ok) return outcome.problems;
      dispatch({ type: 'edited', document: outcome.document, path });
      return [];
    };
    return { state, dispatch, engine, keeper, document, edit, open };
  }, [state, engine, keeper, document, open]);

  /** False where the text cannot be used. */
  const openText = (text: string, name: string): boolean => {
    const outcome = parseDesign(text);
    if (outcome.ok) {
      dispatch({ type: 'opened', document: outcome.document });
      return true;
    }
    const problems = outcome.problems.map((problem) => ({ path: problem.path, message: sayProblem(problem) }));
    dispatch({ type: 'noticed', notice: { title: `${name} cannot be used. The open design is unchanged.`, problems } });
    return false;
  };
  const openFile = async (file: File) => {
    const read = await readFileText(file);
    if (read.ok) return void openText(read.text, read.name);
    const problems = [{ path: undefined, message: read.message }];
    dispatch({
      type: 'noticed',
      notice: { title: 'The file was not opened. The open design is unchanged.', problems },
    });
  };
  const isDroppable = useFileDrop((file) => void openFile(file));
  const saveDesign = () => saveText(serialised, fileNameFor(document.name));
  const { answer } = state;
  const stale = state.answered !== document;
  const isRefused = state.refusal !== undefined && stale && !working;

  return (
    <LightProvider choice={state.light}>
      <WorkbenchContext value={workbench}>
        <a className="skip" href="#main">
          Skip to the station
        </a>
        <TopBar
          designName={document.name}
          standing={!isOfTheDesign(place) || isRefused ? undefined : answer?.assessment.standing}
          isRefused={isRefused && isOfTheDesign(place)}
          looks={
            answer === undefined ? 0 : saidFindings(answer).filter(({ finding }) => finding.severity === 'look').length
          }
          canUndo={state.designs.past.length > 0}
          canRedo={state.designs.future.length > 0}
          undo={() => dispatch({ type: 'undone' })}
          redo={() => dispatch({ type: 'redone' })}
          startOwn={() => setDialog('start')}
          openDemo={(demo) => openText(demo.text, demo.name)}
          openFile={(file) => void openFile(file)}
          saveFile={saveDesign}
          openText={openText}
          openLink={openLink}
          text={serialised}
          view={state.view}
          chooseView={(view) => dispatch({ type: 'viewChosen', view })}
          light={state.light}
          chooseLight={(light) => dispatch({ type: 'lightChosen', light })}
          notKept={
            theirs !== undefined
              ? 'here: another tab keeps a different one'
              : refused.has('design')
                ? 'by this browser: save it to a file'
                : undefined
          }
        />
        {isDroppable && <p className="drop-note">Drop the design file to open it</p>}
        <div className="page" data-standing={answer?.assessment.standing}>
          <Caution />
          {isOfTheDesign(place) && isFirstDemo(serialised) && <ExampleNote startOwn={() => setDialog('start')} />}
          {(theirs !== undefined || refused.size > 0) && (
            <Suspense>
              <KeepingNotes keeping={keeping} theirs={theirs} refused={refused} openText={openText} save={saveDesign} />
            </Suspense>
          )}
          {state.notice !== undefined && (
            <NoticeBox
              notice={state.notice}
              close={() => dispatch({ type: 'noticeClosed' })}
              undo={() => dispatch({ type: 'undone' })}
            />
          )}
          {isRefused && isOfTheDesign(place) && state.refusal !== undefined && (
            <NoticeBox
              notice={{
                title:
                  answer === undefined
                    ? 'No answer for the design as it stands.'
                    : 'No answer for the design as it stands. The results below belong to the last design that had one.',
                problems: state.refusal,
              }}
            />
          )}
          {answer !== undefined && isOfTheDesign(place) && (
            <>
              <div className={isRefused ? 'stale' : undefined}>
                <HeatPath assessment={answer.assessment} view={state.view} current={page} open={open} />
              </div>
              <Verdict
                answer={answer}
                view={state.view}
                stale={stale}
                isRefused={isRefused}
                openAssumptions={() => setDialog('assumptions')}
                open={open}
              />
            </>
          )}
          <p className="working-note quiet" role="status">
            {working && (
              <>
                Working…{' '}
                <button type="button" className="linkish" onClick={cancel}>
                  Stop
                </button>
              </>
            )}
            {stopped && (
              <>
                Stopped: there is no answer to the design as it stands.{' '}
                <button type="button" className="linkish" onClick={again}>
                  Compute it
                </button>
              </>
            )}
          </p>
          <PageLinks current={page} open={open} />
          <main id="main" tabIndex={-1} className={isRefused && isOfTheDesign(place) ? 'refused' : undefined}>
            <OpenedPage place={place} answer={answer} view={state.view} refused={state.refusal !== undefined} />
          </main>
          <footer className="foot quiet">
            <p>
              Everything is computed in this page; nothing is sent anywhere. Ranges are the ends one would be surprised
              to see passed, about one time in ten.
            </p>
          </footer>
        </div>
        <CautionLine />
        <Suspense>
          {dialog === 'assumptions' && answer !== undefined && (
            <Assumptions answer={answer} view={state.view} close={() => setDialog(undefined)} />
          )}
          {dialog === 'start' && (
            <StartMyOwn
              close={() => setDialog(undefined)}
              done={(made) => {
                dispatch({ type: 'opened', document: made });
                setDialog(undefined);
                window.scrollTo({ top: 0 });
              }}
            />
          )}
        </Suspense>
      </WorkbenchContext>
    </LightProvider>
  );
}

const stationViews: Readonly<Record<StationName, ComponentType<StationProps>>> = {
  'what-leaves': WhatLeaves,
  'the-machine': TheMachine,
  'where-it-settles': WhereItSettles,
  'two-bills': TwoBills,
};

const paperViews: Readonly<Record<PaperName, ComponentType<PaperProps>>> = {
  'side-by-side': SideBySide,
  'cycle-alone': CycleAlone,
  working: Working,
  cautions: Cautions,
  brief: Brief,
};

/** The textbook cycle, and its working, stand without the design: the verdict on it does not belong beside them. */
function isOfTheDesign({ page, part = '' }: Place): boolean {
  return page !== 'cycle-alone' && !(page === 'working' && /^(cycle|secondCycle)(\.|$)/.test(part));
}

interface OpenedPageProps {
  readonly place: Place;
  readonly answer: AssessAnswer | undefined;
  readonly view: UnitView;
  readonly refused: boolean;
}

/** Before the first answer a station shows nothing; a design without one shows its inputs, so that they can be put right. */
function OpenedPage({ place: { page, part }, answer, view, refused }: OpenedPageProps): ReactNode {
  if (!isStation(page)) {
    const Paper = paperViews[page];
    return (
      <Suspense>
        <Paper answer={answer} view={view} part={part} />
      </Suspense>
    );
  }
  if (answer === undefined) return refused ? <StationWithoutAnswer station={page} /> : null;
  const View = stationViews[page];
  return (
    <Suspense>
      <View answer={answer} view={view} />
    </Suspense>
  );
}

interface PageLinksProps {
  readonly current: PageName;
  readonly open: (page: PageName) => void;
}

function PageLinks({ current, open }: PageLinksProps): ReactNode {
  const link = (name: PageName) => (
    <a
      key={name}
      href={addressOf({ page: name, part: undefined })}
      aria-current={name === current ? 'page' : undefined}
      onClick={(event) => {
        event.preventDefault();
        open(name);
      }}
    >
      {pageTitles[name]}
    </a>
  );
  return (
    <nav className="pages" aria-label="Stations and papers">
      <div className="stations">{stationNames.map(link)}</div>
      <div className="papers">{paperNames.map(link)}</div>
    </nav>
  );
}

/** Undo and redo by keyboard, except where a field has its own. */
function useUndoKeys(undo: () => void, redo: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLInputElement && event.target.type === 'text') return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) undo();
      else if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
}
