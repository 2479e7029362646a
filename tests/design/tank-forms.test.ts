// Tanks of every form in a design: what each resolves to, and what cannot be is refused by its path with what is accepted.

import { describe, expect, test } from 'vitest';
import { type DesignProblem, plainDesign, resolveDesign, sayProblem, uncertainInputs } from '../../src/design/index.ts';
import {
  cylinderDesign,
  documentOf,
  fullDesign,
  type Loose,
  measuredDesign,
  panelsDesign,
  problemsOf,
  sizedDesign,
} from './examples.ts';

const resolved = (value: Loose) => resolveDesign(documentOf(value));
const assumedIn = (value: Loose) => resolved(value).assumptions.map(({ path }) => path);

describe('resolving', () => {
  test('an L keeps its faces, layers and vessels in their order, with numbers in SI', () => {
    const { load } = plainDesign(resolved(fullDesign()).design).tank;
    if (load.kind !== 'lShape') throw new Error('expected an L');
    expect(load.recessLength).toBeCloseTo(0.6, 12);
    expect(load.faces.map(({ face }) => face)).toEqual(['back', 'recessSide', 'bottom']);
    const [back, recess, bottom] = load.faces;
    expect(back!.inside.map(({ kind }) => kind)).toEqual(['material', 'waterGap']);
    expect(back!.outside[0]).toMatchObject({ kind: 'sealedGap', thickness: 0.02, outerEmissivity: 0.05 });
    expect(back!.outside[1]).toMatchObject({ joint: { material: 'softwood', share: 0.1 } });
    expect(back!.outside[2]).toMatchObject({ kind: 'own', conductivity: 0.16, emissivity: 0.9 });
    expect(back!.exposure).toEqual({ kind: 'againstWall', resistance: 0.5 });
    expect(recess!.wall).toEqual({ material: 'acrylic', thickness: 0.015 });
    // R-1 is 0.17611 m² K/W: 1 ft² h °F/BTU.
    expect(bottom!.outside[0]!.kind === 'resistance' && bottom!.outside[0]!.resistance).toBeCloseTo(2.5 * 0.17611, 4);
    expect(bottom!.exposure).toBeUndefined();
    expect(load.insulation).toEqual({ sides: { material: 'extrudedPolystyrene', thickness: 0.02, gap: 0.01 } });
    expect(load.sump).toMatchObject({ kind: 'rectangular', waterDepth: 0.275, lid: 'loose', surface: 'rough' });
    expect(load.refuge).toBeUndefined();
    expect(load.waterChange).toEqual({ volume: 0.06, every: 604800 });
    expect(load.airStones).toBeCloseTo(0.15 / 3600, 12);
    expect(load.meter).toMatchObject({ kind: 'heater', adopt: 'no' });
  });

  test('what a lid leaves open follows from its area', () => {
    const { load } = resolved(cylinderDesign()).design.tank;
    if (load.kind !== 'cylinder') throw new Error('expected a cylinder');
    const opening = (Math.PI / 4) * 0.9 ** 2;
    expect(load.lidOpenShare.likely).toBeCloseTo(1 - 0.575 / opening, 12);
    expect(load.lidOpenShare.low).toBeCloseTo(1 - 0.6 / opening, 12);
  });

  test('years, outdoors, main and measures have likely values and ranges', () => {
    const { design } = resolved(fullDesign());
    expect(design.place.outdoors.coldest).toMatchObject({ low: 263.15, likely: 268.15, high: 271.15 });
    expect(design.place.mains.winter.likely).toBeCloseTo(282.15, 9);
    expect(design.room.moisture).toMatchObject({ kind: 'ventilated', airChanges: { likely: 0.5 / 3600 } });
    expect(design.wrapping.measures?.[1]).toMatchObject({
      kind: 'nightCover',
      name: 'Blanket',
      hours: { likely: 36000 },
      material: 'expandedPolystyrene',
      cost: { likely: 20 },
    });
    expect(design.wrapping.measures?.[2]).toMatchObject({ kind: 'cooler', cost: { likely: 0 } });
  });

  test('assumes nothing about what nothing depends on', () => {
    const paths = assumedIn(sizedDesign());
    for (const path of [
      'place.outdoors.winter',
      'place.mains.winter',
      'tank.load.hood.airFlow',
      'tank.load.lidPaneGap',
    ]) {
      expect(paths).not.toContain(path);
    }
    const sealed = sizedDesign();
    sealed.tank.load.faces = [{ face: 'left', exposure: { kind: 'outdoors' } }];
    expect(assumedIn(sealed)).toEqual(expect.arrayContaining(['place.outdoors.coldest', 'place.outdoors.windSpeed']));
    const changed = sizedDesign();
    changed.tank.load.waterChange = { volume: '20 L', every: '7 days' };
    expect(assumedIn(changed)).toContain('place.mains.summer');
    const layered = fullDesign();
    for (const path of ['tank.load.lidMaterial', 'tank.load.lidThickness', 'tank.load.lidPanes']) {
      expect(assumedIn(layered)).not.toContain(path);
    }
    const hooded = panelsDesign();
    expect(assumedIn(hooded)).toEqual(expect.arrayContaining(['tank.load.hood.height', 'tank.load.hood.material']));
    expect(uncertainInputs(resolved(measuredDesign())).some(({ path }) => path.startsWith('place.outdoors'))).toBe(
      false,
    );
  });
});

type Fault = readonly [
  what: string,
  design: () => Loose,
  spoil: (design: Loose) => void,
  expected: Partial<DesignProblem>,
];

function set(path: string, value: unknown): (design: Loose) => void {
  return (design) => {
    const keys = path.split('.');
    const last = keys.pop()!;
    keys.reduce((part, key) => (part[key] ??= {}), design)[last] = value;
  };
}

const load = 'tank.load';
const gap = { kind: 'sealedGap', thickness: '20 mm' };
const board = { kind: 'material', material: 'extrudedPolystyrene', thickness: '20 mm' };

const faults: readonly Fault[] = [
  [
    'water that may stand above the rim, ends crosswise',
    sizedDesign,
    (d) => Object.assign(d.tank.load, { height: '48 to 52 cm', waterDepth: '47 to 49 cm' }),
    { path: `${load}.waterDepth`, code: 'waterAboveRim' },
  ],
  [
    'water above the rim of the sump',
    fullDesign,
    set(`${load}.sump.waterDepth`, '41 cm'),
    { path: `${load}.sump.waterDepth`, code: 'waterAboveRim' },
  ],
  [
    'a recess as long as the tank',
    fullDesign,
    set(`${load}.recessLength`, '1.8 m'),
    { path: `${load}.recessLength`, code: 'recessTooLarge' },
  ],
  [
    'a recess that may be as wide as the tank',
    fullDesign,
    set(`${load}.recessWidth`, '50 to 70 cm'),
    { path: `${load}.recessWidth`, code: 'recessTooLarge' },
  ],
  [
    'a face the shape does not have',
    sizedDesign,
    set(`${load}.faces`, [{ face: 'side' }]),
    { path: `${load}.faces.0.face`, code: 'noSuchFace' },
  ],
  [
    'a front on a cylinder',
    cylinderDesign,
    set(`${load}.faces`, [{ face: 'front' }]),
    { path: `${load}.faces.0.face`, code: 'noSuchFace' },
  ],
  [
    'a back on a cylinder, in short',
    cylinderDesign,
    set(`${load}.insulation.back`, { material: 'corkMat', thickness: '5 mm' }),
    { path: `${load}.insulation.back`, code: 'unknownKey' },
  ],
  [
    'a face named twice',
    sizedDesign,
    set(`${load}.faces`, [{ face: 'back' }, { face: 'left' }, { face: 'back' }]),
    { path: `${load}.faces.2.face`, code: 'namedTwice' },
  ],
  [
    'two panels of one name',
    panelsDesign,
    set(`${load}.panels.2.name`, 'back'),
    { path: `${load}.panels.2.name`, code: 'namedTwice' },
  ],
  [
    'a panel that is called what something else is',
    panelsDesign,
    set(`${load}.panels.0.name`, 'evaporation'),
    { path: `${load}.panels.0.name`, code: 'nameTaken' },
  ],
  [
    'two pipes of one name',
    fullDesign,
    set(`${load}.pipes.1.name`, 'return'),
    { path: `${load}.pipes.1.name`, code: 'namedTwice' },
  ],
  [
    'a pipe without a bore',
    fullDesign,
    set(`${load}.pipes.0.wallThickness`, '16 mm'),
    { path: `${load}.pipes.0.wallThickness`, code: 'wallTooThick' },
  ],
  [
    'a gap that nothing closes',
    sizedDesign,
    set(`${load}.faces`, [{ face: 'back', outside: [board, gap] }]),
    { path: `${load}.faces.0.outside.1.kind`, code: 'gapOpen' },
  ],
  [
    'air in the water',
    sizedDesign,
    set(`${load}.faces`, [{ face: 'back', inside: [gap] }]),
    { path: `${load}.faces.0.inside.0.kind`, code: 'gapOpen' },
  ],
  [
    'room air in the water',
    sizedDesign,
    set(`${load}.faces`, [{ face: 'back', inside: [board, { ...gap, kind: 'openGap' }] }]),
    { path: `${load}.faces.0.inside.1.kind`, code: 'gapOpen' },
  ],
  [
    'a lid that begins with a gap',
    sizedDesign,
    set(`${load}.lidLayers`, [gap, board]),
    { path: `${load}.lidLayers.0.kind`, code: 'gapOpen' },
  ],
  [
    'a lid larger than the opening',
    cylinderDesign,
    set(`${load}.lidArea`, '0.65 m2'),
    { path: `${load}.lidArea`, code: 'largerThanOpening' },
  ],
  [
    'gaps of a lid told in two ways',
    cylinderDesign,
    set(`${load}.lidOpenShare`, '10 %'),
    { path: `${load}.lidArea`, code: 'givenTwice' },
  ],
  [
    'more than the whole surface open',
    cylinderDesign,
    set(`${load}.lidOpenShare`, '101 %'),
    { path: `${load}.lidOpenShare`, code: 'outOfRange' },
  ],
  [
    'a twin-wall lid of unknown thickness over the sump',
    fullDesign,
    (d) => Object.assign(d.tank.load.sump, { lidMaterial: 'polycarbonateTwinWall', lidThickness: '80 mm' }),
    { path: `${load}.sump.lidThickness`, code: 'sheetThicknessUnknown' },
  ],
  [
    'a twin-wall layer of unknown thickness',
    sizedDesign,
    set(`${load}.faces`, [
      { face: 'back', outside: [{ ...board, material: 'polycarbonateTwinWall', thickness: '8 to 90 mm' }] },
    ]),
    { path: `${load}.faces.0.outside.0.thickness`, code: 'sheetThicknessUnknown' },
  ],
  [
    'more water changed at once than there is',
    fullDesign,
    set(`${load}.waterChange.volume`, '2 m3'),
    { path: `${load}.waterChange.volume`, code: 'tooMuchWater' },
  ],
  [
    'more water changed in a day than there is',
    fullDesign,
    set(`${load}.waterChange.every`, '90 min'),
    { path: `${load}.waterChange.volume`, code: 'tooMuchWater' },
  ],
  [
    'a meter in a room as warm as the water',
    fullDesign,
    set(`${load}.meter.roomTemperature`, '25 to 26.5 °C'),
    { path: `${load}.meter.roomTemperature`, code: 'measuredRoomTooWarm' },
  ],
  [
    'a spell outdoors warmer than the winter',
    fullDesign,
    set('place.outdoors.coldest', '3 °C'),
    { path: 'place.outdoors.coldest', code: 'coldestAboveUsual' },
  ],
  [
    'a summer outdoors colder than the winter',
    fullDesign,
    set('place.outdoors.summer', '1 °C'),
    { path: 'place.outdoors.summer', code: 'warmestBelowUsual' },
  ],
  [
    'a main colder in summer',
    fullDesign,
    set('place.mains.summer', '8 °C'),
    { path: 'place.mains.summer', code: 'warmestBelowUsual' },
  ],
  [
    'a measure on a face that a cylinder does not have',
    cylinderDesign,
    set('wrapping', {
      measures: [{ kind: 'board', where: 'back', material: 'corkMat', thickness: '5 mm', cost: '9' }],
    }),
    { path: 'wrapping.measures.0.where', code: 'noSuchFace' },
  ],
  [
    'humidity above 100 %',
    sizedDesign,
    set('room.relativeHumidity', '101 %'),
    { path: 'room.relativeHumidity', code: 'outOfRange' },
  ],
  ['a room of 46 °C', sizedDesign, set('room.temperature', '46 °C'), { path: 'room.temperature', code: 'outOfRange' }],
];

describe('what cannot be', () => {
  test.each(faults)('%s', (_, make, spoil, expected) => {
    const design = make();
    spoil(design);
    const problems = problemsOf(design);
    expect(problems).toContainEqual(expect.objectContaining(expected));
    for (const problem of problems) {
      expect(problem.expected).not.toBe('');
      expect(sayProblem(problem)).not.toMatch(/undefined|NaN|\[object|\*/);
    }
  });

  test('a cooler tank is refused below what is computed, with how far it may go', () => {
    const design = sizedDesign();
    design.tank.waterTemperature = '12 °C';
    design.room.temperature = '5 °C';
    design.wrapping = { measures: [{ kind: 'cooler', by: '11 K' }] };
    expect(problemsOf(design)).toMatchObject([
      { path: 'wrapping.measures.0.by', code: 'waterTooCold', expected: expect.stringMatching(/10/) },
    ]);
  });
});

describe('what may be, though it is unusual', () => {
  test.each([
    ['a room warmer than the water', set('room.temperature', '31 °C')],
    ['a room at freezing', set('room.temperature', '0 °C')],
    ['a room of 45 °C', set('room.temperature', '45 °C')],
    ['bone-dry air', set('room.relativeHumidity', '0 %')],
    ['saturated air', set('room.relativeHumidity', '100 %')],
    ['a mountain', set('place.altitude', '4800 m')],
    ['water to the rim', set(`${load}.waterDepth`, '50 cm')],
    [
      'the whole surface open under a lid',
      (d: Loose) => Object.assign(d.tank.load, { lid: 'loose', lidOpenShare: '100 %' }),
    ],
    [
      'emissivities at their limits',
      set(`${load}.faces`, [
        { face: 'back', outside: [{ ...gap, innerEmissivity: '1', outerEmissivity: '0.01' }, board] },
      ]),
    ],
    ['empty lists', set(`${load}.faces`, [])],
    [
      'standing water behind a background',
      set(`${load}.faces`, [
        {
          face: 'back',
          inside: [
            { ...board, material: 'slate' },
            { kind: 'waterGap', thickness: '2 cm' },
          ],
        },
      ]),
    ],
  ] as readonly (readonly [string, (design: Loose) => void])[])('%s', (_, change) => {
    const design = sizedDesign();
    change(design);
    expect(() => resolved(design)).not.toThrow();
  });
});
