// Laws the textbook cycle obeys whatever the fluid: both accounts close, numbers that mean something do not depend on the
// zero of enthalpy, partner keys lead to the same cycle, and it is worse than Carnot's. Random cycles are seeded.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TextbookCycle, type TextbookCycleRequest, textbookCycle } from '../../src/loop/index.ts';
import {
  type ReferenceStateName,
  referenceOffset,
  referenceStates,
  refrigerant,
  refrigerantNames,
  saturationAtPressure,
} from '../../src/matter/refrigerants/index.ts';
import { OutOfModelError } from '../../src/numerics/index.ts';
import { levelsOf } from './levels-of.ts';

interface Conditions {
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly isentropicEfficiency: number;
}

/** Cycles as a small heat pump could see them. */
const anyCycle: fc.Arbitrary<Conditions> = fc
  .record({
    refrigerant: fc.constantFrom(...refrigerantNames),
    evaporating: fc.double({ min: 240, max: 290, noNaN: true }),
    lift: fc.double({ min: 3, max: 50, noNaN: true }),
    superheat: fc.double({ min: 0.01, max: 40, noNaN: true }),
    subcooling: fc.double({ min: 0.01, max: 20, noNaN: true }),
    isentropicEfficiency: fc.double({ min: 0.3, max: 1, noNaN: true }),
  })
  .map(({ lift, ...rest }) => {
    const { at } = levelsOf(rest.refrigerant);
    return { ...rest, evaporating: at(rest.evaporating), condensing: at(rest.evaporating + lift) };
  })
  .filter(isDescribed);

/** Where the gas leaves the compressor hotter than the fluid's equation goes, there is no cycle to test. */
function isDescribed(conditions: TextbookCycleRequest): boolean {
  try {
    textbookCycle(conditions);
    return true;
  } catch (error) {
    if (error instanceof OutOfModelError && /^compressorOutlet/.test(error.quantity)) return false;
    throw error;
  }
}

/** Zeros of enthalpy and entropy that exist for a fluid: carbon dioxide does not boil at one atmosphere, cold water is ice. */
function zerosOf(name: string): readonly ReferenceStateName[] {
  return referenceStates.flatMap((state) => {
    try {
      referenceOffset(refrigerant(name), state.name);
      return [state.name];
    } catch (error) {
      if (error instanceof OutOfModelError) return [];
      throw error;
    }
  });
}

function relative(a: number, b: number): number {
  return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

describe('laws of the textbook cycle', () => {
  it('random cycles are of every fluid (seed 1100)', () => {
    const seen = fc.sample(anyCycle, { seed: 1100, numRuns: 500 });
    expect(new Set(seen.map((conditions) => conditions.refrigerant)).size).toBe(refrigerantNames.length);
  });

  it('first law: heat delivered = heat taken + work; heating COP = cooling COP + 1 (seed 1101)', () => {
    fc.assert(
      fc.property(anyCycle, (conditions) => {
        const cycle = textbookCycle(conditions);
        expect(relative(cycle.heatTaken + cycle.specificWork, cycle.heatDelivered)).toBeLessThan(1e-12);
        expect(relative(cycle.coolingCop + 1, cycle.heatingCop)).toBeLessThan(1e-12);
        expect(relative(cycle.points[4].enthalpy, cycle.points[3].enthalpy)).toBeLessThan(1e-12);
      }),
      { seed: 1101, numRuns: 300 },
    );
  });

  it('second law: parts add up to work minus minimum work to 1e-9, none is negative (seed 1102)', () => {
    const bodies = fc.record({
      above: fc.double({ min: 0, max: 0.9, noNaN: true }),
      below: fc.double({ min: 0, max: 5, noNaN: true }),
    });
    const deadStates = fc.double({ min: 250, max: 320, noNaN: true });
    fc.assert(
      fc.property(anyCycle, bodies, deadStates, (conditions, { above, below }, deadState) => {
        const sinkTemperature = textbookCycle(conditions).points[3].temperature - below;
        const sourceTemperature = conditions.evaporating + above * conditions.superheat + 40;
        const cycle = textbookCycle({ ...conditions, deadState, sinkTemperature, sourceTemperature });
        const { compressor, condenser, expansion, evaporator, total } = cycle.exergyDestruction;
        const least = cycle.exergyBasis.minimumWork;
        const closure = cycle.specificWork - least - (compressor + condenser + expansion + evaporator);
        expect(Math.abs(closure)).toBeLessThan(1e-9 * cycle.specificWork);
        expect(total).toBeCloseTo(compressor + condenser + expansion + evaporator, 6);
        // Rounding of entropies: about 1e-9 J/(kg K) times the dead state. A blend's entropy is taken as linear in the quality,
        // which at small qualities is too little by up to some tenths of a J/(kg K): R407C, 7 K of glide.
        const lowest = cycle.condensing.glide === undefined ? -1e-5 : -1e-3 * cycle.heatTaken;
        for (const part of [compressor, condenser, evaporator]) expect(part).toBeGreaterThan(-1e-5);
        expect(expansion).toBeGreaterThan(lowest);
      }),
      { seed: 1102, numRuns: 300 },
    );
  });

  it('saturated cycles are worse than the reversible one between the same temperatures (seed 1106)', () => {
    // Not a law with subcooling: that heat leaves below the condensing temperature.
    fc.assert(
      fc.property(anyCycle, (conditions) => {
        const cycle = textbookCycle({ ...conditions, superheat: 0, subcooling: 0 });
        // A blend gives heat down to its bubble temperature and takes it up to its dew temperature.
        const { temperature, bubbleTemperature = temperature } = cycle.condensing;
        const lift = bubbleTemperature - cycle.evaporating.temperature;
        fc.pre(lift > 0);
        expect(cycle.heatingCop).toBeLessThan(bubbleTemperature / lift);
      }),
      { seed: 1106, numRuns: 200 },
    );
  });

  it('without bodies the parts add up to the work itself (seed 1103)', () => {
    fc.assert(
      fc.property(anyCycle, (conditions) => {
        const cycle = textbookCycle({ ...conditions, deadState: 320 });
        expect(relative(cycle.exergyDestruction.total, cycle.specificWork)).toBeLessThan(1e-9);
        expect(cycle.exergyBasis.minimumWork).toBe(0);
      }),
      { seed: 1103, numRuns: 100 },
    );
  });

  it('no number that means something depends on the reference state (seed 1104)', () => {
    const numbers = (cycle: TextbookCycle) => [
      cycle.specificWork,
      cycle.heatDelivered,
      cycle.heatTaken,
      cycle.heatingCop,
      cycle.coolingCop,
      cycle.volumetricHeatingCapacity,
      cycle.isentropicEfficiency,
      cycle.exergyDestruction.compressor + cycle.specificWork,
      cycle.exergyDestruction.condenser + cycle.specificWork,
      cycle.exergyDestruction.expansion + cycle.specificWork,
      cycle.exergyDestruction.evaporator + cycle.specificWork,
      cycle.exergyBasis.secondLawEfficiency + 1,
      cycle.points[2].temperature,
      cycle.points[2].entropy - cycle.points[3].entropy,
      cycle.points[2].enthalpy - cycle.points[3].enthalpy,
      cycle.points[0].enthalpy - cycle.points[0].internalEnergy,
    ];
    fc.assert(
      fc.property(anyCycle, (conditions) => {
        const [first, ...others] = zerosOf(conditions.refrigerant).map((referenceState) =>
          textbookCycle({ ...conditions, referenceState, sinkTemperature: 200, sourceTemperature: 400 }),
        );
        expect(others.length).toBeGreaterThan(0);
        for (const other of others) {
          for (const [index, value] of numbers(other).entries()) {
            expect(relative(value, numbers(first!)[index]!)).toBeLessThan(1e-10);
          }
          expect(other.points[0].enthalpy).not.toBe(first!.points[0].enthalpy);
          expect(other.referenceState).not.toBe(first!.referenceState);
        }
      }),
      { seed: 1104, numRuns: 100 },
    );
  });

  it('partner keys lead to the same cycle (seed 1105)', () => {
    fc.assert(
      fc.property(anyCycle, (conditions) => {
        const cycle = textbookCycle(conditions);
        const { refrigerant } = conditions;
        const other = textbookCycle({
          refrigerant,
          evaporatingPressure: cycle.evaporating.pressure,
          condensingPressure: cycle.condensing.pressure,
          suctionTemperature: cycle.points[0].temperature,
          liquidTemperature: cycle.points[3].temperature,
          ...(isDry(cycle)
            ? { dischargeTemperature: cycle.points[2].temperature }
            : { isentropicEfficiency: conditions.isentropicEfficiency }),
        });
        expect(relative(other.heatingCop, cycle.heatingCop)).toBeLessThan(1e-8);
        expect(relative(other.volumetricHeatingCapacity, cycle.volumetricHeatingCapacity)).toBeLessThan(1e-8);
        expect(relative(other.isentropicEfficiency, conditions.isentropicEfficiency)).toBeLessThan(1e-7);
        expect(Math.abs(other.superheat - conditions.superheat)).toBeLessThan(1e-8);
        expect(Math.abs(other.subcooling - conditions.subcooling)).toBeLessThan(1e-8);
      }),
      { seed: 1105, numRuns: 200 },
    );
  });

  it('losses, exchanger and flow: both accounts close, points follow the flow, seconds are kilograms times flow (seed 1106)', () => {
    const beyond = fc.record({
      suctionShare: fc.double({ min: 0.85, max: 1, noNaN: true }),
      liquidShare: fc.double({ min: 0.85, max: 1, noNaN: true }),
      heatExchangerEffectiveness: fc.double({ min: 0.05, max: 1, noNaN: true }),
      deadState: fc.double({ min: 250, max: 320, noNaN: true }),
      sinkTemperature: fc.double({ min: 150, max: 230, noNaN: true }),
      sourceTemperature: fc.double({ min: 380, max: 420, noNaN: true }),
      displacement: fc.double({ min: 1e-5, max: 1, noNaN: true }),
    });
    let answered = 0;
    fc.assert(
      fc.property(anyCycle, beyond, (conditions, { suctionShare, liquidShare, ...more }) => {
        const plain = textbookCycle(conditions);
        const suctionPressure = suctionShare * plain.evaporating.pressure;
        const liquidPressure = liquidShare * plain.condensing.pressure;
        fc.pre(liquidPressure > 1.001 * plain.evaporating.pressure);
        fc.pre(
          saturationAtPressure(refrigerant(conditions.refrigerant), liquidPressure).liquid.temperature -
            conditions.subcooling >
            conditions.evaporating + conditions.superheat + 0.1,
        );
        const request = { ...conditions, ...more, suctionPressure, liquidPressure };
        fc.pre(isDescribed(request));
        const cycle = textbookCycle(request);
        answered += 1;
        const [inlet, , outlet, liquid, expanded, gas, feed] = cycle.points;
        expect([gas?.name, feed?.name]).toEqual(['evaporatorOutlet', 'expansionInlet']);
        // First law, of the loop and of the exchanger.
        expect(relative(cycle.heatTaken + cycle.specificWork, cycle.heatDelivered)).toBeLessThan(1e-12);
        expect(inlet.enthalpy - gas!.enthalpy).toBeCloseTo(liquid.enthalpy - feed!.enthalpy, 6);
        expect(cycle.heatTaken).toBeCloseTo(gas!.enthalpy - expanded.enthalpy, 6);
        // Second law: the parts add up to 1e-9 of the work, and no part makes exergy.
        const { total, ...parts } = cycle.exergyDestruction;
        const sum = Object.values(parts).reduce((all, part) => all + part, 0);
        const closure = cycle.specificWork - cycle.exergyBasis.minimumWork - sum;
        expect(Math.abs(closure)).toBeLessThan(1e-9 * cycle.specificWork);
        expect(relative(total, sum)).toBeLessThan(1e-9);
        expect(Object.keys(parts)).toContain('heatExchanger');
        for (const part of Object.values(parts)) expect(part).toBeGreaterThan(-1e-9 * cycle.specificWork);
        // The gas ends between where it began and the liquid; the liquid likewise.
        expect(feed!.temperature).toBeGreaterThan(gas!.temperature);
        expect(inlet.temperature).toBeLessThan(liquid.temperature + 1e-6);
        // Pressure falls along the flow, but in the compressor.
        const along = [outlet, liquid, feed!, expanded, gas!, inlet].map(({ pressure }) => pressure);
        for (const [index, pressure] of along.slice(1).entries()) {
          expect(pressure).toBeLessThan(along[index]! * (1 + 1e-9));
        }
        // Per second.
        const rates = cycle.perSecond!;
        expect(rates.inletVolumeFlow).toBeCloseTo(more.displacement, 12);
        expect(relative(rates.heatingCapacity, rates.massFlow * cycle.heatDelivered)).toBeLessThan(1e-12);
        expect(relative(rates.coolingCapacity + rates.compressorPower, rates.heatingCapacity)).toBeLessThan(1e-12);
        expect(relative(rates.exergyDestructionRate.total, rates.massFlow * total)).toBeLessThan(1e-12);
      }),
      { seed: 1106, numRuns: 300 },
    );
    expect(answered).toBe(300);
  });

  it('each way to give the flow leads to the same cycle per second (seed 1107)', () => {
    fc.assert(
      fc.property(anyCycle, fc.double({ min: 1e-4, max: 1, noNaN: true }), (conditions, massFlow) => {
        const first = textbookCycle({ ...conditions, massFlow }).perSecond!;
        const { coolingCapacity, heatingCapacity, compressorPower, inletVolumeFlow } = first;
        const others = [
          { coolingCapacity },
          { heatingCapacity },
          { compressorPower },
          { displacement: inletVolumeFlow / 0.7, volumetricEfficiency: 0.7 },
        ];
        for (const given of others) {
          const other = textbookCycle({ ...conditions, ...given }).perSecond!;
          expect(relative(other.massFlow, massFlow)).toBeLessThan(1e-12);
          expect(relative(other.heatingCapacity, heatingCapacity)).toBeLessThan(1e-12);
          expect(other).toMatchObject(given);
        }
      }),
      { seed: 1107, numRuns: 100 },
    );
  });

  it('names the volumetric efficiency it assumed beside a displacement', () => {
    const given = { refrigerant: 'R290', evaporating: 270, condensing: 310, superheat: 5, subcooling: 3 };
    const alone = textbookCycle({ ...given, isentropicEfficiency: 0.7, displacement: 0.002 }).perSecond;
    expect(alone).toMatchObject({ volumetricEfficiency: 1, volumetricEfficiencyAssumed: true });
    const both = textbookCycle({
      ...given,
      isentropicEfficiency: 0.7,
      displacement: 0.002,
      volumetricEfficiency: 1,
    }).perSecond;
    expect(both).toMatchObject({ volumetricEfficiency: 1, volumetricEfficiencyAssumed: false });
  });

  it('exchanger: effectiveness and the temperature it leads to are one cycle; an effectiveness of 1 warms to the liquid', () => {
    const request = { refrigerant: 'R290', evaporating: 268, condensing: 313, superheat: 4, subcooling: 3 };
    const byEffectiveness = textbookCycle({
      ...request,
      isentropicEfficiency: 0.7,
      heatExchangerEffectiveness: 0.55,
    });
    const byTemperature = textbookCycle({
      refrigerant: 'R290',
      evaporating: 268,
      condensing: 313,
      subcooling: 3,
      isentropicEfficiency: 0.7,
      evaporatorOutletTemperature: 272,
      suctionTemperatureAfterExchanger: byEffectiveness.points[0].temperature,
    });
    expect(byTemperature.heatExchanger!.effectiveness).toBeCloseTo(0.55, 8);
    expect(byTemperature.heatExchanger!.given).toBe('suctionTemperatureAfterExchanger');
    expect(relative(byTemperature.heatingCop, byEffectiveness.heatingCop)).toBeLessThan(1e-8);
    expect(byEffectiveness.superheat).toBeCloseTo(4, 9);
    const whole = textbookCycle({ ...request, isentropicEfficiency: 0.7, heatExchangerEffectiveness: 1 });
    expect(whole.points[0].temperature).toBeCloseTo(310, 6);
  });

  it('wet suction is allowed and told', () => {
    const cycle = textbookCycle({
      refrigerant: 'R134a',
      evaporating: 263.15,
      condensing: 313.15,
      suctionQuality: 0.95,
      subcooling: 0,
      isentropicEfficiency: 1,
    });
    expect(cycle.points[0].quality).toBeCloseTo(0.95, 10);
    expect(cycle.superheat).toBe(0);
    expect(cycle.warnings.map(({ code }) => code)).toEqual(['wetSuction', 'wetCompression']);
  });

  it.each(refrigerantNames)('%s: COP falls as the lift grows, and as the efficiency falls', (name) => {
    const { at } = levelsOf(name);
    const base = { refrigerant: name, evaporating: at(270), superheat: 5, subcooling: 3 };
    const byLift = [300, 310, 320, 330, 340].map(
      (condensing) => textbookCycle({ ...base, condensing: at(condensing), isentropicEfficiency: 0.7 }).heatingCop,
    );
    const byEfficiency = [1, 0.8, 0.6, 0.4].map(
      (isentropicEfficiency) => textbookCycle({ ...base, condensing: at(310), isentropicEfficiency }).heatingCop,
    );
    for (const cops of [byLift, byEfficiency]) {
      expect(cops).toEqual([...cops].sort((a, b) => b - a));
      expect(new Set(cops).size).toBe(cops.length);
    }
  });

  it.each(refrigerantNames)('%s: no superheat and no subcooling are quality 1 and 0', (name) => {
    const cycle = textbookCycle({
      refrigerant: name,
      evaporating: levelsOf(name).at(273.15),
      condensing: levelsOf(name).at(303.15),
      superheat: 0,
      subcooling: 0,
      isentropicEfficiency: 0.7,
    });
    expect(cycle.points[0]).toMatchObject({ name: 'compressorInlet', quality: 1, phase: 'twoPhase' });
    expect(cycle.points[3]).toMatchObject({ name: 'condenserOutlet', quality: 0, phase: 'twoPhase' });
    expect([cycle.superheat, cycle.subcooling]).toEqual([0, 0]);
  });

  it('says so where compression without losses would end wet', () => {
    // Isobutane: the dew line leans over, so that gas without superheat is compressed into the dome.
    const request = { refrigerant: 'R600a', evaporating: 280, condensing: 320, superheat: 0, subcooling: 2 };
    expect(textbookCycle({ ...request, isentropicEfficiency: 0.99 }).warnings).toContainEqual({
      code: 'wetCompression',
      part: 'compressor',
    });
    expect(textbookCycle({ ...request, superheat: 20, isentropicEfficiency: 0.6 }).warnings).toEqual([]);
  });

  it('says so where a body at the dead state would have to heat something warmer', () => {
    const request = { refrigerant: 'R134a', evaporating: 300, condensing: 330, superheat: 5, subcooling: 5 };
    const cycle = textbookCycle({ ...request, isentropicEfficiency: 0.7 });
    expect(cycle.warnings).toEqual([{ code: 'negativeExergyDestruction', part: 'evaporator' }]);
    expect(cycle.exergyDestruction.evaporator).toBeLessThan(0);
    expect(cycle.exergyBasis.words).toContain('dead state');
  });

  it('works close to the critical point', () => {
    // R236fa: its equation ends 2 K above its critical temperature.
    const described = refrigerantNames.filter((name) => isDescribed(nearCritical(name)));
    expect(refrigerantNames.filter((name) => !described.includes(name))).toEqual(['R236fa']);
    for (const name of described) {
      const cycle = textbookCycle(nearCritical(name));
      expect(cycle.heatingCop).toBeGreaterThan(1);
      expect(cycle.heatingCop, name).toBeLessThan(cycle.carnotHeatingCop);
    }
  });

  it('isobutane with hot liquid: the valve would give gas hotter in enthalpy than the compressor inlet; refused', () => {
    expect(() => textbookCycle({ ...nearCritical('R600a'), subcooling: 1 })).toThrowError(
      expect.objectContaining({ code: 'noCooling', path: 'subcooling' }),
    );
  });

  function nearCritical(name: string): TextbookCycleRequest {
    const condensing = refrigerant(name).critical.temperature - 0.05;
    const evaporating = levelsOf(name).at(280);
    return { refrigerant: name, evaporating, condensing, superheat: 5, subcooling: 25, isentropicEfficiency: 0.7 };
  }

  function isDry(cycle: TextbookCycle): boolean {
    return cycle.points[2].quality === null;
  }
});
