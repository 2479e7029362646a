"""Coefficient file of one fluid: the equation, its limits, first guesses for the dome, surface tension, melting line; the
models of viscosity and conductivity come from transport.py."""

import hashlib
import json

import CoolProp
from CoolProp.CoolProp import AbstractState, get_fluid_param_string

from exporting.fluids import WATER_TENSION
from exporting.transport import transport_record

LIBRARY_VERSION = "8.0.0"

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


GUESS_FORMS = {"rhoLnoexp": "sum", "pV": None, "pL": None, "rhoV": None, "rhoL": None}


def curve_record(curve):
    return ancillary(curve, GUESS_FORMS[curve["type"]] or ANCILLARY_FORMS[curve["using_tau_r"]])


# The library's name of a form of melting line -> name here. Each part: p over T between two temperatures.
MELTING_FORMS = {"Simon": "power", "polynomial_in_Tr": "powersOfRatio", "polynomial_in_Theta": "powersOfDistance"}


# Misprints of the library: (name there, first pressure there) -> as the source has it.
# Water, ice VI begins at 632.4 MPa (IAPWS R14-08(2011), Table 1); its check value of 1356.76 MPa at 320 K decides it, and
# so does ice V, which reaches 632.4 MPa at 273.31 K.
MELTING_CORRECTIONS = {("Water", 623400000): 632400000}


def melting_line(curve, library_name):
    """p0 + a ((T/T0)^c - 1); p0 (1 + sum a ((T/T0)^t - 1)); p0 (1 + sum a (T/T0 - 1)^t)."""
    form = MELTING_FORMS[curve["type"]]
    parts = []
    for part in curve["parts"]:
        record = {
            "form": form,
            "from": min(part["T_min"], part["T_max"]),
            "to": max(part["T_min"], part["T_max"]),
            "startTemperature": part["T_0"],
            "startPressure": MELTING_CORRECTIONS.get((library_name, part["p_0"]), part["p_0"]),
        }
        if form == "power":
            record |= {"a": [part["a"]], "t": [part["c"]]}
        else:
            record |= {"a": part["a"], "t": part["t"]}
        parts.append(record)
    return {"parts": parts}


def surface_tension(tension, curve):
    """sigma = sum a (1 - T/Tc)^n. Water takes the international formula in place of the library's fit, which differs by 0.1 %:
    235.8e-3 theta^1.256 (1 - 0.625 theta)."""
    if tension == WATER_TENSION:
        return {"criticalTemperature": 647.096, "a": [235.8e-3, -0.625 * 235.8e-3], "n": [1.256, 2.256]}
    return {"criticalTemperature": curve["Tc"], "a": curve["a"], "n": curve["n"]}


def head_record(name, library_name, aliases, equation, tension, fluid, kind):
    return {
        "name": name,
        "aliases": aliases,
        "kind": kind,
        "source": {
            "library": "CoolProp",
            "version": LIBRARY_VERSION,
            "licence": "MIT, see COOLPROP-LICENSE.txt",
            "fluidName": library_name,
            "sha256": hashlib.sha256(json.dumps(fluid, sort_keys=True).encode()).hexdigest(),
            "script": "data/refrigerants/export.py",
        },
        "citations": {"equation": equation, "surfaceTension": tension},
    }


def pure_dome(library_name, dense, curves):
    """Critical point of the equation itself, and curves that only start the solver."""
    state = AbstractState("HEOS", library_name)
    temperature, density = dense["meta"]["Tcrittrue / K"], dense["meta"]["rhocrittrue / mol/m^3"]
    state.update(CoolProp.DmolarT_INPUTS, density, temperature)
    near = dense["crit_anc"]
    return {
        "critical": {"temperature": temperature, "pressure": state.p(), "molarDensity": density},
        "firstGuess": {
            "pressure": curve_record(curves["pS"]),
            "liquidMolarDensity": curve_record(curves["rhoL"]),
            "vapourMolarDensity": curve_record(curves["rhoV"]),
            "nearCritical": {"distanceMax": near["Theta_min"], "liquid": near["cL"], "vapour": near["cV"]},
        },
    }


def blend_dome(fluid, curves):
    """Where the published curves of bubble and dew pressure end, and these curves, which are part of the equation."""
    critical = fluid["STATES"]["critical"]
    return {
        "critical": {
            "temperature": critical["T"],
            "pressure": critical["p"],
            "molarDensity": critical["rhomolar"],
        },
        "bubbleAndDew": {
            "bubblePressure": curve_record(curves["pL"]),
            "dewPressure": curve_record(curves["pV"]),
            "liquidMolarDensity": curve_record(curves["rhoL"]),
            "vapourMolarDensity": curve_record(curves["rhoV"]),
        },
    }


def fluid_record(name, library_name, aliases, equation, tension):
    fluid = json.loads(get_fluid_param_string(library_name, "JSON"))[0]
    eos = fluid["EOS"][0]
    dense = eos.pop("SUPERANCILLARY", None)
    curves = fluid["ANCILLARIES"]
    kind = "pseudoPure" if eos["pseudo_pure"] else "pure"
    dome = blend_dome(fluid, curves) if kind == "pseudoPure" else pure_dome(library_name, dense, curves)
    melting = {"meltingLine": melting_line(curves["melting_line"], library_name)} if "melting_line" in curves else {}
    return {
        **head_record(name, library_name, aliases, equation, tension, fluid, kind),
        "molarMass": eos["molar_mass"],
        "gasConstant": eos["gas_constant"],
        "reducing": {
            "temperature": eos["STATES"]["reducing"]["T"],
            "molarDensity": eos["STATES"]["reducing"]["rhomolar"],
        },
        "critical": dome.pop("critical"),
        "triplePoint": {"temperature": eos["Ttriple"]},
        "limits": {
            "temperatureMin": eos["STATES"]["sat_min_liquid"]["T"],
            "temperatureMax": eos["T_max"],
            "pressureMax": eos["p_max"],
        },
        "ideal": [renamed(term, IDEAL_KINDS, name) for term in eos["alpha0"]],
        "residual": [renamed(term, RESIDUAL_KINDS, name) for term in eos["alphar"]],
        **dome,
        **melting,
        "surfaceTension": surface_tension(tension, curves["surface_tension"]),
        "transport": transport_record(name, fluid),
    }
