// The page of the property tables: their look-ups against the same reference states the equation is held to, where they lie
// in a table's region.

import { refrigerant, tabulated } from '../../src/matter/refrigerants/index.ts';
import { scales } from '../../tests/reference/refrigerants/accuracy.ts';
import { type ReferenceTable, referenceTables } from '../../tests/reference/refrigerants/states.ts';

const columns = ['temperature', 'density', 'entropy'] as const;

export function tablesPage() {
  const tables = referenceTables();
  const lines = tables.map(oneFluid);
  const head =
    '| fluid | states in the region | answered by the table | temperature | density | entropy | region | memory |\n| --- | --- | --- | --- | --- | --- | --- | --- |';
  return {
    name: 'refrigerant-tables.md',
    title: 'Property tables of refrigerants against reference states',
    about: `look-ups of ${tables.length} fluids, worst and median`,
    text: `# Property tables of refrigerants against reference states

Look-ups of temperature, density and entropy from pressure and enthalpy, in place of the equation itself, against [the reference states of the equations](refrigerant-states.md). Made by \`npm run documents\`; do not edit. Cells: worst / median, relative; of entropy shares of 1 kJ/(kg K). What a table does not answer it leaves to the equation: the surroundings of the critical point.

${head}
${lines.join('\n')}
`,
  };
}

function oneFluid(reference: ReferenceTable): string {
  const fluid = tabulated(refrigerant(reference.refrigerant));
  const { table } = fluid.table;
  const { temperatureMin, temperatureMax, pressureMax } = table.region;
  const lowest = fluid.table.saturationAtTemperature(temperatureMin)?.liquid.pressure ?? 0;
  const inside = [...reference.single, ...reference.twoPhase].filter(
    ({ temperature, pressure }) =>
      temperature > temperatureMin && temperature < temperatureMax && pressure > lowest && pressure < pressureMax,
  );
  const deviations: Record<(typeof columns)[number], number[]> = { temperature: [], density: [], entropy: [] };
  for (const row of inside) {
    if (!table.lookUp(row.pressure, row.enthalpy)) continue;
    const [temperature, density, entropy] = table.found as unknown as [number, number, number];
    deviations.temperature.push(Math.abs(temperature / row.temperature - 1));
    deviations.density.push(Math.abs(density / row.density - 1));
    deviations.entropy.push(Math.abs(entropy - row.entropy) / scales.entropy);
  }
  const answered = deviations.temperature.length;
  if (answered === 0) throw new Error(`the table of ${reference.refrigerant} answers nothing`);
  const cells = columns.map((column) => worstAndMedian(deviations[column]));
  const region = `${temperatureMin.toFixed(1)} to ${temperatureMax.toFixed(1)} K, to ${(pressureMax / 1e6).toFixed(2)} MPa`;
  const memory = `${Math.round(table.bytes / 1000)} kB`;
  return `| ${[reference.refrigerant, inside.length, answered, ...cells, region, memory].join(' | ')} |`;
}

function worstAndMedian(deviations: readonly number[]): string {
  const sorted = [...deviations].sort((a, b) => a - b);
  return [sorted.at(-1)!, sorted[Math.floor(sorted.length / 2)]!].map((value) => value.toExponential(1)).join(' / ');
}
