// The JSON Schemas in docs/guide: of what the program reads and of what it answers. Bundled and run by make.mjs; a test
// calls it to see that the files are those of the present code.

import { assessmentJsonSchema } from '../../src/assess/schema/assessment-schema.ts';
import { designJsonSchema } from '../../src/design/index.ts';

export interface SchemaFile {
  readonly name: string;
  readonly text: string;
}

export function schemaFiles(): readonly SchemaFile[] {
  return [
    { name: 'assessment.schema.json', text: jsonText(assessmentJsonSchema()) },
    { name: 'design.schema.json', text: jsonText(designJsonSchema()) },
  ];
}

function jsonText(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
