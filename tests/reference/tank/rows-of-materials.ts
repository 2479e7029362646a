// Conductivities of the table of materials against published ones: our likely value beside each, and whether our range holds it.

import { material } from '../../../src/matter/materials/index.ts';
import type { ValidationRow } from '../validation.ts';
import { publishedMaterials } from './materials.ts';

export function materialRows(): readonly ValidationRow[] {
  return publishedMaterials
    .filter(({ quantity }) => quantity === 'conductivity')
    .map(({ name, value, source }): ValidationRow => {
      const { label, conductivity } = material(name);
      const { low, likely, high } = conductivity;
      return {
        subject: 'Conductivity of materials, k [W/(m K)]',
        quantity: `${label}, ours ${low} to ${high}`,
        source,
        published: value,
        ours: likely,
        deviation: value >= low && value <= high ? 'inside our range' : 'outside our range',
        status: 'reference',
        reason: 'A material is a range: boards and blocks of one name differ by density, age and moisture',
      };
    });
}
