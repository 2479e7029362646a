// Hands over what reckons a tank from its sizes: how the design is read, how the tank is described, its model and what is said of
// it. For the command line, the library and the tests. The workbench imports this file when a design first needs it.

import { addSizedLoads, resolveSizedLoad } from '../../design/index.ts';
import {
  addBuiltTankModel,
  applyToBuilt,
  builtEvaporation,
  builtLoad,
  builtLosses,
  checkBuilt,
} from '../../tank/index.ts';
import { builtAnswers } from '../answers/built-tank.ts';
import { meterAnswer } from '../answers/meter.ts';
import { sizedTankAssumptions } from '../stages/sized-tank/assumptions.ts';
import { builtTank } from '../stages/sized-tank/description.ts';
import { addSizedTankParts } from '../stages/sized-tank/handed-over.ts';
import { addModelWords } from '../wording/model-words/handed-over.ts';
import { sizedTankWords } from '../wording/model-words/sized-tank.ts';

addBuiltTankModel({ applyToBuilt, builtEvaporation, builtLoad, builtLosses, checkBuilt });
addSizedLoads(resolveSizedLoad);
addSizedTankParts({ builtAnswers, builtTank, meterAnswer, sizedTankAssumptions });
addModelWords(sizedTankWords);
