// The rules about motor, return of liquid, starts and oil beyond their one speaking and one silent case: the graver
// and the milder of each, what a range does, what is not said twice, and the words for each.

import { describe, expect, it } from 'vitest';
import { findingSentence } from '../../src/assess/wording/findings.ts';
import { type CautionCode, type CautionFacts, cautionRules, findCautions } from '../../src/cautions/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import { about, machineIn, quiet, r12, r134a, r290, startingWith } from './sample.ts';

const found = (code: CautionCode, facts: CautionFacts) => cautionRules[code](facts);
const words = (code: CautionCode, facts: CautionFacts) => findingSentence(found(code, facts)!, 'metric');
const codes = (facts: CautionFacts) => findCautions(facts).map(({ code }) => code);
/** The quiet machine with one state that evaporates elsewhere. */
const evaporatingAt = (evaporatingTemperature: number, facts: CautionFacts): CautionFacts => ({
  ...facts,
  operating: facts.operating.map((each) => ({ ...each, evaporatingTemperature })),
});

describe('current', () => {
  it('is a stop only beyond what the doubt of the model explains', () => {
    expect(found('motorWouldTrip', machineIn({ current: { low: 1, likely: 1.4, high: 1.9 } }))).toBeUndefined();
    expect(found('currentAboveRated', machineIn({ current: { low: 1, likely: 1.4, high: 1.9 } }))?.severity).toBe(
      'look',
    );
  });

  it('above what is printed at the end of its range says both numbers, and what motors bear where that is passed too', () => {
    const { title, text } = words('currentAboveRated', machineIn({ current: { low: 0.6, likely: 0.7, high: 1.3 } }));
    expect(title).toMatch(/may take more/);
    expect(text).toMatch(/0\.7.A, at the end of its range 1\.3.A, in the coldest spell/);
    expect(text).toMatch(/1\.2.A for long/);
    expect(words('currentAboveRated', machineIn({ current: about(0.9) })).text).not.toMatch(/for long/);
  });

  it('is not told twice: a trip by current leaves out the milder sentence', () => {
    const facts = machineIn({ current: about(2) });
    expect(codes(facts)).toContain('motorWouldTrip');
    expect(codes(facts)).not.toContain('currentAboveRated');
  });

  it('of a machine without a nameplate says nothing', () => {
    const facts = machineIn({ current: about(9) }, { ratedCurrent: null, continuousCurrent: null });
    expect(found('motorWouldTrip', facts)).toBeUndefined();
    expect(found('currentAboveRated', facts)).toBeUndefined();
  });
});

describe('a motor that gives up above an evaporating temperature', () => {
  const trip = { evaporating: 283, by: 'motorLoad' } as const;

  it('is a look from there on, and silent below', () => {
    expect(found('motorWouldTrip', evaporatingAt(283.1, machineIn({}, { trip })))?.severity).toBe('look');
    expect(found('motorWouldTrip', evaporatingAt(282.9, machineIn({}, { trip })))).toBeUndefined();
    expect(words('motorWouldTrip', evaporatingAt(284.15, machineIn({}, { trip })))).toEqual({
      title: 'The motor is likely to trip',
      text: expect.stringMatching(/evaporate at 11.*gives up from 9\.9/),
    });
  });

  it('is left to the stop of an overloaded motor where that speaks', () => {
    const facts = evaporatingAt(289, machineIn({}, { trip }));
    const overloaded = { ...facts, operating: facts.operating.map((each) => ({ ...each, compressorPower: 150 })) };
    expect(codes(overloaded)).toContain('motorOverloaded');
    expect(codes(overloaded)).not.toContain('motorWouldTrip');
  });

  it('is named beside a current that trips it', () => {
    expect(words('motorWouldTrip', machineIn({ current: about(2) }, { trip })).text).toMatch(/trips from 9\.9.°C/);
  });
});

describe('pressure of another fluid', () => {
  it('is told apart from evaporation that is too warm', () => {
    const facts = machineIn({}, { highestSuctionPressure: 3.5e5 });
    expect(codes(facts)).toContain('suctionAboveMotor');
    expect(codes(evaporatingAt(288.2, facts))).not.toContain('suctionAboveMotor');
    expect(words('suctionAboveMotor', { ...facts, fluid: r290 }).text).toMatch(/draw in R290 at .* with R134a/);
  });
});

describe('warmth and superheat', () => {
  it('of the wall is a note where only doubt begins', () => {
    const likely = found('littleFlowToCoolMotor', machineIn({ wallTemperature: about(390) }));
    expect(likely?.severity).toBe('note');
    const end = found('littleFlowToCoolMotor', machineIn({ wallTemperature: { low: 340, likely: 370, high: 390 } }));
    expect(end).toMatchObject({ severity: 'note', facts: { endOfRange: { value: 390 } } });
  });

  it('is one finding: liquid that comes back leaves out gas that is nearly wet', () => {
    const facts = machineIn({ superheat: { low: 0, likely: 1, high: 3 } });
    expect(codes(facts)).toContain('floodBack');
    expect(codes(facts)).not.toContain('returnGasTooCold');
  });

  it('may be wet at the end of a range', () => {
    const nearly = found('returnGasTooCold', machineIn({ superheat: { low: 1.9, likely: 6, high: 9 } }));
    expect(nearly).toMatchObject({ severity: 'note', facts: { endOfRange: { value: 1.9 }, limit: { value: 2 } } });
  });

  it('looks at the state that is nearest to liquid', () => {
    const one = machineIn({ superheat: about(8) });
    const state = one.operating[0]!;
    const warm = { ...state, when: 'warmestMonth' as const };
    const wet = { ...warm, machine: { current: null, wallTemperature: null, superheat: about(1) } };
    expect(found('floodBack', { ...one, operating: [state, wet] })?.facts.when).toEqual({ word: 'warmestMonth' });
  });
});

describe('starts', () => {
  it('against a valve are a note where motor or meter is not known', () => {
    for (const [type, meter] of [
      ['unknown', 'closes'],
      ['relay', 'unknown'],
    ] as const) {
      const facts = machineIn({}, { starting: startingWith(type, meter) });
      expect(found('lowTorqueStartAgainstPressure', facts)?.severity).toBe('note');
      expect(words('lowTorqueStartAgainstPressure', facts).text).toMatch(/is not known\.$/);
    }
    expect(
      found('lowTorqueStartAgainstPressure', machineIn({}, { starting: startingWith('startCapacitor', 'closes') })),
    ).toBeUndefined();
  });

  it('are not judged where the control is not known', () => {
    expect(found('shortOffTime', machineIn({}, { starting: startingWith('relay', 'closes') }))).toBeUndefined();
  });
});

describe('liquid in the oil', () => {
  const cold = { shellSurroundings: 285 };
  // 1.2 W/K kept 10 K warmer: 12 W, 9.6 to 18 W.
  const starting = startingWith('relay', 'equalises');

  it('is a note with a heater that is likely strong enough, a look with none or a weaker one', () => {
    const severity = (crankcaseHeater: number | null) =>
      found('migrationToCompressor', { ...machineIn({}, { starting, crankcaseHeater }), ...cold })?.severity;
    expect(severity(12.1)).toBe('note');
    expect(severity(11.9)).toBe('look');
    expect(severity(0)).toBe('look');
    expect(severity(null)).toBe('look');
  });

  it('says what a heater takes, and what this one takes', () => {
    const said = (crankcaseHeater: number) =>
      words('migrationToCompressor', { ...machineIn({}, { starting, crankcaseHeater }), ...cold }).text;
    expect(said(0)).toMatch(/takes some 9\.6.W to 18.W\.$/);
    expect(said(30)).toMatch(/to 18.W; the one here takes 30.W\.$/);
  });
});

describe('oil printed on the machine', () => {
  it('goes before the oil usual with its fluid', () => {
    const inOld = { ...machineIn({}, { oil: 'polyolester' }), madeFor: r12 };
    expect(found('oilNotForThisFluid', { ...quiet, madeFor: r12 })).toBeDefined();
    expect(found('oilNotForThisFluid', inOld)).toBeUndefined();
  });

  it('that does not suit the machine’s own fluid is looked at too', () => {
    const facts = machineIn({}, { oil: 'mineral' });
    expect(facts.fluid).toBe(r134a);
    expect(words('oilNotForThisFluid', facts).text).toBe(
      'Its plate names mineral oil; R134a usually wants polyolester oil.',
    );
  });
});

describe('facts of the machine', () => {
  it('are never judged by NaN', () => {
    expect(() => findCautions(machineIn({ current: { low: 1, likely: Number.NaN, high: 2 } }))).toThrow(InputError);
    expect(() => findCautions(machineIn({}, { ratedCurrent: Number.NaN }))).toThrow(/machine\.ratedCurrent/);
  });

  it('leave a design of which nobody told them as it was', () => {
    expect(codes(machineIn({}))).toEqual(codes(quiet));
  });
});
