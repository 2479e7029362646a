// Links to every station and every paper; they stay in sight.

import type { ReactNode } from 'react';
import { addressOf, type PageName, pageTitles, paperNames, stationNames } from '../pages.ts';

interface PageLinksProps {
  readonly current: PageName;
  readonly open: (page: PageName) => void;
}

export function PageLinks({ current, open }: PageLinksProps): ReactNode {
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
