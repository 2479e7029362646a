// What is said of a compressor's fields while nobody knows them.

/** A number of the machine: its range before anything was stated or measured. */
export const ofSuchMachines = {
  rule: 'the range of such machines',
  source: 'ranges by appliance, fluid and year, each with its source',
};

/** Without it less is told, and nothing stands in for it. */
export const leftOpen = { rule: 'nothing', source: 'without it less is told' };
