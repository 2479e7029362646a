"""Models of viscosity and thermal conductivity of one fluid: which form, its coefficients, its source, where it was made.

Where the library lists several models of a property, it computes with the first; so does this export. Forms whose constants
stand in the program itself (water, carbon dioxide, the critical part of ammonia) are exported by name alone.
"""

# Key of the library's list of literature -> source, and the range of the source (lowest and highest temperature, highest
# pressure) where its title or abstract states it. Other ranges: the equation of state's.
SOURCES = {
    "Bell-PURDUE-2016-ETA": (
        "I. H. Bell, A. Laesecke (2016), 16th International Refrigeration and Air Conditioning Conference at Purdue", None),
    "Fenghour-JPCRD-1995": (
        "A. Fenghour, W. A. Wakeham, V. Vesovic, J. T. R. Watson, J. Millat, E. Vogel (1995), "
        "J. Phys. Chem. Ref. Data 24, 1649", (196, 600, 50e6)),
    "Geller-IJT-2001": (
        "V. Z. Geller, B. V. Nemzer, U. V. Cheremnykh (2001), Int. J. Thermophys. 22, 1034", None),
    "Geller-PURDUE-2000": (
        "V. Z. Geller (2000), International Refrigeration Conference at Purdue University", None),
    "Huber-IECR-2003": (
        "M. L. Huber, A. Laesecke, R. A. Perkins (2003), Ind. Eng. Chem. Res. 42, 3163", None),
    "Huber-IECR-2006": (
        "M. L. Huber, A. Laesecke (2006), Ind. Eng. Chem. Res. 45, 4447", (172.52, 500, 60e6)),
    "Huber-JPCRD-2009": (
        "IAPWS R12-08; M. L. Huber and others (2009), J. Phys. Chem. Ref. Data 38, 101", None),
    "Huber-JPCRD-2012": (
        "IAPWS R15-11; M. L. Huber and others (2012), J. Phys. Chem. Ref. Data 41, 033102", None),
    "Huber-JPCRD-2016-CO2": (
        "M. L. Huber, E. A. Sykioti, M. J. Assael, R. A. Perkins (2016), J. Phys. Chem. Ref. Data 45, 013102",
        (216.592, 1100, 200e6)),
    "Klein-IJR-1997": (
        "S. A. Klein, M. O. McLinden, A. Laesecke (1997), Int. J. Refrigeration 20, 208", None),
    "Krauss-IJT-1996": (
        "R. Krauss, V. C. Weiss, T. A. Edison, J. V. Sengers, K. Stephan (1996), Int. J. Thermophys. 17, 731", None),
    "Laesecke-JPCRD-2017-CO2": (
        "A. Laesecke, C. D. Muzny (2017), J. Phys. Chem. Ref. Data 46, 013107", None),
    "Marsh-JCED-2002": (
        "K. N. Marsh, R. A. Perkins, M. L. V. Ramires (2002), J. Chem. Eng. Data 47, 932", (86, 600, 70e6)),
    "McLinden-IJR-2000": (
        "M. O. McLinden, S. A. Klein, R. A. Perkins (2000), Int. J. Refrigeration 23, 43", None),
    "Perkins-JCED-2002-Isobutane": ("R. A. Perkins (2002), J. Chem. Eng. Data 47, 1272", (114, 600, 70e6)),
    "Perkins-JCED-2002-nButane": (
        "R. A. Perkins, M. L. V. Ramires, C. A. Nieto de Castro, L. Cusco (2002), J. Chem. Eng. Data 47, 1263",
        (135, 600, 70e6)),
    "Perkins-JCED-2006": ("R. A. Perkins, M. L. Huber (2006), J. Chem. Eng. Data 51, 898", (190, 512, 70e6)),
    "Perkins-JCED-2011": ("R. A. Perkins, M. L. Huber (2011), J. Chem. Eng. Data 56, 4868", None),
    "Tufeu-BBPC-1984": (
        "R. Tufeu, D. Y. Ivanov, Y. Garrabos, B. Le Neindre (1984), Ber. Bunsenges. Phys. Chem. 88, 422", None),
    "Vogel-HTHP-1999": (
        "E. Vogel, C. Kuechenmeister, E. Bich (1999), High Temp. High Press. 31, 173", None),
    "Vogel-IJT-2000": (
        "E. Vogel, C. Kuechenmeister, E. Bich (2000), Int. J. Thermophys. 21, 343", None),
    "Vogel-JPCRD-1998": (
        "E. Vogel, C. Kuechenmeister, E. Bich, A. Laesecke (1998), J. Phys. Chem. Ref. Data 27, 947", None),
}
# What is known of the truth of a value beyond the model's name, by fluid and property; computed with this project against
# the sources named, unless a text says otherwise.
NO_MATCH = ("Of its saturated vapour below {} K no state of the reference fluid matches exactly and the reference library "
            "gives no value; here the nearest match is used, up to {} off where the exact one is about to be lost.")
GUESSED_GAS = ("The dilute gas reckons with molecules whose size and attraction are guessed from the critical point, as in the "
               "reference library; with those published beside the source's model it would conduct {} % less.")
OWN_CURVE = "A correlation of its own was published since (M. L. Huber, M. J. Assael 2016) and is not used here."
DENSE_LIMIT = "No value for the liquid {}, where the reference fluid comes to be packed closely."
ONE_CURVE = "One curve over temperature; inside the dome at the temperature of the state, between bubble and dew."
TRUTH = {
    "R152a": {
        "viscosity": "Beside R. Krauss and others (1996): liquid 9 % low at 240 K and 0.8 % high at 280 K, vapour 9 % high at "
                     "280 K.",
        "conductivity": "Liquid 0.3 % above the table of the source at 280 K.",
    },
    "R290": {
        "viscosity": "0.1 % below the table of the source, which was made with an older equation of state.",
        "conductivity": "0.04 % above the table of the source at 368 K, which was made with an older equation of state.",
    },
    "R600a": {"conductivity": "0.02 % below the table of the source at 390 K, which was made with an older equation of state."},
    "R1234yf": {
        "viscosity": "The critical entropy density was taken from an older equation of state; that of the equation in use would "
                     f"make the liquid 0.8 to 1.8 % more viscous. {OWN_CURVE}",
        "conductivity": "No value for the vapour below 129 K, where the dilute gas falls below 0.",
    },
    "R1234ze(E)": {"viscosity": OWN_CURVE},
    "R22": {"conductivity": GUESSED_GAS.format("8")},
    "R32": {"conductivity": f"{GUESSED_GAS.format('5.5')} {NO_MATCH.format(234, '0.4 %')}"},
    "R124": {"conductivity": f"{GUESSED_GAS.format('10')} {NO_MATCH.format(287, '0.2 %')}"},
    "R245fa": {
        "conductivity": GUESSED_GAS.format("12"),
        "surfaceTension": "The fit ends at 427.16 K; at the critical temperature of the equation, 427.01 K, it still gives "
                          "0.017 mN/m.",
    },
    "R142b": {
        "viscosity": NO_MATCH.format(305, "3 %"),
        "conductivity": f"{NO_MATCH.format(305, '0.5 %')} Near the critical point the reference library's usual cut-off is "
                        "kept; the one listed for this fluid would give up to 5.6 % less.",
    },
    "R227ea": {
        "viscosity": NO_MATCH.format(250, "0.5 %"),
        "conductivity": NO_MATCH.format(250, "0.1 %"),
    },
    "R12": {"viscosity": DENSE_LIMIT.format("above 6 MPa at 116 K and 200 MPa at 191 K")},
    "R1270": {"viscosity": DENSE_LIMIT.format("above 700 MPa below 170 K")},
    "R236fa": {"viscosity": DENSE_LIMIT.format("above 28 MPa at 180 K and 70 MPa at 205 K")},
    "R717": {
        "viscosity": "The authors state 0.5 % for the dilute gas to 5 % at high pressure and temperature. A newer correlation "
                     "exists (S. A. Monogenidou, M. J. Assael, M. L. Huber 2018) and is not used here.",
        "conductivity": "Within 0.08 K of 405.4 K, where the source's form grows without limit at every density, its value at "
                        "0.08 K is used.",
    },
    "R407C": {"surfaceTension": ONE_CURVE},
    "R404A": {"surfaceTension": ONE_CURVE},
    "R410A": {"surfaceTension": f"{ONE_CURVE} The fit ends 0.07 K above the equation's critical temperature, where it still "
                                "gives 0.0015 mN/m."},
    "R507A": {"surfaceTension": ONE_CURVE},
    "R718": {"surfaceTension": "The reference library's own fit differs from the international formula by up to 0.4 % below "
                              "450 K and 3 % close to the critical point."},
}
REFERENCE_FLUIDS = {"Propane": "R290", "R134a": "R134a"}
# What the library takes for the critical part of a conductivity by corresponding states, whatever the fluid's own file says.
USUAL_ENHANCEMENT = {"GAMMA": 0.0496, "R0": 1.03, "gamma": 1.239, "zeta0": 1.94e-10, "qD": 2e9}


def only(condition, what):
    """Stops the export where the library holds something this project has no form for."""
    if not condition:
        raise SystemExit(f"no form for {what}")


def whole(numbers):
    only(all(number == int(number) for number in numbers), f"exponents {numbers}")
    return [int(number) for number in numbers]


def sourced(kind, key):
    source, valid = SOURCES[key]
    record = {"type": kind, "source": source}
    if valid:
        record["range"] = dict(zip(("temperatureMin", "temperatureMax", "pressureMax"), valid))
    return record


def dilute_viscosity(data):
    if "hardcoded" in data:
        only(data["hardcoded"] == "CarbonDioxideLaeseckeJPCRD2017", data["hardcoded"])
        return {"type": "carbonDioxide"}
    if data["type"] == "kinetic_theory":
        return {"type": "lennardJones"}
    if data["type"] == "powers_of_T":
        only(data["t"] == list(range(len(data["t"]))), "powers of temperature")
        return {"type": "polynomial", "c": data["a"]}
    only(data["type"] == "collision_integral", data["type"])
    exponents = whole(data["t"])
    c = [0.0] * (max(exponents) + 1)
    for a, t in zip(data["a"], exponents):
        c[t] += a
    return {"type": "collisionIntegral", "factor": data["C"], "molarMass": data["molar_mass"], "c": c}


def residual_viscosity(data):
    if "hardcoded" in data:
        only(data["hardcoded"] == "CarbonDioxideLaeseckeJPCRD2017", data["hardcoded"])
        return {"type": "carbonDioxide"}
    only(data["type"] == "modified_Batschinski_Hildebrand" and not any(data["gamma"]), data["type"])
    record = {
        "type": "batschinskiHildebrand",
        "reducingTemperature": data["T_reduce"],
        "reducingMolarDensity": data["rhomolar_reduce"],
        "a": data["a"],
        "d": whole(data["d1"]),
        "t": data["t1"],
    }
    if any(data["f"]):
        only(len(data["f"]) == 1 and data["t2"] == [0] and data["d2"][0] in (0, 1), "free volume")
        record["freeVolume"] = {
            "factor": data["f"][0],
            "densityPower": data["d2"][0],
            "numerator": {"n": data["g"], "t": data["h"]},
            "denominator": {"n": data["p"], "t": data["q"]},
        }
    return record


def reference_fluid(data):
    return REFERENCE_FLUIDS[data["reference_fluid"]]


def shape_factor(psi):
    only(psi["t"] == list(range(len(psi["t"]))), "exponents of a shape factor")
    return {"reducingMolarDensity": psi["rhomolar_reducing"], "c": psi["a"]}


def viscosity_record(data):
    key = data["BibTeX"]
    if data.get("hardcoded") == "Water":
        return sourced("water", key)
    if data.get("type") == "ECS":
        return sourced("correspondingStates", key) | {
            "referenceFluid": reference_fluid(data), "densityFactor": shape_factor(data["psi"])}
    if data.get("type") == "rhosr-CS":
        only(data["x_crossover"] == 2, "crossover")
        return sourced("residualEntropy", key) | {
            "factor": data["C"],
            "criticalEntropyDensity": data["rhosr_critical"],
            "liquid": data["c_liq"],
            "vapour": data["c_vap"],
        }
    record = sourced("correlation", key) | {"dilute": dilute_viscosity(data["dilute"])}
    if "initial_density" in data:
        only(data["initial_density"]["type"] == "Rainwater-Friend", "initial density")
        quarters = whole([-4 * t for t in data["initial_density"]["t"]])
        record["initialDensity"] = {"b": data["initial_density"]["b"], "quarters": quarters}
    return record | {"residual": residual_viscosity(data["higher_order"])}


def enhancement_record(data, reducing):
    if data.get("hardcoded") == "None":
        return {"type": "none"}
    if data.get("hardcoded") == "Ammonia":
        return {"type": "ammonia"}
    only(data["gamma"] == 1.239 and data.get("nu", 0.63) == 0.63, "exponents of a critical part")
    return {
        "type": "olchowySengers",
        "referenceTemperature": data.get("T_ref", 1.5 * reducing["T"]),
        "criticalPressure": reducing["p"],
        "amplitude": data["R0"],
        "susceptibility": data["GAMMA"],
        "correlationLength": data["zeta0"],
        "cutoff": data["qD"],
    }


def conductivity_record(data, reducing):
    key = data["BibTeX"]
    if data.get("hardcoded") == "Water":
        return sourced("water", key)
    if data.get("type") == "ECS":
        f_int = data["f_int"]
        only(f_int["T_reducing"] == 1 and f_int["t"] == list(range(len(f_int["t"]))), "internal part")
        return sourced("correspondingStates", key) | {
            "referenceFluid": reference_fluid(data),
            "densityFactor": shape_factor(data["psi"]),
            "internalFactor": f_int["a"],
            "critical": enhancement_record(USUAL_ENHANCEMENT, reducing),
        }
    dilute, residual = data["dilute"], data["residual"]
    if "hardcoded" in dilute:
        only(dilute["hardcoded"] == "CarbonDioxideHuberJPCRD2016", dilute["hardcoded"])
        dilute_record = {"type": "carbonDioxide"}
    else:
        only(dilute["B"] == [1.0] and dilute["m"] == [0], "denominator of a dilute gas")
        only(dilute["n"][:len(dilute["A"])] == list(range(len(dilute["A"]))), "powers of a dilute gas")
        dilute_record = {"type": "polynomial", "reducingTemperature": dilute["T_reducing"], "c": dilute["A"]}
    only(residual["type"] == "polynomial", residual["type"])
    return sourced("correlation", key) | {
        "dilute": dilute_record,
        "residual": {
            "reducingTemperature": residual["T_reducing"],
            "reducingDensity": residual["rhomass_reducing"],
            "a": residual["B"],
            "d": whole(residual["d"]),
            "t": residual["t"],
        },
        "critical": enhancement_record(data["critical"], reducing),
    }


def lennard_jones(viscosity, reducing):
    """Size and depth of the pair potential. Where the model in use brings none, the library estimates both from the reducing
    point of the equation of state, after Chung, Ajlan, Lee and Starling (1988), Ind. Eng. Chem. Res. 27, 671."""
    if "sigma_eta" in viscosity:
        return {"diameter": viscosity["sigma_eta"], "depth": viscosity["epsilon_over_k"]}
    return {
        "diameter": 0.809e-9 / (reducing["rhomolar"] / 1000) ** (1 / 3),
        "depth": reducing["T"] / 1.2593,
        "estimatedFrom": "T. H. Chung, M. Ajlan, L. L. Lee, K. E. Starling (1988), Ind. Eng. Chem. Res. 27, 671",
    }


def transport_record(name, fluid):
    """Block `transport` of a coefficient file. `fluid` is the library's own record of the fluid."""
    data = fluid["TRANSPORT"]
    reducing = fluid["EOS"][0]["STATES"]["reducing"]
    viscosity = data["viscosity"][0] if isinstance(data["viscosity"], list) else data["viscosity"]
    record = {
        "viscosity": viscosity_record(viscosity),
        "conductivity": conductivity_record(data["conductivity"], reducing),
    }
    if name in TRUTH:
        record["truth"] = TRUTH[name]
    # A blend's viscosity and water's are no gas of such molecules.
    if record["viscosity"]["type"] == "water" or record["viscosity"].get("dilute", {}).get("type") == "polynomial":
        return record
    return {"lennardJones": lennard_jones(viscosity, reducing), **record}


def reference_fluids(record):
    """Names of the other refrigerants that a coefficient file's models reckon with."""
    models = (record["transport"]["viscosity"], record["transport"]["conductivity"])
    return sorted({model["referenceFluid"] for model in models if "referenceFluid" in model})
