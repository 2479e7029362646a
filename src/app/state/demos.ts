// The invented example designs that come with the program, as text, each under the name of its file.

const texts = import.meta.glob<string>('../../../data/designs/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export interface Demo {
  /** 'cellar-cichlids.json' */
  readonly file: string;
  readonly name: string;
  readonly note: string | undefined;
  readonly text: string;
}

export const demos: readonly Demo[] = Object.entries(texts).map(([path, text]) => {
  const { name, note } = JSON.parse(text) as { name: string; note?: string };
  return { file: path.slice(path.lastIndexOf('/') + 1), name, note, text };
});

/** Open at a first visit: an example that carries its load. */
export const firstDemoFile = 'reef-in-the-study.json';
