// The workbench: holds the state, keeps it in the browser, asks the engine at every change, and lays out the page.

import { type Dispatch, lazy, type ReactNode, Suspense, useEffect, useMemo, useReducer, useState } from 'react';
import { type DesignProblem, type EditResult, parseDesign, sayProblem, serialiseDesign } from '../design/index.ts';
import { Caution, CautionLine } from './frame/caution.tsx';
import { ExampleNote } from './frame/example-note.tsx';
import { NoticeBox } from './frame/notice.tsx';
import { PageLinks } from './frame/page-links.tsx';
import { TopBar } from './frame/top-bar.tsx';
import { useShownVerdict } from './frame/use-shown-verdict.ts';
import { Verdict } from './frame/verdict.tsx';
import { WorkingNote } from './frame/working-note.tsx';
import { HeatPath } from './heat-path/heat-path.tsx';
import { useKeeping } from './keeping/use-keeping.ts';
import { useLinks } from './links/use-links.ts';
import { OpenedPage } from './opened-page.tsx';
import { firstPage, type Place } from './pages.ts';
import { type Workbench, WorkbenchContext } from './state/context.tsx';
import { isFirstDemo } from './state/demos.ts';
import { fileNameFor, readFileText, saveText, useFileDrop } from './state/files.ts';
import { noticeOfReading } from './state/reading-notice.ts';
import type { Start } from './state/start.ts';
import type { Keeper } from './state/storage.ts';
import { useAssessment } from './state/use-assessment.ts';
import { usePage } from './state/use-page.ts';
import { useUndoKeys } from './state/use-undo-keys.ts';
import { reduce, stateAtStart, type WorkbenchAction } from './state/workbench.ts';
import { saidFindings } from './ui/findings.tsx';
import { LightProvider } from './ui/light.tsx';
import type { EngineClient } from './worker/client.ts';

// Not needed to show the first verdict, so loaded when they are opened.
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
  const work = useAssessment(engine, document, state.view, dispatch);
  const { keeping, theirs, refused } = useKeeping(keeper, start, serialised);
  const openLink = useLinks(keeper, document, place, dispatch);
  const showVerdict = useShownVerdict(state.answered);

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

  const { openText, openFile } = openingTo(dispatch);
  const isDroppable = useFileDrop((file) => void openFile(file));
  const saveDesign = () => saveText(serialised, fileNameFor(document.name));
  const { answer } = state;
  const stale = state.answered !== document;
  const isRefused = state.refusal !== undefined && stale && !work.working;
  // What the page shows is of an earlier state of the design, and the engine is at work on this one.
  const isBehind = stale && !isRefused && !work.stopped;

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
          <WorkingNote work={work} />
          <PageLinks current={page} open={open} />
          <main
            id="main"
            tabIndex={-1}
            className={isRefused && isOfTheDesign(place) ? 'refused' : undefined}
            aria-busy={isBehind && isOfTheDesign(place)}
          >
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
                if (!isOfTheDesign(place)) open(firstPage);
                window.scrollTo({ top: 0 });
                showVerdict(made);
              }}
            />
          )}
        </Suspense>
      </WorkbenchContext>
    </LightProvider>
  );
}

/** The textbook cycle, and its working, stand without the design: the verdict on it does not belong beside them. */
function isOfTheDesign({ page, part = '' }: Place): boolean {
  return page !== 'cycle-alone' && !(page === 'working' && /^(cycle|secondCycle)(\.|$)/.test(part));
}

/** Opening a text or a file as the design; one that cannot be used is told, and the open design stays. */
function openingTo(dispatch: Dispatch<WorkbenchAction>) {
  /** False where the text cannot be used. */
  const openText = (text: string, name: string): boolean => {
    const outcome = parseDesign(text);
    if (outcome.ok) {
      dispatch({ type: 'opened', document: outcome.document });
      const notice = noticeOfReading(outcome.document.name, outcome.notices);
      if (notice !== undefined) dispatch({ type: 'noticed', notice });
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
  return { openText, openFile };
}
