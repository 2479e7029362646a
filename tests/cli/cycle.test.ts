// The page of text of a cycle: the numbers a person reads are those of the cycle, in the units asked for.

import { describe, expect, it } from 'vitest';
import { sayCycle } from '../../src/cli/cycle/say.ts';
import { textbookCycle } from '../../src/loop/index.ts';

const request = { refrigerant: 'R134a', evaporating: 263.15, condensing: 318.15, superheat: 5, subcooling: 5 };
const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');

describe('sayCycle', () => {
  const cycle = textbookCycle({ ...request, isentropicEfficiency: 0.6 });

  it('metric: temperatures, states, COP, exergy and the reference state', () => {
    const text = plain(sayCycle(cycle, 'metric'));
    expect(text).toContain('R134a, evaporating at −10 °C, condensing at 45 °C');
    expect(text).toContain('Textbook cycle, not electricity');
    expect(text).toMatch(/heating COP\s+3\.243/);
    expect(text).toMatch(/1 {3}compressor inlet\s+−5 °C\s+2\.006 bar abs\s+396\.9 kJ\/kg/);
    expect(text).toMatch(/total\s+62\.66 kJ\/kg\s+100 % of the work/);
    expect(text).toContain('200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C');
    expect(text.split('\n').every((line) => line.length < 140)).toBe(true);
  });

  it('US: degrees Fahrenheit and BTU per pound', () => {
    const text = plain(sayCycle(cycle, 'us'));
    expect(text).toContain('evaporating at 14 °F, condensing at 113 °F');
    expect(text).toMatch(/heat delivered\s+87\.36 BTU\/lb/);
    expect(text).toMatch(/dead state\s77 °F/);
    expect(text.match(/kJ/g)).toHaveLength(2); // the name of the reference state alone
  });

  it('of a blend: dew and bubble temperatures, glides, and the glide approximation by its name', () => {
    const blend = textbookCycle({ ...request, refrigerant: 'R404A', isentropicEfficiency: 0.6 });
    const text = plain(sayCycle(blend, 'metric')).replaceAll(/\s+/g, ' ');
    // Bubble temperatures at the dew pressures of −10 and 45 °C: CoolProp 8.0.0.
    expect(text).toContain('evaporating at −10 °C dew, −10.6 °C bubble, condensing at 45 °C dew, 44.7 °C bubble');
    expect(text).toContain('glide while boiling 0.562 K');
    expect(text).toContain('glide while condensing 0.308 K');
    expect(text).toContain('(glide approximation)');
    expect(plain(sayCycle(cycle, 'metric'))).not.toContain('glide');
  });

  it('puts warnings into sentences', () => {
    const wet = textbookCycle({ ...request, refrigerant: 'R600a', superheat: 0, isentropicEfficiency: 1 });
    expect(sayCycle(wet, 'metric')).toContain('compressed into the dome');
    const warm = textbookCycle({ ...request, evaporating: 300, isentropicEfficiency: 0.6 });
    expect(sayCycle(warm, 'metric')).toContain('The evaporator would exchange heat');
  });
});
