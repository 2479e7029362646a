#!/usr/bin/env python3
"""Writes the coefficient files of this folder and the reference states of tests/reference/refrigerants/.

Source: the open thermophysical library CoolProp 8.0.0 (MIT licence; its notice stands in COOLPROP-LICENSE.txt).
Nothing else in the project needs Python; run this only to add a fluid or to move to another version of the library:

    python3 -m venv .venv && .venv/bin/pip install CoolProp==8.0.0
    .venv/bin/python data/refrigerants/export.py

A further fluid is one line in FLUIDS (and one import in src/matter/refrigerants/library.ts). The ancillary curves that
are exported are first guesses only: the program solves the phase equilibrium itself. No offset of a reference state is
exported either; the program computes it, and every enthalpy and entropy of the reference states below is written for
200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 degrees Celsius.
"""

import hashlib
import json
import math
import pathlib
import random

import CoolProp
from CoolProp.CoolProp import AbstractState, get_fluid_param_string

LIBRARY_VERSION = "8.0.0"
HERE = pathlib.Path(__file__).resolve().parent
REFERENCE = HERE.parents[1] / "tests" / "reference" / "refrigerants"

# name here, name in the library, other names people write, equation of state, surface tension
MULERO = "A. Mulero, I. Cachadina, M. I. Parra (2012), J. Phys. Chem. Ref. Data 41, 043105"
FLUIDS = [
    ("R134a", "R134a", ["HFC-134a", "1,1,1,2-tetrafluoroethane"],
     "R. Tillner-Roth, H. D. Baehr (1994), J. Phys. Chem. Ref. Data 23, 657", MULERO),
    ("R600a", "IsoButane", ["isobutane", "HC-600a", "2-methylpropane"],
     "D. Buecker, W. Wagner (2006), J. Phys. Chem. Ref. Data 35, 929", MULERO),
    ("R290", "n-Propane", ["propane", "HC-290"],
     "E. W. Lemmon, M. O. McLinden, W. Wagner (2009), J. Chem. Eng. Data 54, 3141", MULERO),
    ("R12", "R12", ["CFC-12", "dichlorodifluoromethane"],
     "V. Marx, A. Pruss, W. Wagner (1992), VDI Fortschritt-Berichte 19/57", MULERO),
    ("R22", "R22", ["HCFC-22", "chlorodifluoromethane"],
     "A. Kamei, S. W. Beyerlein, R. T Jacobsen (1995), Int. J. Thermophys. 16, 1155", MULERO),
]

# Fluids that the program does not offer yet but whose equations hold the kinds of terms that the five above do not:
# every kind is checked term by term against the library. Water is also checked against the table of its own release.
TERM_FLUIDS = ["Water", "R125", "Ammonia", "CarbonDioxide", "R152A", "R134a", "IsoButane", "R22"]

# The library's name of a kind of term -> (name here, columns: name there -> name here)
RESIDUAL_KINDS = {
    "ResidualHelmholtzPower": ("power", {"n": "n", "d": "d", "t": "t", "l": "l"}),
    "ResidualHelmholtzGaussian": ("gaussian", {k: k for k in ("n", "d", "t", "eta", "epsilon", "beta", "gamma")}),
    "ResidualHelmholtzLemmon2005": ("doubleExponential", {k: k for k in ("n", "d", "t", "l", "m")}),
    "ResidualHelmholtzGaoB": ("secondGaussian", {k: k for k in ("n", "d", "t", "eta", "epsilon", "beta", "gamma", "b")}),
    "ResidualHelmholtzNonAnalytic": ("nonAnalytic", {k: k for k in ("n", "a", "b", "beta", "A", "B", "C", "D")}),
}
IDEAL_KINDS = {
    "IdealGasHelmholtzLead": ("lead", {"a1": "constant", "a2": "slope"}),
    "IdealGasHelmholtzLogTau": ("logTau", {"a": "factor"}),
    "IdealGasHelmholtzPower": ("power", {"n": "n", "t": "t"}),
    "IdealGasHelmholtzPlanckEinstein": ("planckEinstein", {"n": "n", "t": "theta"}),
    "IdealGasHelmholtzCP0Constant": (
        "constantHeatCapacity", {"cp_over_R": "heatCapacity", "T0": "startTemperature", "Tc": "scalingTemperature"}),
    "IdealGasHelmholtzCP0PolyT": (
        "polynomialHeatCapacity", {"c": "c", "t": "t", "T0": "startTemperature", "Tc": "scalingTemperature"}),
    "IdealGasHelmholtzEnthalpyEntropyOffset": ("offset", {"a1": "constant", "a2": "slope"}),
}


def renamed(term, kinds, where):
    """One term of the library under the names of this project. An unknown kind stops the export."""
    if term["type"] not in kinds:
        raise SystemExit(f"{where}: no name for the kind of term {term['type']}")
    kind, columns = kinds[term["type"]]
    known = set(columns) | {"type", "reference"}
    if set(term) - known:
        raise SystemExit(f"{where}: {term['type']} has unknown columns {sorted(set(term) - known)}")
    return {"type": kind, **{here: term[there] for there, here in columns.items()}}


def ancillary(curve, form):
    """A curve of the library for first guesses; `form` says how to evaluate it."""
    return {
        "form": form,
        "reducingTemperature": curve["T_r"],
        "reducingValue": curve["reducing_value"],
        "n": curve["n"],
        "t": curve["t"],
    }


ANCILLARY_FORMS = {True: "exponentialTau", False: "exponential"}


def fluid_record(name, library_name, aliases, equation, tension):
    fluid = json.loads(get_fluid_param_string(library_name, "JSON"))[0]
    eos = fluid["EOS"][0]
    dense = eos.pop("SUPERANCILLARY")
    curves = fluid["ANCILLARIES"]
    if eos["pseudo_pure"]:
        raise SystemExit(f"{name}: blends need bubble and dew curves, which are not exported yet")
    state = AbstractState("HEOS", library_name)
    state.update(CoolProp.DmolarT_INPUTS, dense["meta"]["rhocrittrue / mol/m^3"], dense["meta"]["Tcrittrue / K"])
    forms = {"rhoLnoexp": "sum", "pV": None, "pL": None, "rhoV": None, "rhoL": None}

    def guess(key):
        curve = curves[key]
        form = forms[curve["type"]] or ANCILLARY_FORMS[curve["using_tau_r"]]
        return ancillary(curve, form)

    near = dense["crit_anc"]
    return {
        "name": name,
        "aliases": aliases,
        "source": {
            "library": "CoolProp",
            "version": LIBRARY_VERSION,
            "licence": "MIT, see COOLPROP-LICENSE.txt",
            "fluidName": library_name,
            "sha256": hashlib.sha256(json.dumps(fluid, sort_keys=True).encode()).hexdigest(),
            "script": "data/refrigerants/export.py",
        },
        "citations": {"equation": equation, "surfaceTension": tension},
        "molarMass": eos["molar_mass"],
        "gasConstant": eos["gas_constant"],
        "reducing": {
            "temperature": eos["STATES"]["reducing"]["T"],
            "molarDensity": eos["STATES"]["reducing"]["rhomolar"],
        },
        "critical": {
            "temperature": dense["meta"]["Tcrittrue / K"],
            "pressure": state.p(),
            "molarDensity": dense["meta"]["rhocrittrue / mol/m^3"],
        },
        "triplePoint": {"temperature": eos["Ttriple"]},
        "limits": {
            "temperatureMin": eos["STATES"]["sat_min_liquid"]["T"],
            "temperatureMax": eos["T_max"],
            "pressureMax": eos["p_max"],
        },
        "ideal": [renamed(term, IDEAL_KINDS, name) for term in eos["alpha0"]],
        "residual": [renamed(term, RESIDUAL_KINDS, name) for term in eos["alphar"]],
        "firstGuess": {
            "pressure": guess("pS"),
            "liquidMolarDensity": guess("rhoL"),
            "vapourMolarDensity": guess("rhoV"),
            "nearCritical": {"distanceMax": near["Theta_min"], "liquid": near["cL"], "vapour": near["cV"]},
        },
        "surfaceTension": {
            "criticalTemperature": curves["surface_tension"]["Tc"],
            "a": curves["surface_tension"]["a"],
            "n": curves["surface_tension"]["n"],
        },
    }


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


def write(path, record):
    lines = json.dumps(record, indent=1)
    path.write_text(lines + "\n", encoding="utf-8")
    print(path.relative_to(HERE.parents[1]), len(lines))


def write_rows(path, record):
    """Like write(), one row a line: a change in one state is then one line of a comparison."""
    head = json.dumps({k: v for k, v in record.items() if k != "rows"}, indent=1)[:-2]
    rows = ",\n  ".join(json.dumps(row) for row in record["rows"])
    path.write_text(f'{head},\n "rows": [\n  {rows}\n ]\n}}\n', encoding="utf-8")
    print(path.relative_to(HERE.parents[1]), len(record["rows"]), "rows")


def main():
    if CoolProp.__version__ != LIBRARY_VERSION:
        raise SystemExit(f"CoolProp {LIBRARY_VERSION} wanted, {CoolProp.__version__} found")
    REFERENCE.mkdir(parents=True, exist_ok=True)
    for name, library_name, aliases, equation, tension in FLUIDS:
        record = fluid_record(name, library_name, aliases, equation, tension)
        write(HERE / f"{name}.json", record)
        write_rows(REFERENCE / f"{name}.json", reference_record(record, library_name))
    write(REFERENCE / "terms.json", {
        "source": f"CoolProp {LIBRARY_VERSION}; residual: phi, phi_d, phi_t, phi_dd, phi_dt, phi_tt; ideal: phi, phi_t, phi_tt",
        "fluids": [term_record(library_name) for library_name in TERM_FLUIDS],
    })


if __name__ == "__main__":
    main()
