// Hands over what reads points of a described machine: the readers of coefficients, tables and measurements, how the design puts
// them, and what is said of odd ones. For the command line, the library and the tests. The workbench imports this file when a
// design first needs it.

import '../../parts/every-machine-reading/index.ts';
import { coefficientFindings } from '../findings/coefficient-findings.ts';
import { addMachineParts } from '../stages/machine-handed-over.ts';
import { givenEvidence } from '../stages/machine-ratings.ts';
import { addModelWords } from '../wording/model-words/handed-over.ts';
import { machinePointsWords } from '../wording/model-words/machine-points.ts';

addMachineParts({ coefficientFindings, givenEvidence });
addModelWords(machinePointsWords);
