// The short relations between coefficient, area, length, duty and air flow that both sizings are built of. Each stands as a
// function so that the formula on screen and the number are the same thing. Arguments in the order of the formula, base SI.

/** Film coefficient h [W/(m² K)] = Nu k / D: Nusselt number [-], conductivity [W/(m K)], its diameter [m]. Definition. */
export function filmCoefficient(nusselt: number, conductivity: number, diameter: number): number {
  return (nusselt * conductivity) / diameter;
}

/** Inner diameter D_i [m] = D_o − 2 s: outer diameter [m], thickness of the wall [m]. Geometry. */
export function innerDiameterOf(outerDiameter: number, wallThickness: number): number {
  return outerDiameter - 2 * wallThickness;
}

/** Difference ΔT [K] of two temperatures [K]. Definition. */
export function temperatureDifference(warm: number, cold: number): number {
  return warm - cold;
}

/** Film inside a tube as a resistance on the outer area [m² K/W] = D_o / (D_i h_i): diameters [m], film [W/(m² K)]. */
export function insideFilmResistance(outerDiameter: number, innerDiameter: number, insideFilm: number): number {
  return outerDiameter / (innerDiameter * insideFilm);
}

/**
 * Overall coefficient U [W/(m² K)] on the outer area of a tube.
 *     U = 1 / (1/h_w + R_f + R_w + R_i)
 * water film h_w [W/(m² K)], fouling R_f, wall R_w, inside film R_i [m² K/W], all on the outer area. Resistances in series.
 * Worked value: 579, 1.5e-4, 4e-5, 7.63e-4 → 373 W/(m² K).
 */
export function tubeCoefficient(waterFilm: number, fouling: number, wall: number, inside: number): number {
  return 1 / (1 / waterFilm + fouling + wall + inside);
}

/**
 * Surface of the coil against the bulk of the water, δ [K] = ΔT_m U / h_w: all of the heat crosses the water's film.
 * mean difference [K], overall coefficient and water film [W/(m² K)]. The film follows from δ, so both are found together.
 */
export function surfaceDifference(meanDifference: number, overallCoefficient: number, waterFilm: number): number {
  return (meanDifference * overallCoefficient) / waterFilm;
}

/** Overall coefficient U [W/(m² K)] = 1/(1/h_r + R_f + 1/h_l) of two films [W/(m² K)] and fouling [m² K/W] between them. */
export function twoFilmCoefficient(refrigerantFilm: number, fouling: number, loopSideFilm: number): number {
  return 1 / (1 / refrigerantFilm + fouling + 1 / loopSideFilm);
}

/** Area A [m²] = Q / (U ΔT_m): duty [W], overall coefficient [W/(m² K)], mean difference [K]. */
export function areaForDuty(duty: number, overallCoefficient: number, meanDifference: number): number {
  return duty / (overallCoefficient * meanDifference);
}

/** Length L [m] = A / (π D_o): outer area [m²], outer diameter [m]. */
export function tubeLength(area: number, outerDiameter: number): number {
  return area / (Math.PI * outerDiameter);
}

/** Capacity flow of air C [W/K] = Q / (ε ΔT): duty [W], effectiveness [-], inlet air minus evaporating temperature [K]. */
export function airCapacityFlow(duty: number, effectiveness: number, approach: number): number {
  return duty / (effectiveness * approach);
}

/**
 * Volume flow of moist air V̇ [m³/s] = C / (ρ_da c): capacity flow [W/K], dry air in a cubic metre [kg/m³], specific heat
 * of moist air per kg of dry air [J/(kg K)].
 */
export function airVolumeFlow(capacityFlow: number, dryAirDensity: number, heatCapacity: number): number {
  return capacityFlow / (dryAirDensity * heatCapacity);
}

/** Face area [m²] = V̇ / w: volume flow [m³/s], air speed before the face [m/s]. */
export function faceAreaFor(volumeFlow: number, faceVelocity: number): number {
  return volumeFlow / faceVelocity;
}

/** Conductance UA [W/K] = NTU C: transfer units [-], capacity flow [W/K]. */
export function conductanceFor(transferUnits: number, capacityFlow: number): number {
  return transferUnits * capacityFlow;
}

/** Finned surface A [m²] = UA / U: conductance [W/K], overall coefficient on that surface [W/(m² K)]. */
export function finnedAreaFor(conductance: number, coefficient: number): number {
  return conductance / coefficient;
}
