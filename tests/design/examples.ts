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

/** A tank of every part there is: an L with faces of layers, sump, pipes, fresh water, measures. */
export function fullDesign(): Loose {
  const design = sizedDesign();
  design.place = { outdoors: { winter: '2 °C', windSpeed: '1 to 3 m/s' }, mains: { winter: '9 °C', summer: '17 °C' } };
  design.room.moisture = { kind: 'ventilated', airChanges: '0.5 /h', outdoorHumidity: '80 %' };
  design.tank.load = {
    kind: 'lShape',
    length: '180 cm',
    width: '70 cm',
    height: '60 cm',
    recessLength: '60 cm',
    recessWidth: '30 cm',
    wall: { material: 'glass', thickness: '12 mm' },
    insulation: { sides: { material: 'extrudedPolystyrene', thickness: '20 mm', gap: '10 mm' } },
    faces: [
      {
        face: 'back',
        inside: [
          { kind: 'material', material: 'slate', thickness: '8 mm' },
          { kind: 'waterGap', thickness: '15 mm' },
        ],
        outside: [
          { kind: 'sealedGap', thickness: '20 mm', outerEmissivity: '0.05 (0.03 to 0.1)' },
          {
            kind: 'material',
            material: 'polyisocyanurateFoil',
            thickness: '30 mm',
            joint: { material: 'softwood', share: '10 %' },
          },
          { kind: 'own', conductivity: '0.16 W/(m K)', thickness: '12 mm' },
        ],
        exposure: { kind: 'againstWall' },
      },
      { face: 'recessSide', wall: { material: 'acrylic', thickness: '15 mm' }, exposure: { kind: 'outdoors' } },
      { face: 'bottom', outside: [{ kind: 'resistance', resistance: 'R-2 to R-3' }] },
    ],
    surface: 'rippled',
    lid: 'tight',
    lidLayers: [
      { kind: 'material', material: 'glass', thickness: '4 mm' },
      { kind: 'sealedGap', thickness: '12 mm' },
      { kind: 'material', material: 'glass', thickness: '4 mm' },
    ],
    stand: { kind: 'closedStand', material: 'plywood', thickness: '18 mm' },
    sump: {
      kind: 'rectangular',
      length: '80 cm',
      width: '40 cm',
      height: '40 cm',
      waterDepth: '25 to 30 cm',
      wall: { material: 'glass', thickness: '6 mm' },
      surface: 'rough',
      lid: 'loose',
      lidOpenShare: '20 to 40 %',
      exposure: { kind: 'closedStand', material: 'plywood', thickness: '18 mm' },
    },
    pipes: [
      { name: 'return', length: '2 m', outerDiameter: '32 mm', material: 'rigidPvc' },
      {
        length: '1 to 2 m',
        outerDiameter: '50 mm',
        material: 'rigidPvc',
        insulation: { material: 'elastomericFoam', thickness: '13 mm' },
      },
    ],
    airStones: '150 L/h',
    makeUpFrom: 'mains',
    waterChange: { volume: '60 L', every: '1 week' },
    ultravioletPower: '18 W',
    meter: { kind: 'heater', energy: '21 kWh', duration: '6 days' },
  };
  design.wrapping = {
    measures: [
      { kind: 'board', where: 'hidden', material: 'polyisocyanurateFoil', thickness: '1 in', gap: '20 mm', cost: '80' },
      { kind: 'nightCover', hours: '10 h', cost: '15 to 25', name: 'Blanket' },
      { kind: 'cooler', by: '1 K' },
    ],
    years: '10 years',
  };
  return design;
}

/** A tank piece by piece, and a cylinder. */
export function panelsDesign(): Loose {
  const design = sizedDesign();
  design.tank.load = {
    kind: 'panels',
    waterSurface: '0.9 m2',
    waterVolume: '500 L',
    freeboard: '4 cm',
    panels: [
      { name: 'window', facing: 'side', area: '0.8 m2', areaAboveWater: '0.05 m2' },
      {
        name: 'back',
        facing: 'side',
        area: '1.6 m2',
        wall: { material: 'concrete', thickness: '20 cm' },
        exposure: { kind: 'outdoors' },
      },
      { name: 'floor', facing: 'bottom', area: '0.9 m2', exposure: { kind: 'slab', resistance: '0.5 to 1 m2 K/W' } },
    ],
    wall: { material: 'acrylic', thickness: '20 mm' },
    lid: 'hood',
    hood: { airFlow: '15 to 30 m3/h' },
  };
  return design;
}

export function cylinderDesign(): Loose {
  const design = sizedDesign();
  design.tank.load = {
    kind: 'cylinder',
    diameter: '90 cm',
    height: '70 cm',
    wall: { material: 'acrylic', thickness: '12 mm' },
    insulation: { sides: { material: 'elastomericFoam', thickness: '19 mm' } },
    lid: 'loose',
    lidArea: '0.55 to 0.6 m2',
    stand: { kind: 'slab' },
  };
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
