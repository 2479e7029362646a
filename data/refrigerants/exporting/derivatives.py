"""Partial derivatives: what the library's chain rule gives at seeded random states of one phase, and along the saturation line.

Given numbers are rounded first (temperature to 1e-3 K, density to 7 digits); the library evaluates at exactly these, with the
phase imposed, so that no solver of its own stands between the numbers of a row.
"""

import math
import random

import CoolProp
from CoolProp.CoolProp import AbstractState

from exporting.equation import LIBRARY_VERSION

SYMBOLS = {
    "temperature": CoolProp.iT, "pressure": CoolProp.iP, "density": CoolProp.iDmass, "enthalpy": CoolProp.iHmass,
    "entropy": CoolProp.iSmass, "internalEnergy": CoolProp.iUmass,
}
# (of, over, held)
DERIVATIVES = [
    ("pressure", "density", "temperature"), ("pressure", "temperature", "density"), ("density", "temperature", "pressure"),
    ("density", "pressure", "enthalpy"), ("density", "enthalpy", "pressure"), ("temperature", "pressure", "enthalpy"),
    ("temperature", "enthalpy", "pressure"), ("temperature", "pressure", "entropy"), ("enthalpy", "pressure", "temperature"),
    ("enthalpy", "temperature", "pressure"), ("entropy", "pressure", "temperature"), ("density", "pressure", "entropy"),
    ("internalEnergy", "density", "enthalpy"), ("entropy", "internalEnergy", "density"),
]
STATES = 12
LINES = 4


def states_of(record, state, draw):
    """Temperatures and densities of stable states of one phase, apart from the critical point."""
    critical, limits = record["critical"], record["limits"]
    while True:
        temperature = round(draw.uniform(limits["temperatureMin"] + 5, limits["temperatureMax"]), 3)
        pressure = math.exp(draw.uniform(math.log(1e4), math.log(min(limits["pressureMax"], 1e8))))
        try:
            state.update(CoolProp.PT_INPUTS, pressure, temperature)
        except ValueError:
            continue
        if abs(temperature / critical["temperature"] - 1) < 0.03 and abs(pressure / critical["pressure"] - 1) < 0.3:
            continue
        if record["kind"] == "pseudoPure" and temperature < critical["temperature"]:
            # Clear of both lines, between which the equation means nothing.
            bubble, dew = AbstractState("HEOS", state.fluid_names()[0]), AbstractState("HEOS", state.fluid_names()[0])
            bubble.update(CoolProp.QT_INPUTS, 0, temperature)
            dew.update(CoolProp.QT_INPUTS, 1, temperature)
            if 0.9 * dew.p() < pressure < 1.1 * bubble.p():
                continue
        yield temperature, float(f"{state.rhomass():.7g}")


def derivative_record(record, library_name):
    draw = random.Random(f"{record['name']} derivatives")
    state = AbstractState("HEOS", library_name)
    imposed = AbstractState("HEOS", library_name)
    imposed.specify_phase(CoolProp.iphase_gas)
    rows = []
    for (temperature, density), _ in zip(states_of(record, state, draw), range(STATES)):
        imposed.update(CoolProp.DmassT_INPUTS, density, temperature)
        values = [imposed.first_partial_deriv(*(SYMBOLS[name] for name in names)) for names in DERIVATIVES]
        rows.append([temperature, density, *values])
    lines = []
    if record["kind"] == "pure":
        for _ in range(LINES):
            coldest, warmest = record["limits"]["temperatureMin"], record["critical"]["temperature"]
            temperature = round(draw.uniform(coldest + 0.2 * (warmest - coldest), 0.97 * warmest), 3)
            state.update(CoolProp.QT_INPUTS, 1, temperature)
            lines.append([temperature, state.first_saturation_deriv(CoolProp.iP, CoolProp.iT)])
    return {"refrigerant": record["name"], "states": rows, "saturation": lines}


def derivatives_record(fluids):
    """`fluids`: pairs of a coefficient record and the library's name."""
    return {
        "source": f"CoolProp {LIBRARY_VERSION}, first_partial_deriv and first_saturation_deriv; seeds: '<name> derivatives'",
        "derivatives": [list(names) for names in DERIVATIVES],
        "fluids": [derivative_record(record, library_name) for record, library_name in fluids],
    }
