// The invented example designs that come with the program, as text, each under the name of its file. The one a first visit
// opens with comes with the page; the others are loaded when the list of designs is opened.

import firstText from '../../../data/designs/reef-in-the-study.json?raw';

const others = import.meta.glob<string>(
  ['../../../data/designs/*.json', '!../../../data/designs/reef-in-the-study.json'],
  { query: '?raw', import: 'default' },
);

export interface Demo {
  /** 'reef-in-the-study.json' */
  readonly file: string;
  readonly name: string;
  readonly note: string | undefined;
  readonly text: string;
}

/** Open at a first visit: an example that carries its load. */
export const firstDemo: Demo = demoOf('reef-in-the-study.json', firstText);

/** Whether a design's text is still that of the first example, untouched. */
export function isFirstDemo(text: string): boolean {
  return text.trim() === firstText.trim();
}

export async function loadDemos(): Promise<readonly Demo[]> {
  const loaded = await Promise.all(
    Object.entries(others).map(async ([path, load]) => demoOf(path.slice(path.lastIndexOf('/') + 1), await load())),
  );
  return [firstDemo, ...loaded];
}

function demoOf(file: string, text: string): Demo {
  const { name, note } = JSON.parse(text) as { name: string; note?: string };
  return { file, name, note, text };
}
