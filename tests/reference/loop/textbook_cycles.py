"""Textbook cycles computed with the open thermophysical library CoolProp (MIT), for the tests of src/loop.

Usage: python tests/reference/loop/textbook_cycles.py > tests/reference/loop/textbook-cycles.json
Needs the package CoolProp. Nothing of the project's own code takes part. Enthalpies and entropies count from the
reference state that the file names per fluid (IIR: 200 kJ/kg and 1 kJ/(kg K) in saturated liquid at 0 degrees Celsius).
"""

import json

import CoolProp
from CoolProp.CoolProp import PropsSI, set_reference_state

FLUIDS = ["R134a", "R600a", "R290", "R12", "R22"]
# evaporating, condensing (dew, K), superheat, subcooling (K), isentropic efficiency
CONDITIONS = [
    (263.15, 318.15, 5.0, 5.0, 0.6),
    (278.15, 308.15, 10.0, 0.0, 0.72),
    (248.15, 328.15, 30.0, 8.0, 0.45),
    (288.15, 311.15, 0.0, 3.0, 1.0),
]
# evaporating, condensing (dew, K), pressures at the compressor inlet and the condenser outlet by those of evaporator and
# condenser, superheat at the evaporator outlet, subcooling (K), isentropic efficiency, effectiveness of the heat exchanger
# between liquid and suction gas, on enthalpy
EXCHANGER_CONDITIONS = [
    (263.15, 313.15, 1.0, 1.0, 0.0, 0.0, 0.7, 0.6),
    (268.15, 318.15, 0.93, 0.95, 6.0, 4.0, 0.65, 0.8),
]
DEAD_STATE, SINK, SOURCE = 298.15, 299.15, 293.15


def saturated(fluid, temperature, quality, *names):
    return [PropsSI(name, "T", temperature, "Q", quality, fluid) for name in names]


def cycle(fluid, evaporating, condensing, superheat, subcooling, efficiency):
    p1 = PropsSI("P", "T", evaporating, "Q", 1, fluid)
    p2 = PropsSI("P", "T", condensing, "Q", 1, fluid)
    if superheat == 0:
        h1, s1, d1 = saturated(fluid, evaporating, 1, "H", "S", "D")
    else:
        h1, s1, d1 = (PropsSI(name, "T", evaporating + superheat, "P", p1, fluid) for name in "HSD")
    if subcooling == 0:
        h3, s3 = saturated(fluid, condensing, 0, "H", "S")
    else:
        h3, s3 = (PropsSI(name, "T", condensing - subcooling, "P", p2, fluid) for name in "HS")
    h2s = PropsSI("H", "P", p2, "S", s1, fluid)
    h2 = h1 + (h2s - h1) / efficiency
    t2, s2 = (PropsSI(name, "P", p2, "H", h2, fluid) for name in "TS")
    x4, s4 = (PropsSI(name, "P", p1, "H", h3, fluid) for name in "QS")
    q_high, q_low = h2 - h3, h1 - h3
    return {
        "request": {
            "refrigerant": fluid,
            "evaporating": evaporating,
            "condensing": condensing,
            "superheat": superheat,
            "subcooling": subcooling,
            "isentropicEfficiency": efficiency,
            "deadState": DEAD_STATE,
            "sinkTemperature": SINK,
            "sourceTemperature": SOURCE,
        },
        "pressures": [p1, p2],
        "enthalpies": [h1, h2s, h2, h3],
        "entropies": [s1, s2, s3, s4],
        "dischargeTemperature": t2,
        "qualityAfterValve": x4,
        "heatingCop": q_high / (h2 - h1),
        "volumetricHeatingCapacity": q_high * d1,
        "exergyDestruction": {
            "compressor": DEAD_STATE * (s2 - s1),
            "condenser": DEAD_STATE * (s3 - s2 + q_high / SINK),
            "expansion": DEAD_STATE * (s4 - s3),
            "evaporator": DEAD_STATE * (s1 - s4 - q_low / SOURCE),
        },
    }


def exchanger_cycle(fluid, evaporating, condensing, suction, liquid, superheat, subcooling, efficiency, effectiveness):
    p_e = PropsSI("P", "T", evaporating, "Q", 1, fluid)
    p_c = PropsSI("P", "T", condensing, "Q", 1, fluid)
    p_1, p_3 = suction * p_e, liquid * p_c
    if superheat == 0:
        h_gas, s_gas = saturated(fluid, evaporating, 1, "H", "S")
    else:
        h_gas, s_gas = (PropsSI(name, "T", evaporating + superheat, "P", p_e, fluid) for name in "HS")
    bubble = PropsSI("T", "P", p_3, "Q", 0, fluid)
    if subcooling == 0:
        h3, s3 = (PropsSI(name, "P", p_3, "Q", 0, fluid) for name in "HS")
    else:
        h3, s3 = (PropsSI(name, "T", bubble - subcooling, "P", p_3, fluid) for name in "HS")
    heat = effectiveness * (PropsSI("H", "T", bubble - subcooling, "P", p_e, fluid) - h_gas)
    h1 = h_gas + heat
    t1, s1, d1 = (PropsSI(name, "P", p_1, "H", h1, fluid) for name in "TSD")
    h_valve = h3 - heat
    t_valve, s_valve = (PropsSI(name, "P", p_3, "H", h_valve, fluid) for name in "TS")
    h2s = PropsSI("H", "P", p_c, "S", s1, fluid)
    h2 = h1 + (h2s - h1) / efficiency
    t2, s2 = (PropsSI(name, "P", p_c, "H", h2, fluid) for name in "TS")
    s4 = PropsSI("S", "P", p_e, "H", h_valve, fluid)
    return {
        "request": {
            "refrigerant": fluid,
            "evaporating": evaporating,
            "condensing": condensing,
            "suctionPressure": p_1,
            "liquidPressure": p_3,
            "superheat": superheat,
            "subcooling": subcooling,
            "isentropicEfficiency": efficiency,
            "heatExchangerEffectiveness": effectiveness,
            "deadState": DEAD_STATE,
            "sinkTemperature": SINK,
            "sourceTemperature": SOURCE,
        },
        "heat": heat,
        "suctionTemperature": t1,
        "liquidTemperatureAfter": t_valve,
        "dischargeTemperature": t2,
        "heatTaken": h_gas - h_valve,
        "heatingCop": (h2 - h3) / (h2 - h1),
        "volumetricHeatingCapacity": (h2 - h3) * d1,
        "exergyDestruction": {
            "compressor": DEAD_STATE * (s2 - s1),
            "condenser": DEAD_STATE * (s3 - s2 + (h2 - h3) / SINK),
            "expansion": DEAD_STATE * (s4 - s_valve),
            "evaporator": DEAD_STATE * (s_gas - s4 - (h_gas - h_valve) / SOURCE),
            "heatExchanger": DEAD_STATE * (s1 - s_gas + s_valve - s3),
        },
    }


def main():
    cycles = []
    exchanger_cycles = []
    for fluid in FLUIDS:
        set_reference_state(fluid, "IIR")
        cycles += [cycle(fluid, *condition) for condition in CONDITIONS]
        exchanger_cycles += [exchanger_cycle(fluid, *condition) for condition in EXCHANGER_CONDITIONS]
    provenance = {
        "source": f"CoolProp {CoolProp.__version__}, PropsSI, HEOS backend; script tests/reference/loop/textbook_cycles.py",
        "licence": "CoolProp is MIT-licensed",
        "referenceState": "IIR: 200 kJ/kg and 1 kJ/(kg K) in saturated liquid at 0 degrees Celsius",
        "units": "base SI, mass basis",
    }
    print(json.dumps({"provenance": provenance, "cycles": cycles, "exchangerCycles": exchanger_cycles}, indent=1))


main()
