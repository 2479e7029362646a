// Entry of the page: styles, the worker, storage, and the workbench itself.

import './styles/tokens.css';
import './styles/base.css';
import './styles/verdict.css';
import './styles/layout.css';
import './styles/parts.css';
import './styles/lists.css';
import './styles/heat-path.css';
import './styles/print.css';
import startWorker from 'virtual:engine-worker';
import { createRoot } from 'react-dom/client';
import { fluidsOf } from '../design/index.ts';
import { App } from './app.tsx';
import { addressOf, firstPage, isDesignLink } from './pages.ts';
import { startFrom } from './state/start.ts';
import { browserKeeper } from './state/storage.ts';
import { createEngineClient, type WorkerPort } from './worker/client.ts';

const engine = createEngineClient(
  () => startWorker() as unknown as WorkerPort,
  () => performance.now(),
);
const keeper = browserKeeper(() => window.localStorage);
const root = document.getElementById('root');
if (root === null) throw new Error('The page has no element to draw the workbench in.');

/** The design that the address carries is read before anything is shown, so that no other design flashes up. */
async function startWorkbench(element: HTMLElement): Promise<void> {
  const { hash } = location;
  const link = isDesignLink(hash)
    ? await import('./links/open-link.ts').then(({ openLink }) => openLink(hash))
    : undefined;
  // The address has done its work: a reload must not bring back what has been edited since.
  if (link !== undefined) history.replaceState(null, '', addressOf({ page: firstPage, part: undefined }));
  const start = startFrom(keeper, new Date().toISOString(), link, navigator.language);
  // The worker begins, and fetches what the design is about, while the page is drawn.
  const { refrigerant, madeFor } = fluidsOf(start.document);
  engine.prepare([refrigerant, madeFor]);
  createRoot(element).render(<App engine={engine} keeper={keeper} start={start} />);
}

void startWorkbench(root);
