// Viscosity and thermal conductivity at the states of a textbook cycle, and how far they are to be trusted.

import type { CyclePointName, TextbookCycle } from '../../loop/index.ts';
import { refrigerant, type TransportMethod, transportAt, transportMethods } from '../../matter/refrigerants/index.ts';

export interface PointTransport {
  readonly name: CyclePointName;
  /** η [Pa s], λ [W/(m K)]; null inside the dome, where two phases flow beside one another. */
  readonly viscosity: number | null;
  readonly conductivity: number | null;
}

export interface CycleTransport {
  readonly points: readonly PointTransport[];
  readonly viscosity: TransportMethod;
  readonly conductivity: TransportMethod;
}

export function transportOf({ refrigerant: name, points }: TextbookCycle): CycleTransport {
  const fluid = refrigerant(name);
  const { viscosity, conductivity } = transportMethods(fluid);
  return {
    points: points.map((point) => {
      const values = transportAt(fluid, point);
      return { name: point.name, viscosity: values.viscosity, conductivity: values.conductivity };
    }),
    viscosity,
    conductivity,
  };
}
