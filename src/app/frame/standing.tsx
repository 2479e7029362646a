// A standing as state and words. The words are the verdict's own.

import type { ReactNode } from 'react';
import type { Standing } from '../../assess/index.ts';
import { type StateKind, StateMark } from '../ui/state-mark.tsx';

const standings: Record<Standing, readonly [StateKind, string]> = {
  doNotBuild: ['stop', 'Do not build this'],
  fallsShort: ['look', 'Falls short'],
  uncertain: ['look', 'We cannot know yet'],
  notWorthIt: ['look', 'Carries the load, but is not worth it'],
  carriesLoad: ['plain', 'Carries the load'],
};

/** A standing is never calmer than what was found: what is to be looked at goes with it. */
export function StandingMark({ standing, looks }: { standing: Standing; looks: number }): ReactNode {
  const [kind, word] = standings[standing];
  if (kind !== 'plain' || looks === 0) return <StateMark kind={kind} word={word} />;
  return <StateMark kind="look" word={`${word}, with ${looks} to look at`} />;
}
