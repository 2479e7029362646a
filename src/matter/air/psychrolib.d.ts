// Types of the part of the psychrometric library that this project calls (the package ships none). SI: °C, Pa, kg/kg.
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(unitSystem: number): void;
    /** Held against our own form of the same equations in the tests. */
    GetSatVapPres(dryBulbCelsius: number): number;
    GetTDewPointFromVapPres(dryBulbCelsius: number, vapourPressure: number): number;
    GetTWetBulbFromHumRatio(dryBulbCelsius: number, humidityRatio: number, pressure: number): number;
  }
  const psychrolib: Psychrometrics;
  export default psychrolib;
}
