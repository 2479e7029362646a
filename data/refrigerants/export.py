#!/usr/bin/env python3
"""Writes the coefficient files of this folder and the reference states of tests/reference/refrigerants/.

Source: the open thermophysical library CoolProp 8.0.0 (MIT licence; its notice stands in COOLPROP-LICENSE.txt).
Nothing else in the project needs Python; run this only to add a fluid or to move to another version of the library:

    python3 -m venv .venv && .venv/bin/pip install CoolProp==8.0.0 scipy
    .venv/bin/python data/refrigerants/export.py [coefficients] [terms] [states] [transport] [derivatives]

What is exported, by file of exporting/: fluids.py, equation.py, transport.py, terms.py, reference_states.py,
transport_states.py, derivatives.py. The curves of a pure fluid's dome are first guesses only: the program solves the phase equilibrium
itself. Those of a blend's bubble and dew pressure are part of its published equation. No offset of a reference state is
exported; the program computes it, and every enthalpy and entropy of the reference states is written for 200 kJ/kg and
1 kJ/(kg K) in the saturated liquid at 0 degrees Celsius.
"""

import json
import pathlib
import re
import sys

import CoolProp

from exporting.derivatives import derivatives_record
from exporting.equation import LIBRARY_VERSION, fluid_record
from exporting.fluids import FLUIDS
from exporting.reference_states import reference_text
from exporting.terms import TERM_FLUIDS, term_record
from exporting.transport import reference_fluids
from exporting.transport_states import transport_text

HERE = pathlib.Path(__file__).resolve().parent
REFERENCE = HERE.parents[1] / "tests" / "reference" / "refrigerants"


def write(path, record):
    lines = json.dumps(record, indent=1)
    path.write_text(lines + "\n", encoding="utf-8")
    print(path.relative_to(HERE.parents[1]), len(lines))


def write_table(path, record):
    """A record whose innermost lists stand on one line each."""
    lines = re.sub(r"\[\s+([^\[\]{}]*?)\s+\]", lambda match: "[" + re.sub(r"\s+", " ", match[1]) + "]", json.dumps(record, indent=1))
    path.write_text(lines + "\n", encoding="utf-8")
    print(path.relative_to(HERE.parents[1]), len(lines))


def write_states(path, text):
    """Tables of text, one state a line: a change in one state is then one line of a comparison."""
    path.write_text(text, encoding="utf-8")
    print(path.relative_to(HERE.parents[1]), text.count("\n"), "lines")


def name_record(record):
    """Entry of the list of names: what else a fluid is called, and whose files its models of transport reckon with."""
    others = reference_fluids(record)
    needs = {"needs": others} if others else {}
    return {"name": record["name"], "aliases": record["aliases"], **needs}


def main(wanted):
    if CoolProp.__version__ != LIBRARY_VERSION:
        raise SystemExit(f"CoolProp {LIBRARY_VERSION} wanted, {CoolProp.__version__} found")
    (REFERENCE / "states").mkdir(parents=True, exist_ok=True)
    (REFERENCE / "transport" / "states").mkdir(parents=True, exist_ok=True)
    records = [fluid_record(*fluid) for fluid in FLUIDS]
    if "coefficients" in wanted:
        write(HERE / "names.json", [name_record(record) for record in records])
    for fluid, record in zip(FLUIDS, records):
        if "coefficients" in wanted:
            write(HERE / f"{record['name']}.json", record)
        if "states" in wanted:
            write_states(REFERENCE / "states" / f"{record['name']}.csv", reference_text(record, fluid[1]))
        if "transport" in wanted:
            write_states(REFERENCE / "transport" / "states" / f"{record['name']}.csv", transport_text(record, fluid[1]))
    if "terms" in wanted:
        write(REFERENCE / "terms.json", {
            "source": f"CoolProp {LIBRARY_VERSION}; residual: phi, phi_d, phi_t, phi_dd, phi_dt, phi_tt; ideal: phi, phi_t, phi_tt",
            "fluids": [term_record(library_name) for library_name in TERM_FLUIDS],
        })
    if "derivatives" in wanted:
        pairs = [(record, fluid[1]) for fluid, record in zip(FLUIDS, records)]
        write_table(REFERENCE / "derivatives.json", derivatives_record(pairs))


if __name__ == "__main__":
    main(sys.argv[1:] or ["coefficients", "terms", "states", "transport", "derivatives"])
