// Steps of a blend's bubble or dew line from its published curve, and of the glide.

import { type WorkingStep, workingStep } from '../../../quantities/index.ts';
import type { SaturationCurve } from '../equation/fluid-data.ts';
import type { Saturation } from '../types.ts';
import type { BubbleAndDew } from './bubble-and-dew.ts';
import { glideOf } from './glide.ts';

export type Line = 'bubble' | 'dew';

/** Step of the pressure of a line at a known temperature; `temperature` says where that came from. */
export function linePressureStep(
  lines: BubbleAndDew,
  line: Line,
  saturation: Saturation,
  result: string,
  temperature: string,
): WorkingStep {
  const state = stateOn(saturation, line);
  return workingStep(result, `refrigerants.${line}Pressure`, state.pressure, {
    T: [state.temperature, temperature],
    ...coefficients(curveOf(lines, line)),
  });
}

/** Step of the temperature of a line at a known pressure; `pressure` says where that came from. */
export function lineTemperatureStep(
  lines: BubbleAndDew,
  line: Line,
  saturation: Saturation,
  result: string,
  pressure: string,
): WorkingStep {
  const state = stateOn(saturation, line);
  const curve = curveOf(lines, line);
  return workingStep(result, `refrigerants.${line}Temperature`, state.temperature, {
    theta: [1 - state.temperature / curve.reducingTemperature],
    p: [state.pressure, pressure],
    ...coefficients(curve),
  });
}

/** Step of the glide at the saturation's one pressure; the origins are the steps of its two temperatures. */
export function glideWorking(
  { liquid, vapour }: Saturation,
  result: string,
  origins: { readonly dew: string; readonly bubble: string },
): WorkingStep {
  return workingStep(result, 'refrigerants.glide', glideOf(vapour.temperature, liquid.temperature), {
    T_dew: [vapour.temperature, origins.dew],
    T_bubble: [liquid.temperature, origins.bubble],
  });
}

function stateOn({ liquid, vapour }: Saturation, line: Line) {
  return line === 'bubble' ? liquid : vapour;
}

function curveOf({ curves }: BubbleAndDew, line: Line): SaturationCurve {
  return line === 'bubble' ? curves.bubblePressure : curves.dewPressure;
}

function coefficients(curve: SaturationCurve): Readonly<Record<string, readonly [number]>> {
  const { reducingTemperature, reducingValue, n, t } = curve;
  const terms = n.flatMap((factor, k) => [
    [`n${k + 1}`, [factor] as const],
    [`t${k + 1}`, [t[k]!] as const],
  ]);
  return { T_r: [reducingTemperature], p_r: [reducingValue], ...Object.fromEntries(terms) };
}
