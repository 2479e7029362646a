"""Writes states.json: what CoolProp 8.0.0 (pip install CoolProp) says of the four blends at the ends of their lines, inside
their domes and close beside them. Run by hand: python tests/reference/refrigerants/blends/make.py

Sides of the dome: QT_INPUTS at quality 0 and 1. Mixtures: PQ_INPUTS. Beside the lines: the equation at a density and a
temperature, phase imposed. Enthalpy and entropy are shifted to 200 kJ/kg and 1 kJ/(kg K) at the bubble point at 273.15 K.
"""

import json
import math
import random
from pathlib import Path

import CoolProp

BLENDS = ("R404A", "R407C", "R410A", "R507A")
# Relative distances from the critical temperature, close to it and far from it.
DISTANCES = (1e-5, 3e-5, 1e-4, 3e-4, 1e-3, 2e-3, 3e-3, 1e-2, 3e-2, 0.1, 0.2, 0.3, 0.4)


def states_of(name):
    state = CoolProp.AbstractState("HEOS", name)
    critical_temperature, critical_pressure = state.T_critical(), state.p_critical()
    chance = random.Random(f"{name} lines")
    state.update(CoolProp.QT_INPUTS, 0, 273.15)
    shift = (200e3 - state.hmass(), 1e3 - state.smass())

    def at(temperature, density, phase):
        state.specify_phase(phase)
        state.update(CoolProp.DmassT_INPUTS, density, temperature)
        row = [temperature, state.p(), density, state.hmass() + shift[0], state.smass() + shift[1],
               state.cpmass(), state.speed_sound()]
        state.unspecify_phase()
        return row

    def side(temperature, quality):
        state.update(CoolProp.QT_INPUTS, quality, temperature)
        return state.rhomass(), state.p()

    lines, mixtures, beside = [], [], []
    for distance in (*DISTANCES, *(chance.uniform(1e-3, 0.42) for _ in range(20))):
        temperature = max(critical_temperature * (1 - distance), 200.0)
        for quality in (0, 1):
            phase = (CoolProp.iphase_liquid, CoolProp.iphase_gas)[quality]
            density, pressure = side(temperature, quality)
            row = at(temperature, density, phase)
            lines.append([quality, temperature, pressure, *row[2:]])
            # A per mille of the density into the single phase.
            beside.append([quality, *at(temperature, density * (1 + (1e-3, -1e-3)[quality]), phase)])
    lowest = side(200.001, 0)[1]
    for _ in range(40):
        pressure = math.exp(chance.uniform(math.log(lowest), math.log(0.999 * critical_pressure)))
        quality = chance.random()
        state.update(CoolProp.PQ_INPUTS, pressure, quality)
        mixtures.append([quality, state.T(), pressure, state.rhomass(), state.hmass() + shift[0], state.smass() + shift[1]])
    return {"lines": lines, "beside": beside, "mixtures": mixtures}


if __name__ == "__main__":
    record = {
        "source": "CoolProp 8.0.0, HEOS; E. W. Lemmon (2003), Int. J. Thermophys. 24, 991; seeds '<name> lines'; make.py",
        "columns": {
            "lines": ["quality", "temperature", "pressure", "density", "enthalpy", "entropy", "cp", "soundSpeed"],
            "beside": ["side", "temperature", "pressure", "density", "enthalpy", "entropy", "cp", "soundSpeed"],
            "mixtures": ["quality", "temperature", "pressure", "density", "enthalpy", "entropy"],
        },
        "blends": {name: states_of(name) for name in BLENDS},
    }
    def rows(table):
        return "[\n" + ",\n".join("        " + json.dumps([float(f"{v:.15g}") for v in row]) for row in table) + "\n      ]"
    parts = [f'    "{name}": {{\n' + ",\n".join(f'      "{key}": {rows(table)}' for key, table in tables.items()) + "\n    }"
             for name, tables in record["blends"].items()]
    text = (f'{{\n  "source": {json.dumps(record["source"])},\n  "columns": {json.dumps(record["columns"])},\n'
            '  "blends": {\n' + ",\n".join(parts) + "\n  }\n}\n")
    Path(__file__).with_name("states.json").write_text(text, encoding="utf-8")
