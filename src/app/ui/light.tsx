// Which light the page is in: the system's or the person's choice, and what it comes to now.

import { createContext, type ReactNode, useContext, useEffect, useLayoutEffect, useState } from 'react';
import { flushSync } from 'react-dom';

export type LightChoice = 'system' | 'light' | 'dark';
export type Light = 'light' | 'dark';

const LightContext = createContext<Light>('light');

/** The light the page is in now. */
export function useLight(): Light {
  return useContext(LightContext);
}

export function LightProvider({ choice, children }: { choice: LightChoice; children: ReactNode }): ReactNode {
  const [system, setSystem] = useState<Light>(() => systemLight());
  useEffect(() => {
    const query = matchMedia('(prefers-color-scheme: dark)');
    const follow = () => setSystem(systemLight());
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  const light = choice === 'system' ? system : choice;
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    if (choice === 'system') delete dataset.light;
    else dataset.light = choice;
  }, [choice]);
  return <LightContext value={light}>{children}</LightContext>;
}

/** Whether the page is being put on paper: narrower than the window, and always light. Told before the paper is laid out. */
export function usePaper(): boolean {
  const [isPaper, setPaper] = useState(false);
  useEffect(() => {
    const begin = () => flushSync(() => setPaper(true));
    const end = () => setPaper(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return isPaper;
}

/** Width between the margins of the narrower of the usual papers [px]. */
export const paperWidth = 680;

function systemLight(): Light {
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}
