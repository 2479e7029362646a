// The stations of the workbench, in order, and the addresses they are reached at.

export const stationNames = ['what-leaves', 'the-machine', 'where-it-settles', 'two-bills', 'cycle-alone'] as const;

export type StationName = (typeof stationNames)[number];

export const stationTitles: Readonly<Record<StationName, string>> = {
  'what-leaves': 'What leaves',
  'the-machine': 'The machine',
  'where-it-settles': 'Where it settles',
  'two-bills': 'Two bills',
  'cycle-alone': 'Cycle alone',
};

/** Opened first: the operating point with its picture. */
export const firstStation: StationName = 'where-it-settles';

export function stationOfAddress(hash: string): StationName | undefined {
  const name = hash.replace(/^#\/?/, '');
  return stationNames.find((station) => station === name);
}
