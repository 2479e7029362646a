// Documents for the tests: the smallest complete ones, each as text and as a value that may be changed.

import { type DesignDocument, parseDesign, serialiseDesign } from '../../src/design/index.ts';

/** Any JSON value inside a document, for breaking it. */
// biome-ignore lint/suspicious/noExplicitAny: tests write what the schema refuses
export type Loose = any;

export function sizedDesign(): Loose {
  return {
    formatVersion: 1,
    name: 'Sized',
    room: { temperature: '20 °C' },
    tank: {
      waterTemperature: '26 °C',
      water: 'fresh',
      load: {
        kind: 'rectangular',
        length: '120 cm',
        width: '50 cm',
        height: '50 cm',
        wall: { material: 'glass', thickness: '10 mm' },
        lid: 'tight',
      },
    },
    machine: {
      refrigerant: 'R134a',
      compressor: { kind: 'salvaged', madeFor: 'R134a', appliance: 'dehumidifier' },
    },
    prices: { currency: 'EUR', electricity: '0.36 EUR/kWh' },
  };
}

export function measuredDesign(): Loose {
  const design = sizedDesign();
  design.tank.load = { kind: 'measured', energy: '38 kWh', duration: '7 days' };
  return design;
}

/** The document of a value that must be valid. */
export function documentOf(value: Loose): DesignDocument {
  const result = parseDesign(JSON.stringify(value));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.document;
}

/** The problems of a value that must not be valid. */
export function problemsOf(value: Loose) {
  const result = parseDesign(typeof value === 'string' ? value : JSON.stringify(value));
  if (result.ok) throw new Error(`was accepted: ${serialiseDesign(result.document)}`);
  return result.problems;
}
