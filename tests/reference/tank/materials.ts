// Published properties of materials, each with its source. EN 12524:2000 (taken over as EN ISO 10456:2007 table 3) and the
// ASHRAE Handbook Fundamentals 2013 as printed in the table of building materials of the open heat transfer library `ht`.
// One misprint of that copy was found and corrected by the standard's neighbours: cork tile 65 for 0.065 W/(m K).

export interface PublishedProperty {
  readonly name: string;
  readonly quantity: 'conductivity' | 'density' | 'specificHeat';
  readonly value: number;
  readonly source: string;
  /** How far ours may stand from it, where it is one of several densities of the same board. */
  readonly within?: number;
}

const iso = 'EN 12524:2000';
const ashrae = 'ASHRAE Handbook Fundamentals 2013';

/** EN 12524:2000: our name, density kg/m³, conductivity W/(m K), specific heat J/(kg K). */
const isoRows: readonly (readonly [string, number, number, number])[] = [
  ['glass', 2500, 1.0, 750],
  ['acrylic', 1180, 0.18, 1500],
  ['polycarbonate', 1200, 0.2, 1200],
  ['plywoodLight', 300, 0.09, 1600],
  ['plywood', 500, 0.13, 1600],
  ['plywoodDense', 700, 0.17, 1600],
  ['plywoodFilmFaced', 1000, 0.24, 1600],
  ['orientedStrandBoard', 650, 0.13, 1700],
  ['chipboard', 600, 0.14, 1700],
  ['fibreboard', 800, 0.18, 1700],
  ['softwood', 500, 0.13, 1600],
  ['hardwood', 700, 0.18, 1600],
  ['concreteMedium', 1800, 1.15, 1000],
  ['concrete', 2200, 1.65, 1000],
  ['concreteHighDensity', 2400, 2.0, 1000],
  ['reinforcedConcrete', 2300, 2.3, 1000],
  ['plasterboard', 900, 0.25, 1000],
  ['ceramicTile', 2300, 1.3, 840],
  ['epoxyResin', 1200, 0.2, 1400],
  ['ethylenePropyleneRubber', 1150, 0.25, 1000],
  ['flexiblePvc', 1200, 0.14, 1000],
  ['rigidPvc', 1390, 0.17, 900],
  ['polyethylene', 980, 0.5, 1800],
  ['polyethyleneLowDensity', 920, 0.33, 2200],
  ['polypropylene', 910, 0.22, 1800],
  ['silicone', 1200, 0.35, 1000],
  ['solidRubber', 1200, 0.17, 1400],
  ['neoprene', 1240, 0.23, 2140],
  ['elastomericFoam', 70, 0.05, 1500],
  ['foamRubber', 70, 0.06, 1500],
  ['polyethyleneFoam', 70, 0.05, 2300],
  ['corkMat', 200, 0.05, 1500],
  ['softFibreboard', 250, 0.07, 1700],
  ['carpet', 200, 0.06, 1300],
  ['steel', 7800, 50, 450],
  ['stainlessSteel', 7900, 17, 460],
  ['aluminium', 2800, 160, 880],
  ['copper', 8900, 380, 380],
  ['slate', 2400, 2.2, 1000],
  ['naturalStone', 2600, 2.3, 1000],
  ['granite', 2600, 2.8, 1000],
];

/** Conductivity alone, W/(m K). */
const conductivityRows: readonly (readonly [string, number, string])[] = [
  ['concreteMedium', 1.35, `${iso}, 2000 kg/m³`],
  ['render', 0.8, `${iso}, sand renders of 1600 kg/m³`],
  ['render', 1.0, `${iso}, sand renders of 1800 kg/m³`],
  ['render', 0.72, `${ashrae}, cement plaster with sand`],
  ['render', 1.4, `${ashrae}, cement mortar and stucco, 1920 kg/m³`],
  ['corkMat', 0.065, `${iso}, cork tile, printed as 65 in the copy read`],
  ['backgroundFoam', 0.05, `${iso}, polyurethane foam as a sealant`],
  ['wetSand', 2.0, `${iso}, sand and gravel of the ground`],
  ['stillWater', 0.6, `${iso}, water at 10 °C`],
  ['stillWater', 0.63, `${iso}, water at 40 °C`],
  ['orientedStrandBoard', 0.0127 / 0.12, `${ashrae}, 12.7 mm of R 0.12`],
  ['plywood', 0.0127 / 0.14, `${ashrae}, Douglas fir, 12.7 mm of R 0.14`],
  ['softwood', 0.09, `${ashrae}, spruce`],
  ['softwood', 0.145, `${ashrae}, Douglas fir and larch`],
  ['hardwood', 0.17, `${ashrae}, oak`],
  ['hardwood', 0.175, `${ashrae}, birch`],
  ['chipboard', 0.102, `${ashrae}, particleboard of low density`],
  ['fibreboard', 0.105, `${ashrae}, hardboard of medium density`],
  ['plasterboard', 0.16, ashrae],
  ['brick', 0.57, `${ashrae}, 1440 kg/m³`],
  ['brick', 0.895, `${ashrae}, 1920 kg/m³`],
  ['concreteHighDensity', 2.15, `${ashrae}, sand and gravel aggregate`],
  ['aeratedBlock', 0.2, `${ashrae}, aerated concrete`],
  ['aeratedBlock', 0.12, 'BR 443:2019, 500 kg/m³'],
  ['lightweightBlock', 0.46, 'BR 443:2019'],
  ['denseBlock', 1.13, 'BR 443:2019'],
  ['expandedPolystyrene', 0.0355, ashrae],
  ['extrudedPolystyrene', 0.026, ashrae],
  ['polyisocyanurate', 0.0235, `${ashrae}, unfaced`],
  ['polyisocyanurate', 0.019, `${ashrae}, with facers`],
  ['polyisocyanurateFoil', 0.019, `${ashrae}, with facers`],
  ['polyurethaneFoam', 0.026, `${ashrae}, sprayed, 40 kg/m³`],
  ['phenolicFoam', 0.019, `${ashrae}, with facers`],
  ['mineralWool', 0.036, ashrae],
  ['cellularGlass', 0.048, ashrae],
  ['titanium', 16, 'data sheet of grade 2'],
  ['titanium', 16.4, 'data sheet of grade 1'],
  ['stainlessSteel', 14, 'data sheets of 316L'],
];

export const publishedMaterials: readonly PublishedProperty[] = [
  ...isoRows.flatMap(([name, density, conductivity, specificHeat]): PublishedProperty[] => [
    { name, quantity: 'conductivity', value: conductivity, source: iso },
    { name, quantity: 'density', value: density, source: iso },
    { name, quantity: 'specificHeat', value: specificHeat, source: iso },
  ]),
  ...conductivityRows.map(
    ([name, value, source]): PublishedProperty => ({ name, quantity: 'conductivity', value, source }),
  ),
  { name: 'expandedPolystyrene', quantity: 'density', value: 20, source: ashrae },
  { name: 'expandedPolystyrene', quantity: 'specificHeat', value: 1470, source: ashrae },
  { name: 'extrudedPolystyrene', quantity: 'density', value: 32.5, source: ashrae, within: 1 },
  { name: 'cellularGlass', quantity: 'density', value: 130, source: ashrae },
  { name: 'brick', quantity: 'density', value: 1760, source: ashrae },
  { name: 'brick', quantity: 'specificHeat', value: 800, source: ashrae },
];
