// The refrigerants that can be chosen, with their labels, from the design's own field.

import { fieldRecord } from '../../design/index.ts';

export const refrigerantChoices: readonly { readonly value: string; readonly label: string }[] = (
  fieldRecord('machine.refrigerant')?.choices ?? []
).map(({ name, label }) => ({ value: name, label }));
