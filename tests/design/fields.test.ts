// Field records: derived from the schema, complete, in plain words; defaults that can be read; JSON Schema beside it.

import { describe, expect, test } from 'vitest';
import { designJsonSchema, fieldRecord, fieldRecords, fieldsOf, quantityFieldProblem } from '../../src/design/index.ts';
import { refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { applianceClasses, applications, machinePrior } from '../../src/parts/compressor/index.ts';
import { type QuantityName, quantityRecord, readQuantity, sayQuantity } from '../../src/quantities/index.ts';
import { documentOf, measuredDesign, sizedDesign } from './examples.ts';

describe('field records', () => {
  test('there are as many as the document has fields, and every path is dotted words', () => {
    expect(fieldRecords.length).toBeGreaterThan(80);
    for (const { path } of fieldRecords) expect(path).toMatch(/^[a-z][A-Za-z]*(?:\.(?:\*|[a-z][A-Za-z]*))*$/);
  });

  test('a path stands twice only for different kinds of one union', () => {
    for (const record of fieldRecords) {
      const same = fieldRecords.filter(({ path }) => path === record.path);
      const kinds = same.flatMap(({ unionKind }) => unionKind?.kinds ?? []);
      expect(same.length === 1 || new Set(kinds).size === kinds.length, record.path).toBe(true);
    }
  });

  test.each(fieldRecords.map((record) => [record.path, record] as const))(
    '%s has words, limits and a readable default',
    (_, record) => {
      expect(record.label.length).toBeGreaterThan(2);
      expect(record.help).toMatch(/[.?!]$/);
      if (record.type === 'quantity') {
        const { quantity, minimum, maximum } = record;
        expect(minimum).toBeLessThan(maximum!);
        quantityRecord(quantity!);
        // The limit itself may be written, in either view's unit, up to rounding to 12 digits.
        const written = sayQuantity(minimum!, quantity!, 'metric', 12);
        expect(
          quantityFieldProblem(written, {
            quantity: quantity!,
            minimum: minimum! - 1e-9 * Math.abs(minimum!),
            maximum: maximum!,
          }),
        ).toBe(undefined);
        if (record.default !== undefined && 'text' in record.default) {
          expect(
            quantityFieldProblem(record.default.text, { quantity: quantity!, minimum: minimum!, maximum: maximum! }),
          ).toBe(undefined);
        }
      } else if (record.type !== 'text') {
        expect(record.choices!.length).toBeGreaterThan(1);
        for (const { label } of record.choices!) expect(label.length).toBeGreaterThan(1);
        if (record.default !== undefined && 'text' in record.default) {
          expect(record.choices!.map(({ name }) => name)).toContain(record.default.text);
        }
      }
      const hasDefault = record.default !== undefined;
      const isLayer = record.path.startsWith('tank.load.insulation.');
      if (record.optional && record.type !== 'text') expect(hasDefault || isLayer).toBe(true);
      if (record.default !== undefined) expect(record.default.source.length).toBeGreaterThan(5);
    },
  );

  test('none promises that anything is safe, approved or compliant', () => {
    for (const { path, label, help, choices } of fieldRecords) {
      const words = [label, help, ...(choices ?? []).map((choice) => choice.label)].join(' ');
      expect(words, path).not.toMatch(/\b(?:safe|safely|approved|compliant)\b/i);
    }
  });

  test('a machine may be studied on every refrigerant; its compressor was made for one of whose machines something is known', () => {
    const namesOf = (path: string) => fieldRecord(path)?.choices?.map(({ name }) => name);
    expect(namesOf('machine.refrigerant')).toEqual(refrigerantNames);
    const madeFor = namesOf('machine.compressor.madeFor') ?? [];
    expect(madeFor).toEqual(expect.arrayContaining(['R134a', 'R600a', 'R290', 'R12', 'R22']));
    for (const fluid of madeFor) {
      expect(refrigerantNames).toContain(fluid);
      for (const application of applications) {
        expect(() => machinePrior({ application, madeFor: fluid, frequency: 50 })).not.toThrow();
      }
    }
    for (const { fluids } of applianceClasses) expect(madeFor).toEqual(expect.arrayContaining([...fluids]));
  });

  test('fieldsOf follows the kinds of the document', () => {
    const sized = fieldsOf(documentOf(sizedDesign())).map(({ path }) => path);
    const measured = fieldsOf(documentOf(measuredDesign())).map(({ path }) => path);
    expect(sized).toContain('tank.load.length');
    expect(sized).not.toContain('tank.load.energy');
    expect(measured).toContain('tank.load.energy');
    expect(measured).not.toContain('tank.load.wall.thickness');
    expect(sized).not.toContain('source.temperature');
    expect(new Set(sized).size).toBe(sized.length);
  });

  test('the record of a path that two kinds share is that of the kind in the document', () => {
    const measures = [
      { kind: 'lid', material: 'glass', cost: '30' },
      { kind: 'nightCover', hours: '10 h', cost: '15' },
    ];
    const document = documentOf({ ...sizedDesign(), wrapping: { measures } });
    expect(fieldRecord('wrapping.measures.0.material', document)?.optional).toBe(false);
    expect(fieldRecord('wrapping.measures.1.material', document)?.optional).toBe(true);
    expect(fieldRecord('machine.wings')).toBe(undefined);
  });

  test('limits accept the limit itself and refuse what lies beyond it', () => {
    const { quantity, minimum, maximum } = fieldRecord('tank.waterTemperature')!;
    const limits = { quantity: quantity as QuantityName, minimum: minimum!, maximum: maximum! };
    expect(quantityFieldProblem('45 °C', limits)).toBe(undefined);
    expect(quantityFieldProblem('113 °F', limits)).toBe(undefined);
    expect(quantityFieldProblem('45.1 °C', limits)).toMatchObject({ code: 'outOfRange' });
    expect(quantityFieldProblem('44 to 46 °C', limits)).toMatchObject({ code: 'outOfRange' });
  });
});

test('texts of several lines are told apart: a table, ten coefficients', () => {
  const ofLines = fieldRecords.filter(({ lines }) => lines === true);
  expect(ofLines.map(({ path, type }) => [path, type])).toEqual([
    ['machine.compressor.coefficients.*.values', 'text'],
    ['machine.compressor.tables.*.table', 'text'],
  ]);
});

test('first only the appliance, its fluid and its year are asked of a compressor; all of it may be left open', () => {
  const ofCompressor = fieldRecords.filter(({ path }) => path.startsWith('machine.compressor.'));
  const first = ofCompressor.filter(({ level }) => level === 'first');
  expect(first.map(({ path }) => path)).toEqual([
    'machine.compressor.appliance',
    'machine.compressor.madeFor',
    'machine.compressor.year',
  ]);
  const required = ofCompressor.filter(({ path, optional }) => !optional && !path.includes('*'));
  expect(required).toEqual([]);
});

describe('JSON Schema', () => {
  const schema = designJsonSchema() as {
    properties: Record<string, { properties?: Record<string, unknown> }>;
    required: string[];
  };

  test('describes every part, forbids unknown keys, carries words and defaults, and is plain JSON', () => {
    expect(Object.keys(schema.properties)).toContain('machine');
    expect(schema.required).toEqual(['formatVersion', 'name', 'room', 'tank', 'machine', 'prices']);
    const text = JSON.stringify(schema);
    expect(JSON.parse(text)).toEqual(schema);
    expect(text).toContain('"additionalProperties":false');
    expect(text).not.toContain('"field"');
    expect(schema.properties.room!.properties!.relativeHumidity).toMatchObject({
      type: 'string',
      title: 'Humidity of the room',
      description: expect.stringContaining('If absent: 50 % (35 to 60)'),
    });
  });

  test('its examples read', () => {
    const examples: string[] = [];
    const collect = (node: unknown): void => {
      if (typeof node !== 'object' || node === null) return;
      if ('examples' in node && 'description' in node) examples.push(...(node.examples as string[]));
      Object.values(node).forEach(collect);
    };
    collect(schema);
    expect(examples.length).toBeGreaterThan(50);
    const names: readonly QuantityName[] = fieldRecords.flatMap(({ quantity }) => quantity ?? []);
    for (const example of examples) {
      const reads = names.some((name) => readQuantity(example, name, { atmosphericPressure: 101325 }).ok);
      expect(reads || /^[A-Z]{3}$/.test(example), example).toBe(true);
    }
  });
});
