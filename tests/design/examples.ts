// Documents for the tests: the smallest complete ones, each as text and as a value that may be changed.

import { type DesignDocument, parseDesign, serialiseDesign } from '../../src/design/index.ts';

/** Any JSON value inside a document, for breaking it. */
// biome-ignore lint/suspicious/noExplicitAny: tests write what the schema refuses
export type Loose = any;

export function sizedDesign(): Loose {
  return {
    formatVersion: 2,
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
      compressor: { appliance: 'dehumidifier', madeFor: 'R134a' },
    },
    prices: { currency: 'EUR', electricity: '0.36 EUR/kWh' },
  };
}

export function measuredDesign(): Loose {
  const design = sizedDesign();
  design.tank.load = { kind: 'measured', energy: '38 kWh', duration: '7 days' };
  return design;
}

/** The same design as version 1 had it, with its compressor in one of the three ways it could be described then. */
export function firstVersionDesign(compressor: Loose): Loose {
  const design = sizedDesign();
  design.formatVersion = 1;
  design.machine.compressor = compressor;
  return design;
}

/** A freezer's dome of which everything is known. Invented; numbers of one machine that is possible. */
export function knownCompressor(): Loose {
  const returnGas = { kind: 'returnGas', returnGas: '32.2 °C' };
  const liquid = { kind: 'temperature', temperature: '32.2 °C' };
  const ranges = { evaporatingRange: '-35 to -10 °C', condensingRange: '35 to 55 °C', frequency: '50 Hz' };
  return {
    appliance: 'chestFreezer',
    madeFor: 'R600a',
    year: '2004 to 2010',
    domeHeight: '17 cm',
    domeDiameter: '15 cm ± 5 mm',
    displacement: '11.2 cm3 ± 3 %',
    nameplate: {
      voltage: '230 V',
      frequency: '50 Hz',
      ratedCurrent: '1.0 A',
      lockedRotorCurrent: '6.5 A',
      power: '140 W',
      horsepower: '1/6 hp',
      oil: 'mineral',
      startType: 'relay',
    },
    ratings: [
      { at: { kind: 'named', point: 'ashraeLow' }, capacity: '186 W ± 5 %', power: '124 W ± 5 %', current: '0.78 A' },
      {
        at: {
          kind: 'conditions',
          evaporating: '-10 °C',
          condensing: '45 °C',
          returnGas: '32.2 °C',
          liquid: '32.2 °C',
        },
        capacity: '377 W ± 5 %',
        power: '159 W ± 5 %',
        frequency: '50 Hz',
        voltage: '220 to 240 V',
      },
    ],
    coefficients: [
      {
        of: 'massFlow',
        values:
          '7.07429 0.269001 -0.017435 0.00381564 -0.000552908 -3.10015e-05 2.05517e-05 -6.34646e-06 3.58091e-07 -4.34286e-07',
        temperatureUnit: 'celsius',
        unit: 'kg/h',
        basis: { suction: returnGas },
        ...ranges,
      },
      {
        of: 'power',
        values:
          'C1 41.9301\nC2 -2.88072\nC3 3.47519\nC4 -0.0796586\nC5 0.117314\nC6 -0.00258673\nC7 -0.000519164\nC8 0.00104333\nC9 -2.40841e-05\nC10 -8.37253e-05',
        temperatureUnit: 'celsius',
        unit: 'W',
        basis: { suction: returnGas, liquid: { kind: 'subcooling', subcooling: '0 K' }, saturation: 'dew' },
        ...ranges,
        voltage: '230 V',
      },
    ],
    tables: [
      {
        table:
          'Te [°C]\tTc [°C]\tQ [W]\tP [W]\tI [A]\n-30\t45\t136\t99.5\t0.70\n-25\t45\t182\t114\t0.75\n-20\t45\t236\t130\t0.79',
        basis: { suction: returnGas, liquid },
        frequency: '50 Hz',
        flowTolerance: '4 %',
      },
    ],
    bench: [
      {
        evaporating: '-24 °C ± 1.5 K',
        condensing: '41 °C ± 1.5 K',
        suction: '12 °C ± 2 K',
        discharge: '83 °C ± 6 K',
        liquid: '33 °C ± 2 K',
        surroundings: '24 °C',
        meter: { kind: 'watts', power: '115 W ± 3 %' },
      },
      {
        evaporating: '-10 °C ± 1.5 K',
        condensing: '41 °C ± 1.5 K',
        suction: '12 °C ± 2 K',
        liquid: '33 °C ± 2 K',
        surroundings: '21 °C',
        meter: { kind: 'ampsAndVolts', current: '0.86 A ± 3 %' },
        voltage: '231 V',
      },
    ],
    clearanceRatio: '2 % (1.5 to 3)',
    slip: '2.5 % (2 to 3)',
  };
}

/** Every part there is: an L of a tank with faces of layers, sump, pipes, fresh water, measures; a machine known in every way. */
export function fullDesign(): Loose {
  const design = sizedDesign();
  design.machine = {
    refrigerant: 'R600a',
    compressor: knownCompressor(),
    application: 'low',
    count: '2',
    supply: { frequency: '50 Hz', voltage: '225 to 235 V' },
    forFlammables: 'unknown',
  };
  design.exchangers = { suctionPressureLimit: '1.1 bar' };
  design.power = { crankcaseHeater: '12 W' };
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
