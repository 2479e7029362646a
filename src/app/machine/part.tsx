// A part of the station that begins folded: its heading, and in a few words what it answers. And the way to each of the parts.

import type { ReactNode } from 'react';
import { Fold } from '../ui/fold.tsx';
import { PageLink } from '../ui/page-link.tsx';

export interface PartProps {
  /** By which a link leads to it. */
  readonly name: string;
  readonly title: string;
  /** What it answers, in a few words, for those who leave it folded. */
  readonly brief: ReactNode;
  readonly children: ReactNode;
}

export function Part({ name, title, brief, children }: PartProps): ReactNode {
  return (
    <section className="block machine-part">
      <Fold
        className="part"
        id={name}
        summary={
          <>
            <h3>{title}</h3> <span className="part-brief">{brief}</span>
          </>
        }
      >
        <div className="part-body">{children}</div>
      </Fold>
    </section>
  );
}

export interface PartLinksProps {
  /** Name and title of each part, in the order of the page. */
  readonly parts: readonly (readonly [name: string, title: string])[];
}

export function PartLinks({ parts }: PartLinksProps): ReactNode {
  return (
    <nav className="part-links" aria-label="Parts of this station">
      <ul>
        {parts.map(([name, title]) => (
          <li key={name}>
            <PageLink page="the-machine" part={name}>
              {title}
            </PageLink>
          </li>
        ))}
      </ul>
    </nav>
  );
}
