// Hands over what reads coefficients, tables and measurements of a machine and finds it from points: for the command line, the
// library and the tests. The workbench imports this file when a design first needs it.

import {
  addMachineReading,
  benchPoint,
  evidenceFromCoefficients,
  evidenceFromTable,
  identifyMachine,
  ratingEvidence,
  readPointTable,
  requirePlausibleRating,
  requireTenCoefficients,
} from '../compressor/index.ts';

addMachineReading({
  benchPoint,
  evidenceFromCoefficients,
  evidenceFromTable,
  identifyMachine,
  ratingEvidence,
  readPointTable,
  requirePlausibleRating,
  requireTenCoefficients,
});
