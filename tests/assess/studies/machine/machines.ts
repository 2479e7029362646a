// Machines alone that the tests of the study share.

export type Part = Readonly<Record<string, unknown>>;

/** A file that holds nothing but a machine. */
export function alone(compressor: Part, more: Part = {}): string {
  return JSON.stringify({ formatVersion: 2, machine: { compressor, ...more } });
}

const returnGas = { suction: { kind: 'returnGas', returnGas: '32.2 °C' } } as const;

/** The R600a data set of F. Fortkamp 2022 (article on compressor regression): 60 Hz, gas and liquid at 32.2 °C. */
export const fortkamp = {
  madeFor: 'R600a',
  displacement: '13.54 cm3',
  tables: [
    {
      table: 't_e °C;t_c °C;capacity W;power W\n-35;35;167;129\n-25;35;282;160\n-20;35;362;177\n-10;35;570;217',
      basis: { ...returnGas, liquid: { kind: 'temperature', temperature: '32.2 °C' } },
      frequency: '60 Hz',
    },
  ],
} as const;

/** Ten coefficients for R134a: straight in the evaporating temperature alone, with this value at −23.3 °C and this slope per kelvin. */
export function straightSet(of: 'massFlow' | 'power', value: number, slope: number, unit: string): Part {
  return {
    of,
    values: `${value + 23.3 * slope} ${slope} 0 0 0 0 0 0 0 0`,
    temperatureUnit: 'celsius',
    unit,
    basis: { ...returnGas, liquid: { kind: 'temperature', temperature: '32.2 °C' } },
    evaporatingRange: '-25 to -20 °C',
    condensingRange: '50 to 55 °C',
    frequency: '50 Hz',
  };
}

/** °C to K. */
export const kelvin = (celsius: number): number => celsius + 273.15;
