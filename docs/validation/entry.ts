// What make.mjs bundles and runs: the pages, with every fluid handed over.

import '../../src/matter/every-refrigerant/index.ts';
import '../../src/assess/every-tank/index.ts';
import '../../src/assess/every-machine/index.ts';

export { validationPages } from './pages.ts';
