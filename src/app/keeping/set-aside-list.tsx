// The designs set aside in this browser: each can be opened, saved to a file or removed.

import { type ReactNode, useState } from 'react';
import { parseDesign } from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { fileNameFor, saveText } from '../state/files.ts';
import { allSetAside, dropSetAside, mostSetAside, type SetAside, type WhySetAside } from './set-aside.ts';
import './set-aside-list.css';

const reasons: Readonly<Record<WhySetAside, string>> = {
  unreadable: 'kept in this browser, could not be read',
  link: 'open before a link',
  otherTab: 'not chosen between two tabs',
};

export interface SetAsideListProps {
  readonly openText: (text: string, name: string) => void;
  readonly close: () => void;
}

export function SetAsideList({ openText, close }: SetAsideListProps): ReactNode {
  const { keeper } = useWorkbench();
  const [all, setAll] = useState(() => allSetAside(keeper));
  if (all.length === 0) return null;
  return (
    <section aria-labelledby="set-aside-title">
      <h2 id="set-aside-title">Set aside in this browser</h2>
      <ul className="set-aside">
        {all.map((one) => {
          const name = designNameIn(one.text);
          return (
            <li key={one.text}>
              <span>{name}</span>
              <span className="quiet">
                {[reasons[one.why], timeOf(one)].filter((words) => words !== '').join(', ')}
              </span>
              <span className="tools">
                {parseDesign(one.text).ok && (
                  <button
                    type="button"
                    className="plain"
                    aria-label={`Open ${name}`}
                    onClick={() => {
                      close();
                      openText(one.text, name);
                    }}
                  >
                    Open
                  </button>
                )}
                <button
                  type="button"
                  className="plain"
                  aria-label={`Save ${name} to a file`}
                  onClick={() => saveText(one.text, fileNameFor(name))}
                >
                  Save to a file
                </button>
                <button
                  type="button"
                  className="plain"
                  aria-label={`Remove ${name}`}
                  onClick={() => {
                    dropSetAside(keeper, one.text);
                    setAll(allSetAside(keeper));
                  }}
                >
                  Remove
                </button>
              </span>
            </li>
          );
        })}
      </ul>
      <p className="quiet">The newest {mostSetAside} stay here, in this browser only.</p>
    </section>
  );
}

/** The design's own name, where its text still gives one. */
export function designNameIn(text: string): string {
  try {
    const { name } = JSON.parse(text) as { readonly name?: unknown };
    if (typeof name === 'string' && name.trim() !== '') return name;
  } catch {
    // Such a text has no name.
  }
  return 'A text that cannot be read';
}

function timeOf({ at }: SetAside): string {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return '';
  return time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
