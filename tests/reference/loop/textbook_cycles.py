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


def main():
    cycles = []
    for fluid in FLUIDS:
        set_reference_state(fluid, "IIR")
        cycles += [cycle(fluid, *condition) for condition in CONDITIONS]
    provenance = {
        "source": f"CoolProp {CoolProp.__version__}, PropsSI, HEOS backend; script tests/reference/loop/textbook_cycles.py",
        "licence": "CoolProp is MIT-licensed",
        "referenceState": "IIR: 200 kJ/kg and 1 kJ/(kg K) in saturated liquid at 0 degrees Celsius",
        "units": "base SI, mass basis",
    }
    print(json.dumps({"provenance": provenance, "cycles": cycles}, indent=1))


main()
