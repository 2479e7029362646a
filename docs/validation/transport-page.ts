// The page of viscosity, conductivity and surface tension: the worst and the median deviation by fluid, property and region
// from the states of the library, with the method each fluid's values come by.

import { refrigerant, transportMethods } from '../../src/matter/refrigerants/index.ts';
import { valuesOf } from '../../tests/reference/refrigerants/transport/rows.ts';
import {
  type TransportRow,
  type TransportTable,
  transportTables,
} from '../../tests/reference/refrigerants/transport/states.ts';

const properties = ['viscosity', 'conductivity', 'surfaceTension'] as const;
const regions: Readonly<Record<TransportRow['region'], string>> = {
  liquid: 'saturated liquid',
  vapour: 'saturated vapour',
  superheated: 'superheated vapour',
  compressed: 'compressed liquid',
  supercritical: 'supercritical',
  anywhere: 'whole range',
};
const propertyWords = {
  viscosity: 'viscosity',
  conductivity: 'conductivity',
  surfaceTension: 'surface tension',
} as const;
const methodWords = {
  ownCorrelation: 'own correlation',
  residualEntropy: 'estimate, residual entropy',
  correspondingStates: 'estimate, corresponding states',
} as const;

export function transportPage() {
  const tables = transportTables();
  const count = tables.reduce((sum, { rows }) => sum + rows.length, 0);
  const heads = ['fluid', 'property', 'method', ...Object.values(regions)];
  return {
    name: 'refrigerant-transport.md',
    title: 'Viscosity, conductivity and surface tension against reference states',
    about: `${count} states of ${tables.length} fluids, worst and median by property and region`,
    text: `# Viscosity, conductivity and surface tension against reference states

${count} seeded random states of the general-purpose library CoolProp 8.0.0, from [tests/reference/refrigerants/transport/states](../../tests/reference/refrigerants/transport/states), where the head of each file names its seed. Made by \`npm run documents\`; do not edit. Cells: worst / median, relative. The library is the reference of the coding, not of the truth: an estimate may lie far from measurements, and what is known of that stands with the [printed values](refrigerants.md).

| ${heads.join(' | ')} |
| ${heads.map(() => '---').join(' | ')} |
${tables.flatMap(linesOf).join('\n')}
`,
  };
}

function linesOf({ refrigerant: name, rows }: TransportTable): readonly string[] {
  const fluid = refrigerant(name);
  const methods = transportMethods(fluid);
  const ours = rows.map((row) => valuesOf(fluid, row));
  return properties.map((property) => {
    const cells = Object.keys(regions).map((region) => {
      const deviations = rows.flatMap((row, k) => {
        const published = row[property];
        if (row.region !== region || published === undefined) return [];
        return [Math.abs((ours[k]![property] ?? Number.NaN) / published - 1)];
      });
      return worstAndMedian(deviations);
    });
    return `| ${[name, propertyWords[property], methodWords[methods[property].method], ...cells].join(' | ')} |`;
  });
}

function worstAndMedian(deviations: readonly number[]): string {
  if (deviations.length === 0) return '';
  if (!deviations.every(Number.isFinite)) throw new Error('a reference state without a value of ours');
  const sorted = [...deviations].sort((a, b) => a - b);
  return [sorted.at(-1)!, sorted[Math.floor(sorted.length / 2)]!].map((value) => value.toExponential(1)).join(' / ');
}
