// What the pictures of a loop are called, also while they are still to be made.

/** Which pair of axes. */
export type Plane = 'pressureEnthalpy' | 'temperatureEntropy';

const planeTitles: Readonly<Record<Plane, string>> = {
  pressureEnthalpy: 'Pressure and enthalpy',
  temperatureEntropy: 'Temperature and entropy',
};

/** "Pressure and enthalpy of R134a". */
export function pictureTitle(plane: Plane, of: string): string {
  return `${planeTitles[plane]} of ${of}`;
}
