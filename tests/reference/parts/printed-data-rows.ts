// What is printed of a compressor: ten coefficients against values worked by hand, bases and other superheats against CoolProp,
// the fit against NumPy.

import { refrigerant } from '../../../src/matter/refrigerants/index.ts';
import {
  fitTenCoefficients,
  flowRatioDabiriRice1981,
  liquidWorth,
  powerRatioDabiriRice1981,
  ratedConditions,
  ratedStates,
  ratingConditions,
  requireTenCoefficients,
  tenCoefficients,
} from '../../../src/parts/compressor/index.ts';
import { deviationInPercent, type ValidationRow } from '../validation.ts';
import reference from './compressor-polynomial.json';
import worked from './compressor-worked.json';

const kelvin = (celsius: number) => celsius + 273.15;

function row(subject: string, quantity: string, source: string, published: number, ours: number): ValidationRow {
  const deviation = deviationInPercent(ours, published);
  return { subject, quantity, source, published, ours, deviation, status: 'reference' };
}

export function printedDataRows(): readonly ValidationRow[] {
  return [...coefficientRows(), ...superheatRows(), ...liquidRows(), ...midPointRows(), ...fitRows()];
}

function coefficientRows(): readonly ValidationRow[] {
  const { rows, source } = reference.worked;
  return (rows as [number[], number, number, number][]).map(([values, suction, discharge, published]) => {
    const set = requireTenCoefficients(values);
    const names = values.flatMap((value, index) => (value === 0 ? [] : [`C${index + 1}`]));
    const which = names.length === values.length ? 'all 1' : `only ${names.join(', ')} = 1`;
    const quantity = `${which}, S ${suction}, D ${discharge}`;
    return row('Ten coefficients', quantity, source, published, tenCoefficients(set, suction, discharge));
  });
}

function superheatRows(): readonly ValidationRow[] {
  const { source, flowRatio, powerRatio } = reference.otherSuperheat;
  const fluid = refrigerant('R134a');
  const [warm, cold] = [32.2, 4.4].map((gas) =>
    ratedStates(fluid, { ...ratingConditions('ashraeLow'), returnGas: kelvin(gas) }),
  ) as [ReturnType<typeof ratedStates>, ReturnType<typeof ratedStates>];
  const flow = flowRatioDabiriRice1981(cold.suction.density / warm.suction.density);
  const power = powerRatioDabiriRice1981(flow, cold.isentropicWork / warm.isentropicWork);
  const subject = 'Another superheat';
  return [
    row(subject, 'flow at 4.4 °C gas over flow at 32.2 °C, R134a', source, flowRatio, flow),
    row(subject, 'power at 4.4 °C gas over power at 32.2 °C, R134a', source, powerRatio, power),
  ];
}

function liquidRows(): readonly ValidationRow[] {
  const { rows, source } = worked.liquidConvention;
  const at = ratingConditions('ashraeLow');
  return (rows as [string, number][]).map(([name, published]) =>
    row(
      'What the liquid is worth',
      `capacity with 32.2 °C over capacity with 54.4 °C liquid, ${name}`,
      source,
      published,
      liquidWorth(refrigerant(name), at, at.condensing),
    ),
  );
}

function midPointRows(): readonly ValidationRow[] {
  const { source, evaporatingMiddle, condensingMiddle, evaporatingDew, condensingDew } = reference.midPoint;
  const at = ratedConditions(
    refrigerant('R407C'),
    {
      gas: { kind: 'superheat', superheat: 10 },
      liquid: { kind: 'subcooling', subcooling: 0 },
      saturation: 'midPoint',
    },
    kelvin(evaporatingMiddle),
    kelvin(condensingMiddle),
  );
  const subject = 'Mid-points of R407C';
  return [
    row(subject, 'evaporating dew temperature of mid-point 0 °C [K]', source, kelvin(evaporatingDew), at.evaporating),
    row(subject, 'condensing dew temperature of mid-point 45 °C [K]', source, kelvin(condensingDew), at.condensing),
  ];
}

/** Corners, the middle, and the point that disagrees. */
const shownPoints = [0, 5, 13, 24, 29];

function fitRows(): readonly ValidationRow[] {
  const { points, relative, source } = reference.fit;
  const fit = fitTenCoefficients(
    points.map(([evaporating, condensing, value], index) => ({
      evaporating: kelvin(evaporating!),
      condensing: kelvin(condensing!),
      value: value!,
      name: `row ${index}`,
    })),
  );
  return shownPoints.map((index) => {
    const [evaporating, condensing] = points[index]!;
    const quantity = `fitted capacity at ${evaporating}/${condensing} °C [W]`;
    return row('Fit of ten coefficients', quantity, source, relative.fitted[index]!, fit.residuals[index]!.fitted);
  });
}
