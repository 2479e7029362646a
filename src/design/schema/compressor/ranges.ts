// Where the numbers of a compressor come from while nobody knows them: the range of such machines.

export const ofSuchMachines = {
  rule: 'the range of such machines',
  source: 'ranges by appliance, fluid and year, each with its source',
};
