// Which light the page is in: the system's or the person's choice, and what it comes to now.

import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';

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
  useEffect(() => {
    const { dataset } = document.documentElement;
    if (choice === 'system') delete dataset.light;
    else dataset.light = choice;
  }, [choice]);
  return <LightContext value={light}>{children}</LightContext>;
}

function systemLight(): Light {
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}
