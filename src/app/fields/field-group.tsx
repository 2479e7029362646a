// The fields of a station: at most seven to begin with, the rest behind "I know more", under headings where they are many.

import { lazy, type ReactNode, Suspense } from 'react';
import { type DesignDocument, fieldsOf, getField, itemsOf, type ListRecord, listsOf } from '../../design/index.ts';
import type { StationName } from '../pages.ts';
import { useWorkbench } from '../state/context.tsx';
import { fieldsOfStation } from '../stations/fields.ts';
import { isBesideTheAnswer, type Subject, subjectsOf } from '../stations/subjects.ts';
import { Fields } from './fields.tsx';

// No list is needed to show the first verdict.
const ListFields = lazy(() => import('./list-fields.tsx').then((part) => ({ default: part.ListFields })));

export interface FieldGroupProps {
  readonly station: StationName;
  /** False where everything has to be asked here, because nothing explains the answer beside it. */
  readonly hasAnswer?: boolean;
}

export function FieldGroup({ station, hasAnswer = true }: FieldGroupProps): ReactNode {
  const { document } = useWorkbench();
  const { shown, more, expert } = fieldsOfStation(station, fieldsOf(document));
  const subjects = subjectsOf(station, { more, expert }, listsOf(document), hasAnswer);
  const count =
    subjects.length > 0 ? subjects.reduce((sum, subject) => sum + countOf(subject), 0) : more.length + expert.length;
  const given = givenOf({ more, expert, lists: subjects.flatMap(({ lists }) => lists) }, document);
  const isShown = ({ path }: { readonly path: string }) => !hasAnswer || !isBesideTheAnswer(station, path);
  return (
    <>
      <Fields records={shown} />
      {count > 0 && (
        <details className="fields-more">
          <summary>
            I know more ({count}
            {givenWords(given)})
          </summary>
          {subjects.length === 0 ? (
            <MoreFields more={more} expert={expert} lists={[]} isShown={isShown} />
          ) : (
            subjects.map((subject) => (
              <details key={subject.title} className="fields-more fields-subject">
                <summary>
                  {subject.title} ({countOf(subject)}
                  {givenWords(givenOf(subject, document))})
                </summary>
                <MoreFields {...subject} isShown={isShown} />
              </details>
            ))
          )}
        </details>
      )}
    </>
  );
}

/** How many of them hold something, the items of lists counted one by one. */
function givenOf({ more, expert, lists }: Omit<Subject, 'title'>, document: DesignDocument): number {
  return (
    [...more, ...expert].filter(({ path }) => getField(document, path) !== undefined).length +
    lists.reduce((sum, { path }) => sum + itemsOf(document, path).length, 0)
  );
}

function givenWords(count: number): string {
  return count === 0 ? '' : `, ${count} given`;
}

function countOf({ more, expert, lists }: Subject): number {
  return more.length + expert.length + lists.length;
}

interface MoreFieldsProps extends Omit<Subject, 'title'> {
  readonly isShown: (record: { readonly path: string }) => boolean;
}

/** Fields and lists of one subject; what is rarely known behind a fold of its own. */
function MoreFields({ more, expert, lists, isShown }: MoreFieldsProps): ReactNode {
  return (
    <>
      <Fields records={more} />
      {lists.map(({ path }: ListRecord) => (
        <Suspense key={path}>
          <ListFields list={path} isShown={isShown} />
        </Suspense>
      ))}
      {expert.length > 0 && (
        <details className="fields-more">
          <summary>Rarely known ({expert.length})</summary>
          <Fields records={expert} />
        </details>
      )}
    </>
  );
}
