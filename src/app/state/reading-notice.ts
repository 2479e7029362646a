// What a person should know of a design that was opened although it was of an older format: that it was read as the present one, and
// what of it could not be kept. What is merely unusual of it stands where it is asked.

import { type DesignNotice, sayNotice } from '../../design/index.ts';
import type { Notice } from './workbench.ts';

const ofReading: readonly DesignNotice['code'][] = ['olderFormat', 'leftOut', 'readAs'];

export function saidOfReading(notices: readonly DesignNotice[]): Notice['problems'] {
  return notices
    .filter(({ code }) => ofReading.includes(code))
    .map((notice) => ({ path: undefined, message: sayNotice(notice) }));
}

/** Undefined where there is nothing to be told. */
export function noticeOfReading(name: string, notices: readonly DesignNotice[]): Notice | undefined {
  const problems = saidOfReading(notices);
  return problems.length === 0
    ? undefined
    : { tone: 'note', title: `“${name}” is open, and was of an older format`, problems };
}
