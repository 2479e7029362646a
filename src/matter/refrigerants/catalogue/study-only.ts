// Which refrigerants may be studied and no more: those of which the catalogue lacks a source that was read for what a
// machine in a room is judged by. Their properties are as good as those of any other fluid; what a leak would do is not known
// well enough to be cleared.

import { type CatalogueEntry, type CatalogueField, catalogueEntry } from './catalogue.ts';

/** What has to be confirmed before a fluid is more than an object of study. */
export type StudyOnlyReason = 'safetyClass' | 'flammability' | 'leakLimit' | 'law';

/** What the catalogue cannot confirm of a refrigerant; empty for one that is not for study only. @throws as catalogueEntry() */
export function studyOnlyReasons(name: string): readonly StudyOnlyReason[] {
  return unconfirmedOf(catalogueEntry(name));
}

/** Whether a refrigerant is for study only. @throws as catalogueEntry() */
export function isStudyOnly(name: string): boolean {
  return studyOnlyReasons(name).length > 0;
}

/** The same of an entry at hand. */
export function unconfirmedOf(entry: CatalogueEntry): readonly StudyOnlyReason[] {
  const isConfirmed = (field: CatalogueField) => entry.sources[field].confirmed;
  // Of a fluid that does not burn a leak is judged by what can be breathed: one limit that was read is enough.
  const hasLeakLimit =
    (entry.practicalLimit !== null && isConfirmed('practicalLimit')) ||
    (entry.toxicityLimit !== null && isConfirmed('toxicityLimit'));
  return [
    ...(isConfirmed('safetyClass') ? [] : (['safetyClass'] as const)),
    ...(isConfirmed('lowerFlammabilityLimit') ? [] : (['flammability'] as const)),
    ...(hasLeakLimit ? [] : (['leakLimit'] as const)),
    ...(isConfirmed('legalStatus') ? [] : (['law'] as const)),
  ];
}
