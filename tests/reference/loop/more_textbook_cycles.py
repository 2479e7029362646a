"""Twenty textbook cycles each of the four blends and of six more fluids, computed with the open thermophysical library CoolProp
(MIT), for the tests of src/loop.

Usage: python tests/reference/loop/more_textbook_cycles.py > tests/reference/loop/more-textbook-cycles.json
Needs the package CoolProp. Nothing of the project's own code takes part. Conditions are seeded by the name of the fluid.
Evaporating and condensing are dew temperatures; of a blend the liquid is subcooled below the bubble temperature that the
library's own curve has at the condensing pressure. Enthalpies and entropies count from 200 kJ/kg and 1 kJ/(kg K) in the
saturated liquid (of a blend, on its bubble line) at 0 degrees Celsius; for water there at 273.16 K.
"""

import json
import random

import CoolProp
from CoolProp import DmassT_INPUTS, HmassP_INPUTS, PQ_INPUTS, PSmass_INPUTS, PT_INPUTS, QT_INPUTS

# Evaporating and condensing temperatures to draw from [K].
USUAL = ((243.15, 285.15), (300.15, 328.15))
RANGES = {
    "R404A": USUAL, "R407C": USUAL, "R410A": USUAL, "R507A": USUAL,
    "R32": ((253.15, 285.15), (300.15, 323.15)),
    "R744": ((228.15, 270.15), (276.15, 301.15)),
    "R717": USUAL, "R1234yf": USUAL, "R600": USUAL,
    "R718": ((278.15, 300.15), (310.15, 350.15)),
}
LIBRARY_NAMES = {"R717": "Ammonia", "R744": "CO2", "R718": "Water", "R600": "n-Butane"}
COUNT = 20
COLUMNS = [
    "evaporating", "condensing", "superheat", "subcooling", "isentropicEfficiency",
    "p_evaporating", "p_condensing", "h_1", "h_2s", "h_2", "h_3", "s_1", "s_2", "s_3", "s_4", "T_2", "T_3", "T_4", "x_4",
    "heatingCop", "volumetricHeatingCapacity",
]


def cycle(state, shift, conditions):
    evaporating, condensing, superheat, subcooling, efficiency = conditions

    def values(pair, first, second, phase=None):
        if phase is not None:
            state.specify_phase(phase)
        state.update(pair, first, second)
        if phase is not None:
            state.unspecify_phase()
        return state.hmass() + shift[0], state.smass() + shift[1]

    state.update(QT_INPUTS, 1, evaporating)
    p_low = state.p()
    state.update(QT_INPUTS, 1, condensing)
    p_high = state.p()
    if superheat == 0:
        h1, s1 = values(QT_INPUTS, 1, evaporating)
    else:
        h1, s1 = values(PT_INPUTS, p_low, evaporating + superheat, CoolProp.iphase_gas)
    d1 = state.rhomass()
    state.update(PQ_INPUTS, p_high, 0)
    t3 = state.T() - subcooling
    if subcooling == 0:
        h3, s3 = values(PQ_INPUTS, p_high, 0)
    else:
        h3, s3 = values(PT_INPUTS, p_high, t3, CoolProp.iphase_liquid)
    h2s, _ = values(PSmass_INPUTS, p_high, s1 - shift[1])
    h2 = h1 + (h2s - h1) / efficiency
    _, s2 = values(HmassP_INPUTS, h2 - shift[0], p_high)
    t2 = state.T()
    _, s4 = values(HmassP_INPUTS, h3 - shift[0], p_low)
    t4, x4 = state.T(), state.Q()
    return [*conditions, p_low, p_high, h1, h2s, h2, h3, s1, s2, s3, s4, t2, t3, t4, x4,
            (h2 - h3) / (h2 - h1), (h2 - h3) * d1]


def cycles_of(name):
    state = CoolProp.AbstractState("HEOS", LIBRARY_NAMES.get(name, name))
    state.update(QT_INPUTS, 0, max(273.15, state.Tmin() if name == "R718" else 0))
    shift = (200e3 - state.hmass(), 1e3 - state.smass())
    if name == "R718":
        # The zero lies 0.01 K below the triple point: from there along the saturated liquid, dh = v dp + T ds, c = ds T/dT.
        heat_capacity = state.saturated_liquid_keyed_output(CoolProp.iCpmass)
        shift = (shift[0] + 0.01 * heat_capacity, shift[1] + 0.01 * heat_capacity / 273.155)
    chance = random.Random(f"{name} textbook cycles")
    (coldest, coolest), (warmest, hottest) = RANGES[name]
    rows = []
    for index in range(COUNT):
        conditions = (
            round(chance.uniform(coldest, coolest), 2),
            round(chance.uniform(warmest, hottest), 2),
            0 if index % 5 == 0 else round(chance.uniform(0.5, 12), 2),
            0 if index % 4 == 0 else round(chance.uniform(0.5, 9), 2),
            1 if index % 7 == 0 else round(chance.uniform(0.6, 0.95), 3),
        )
        rows.append(cycle(state, shift, conditions))
    return rows


def main():
    provenance = {
        "source": f"CoolProp {CoolProp.__version__}, HEOS; script tests/reference/loop/more_textbook_cycles.py",
        "licence": "CoolProp is MIT-licensed",
        "seeds": "'<name> textbook cycles'",
        "units": "base SI, mass basis",
    }
    tables = []
    for name in RANGES:
        rows = ",\n".join("   " + json.dumps(row) for row in cycles_of(name))
        tables.append(f'  "{name}": [\n{rows}\n  ]')
    print("{\n " + f'"provenance": {json.dumps(provenance)},\n "columns": {json.dumps(COLUMNS)},\n "cycles": {{\n'
          + ",\n".join(tables) + "\n }\n}")


main()
