// Hands over the coefficient files of every refrigerant: for the command line, the library and the tests, where loading a
// few kilobytes a fluid costs nothing. The workbench does not import this file; it fetches the fluids it is asked about.

import r12 from '../../../data/refrigerants/R12.json';
import r22 from '../../../data/refrigerants/R22.json';
import r32 from '../../../data/refrigerants/R32.json';
import r124 from '../../../data/refrigerants/R124.json';
import r125 from '../../../data/refrigerants/R125.json';
import r134a from '../../../data/refrigerants/R134a.json';
import r142b from '../../../data/refrigerants/R142b.json';
import r143a from '../../../data/refrigerants/R143a.json';
import r152a from '../../../data/refrigerants/R152a.json';
import r227ea from '../../../data/refrigerants/R227ea.json';
import r236fa from '../../../data/refrigerants/R236fa.json';
import r245fa from '../../../data/refrigerants/R245fa.json';
import r290 from '../../../data/refrigerants/R290.json';
import r404a from '../../../data/refrigerants/R404A.json';
import r407c from '../../../data/refrigerants/R407C.json';
import r410a from '../../../data/refrigerants/R410A.json';
import r507a from '../../../data/refrigerants/R507A.json';
import r600 from '../../../data/refrigerants/R600.json';
import r600a from '../../../data/refrigerants/R600a.json';
import r717 from '../../../data/refrigerants/R717.json';
import r718 from '../../../data/refrigerants/R718.json';
import r744 from '../../../data/refrigerants/R744.json';
import r1234yf from '../../../data/refrigerants/R1234yf.json';
import r1234zee from '../../../data/refrigerants/R1234ze(E).json';
import r1270 from '../../../data/refrigerants/R1270.json';
import { addCoefficientFile } from '../refrigerants/index.ts';

for (const file of [
  r134a,
  r600a,
  r290,
  r1270,
  r12,
  r22,
  r32,
  r152a,
  r1234yf,
  r1234zee,
  r744,
  r717,
  r404a,
  r407c,
  r410a,
  r507a,
  r600,
  r125,
  r143a,
  r245fa,
  r142b,
  r124,
  r227ea,
  r236fa,
  r718,
]) {
  addCoefficientFile(file);
}
