// The page that is opened: a station of the design, or a paper. All but the first are loaded when they are opened.

import { type ComponentType, lazy, type ReactNode, Suspense } from 'react';
import type { UnitView } from '../quantities/index.ts';
import { isStation, type PaperName, type Place, type StationName } from './pages.ts';
import type { PaperProps } from './papers/paper.tsx';
import { type StationProps, StationWithoutAnswer } from './stations/station.tsx';
import { WhereItSettles } from './stations/where-it-settles.tsx';
import type { AssessAnswer } from './worker/messages.ts';

const TheMachine = lazy(() => import('./stations/the-machine.tsx').then((part) => ({ default: part.TheMachine })));
const TwoBills = lazy(() => import('./stations/two-bills.tsx').then((part) => ({ default: part.TwoBills })));
const WhatLeaves = lazy(() => import('./stations/what-leaves.tsx').then((part) => ({ default: part.WhatLeaves })));
const WhatToWrap = lazy(() => import('./stations/what-to-wrap.tsx').then((part) => ({ default: part.WhatToWrap })));
const SideBySide = lazy(() =>
  import('./papers/side-by-side/side-by-side.tsx').then((part) => ({ default: part.SideBySide })),
);
const CycleAlone = lazy(() =>
  import('./papers/cycle-alone/cycle-alone.tsx').then((part) => ({ default: part.CycleAlone })),
);
const Working = lazy(() => import('./papers/working/working.tsx').then((part) => ({ default: part.Working })));
const Cautions = lazy(() => import('./papers/cautions/cautions.tsx').then((part) => ({ default: part.Cautions })));
const Brief = lazy(() => import('./papers/brief/brief.tsx').then((part) => ({ default: part.Brief })));

const stationViews: Readonly<Record<StationName, ComponentType<StationProps>>> = {
  'what-leaves': WhatLeaves,
  'what-to-wrap': WhatToWrap,
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

interface OpenedPageProps {
  readonly place: Place;
  readonly answer: AssessAnswer | undefined;
  readonly view: UnitView;
  readonly refused: boolean;
}

/** Before the first answer a station shows nothing; a design without one shows its inputs, so that they can be put right. */
export function OpenedPage({ place: { page, part }, answer, view, refused }: OpenedPageProps): ReactNode {
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
