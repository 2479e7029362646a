// Why a refrigerant is for study only, in a sentence; used wherever a fluid is chosen or answered about.

import { refrigerantName, type StudyOnlyReason, studyOnlyReasons } from '../../matter/refrigerants/index.ts';
import { listed } from '../../quantities/index.ts';

const reasonWords: Readonly<Record<StudyOnlyReason, string>> = {
  safetyClass: 'its safety class',
  flammability: 'whether it burns',
  leakLimit: 'how much of it may leak into a room',
  law: 'the law on it',
};

/**
 * Why a refrigerant is for study only; undefined where it is not.
 * @throws InputError on an unknown name
 */
export function sayStudyOnly(name: string): string | undefined {
  const reasons = studyOnlyReasons(name);
  return reasons.length === 0 ? undefined : studyOnlySentence(refrigerantName(name), reasons);
}

/** "R718 is for study only: no source that was read confirms its safety class and whether it burns." */
export function studyOnlySentence(fluid: string, reasons: readonly StudyOnlyReason[]): string {
  const words = listed(
    reasons.map((reason) => reasonWords[reason]),
    'and',
  );
  return `${fluid} is for study only: no source that was read confirms ${words}.`;
}
