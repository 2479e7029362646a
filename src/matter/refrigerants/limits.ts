// The thin end of every fluid's range. The other ends are the fluid's own (Refrigerant.limits) and its melting line.

/** Below these a gas is no continuum, and products of doubles begin to vanish [Pa, kg/m³]. */
export const SMALLEST_PRESSURE = 1e-30;
export const SMALLEST_DENSITY = 1e-30;
/** A pressure or density found this little beyond a limit, relative, is rounding. */
export const ROUNDING_AT_LIMIT = 1e-10;
