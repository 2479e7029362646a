// What make.mjs bundles and runs: the pages, with every fluid handed over.

import '../../src/matter/refrigerants/every-fluid.ts';

export { validationPages } from './pages.ts';
