"""Reference states: what the library says of seeded random states."""

import math
import random

import CoolProp
from CoolProp.CoolProp import AbstractState

from exporting.equation import LIBRARY_VERSION


def properties(state, shift, single_phase):
    row = {
        "temperature": state.T(),
        "pressure": state.p(),
        "density": state.rhomass(),
        "enthalpy": state.hmass() + shift[0],
        "entropy": state.smass() + shift[1],
        "internalEnergy": state.umass() + shift[0],
    }
    if single_phase:
        row |= {"cp": state.cpmass(), "cv": state.cvmass(), "soundSpeed": state.speed_sound()}
    return row


def near_critical(row, record):
    critical = record["critical"]
    density = critical["molarDensity"] * record["molarMass"]
    close_in_temperature = abs(row["temperature"] / critical["temperature"] - 1) < 0.02
    return close_in_temperature and 0.5 < row["density"] / density < 1.6


def single_phase_rows(state, record, shift, count, chance):
    """Random states: temperature uniform, pressure log-uniform; properties taken at the density found, not at p."""
    limits, rows = record["limits"], []
    while len(rows) < count:
        temperature = chance.uniform(limits["temperatureMin"], limits["temperatureMax"])
        pressure = math.exp(chance.uniform(math.log(1e3), math.log(min(limits["pressureMax"], 6e7))))
        if temperature < record["critical"]["temperature"]:
            state.update(CoolProp.QT_INPUTS, 0, temperature)
            if abs(pressure / state.p() - 1) < 1e-4:
                continue
        state.update(CoolProp.PT_INPUTS, pressure, temperature)
        state.update(CoolProp.DmolarT_INPUTS, state.rhomolar(), temperature)
        row = properties(state, shift, True)
        rows.append({"kind": "single", "nearCritical": near_critical(row, record), **row})
    return rows


def equilibrium_pressure(state, temperature):
    """Pressure of the equation at the equilibrium vapour density.

    The library's own value comes from a fitted curve with an absolute error: good to 1e-12 almost everywhere, but off by
    up to 6e-4 where the pressure is below 1 Pa. Its densities are good everywhere.
    """
    state.update(CoolProp.QT_INPUTS, 1, temperature)
    density = state.rhomolar()
    state.specify_phase(CoolProp.iphase_gas)
    state.update(CoolProp.DmolarT_INPUTS, density, temperature)
    pressure = state.p()
    state.unspecify_phase()
    return pressure


def saturation_rows(state, record, shift, chance):
    critical, start = record["critical"]["temperature"], record["limits"]["temperatureMin"]
    grid = [critical * f for f in (0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.94, 0.97,
                                   0.98, 0.985, 0.99, 0.995, 0.998, 0.999, 0.9995, 0.9999)]
    temperatures = [start + 0.01] + [t for t in grid if t > start]
    temperatures += [chance.uniform(start, 0.98 * critical) for _ in range(40)]
    rows = []
    for temperature in temperatures:
        pressure = equilibrium_pressure(state, temperature)
        for quality in (0, 1):
            state.update(CoolProp.QT_INPUTS, quality, temperature)
            row = properties(state, shift, True) | {"pressure": pressure}
            close = temperature > 0.985 * critical
            rows.append({"kind": "saturation", "nearCritical": close, **row, "quality": quality})
    return rows


def two_phase_rows(state, record, shift, count, chance):
    rows = []
    for _ in range(count):
        temperature = chance.uniform(record["limits"]["temperatureMin"], 0.999 * record["critical"]["temperature"])
        quality = chance.uniform(0.001, 0.999)
        pressure = equilibrium_pressure(state, temperature)
        state.update(CoolProp.QT_INPUTS, quality, temperature)
        row = properties(state, shift, False) | {"pressure": pressure}
        close = temperature > 0.985 * record["critical"]["temperature"]
        rows.append({"kind": "twoPhase", "nearCritical": close, **row, "quality": quality})
    return rows


def reference_record(record, library_name):
    state = AbstractState("HEOS", library_name)
    state.update(CoolProp.QT_INPUTS, 0, 273.15)
    shift = (200e3 - state.hmass(), 1e3 - state.smass())
    chance = random.Random(f"{record['name']} reference states")
    return {
        "refrigerant": record["name"],
        "source": f"CoolProp {LIBRARY_VERSION}, equation: {record['citations']['equation']}",
        "referenceState": "200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 degrees Celsius",
        "coefficients": record["source"]["sha256"],
        "rows": single_phase_rows(state, record, shift, 260, chance)
        + saturation_rows(state, record, shift, chance)
        + two_phase_rows(state, record, shift, 80, chance),
    }


