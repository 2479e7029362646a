// Where the range of every fluid ends whatever its equation, and how near counts as on a line or a limit. The other ends are
// the fluid's own (Refrigerant.limits) and its melting line.

/** Below these a gas is no continuum, and products of doubles begin to vanish [Pa, kg/m³]. */
export const SMALLEST_PRESSURE = 1e-30;
export const SMALLEST_DENSITY = 1e-30;
/** A pressure or density found this little beyond a limit, relative, is rounding. */
export const ROUNDING_AT_LIMIT = 1e-10;
/** A value this close to one side of the dome counts as on it: as a share of R T for enthalpy, of R for entropy. */
export const ON_THE_LINE = 1e-9;
/** At the critical point c_p grows without limit; below this stiffness its digits are rounding, and none are given. */
export const SMALLEST_STIFFNESS = 1e-11;
