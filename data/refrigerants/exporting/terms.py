"""Values of the terms of an equation at seeded random states: each kind of term is checked by itself."""

import json
import random

import CoolProp
from CoolProp.CoolProp import AbstractState, get_fluid_param_string

from exporting.equation import IDEAL_KINDS, RESIDUAL_KINDS, renamed

# Between them they hold every kind of term. Water is also checked against the table of its own release.
TERM_FLUIDS = ["Water", "R125", "Ammonia", "CarbonDioxide", "R152A", "R134a", "IsoButane", "R22"]


def term_record(library_name):
    """Equation of a fluid with the values of both parts and their derivatives at seeded random states."""
    eos = json.loads(get_fluid_param_string(library_name, "JSON"))[0]["EOS"][0]
    state = AbstractState("HEOS", library_name)
    chance = random.Random(f"{library_name} terms")
    reducing = {
        "temperature": eos["STATES"]["reducing"]["T"],
        "molarDensity": eos["STATES"]["reducing"]["rhomolar"],
    }
    points = [(chance.uniform(0.55, 1.6), chance.uniform(0.01, 3.0)) for _ in range(40)]
    points += [(1.001, 1.001), (0.999, 0.998), (1.0005, 0.97)]
    # Thin gas: terms without a power of density cancel each other there.
    points += [(0.7, 1e-3), (1.0, 1e-5), (1.4, 1e-8)]
    if library_name == "Water":
        points += [(500 / reducing["temperature"], 838.025 / 322)]
    rows = []
    state.specify_phase(CoolProp.iphase_gas)
    for temperature_ratio, delta in points:
        temperature = temperature_ratio * reducing["temperature"]
        state.update(CoolProp.DmolarT_INPUTS, delta * reducing["molarDensity"], temperature)
        rows.append({
            "temperature": temperature,
            "delta": delta,
            "tau": state.tau(),
            "residual": [state.alphar(), state.dalphar_dDelta(), state.dalphar_dTau(), state.d2alphar_dDelta2(),
                         state.d2alphar_dDelta_dTau(), state.d2alphar_dTau2()],
            "ideal": [state.alpha0(), state.dalpha0_dTau(), state.d2alpha0_dTau2()],
        })
    return {
        "name": library_name,
        "gasConstant": eos["gas_constant"],
        "molarMass": eos["molar_mass"],
        "reducing": reducing,
        "ideal": [renamed(term, IDEAL_KINDS, library_name) for term in eos["alpha0"]],
        "residual": [renamed(term, RESIDUAL_KINDS, library_name) for term in eos["alphar"]],
        "rows": rows,
    }


