// Humidity of a room in which a tank evaporates: balances and limits. The tank is stood in for by Dalton's law with the handbook's
// coefficient, so that the answer can be checked by hand.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryAirDensity, humidityRatio, saturationVapourPressure, vapourPressure } from '../../src/matter/air/index.ts';
import { latentHeat } from '../../src/matter/water/index.ts';
import { dehumidifier, ventilatedRoom } from '../../src/surroundings/index.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const room = { temperature: kelvin(21), pressure: 101325, volume: 45 };
const winter = {
  airChanges: 0.5 / 3600,
  outdoorTemperature: kelvin(1),
  outdoorVapour: vapourPressure(kelvin(1), 0.85),
};

/** A square metre of 26 °C water by Dalton's law, 3.97e-8 kg/(s m² Pa). */
const tank = (temperature: number) => (relativeHumidity: number) =>
  3.97e-8 * (saturationVapourPressure(kelvin(26)) - relativeHumidity * saturationVapourPressure(temperature));

const anyRoom = fc.record({
  temperature: fc.double({ min: kelvin(0), max: kelvin(45), noNaN: true }),
  pressure: fc.double({ min: 60e3, max: 105e3, noNaN: true }),
  volume: fc.double({ min: 5, max: 500, noNaN: true }),
});
const anyVentilation = fc
  .record({
    airChanges: fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e-2, noNaN: true })),
    outdoorTemperature: fc.double({ min: kelvin(-20), max: kelvin(40), noNaN: true }),
    outdoorHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ outdoorHumidity, ...ventilation }) => ({
    ...ventilation,
    outdoorVapour: vapourPressure(ventilation.outdoorTemperature, outdoorHumidity),
  }));

describe('a ventilated room (seed 20275)', () => {
  it('carries off what evaporates, to 1e-9; what it cannot hold condenses', () => {
    fc.assert(
      fc.property(anyRoom, anyVentilation, (air, ventilation) => {
        const state = ventilatedRoom(air, ventilation, tank(air.temperature));
        const scale = Math.abs(state.evaporation) + Math.abs(state.carried) + 1e-8;
        expect(Math.abs(state.evaporation - state.carried - state.condensation)).toBeLessThan(1e-9 * scale);
        expect(state.relativeHumidity).toBeGreaterThanOrEqual(0);
        expect(state.relativeHumidity).toBeLessThanOrEqual(1);
        expect(state.condensation).toBeGreaterThanOrEqual(0);
        if (state.condensation > 0) expect(state.relativeHumidity).toBe(1);
        expect(state.iterations).toBeLessThanOrEqual(12);
      }),
      { seed: 20275, numRuns: 300 },
    );
  });

  // By hand: 0.5 changes an hour of 45 m³ carry 0.00625 m³/s of 1.18 kg/m³ dry air, 7.4 g/s.
  it('by hand: 45 m³, half an air change an hour, 1 °C outdoors', () => {
    const state = ventilatedRoom(room, winter, tank(room.temperature));
    const density = dryAirDensity(room.temperature, state.vapourPressure, 101325);
    expect(state.dryAirFlow).toBeCloseTo(0.00625 * density, 12);
    const outdoors = humidityRatio(winter.outdoorVapour, 101325);
    expect(state.evaporation).toBeCloseTo(state.dryAirFlow * (state.humidityRatio - outdoors), 14);
    expect(state.relativeHumidity).toBeGreaterThan(0.5);
    expect(state.relativeHumidity).toBeLessThan(0.9);
    expect(state.latentHeat).toBeCloseTo(state.carried * latentHeat(room.temperature), 9);
  });

  // Common practice 0.334 n V ΔT watts (n per hour), no source: here 1 % more, as the density is that of 20 °C sea-level air.
  it('its heat is that of the rule 0.334 n V ΔT within 1.5 %', () => {
    const dry = ventilatedRoom(room, { ...winter, outdoorVapour: 0 }, () => 0);
    expect(Math.abs(dry.sensibleHeat / (0.334 * 0.5 * 45 * 20) - 1)).toBeLessThan(0.015);
  });

  it('with ever more air is as damp as outdoor air warmed up', () => {
    const { relativeHumidity } = ventilatedRoom(room, { ...winter, airChanges: 1e3 }, tank(room.temperature));
    expect(relativeHumidity).toBeCloseTo(winter.outdoorVapour / saturationVapourPressure(room.temperature), 5);
  });

  it('without air takes up vapour until the tank gives no more, or until it is full', () => {
    const warm = { ...room, temperature: kelvin(30) };
    const still = { ...winter, airChanges: 0 };
    const state = ventilatedRoom(warm, still, tank(warm.temperature));
    const equal = saturationVapourPressure(kelvin(26)) / saturationVapourPressure(kelvin(30));
    expect(state.relativeHumidity).toBeCloseTo(equal, 9);
    const full = ventilatedRoom(room, still, tank(room.temperature));
    expect(full.relativeHumidity).toBe(1);
    expect(full.condensation).toBeGreaterThan(0);
  });

  it('more air makes it drier and the tank evaporate more', () => {
    const rates = [0.2, 0.5, 1, 3].map((perHour) =>
      ventilatedRoom(room, { ...winter, airChanges: perHour / 3600 }, tank(room.temperature)),
    );
    for (const [index, more] of rates.slice(1).entries()) {
      expect(more.relativeHumidity).toBeLessThan(rates[index]!.relativeHumidity);
      expect(more.evaporation).toBeGreaterThan(rates[index]!.evaporation);
    }
  });

  it('a dry room with nothing in it stays dry', () => {
    expect(ventilatedRoom(room, { ...winter, outdoorVapour: 0 }, () => 0).relativeHumidity).toBe(0);
  });

  it('refuses a room without volume and air that comes back', () => {
    expect(() => ventilatedRoom({ ...room, volume: 0 }, winter, () => 0)).toThrow(/room\.volume/);
    expect(() => ventilatedRoom(room, { ...winter, airChanges: -1 }, () => 0)).toThrow(/airChanges/);
  });
});

describe('a dehumidifier (seed 20276)', () => {
  // By hand: 2e-5 kg/s at 0.5 kWh a litre are 36 W; steam tables give 2453 kJ/kg at 21 °C (2501 − 2.37 per kelvin), 49.1 W.
  it('by hand: 1.7 litres a day at 0.5 kWh a litre', () => {
    const state = dehumidifier(2e-5, kelvin(21), 1.8e6);
    expect(state.removed).toBe(2e-5);
    expect(state.electricity).toBeCloseTo(36, 12);
    expect(state.latentHeat).toBeCloseTo(49.1, 0);
    expect(state.heatToRoom).toBeCloseTo(85.1, 0);
  });

  it('takes out what evaporates and gives back its latent heat and its electricity, to 1e-9', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e-2, noNaN: true }),
        fc.double({ min: kelvin(0), max: kelvin(45), noNaN: true }),
        fc.double({ min: 0, max: 2e7, noNaN: true }),
        (evaporation, temperature, energy) => {
          const state = dehumidifier(evaporation, temperature, energy);
          const condensed = evaporation * latentHeat(temperature);
          expect(state.removed).toBe(evaporation);
          expect(Math.abs(state.latentHeat - condensed)).toBeLessThanOrEqual(1e-9 * condensed);
          expect(Math.abs(state.heatToRoom - condensed - evaporation * energy)).toBeLessThanOrEqual(
            1e-9 * state.heatToRoom,
          );
        },
      ),
      { seed: 20276, numRuns: 300 },
    );
  });

  it('stands still where nothing evaporates, or vapour condenses on the water', () => {
    const still = { removed: 0, electricity: 0, latentHeat: 0, heatToRoom: 0 };
    expect(dehumidifier(0, kelvin(21), 1.8e6)).toEqual(still);
    expect(dehumidifier(-1e-6, kelvin(21), 1.8e6)).toEqual(still);
  });

  it('refuses energy below nothing and what is no number', () => {
    expect(() => dehumidifier(1e-5, kelvin(21), -1)).toThrow(/energyPerLitre/);
    expect(() => dehumidifier(Number.NaN, kelvin(21), 1e6)).toThrow(/evaporation/);
    expect(() => dehumidifier(1e-5, 0, 1e6)).toThrow(/room.temperature/);
  });
});
