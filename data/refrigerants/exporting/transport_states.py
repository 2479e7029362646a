"""Reference states of transport: what the library says of viscosity, conductivity and surface tension at seeded random states.

Given numbers are rounded first, so that a row means exactly one state: temperature to 1e-3 K, density to 9 digits. Where the
library's corresponding states find no answer (cold thin vapours of some fluids), or one below 0, or its equation none, there
is no row, and the head says how many draws were lost so.
"""

import math
import random

import CoolProp
from CoolProp.CoolProp import AbstractState

from exporting.equation import LIBRARY_VERSION

COLUMNS = ("region", "temperature", "density", "viscosity", "conductivity", "surfaceTension")
# How many of each region. Most lie where refrigerant loops work, some over the whole range of the equation.
COUNTS = {"liquid": 30, "vapour": 30, "superheated": 40, "compressed": 30, "supercritical": 15, "anywhere": 25}
# Where refrigerant loops work [K].
COLDEST, WARMEST = 200.0, 450.0
# No side of the dome nearer to the critical temperature than this share of it.
NEAREST = 0.999


class Limits:
    def __init__(self, record):
        critical, limits = record["critical"], record["limits"]
        self.critical_temperature = critical["temperature"]
        self.critical_pressure = critical["pressure"]
        self.coldest, self.warmest = limits["temperatureMin"], limits["temperatureMax"]
        self.highest_pressure = limits["pressureMax"]


def drawn(region, limits, chance):
    """Temperature and pressure of one phase, or a temperature and a side of the dome."""
    cold, warm = max(limits.coldest, COLDEST), min(limits.warmest, WARMEST)
    critical = limits.critical_temperature
    if region in ("liquid", "vapour"):
        highest = min(warm, NEAREST * critical)
        # A third of them in the uppermost tenth, where everything changes fast.
        lowest = 0.9 * highest if chance.random() < 1 / 3 else cold
        return chance.uniform(lowest, highest), 0 if region == "liquid" else 1
    log_uniform = lambda low, high: math.exp(chance.uniform(math.log(low), math.log(high)))
    if region == "superheated":
        return chance.uniform(cold, warm), log_uniform(1e3, limits.critical_pressure)
    if region == "compressed":
        return chance.uniform(cold, min(warm, critical)), log_uniform(1e5, min(30e6, limits.highest_pressure))
    if region == "supercritical":
        highest = min(4 * limits.critical_pressure, limits.highest_pressure)
        return chance.uniform(critical, limits.warmest), log_uniform(limits.critical_pressure, highest)
    return chance.uniform(limits.coldest, limits.warmest), log_uniform(10, limits.highest_pressure)


def side_row(state, region, temperature, quality):
    state.unspecify_phase()
    state.update(CoolProp.QT_INPUTS, quality, temperature)
    tension = state.surface_tension()
    return single_row(state, region, temperature, state.rhomass()) | {"surfaceTension": tension}


def single_row(state, region, temperature, density):
    state.specify_phase(CoolProp.iphase_gas)
    state.update(CoolProp.DmassT_INPUTS, density, temperature)
    row = {"region": region, "temperature": temperature, "density": density,
           "viscosity": state.viscosity(), "conductivity": state.conductivity(), "surfaceTension": None}
    state.unspecify_phase()
    return row


def state_row(state, region, limits, chance):
    """A row of a region, or None where this draw gives none: not that region, or no answer of the library."""
    temperature, given = drawn(region, limits, chance)
    temperature = round(temperature, 3)
    try:
        if region in ("liquid", "vapour"):
            return side_row(state, region, temperature, given)
        state.unspecify_phase()
        state.update(CoolProp.PT_INPUTS, given, temperature)
        density = float(f"{state.rhomass():.9g}")
        is_liquid = state.phase() in (CoolProp.iphase_liquid, CoolProp.iphase_supercritical_liquid)
        if region == "superheated" and is_liquid or region == "compressed" and not is_liquid:
            return None
        return single_row(state, region, temperature, density)
    except ValueError:
        return "lost"


def transport_text(record, library_name):
    """The file of a fluid: head lines with #, then a table."""
    state, limits = AbstractState("HEOS", library_name), Limits(record)
    seed = f"{record['name']} transport states"
    chance = random.Random(seed)
    rows, lost = [], 0
    for region, count in COUNTS.items():
        found = 0
        for _ in range(50 * count):
            if found == count:
                break
            row = state_row(state, region, limits, chance)
            if row == "lost" or row is not None and not min(row["viscosity"], row["conductivity"]) > 0:
                lost += 1
            elif row is not None:
                rows.append(row)
                found += 1
    models = record["transport"]
    head = {
        "refrigerant": record["name"],
        "source": f"CoolProp {LIBRARY_VERSION}",
        "viscosity": models["viscosity"]["source"],
        "conductivity": models["conductivity"]["source"],
        "surface tension": record["citations"]["surfaceTension"],
        "script": "data/refrigerants/export.py",
        "seed": seed,
        "coefficients": record["source"]["sha256"],
        "units": "K, kg/m3, Pa s, W/(m K), N/m",
        "given": "temperature and density; of a side of the dome, temperature and that side",
        "draws without an answer": lost,
    }
    text = lambda value: "" if value is None else value if isinstance(value, str) else format(value, ".10g")
    lines = [f"# {key}: {value}" for key, value in head.items()]
    lines += [",".join(COLUMNS), *(",".join(text(row[key]) for key in COLUMNS) for row in rows)]
    return "\n".join(lines) + "\n"
