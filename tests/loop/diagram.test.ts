// Lines of the property diagrams: what each line promises holds along it, lines meet where they must, nothing is broken
// near the critical point, and the cycle's path follows its states.

import { describe, expect, it } from 'vitest';
import {
  cyclePath,
  type DiagramLine,
  type DiagramRegion,
  diagramRegion,
  operatingPoint,
  propertyDiagram,
  textbookCycle,
} from '../../src/loop/index.ts';
import {
  referenceOffset,
  refrigerant,
  refrigerantNames,
  saturationAtDewTemperature,
  saturationAtPressure,
  stateAt,
} from '../../src/matter/refrigerants/index.ts';
import { levelsOf } from './levels-of.ts';
import { runningMachine } from './running-machine.ts';

function cycleOf(name: string) {
  return textbookCycle({
    refrigerant: name,
    evaporating: levelsOf(name).at(268.15),
    condensing: levelsOf(name).at(313.15),
    superheat: 8,
    subcooling: 4,
    isentropicEfficiency: 0.6,
  });
}

function linesOf(lines: readonly DiagramLine[], kind: DiagramLine['kind']): readonly DiagramLine[] {
  return lines.filter((line) => line.kind === kind);
}

describe.each(refrigerantNames)('%s', (name) => {
  const fluid = refrigerant(name);
  const cycle = cycleOf(name);
  const region = diagramRegion(fluid, cycle.points);
  const ph = propertyDiagram(fluid, 'pressureEnthalpy', region);
  const ts = propertyDiagram(fluid, 'temperatureEntropy', region);

  it('has the line families of each diagram, all numbers finite', () => {
    const kinds = (lines: readonly DiagramLine[]) => [...new Set(lines.map((line) => line.kind))].sort();
    expect(kinds(ph.lines)).toEqual(['bubble', 'dew', 'isentrope', 'isotherm', 'quality']);
    expect(kinds(ts.lines)).toEqual(['bubble', 'dew', 'isobar', 'quality']);
    for (const line of [...ph.lines, ...ts.lines]) {
      expect(line.x.length).toBe(line.y.length);
      expect(line.x.length).toBeGreaterThan(1);
      expect([...line.x, ...line.y].every(Number.isFinite)).toBe(true);
    }
    expect(linesOf(ph.lines, 'isotherm').length).toBeGreaterThan(5);
    expect(linesOf(ph.lines, 'isentrope').length).toBeGreaterThan(5);
    expect(linesOf(ts.lines, 'isobar').length).toBeGreaterThan(3);
  });

  it('an isotherm keeps its temperature at every vertex outside the dome', () => {
    for (const line of linesOf(ph.lines, 'isotherm')) {
      let outside = 0;
      for (const [index, enthalpy] of line.x.entries()) {
        const state = stateAt(fluid, { pressure: line.y[index]!, enthalpy });
        if (state.quality === null) outside += 1;
        expect(Math.abs(state.temperature - line.value)).toBeLessThan(1e-5);
      }
      // A cold one has its liquid alone where its vapour is thinner than the region.
      expect(outside).toBeGreaterThan(4);
    }
  });

  it('an isentrope keeps its entropy, an isobar its pressure', () => {
    for (const line of linesOf(ph.lines, 'isentrope')) {
      for (const [index, enthalpy] of line.x.entries()) {
        const state = stateAt(fluid, { pressure: line.y[index]!, enthalpy });
        expect(Math.abs(state.entropy - line.value)).toBeLessThan(1e-5);
      }
    }
    for (const line of linesOf(ts.lines, 'isobar')) {
      for (const [index, entropy] of line.x.entries()) {
        const state = stateAt(fluid, { pressure: line.value, entropy });
        expect(Math.abs(state.temperature - line.y[index]!)).toBeLessThan(1e-5);
      }
    }
  });

  it('quality lines divide the dome by the lever rule', () => {
    for (const line of linesOf(ph.lines, 'quality')) {
      for (const index of [0, 10, 30]) {
        const state = stateAt(fluid, { pressure: line.y[index]!, enthalpy: line.x[index]! });
        expect(state.quality).toBeCloseTo(line.value, 6);
      }
    }
  });

  it('the dome closes at the critical point without a kink: widths shrink steadily', () => {
    const [bubble, dew] = [linesOf(ph.lines, 'bubble')[0]!, linesOf(ph.lines, 'dew')[0]!];
    const widths = dew.x.map((x, index) => x - bubble.x[index]!);
    for (let index = 1; index < widths.length; index++) expect(widths[index]).toBeLessThan(widths[index - 1]!);
    expect(widths.at(-1)).toBe(0);
    expect(dew.y.at(-1)).toBe(fluid.critical.pressure);
    // The state at the critical point of the equation itself, a law the drawn point must obey to the width of a line.
    const { temperature, density } = fluid.critical;
    const critical = stateAt(fluid, { temperature: temperature + 1e-3, density });
    expect(Math.abs(ph.criticalPoint.x - critical.enthalpy)).toBeLessThan(0.01 * widths[0]!);
    expect(ts.criticalPoint.y).toBe(temperature);
  });

  it('starts the dome 25 K below the cold end of the region, or where the equation ends', () => {
    // Of a blend where both lines have begun: at the bubble pressure of its lowest temperature.
    const lowest = saturationAtPressure(fluid, fluid.triplePoint.pressure).vapour.temperature;
    const start = Math.max(region.temperatureLow - 25, lowest, fluid.limits.temperatureMin);
    const { liquid, vapour } = saturationAtDewTemperature(fluid, start);
    expect(linesOf(ts.lines, 'bubble')[0]!.x[0]).toBeCloseTo(liquid.entropy, 6);
    expect(linesOf(ts.lines, 'dew')[0]!.x[0]).toBeCloseTo(vapour.entropy, 6);
  });

  it('moves with the reference state as a whole', () => {
    const { coldZero } = levelsOf(name);
    const moved = propertyDiagram(fluid, 'pressureEnthalpy', region, coldZero);
    const { enthalpy } = referenceOffset(fluid, coldZero);
    expect(moved.lines[0]!.x[3]! - ph.lines[0]!.x[3]!).toBeCloseTo(enthalpy, 6);
    expect(moved.lines[0]!.y).toEqual(ph.lines[0]!.y);
  });

  it('the path of the cycle runs through its states, along its isobars, and closes', () => {
    const path = cyclePath(fluid, cycle.points);
    const [inlet, , outlet, liquid, expanded] = cycle.points;
    expect(path[0]).toMatchObject({ process: 'compression', enthalpy: inlet.enthalpy, pressure: inlet.pressure });
    expect(path.at(-1)).toMatchObject({ process: 'evaporation', enthalpy: inlet.enthalpy, pressure: inlet.pressure });
    for (const state of [outlet, liquid, expanded]) {
      expect(path.some((point) => point.enthalpy === state.enthalpy && point.pressure === state.pressure)).toBe(true);
    }
    for (const point of path) {
      if (point.process === 'condensation') expect(point.pressure).toBe(outlet.pressure);
      if (point.process === 'evaporation') expect(point.pressure).toBe(inlet.pressure);
      if (point.process === 'expansion') expect(point.enthalpy).toBeCloseTo(liquid.enthalpy, 5);
      const state = stateAt(fluid, { pressure: point.pressure, enthalpy: point.enthalpy });
      expect(state.temperature).toBeCloseTo(point.temperature, 6);
      expect(state.entropy).toBeCloseTo(point.entropy, 6);
    }
    const entropies = path.filter((point) => point.process === 'compression').map((point) => point.entropy);
    expect(entropies).toEqual([...entropies].sort((a, b) => a - b));
    const corners = path.filter((point) => point.process === 'condensation').map((point) => point.enthalpy);
    const { liquid: bubble, vapour: dew } = saturationAtDewTemperature(fluid, levelsOf(name).at(313.15));
    for (const corner of [bubble, dew]) {
      expect(corners.some((enthalpy) => Math.abs(enthalpy - corner.enthalpy) < 1e-3)).toBe(true);
    }
  });

  it('the path follows lost pressure and the heat exchanger, with corners on the dome', () => {
    const { at } = levelsOf(name);
    const { pressure: evaporating } = saturationAtDewTemperature(fluid, at(268.15)).vapour;
    const { pressure: condensing } = saturationAtDewTemperature(fluid, at(313.15)).vapour;
    const lossy = textbookCycle({
      refrigerant: name,
      evaporating: at(268.15),
      condensing: at(313.15),
      superheat: 8,
      subcooling: 4,
      isentropicEfficiency: 0.6,
      suctionPressure: 0.9 * evaporating,
      liquidPressure: 0.93 * condensing,
    });
    const path = cyclePath(fluid, lossy.points);
    expect([...new Set(path.map(({ process }) => process))]).toEqual([
      'compression',
      'condensation',
      'expansion',
      'evaporation',
    ]);
    for (const process of ['condensation', 'evaporation']) {
      const along = path.filter((point) => point.process === process);
      const pressures = along.map(({ pressure }) => pressure);
      expect(pressures).toEqual([...pressures].sort((a, b) => b - a));
      expect(pressures.at(-1)! / pressures[0]!).toBeCloseTo(process === 'condensation' ? 0.93 : 0.9, 6);
      const corners = along.filter((point) => {
        const { liquid, vapour } = saturationAtPressure(fluid, point.pressure);
        return [liquid, vapour].some(({ enthalpy }) => Math.abs(enthalpy - point.enthalpy) < 1);
      });
      expect(corners).toHaveLength(process === 'condensation' ? 2 : 1);
    }
    const exchanger = textbookCycle({
      refrigerant: name,
      evaporating: at(268.15),
      condensing: at(313.15),
      superheat: 4,
      subcooling: 1,
      isentropicEfficiency: 0.6,
      heatExchangerEffectiveness: 0.6,
    });
    const both = cyclePath(fluid, exchanger.points);
    expect([...new Set(both.map(({ process }) => process))]).toEqual([
      'compression',
      'condensation',
      'liquidCooling',
      'expansion',
      'evaporation',
      'gasHeating',
    ]);
    const named = (point: string) => exchanger.points.find((each) => each.name === point)!;
    const ends = (process: string) => {
      const along = both.filter((point) => point.process === process);
      return [along[0]!.enthalpy, along.at(-1)!.enthalpy];
    };
    expect(ends('liquidCooling')).toEqual([named('condenserOutlet').enthalpy, named('expansionInlet').enthalpy]);
    expect(ends('gasHeating')).toEqual([named('evaporatorOutlet').enthalpy, named('compressorInlet').enthalpy]);
    for (const [index, point] of both.slice(1).entries()) {
      // One process begins where the last ended.
      if (point.process !== both[index]!.process) expect(point.enthalpy).toBeCloseTo(both[index]!.enthalpy, 5);
    }
  });

  it('is robust where the region touches the critical point', () => {
    const { temperature, pressure } = fluid.critical;
    const near: DiagramRegion = {
      temperatureLow: temperature - 5,
      temperatureHigh: temperature + 30,
      pressureLow: 0.5 * pressure,
      pressureHigh: 2 * pressure,
      isotherms: [temperature - 1, temperature - 1e-3, temperature, temperature + 1e-3, temperature + 1],
      isobars: [0.99 * pressure, 0.9999 * pressure, pressure, 1.0001 * pressure, 1.01 * pressure],
    };
    const first = propertyDiagram(fluid, 'pressureEnthalpy', near);
    const second = propertyDiagram(fluid, 'temperatureEntropy', near);
    expect(linesOf(first.lines, 'isotherm')).toHaveLength(5);
    expect(linesOf(second.lines, 'isobar')).toHaveLength(5);
    for (const line of linesOf(first.lines, 'isotherm')) {
      expect(line.x).toEqual([...line.x].sort((a, b) => a - b));
      expect(line.x.length).toBeGreaterThan(20);
    }
    for (const line of linesOf(second.lines, 'isobar')) expect(line.x).toEqual([...line.x].sort((a, b) => a - b));
  });
});

describe('diagrams', () => {
  it('draw the path of an operating point and of another reference state', () => {
    const fluid = refrigerant('R290');
    const point = operatingPoint({
      fluid,
      machine: runningMachine(),
      sourceTemperature: 290,
      waterTemperature: 299,
      evaporatorApproach: 10,
      condenserApproach: 10,
      superheat: 6,
      subcooling: 3,
    });
    expect(cyclePath(fluid, point.points).length).toBeGreaterThan(40);
    const request = { refrigerant: 'R290', evaporating: 268, condensing: 313, superheat: 8, subcooling: 4 };
    const paths = (['iir', 'ashrae'] as const).map((referenceState) => {
      const cycle = textbookCycle({ ...request, isentropicEfficiency: 0.6, referenceState });
      return cyclePath(fluid, cycle.points, referenceState);
    });
    const offset = referenceOffset(fluid, 'ashrae');
    for (const [index, point] of paths[0]!.entries()) {
      expect(paths[1]![index]!.enthalpy - point.enthalpy).toBeCloseTo(offset.enthalpy, 5);
      expect(paths[1]![index]!.temperature).toBeCloseTo(point.temperature, 8);
    }
  });

  it.each([
    ['temperatureLow', { temperatureLow: 400 }],
    ['temperatureHigh', { temperatureHigh: 200 }],
    ['pressureHigh', { pressureHigh: 1e4 }],
    ['pressureLow', { pressureLow: Number.NaN }],
    ['pressureLow', { pressureLow: 0 }],
  ])('refuse a region by its bound: %s', (path, change) => {
    const region = { temperatureLow: 250, temperatureHigh: 400, pressureLow: 1e5, pressureHigh: 5e6, ...change };
    expect(() => propertyDiagram(refrigerant('R134a'), 'pressureEnthalpy', region)).toThrowError(
      expect.objectContaining({ name: 'InputError', path }),
    );
  });

  it('refuse a path without its states', () => {
    const { points } = cycleOf('R22');
    expect(() => cyclePath(refrigerant('R22'), points.slice(1))).toThrowError(/compressorInlet/);
    expect(() => diagramRegion(refrigerant('R22'), [])).toThrowError(/states/);
  });
});
