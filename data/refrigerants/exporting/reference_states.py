"""Reference states: what the library says of seeded random states, as text tables of few digits.

Given numbers are rounded first (temperature to 1e-4 K, density to 10 digits, quality to 4) and the library evaluates its
equation at exactly the rounded numbers, with the phase imposed, so that no solver of its own stands between the numbers of
a row. Sides of the dome come from its phase equilibrium; a blend's from its curves of bubble and dew pressure.
"""

import math
import random

import CoolProp
from CoolProp.CoolProp import AbstractState
from scipy.optimize import brentq

from exporting.equation import LIBRARY_VERSION

SINGLE = ("temperature", "density", "pressure", "enthalpy", "entropy", "cp", "cv", "soundSpeed")
SIDE = ("density", "enthalpy", "entropy", "cp", "cv", "soundSpeed")
SATURATION = ("temperature", "bubblePressure", "dewPressure", *(f"liquid.{key}" for key in SIDE),
              *(f"vapour.{key}" for key in SIDE))
TWO_PHASE = ("temperature", "pressure", "quality", "density", "enthalpy", "entropy")

# How many of each: drawn by region, so that none is left thin by the shape of the range.
COUNTS = {"liquid": 460, "vapour": 460, "supercritical": 320, "near": 120, "beside": 120}
SATURATION_COUNT = 120
TWO_PHASE_COUNT = 300
# The lowest pressure of a state, and how far from the saturation line a state of one phase is kept, relative [Pa, -].
LOWEST_PRESSURE = 1.0
LINE_DISTANCE = 1e-6


class Source:
    """The library's fluid with the file's own zero of enthalpy and entropy, and its lines of saturation."""

    def __init__(self, record, library_name):
        self.record = record
        self.state = AbstractState("HEOS", library_name)
        critical, limits = record["critical"], record["limits"]
        self.critical_temperature, self.critical_pressure = critical["temperature"], critical["pressure"]
        self.critical_density = critical["molarDensity"] * record["molarMass"]
        self.coldest, self.warmest = limits["temperatureMin"], limits["temperatureMax"]
        self.is_blend = record["kind"] == "pseudoPure"
        lines = record.get("bubbleAndDew", {})
        self.curves = (lines.get("bubblePressure"), lines.get("dewPressure"))
        self.shift = (0.0, 0.0)
        zero = self.side(273.15, 0)
        self.shift = (200e3 - zero["enthalpy"], 1e3 - zero["entropy"])

    def at(self, temperature, density):
        """Properties of one phase by the equation alone."""
        state = self.state
        state.specify_phase(CoolProp.iphase_gas)
        state.update(CoolProp.DmassT_INPUTS, density, temperature)
        row = {
            "temperature": temperature, "density": density, "pressure": state.p(),
            "enthalpy": state.hmass() + self.shift[0], "entropy": state.smass() + self.shift[1],
            "cp": state.cpmass(), "cv": state.cvmass(), "soundSpeed": state.speed_sound(),
        }
        state.unspecify_phase()
        return row

    def side(self, temperature, quality):
        """One side of the dome at a temperature.

        Pure: the pressure is the equation's own at the equilibrium density of the vapour. The library's saturation
        pressure comes from a fitted curve with an absolute error: good to 1e-12 almost everywhere, but off by up to 6e-4
        where the pressure is below 1 Pa. Its densities are good everywhere.
        Blend: the pressure of its curve, and the outermost density at which the equation has it. The library's own search
        for that density fails close to the critical point.
        """
        if self.is_blend:
            pressure = curve_value(self.curves[quality], temperature)
            density = self.outermost_density(temperature, pressure, quality)
            return self.at(temperature, density) | {"pressure": pressure}
        self.state.update(CoolProp.QT_INPUTS, quality, temperature)
        row = self.at(temperature, self.state.rhomass())
        if quality == 1:
            return row
        self.state.update(CoolProp.QT_INPUTS, 1, temperature)
        return row | {"pressure": self.at(temperature, self.state.rhomass())["pressure"]}

    def outermost_density(self, temperature, pressure, quality):
        """The largest (liquid) or smallest (vapour) density with a pressure: a walk inwards, then bisection's kin.

        Close to the critical point two densities with the pressure may lie close together: there the steps are small.
        """
        step = self.critical_density / (200 if temperature < 0.998 * self.critical_temperature else 4000)
        gap = lambda density: self.at(temperature, density)["pressure"] - pressure
        density, step = (3.6 * self.critical_density, -step) if quality == 0 else (1e-3 * self.critical_density, step)
        while gap(density) * step < 0:
            density += step
        return brentq(gap, density - step, density, xtol=1e-13, rtol=8.9e-16)

    def line(self, quality, pressure):
        """Temperature at which a side of a blend's dome has a pressure below the critical one."""
        gap = lambda temperature: math.log(curve_value(self.curves[quality], temperature) / pressure)
        return brentq(gap, self.coldest, self.critical_temperature, xtol=1e-12, rtol=8.9e-16)

    def slope(self, temperature, density):
        """Slope of pressure over density along an isotherm: not above 0 where the equation is unstable."""
        step = 1e-6 * density
        return self.at(temperature, density + step)["pressure"] - self.at(temperature, density - step)["pressure"]

    def density(self, temperature, pressure):
        self.state.update(CoolProp.PT_INPUTS, pressure, temperature)
        return self.state.rhomass()

    def highest_pressure(self, temperature):
        """The limit of the equation, or the melting pressure where that is lower (kept 1 % away)."""
        highest = self.record["limits"]["pressureMax"]
        for part in self.record.get("meltingLine", {}).get("parts", []):
            if part["from"] <= temperature <= part["to"]:
                highest = min(highest, 0.99 * melting_pressure(part, temperature))
        return highest


def curve_value(curve, temperature):
    """A blend's pressure curve, in the form of its coefficient file."""
    if curve["form"] != "exponentialTau":
        raise SystemExit(f"no rule here for a pressure curve of the form {curve['form']}")
    ratio = curve["reducingTemperature"] / temperature
    theta = 1 - 1 / ratio
    return curve["reducingValue"] * math.exp(ratio * sum(n * theta ** t for n, t in zip(curve["n"], curve["t"])))


def melting_pressure(part, temperature):
    ratio, start = temperature / part["startTemperature"], part["startPressure"]
    if part["form"] == "power":
        return start + part["a"][0] * (ratio ** part["t"][0] - 1)
    base = (lambda t: ratio ** t - 1) if part["form"] == "powersOfRatio" else (lambda t: (ratio - 1) ** t)
    return start * (1 + sum(a * base(t) for a, t in zip(part["a"], part["t"])))


def log_uniform(chance, low, high):
    return math.exp(chance.uniform(math.log(low), math.log(high)))


def drawn(source, region, chance):
    """A temperature and a density of a region, not rounded; None where the draw leaves the region."""
    cold, critical, warm = source.coldest, source.critical_temperature, source.warmest
    if region == "near":
        temperature = critical * chance.uniform(0.99, 1.01)
        return temperature, source.critical_density * chance.uniform(0.5, 1.5)
    if region == "supercritical":
        temperature = chance.uniform(critical, warm)
        highest = source.highest_pressure(temperature)
        return temperature, source.density(temperature, log_uniform(chance, source.critical_pressure, highest))
    if region == "vapour" and chance.random() < 0.35:
        temperature = chance.uniform(critical, warm)
        return temperature, source.density(temperature, log_uniform(chance, LOWEST_PRESSURE, source.critical_pressure))
    temperature = chance.uniform(cold, critical * 0.9999)
    is_liquid = region == "liquid" or (region == "beside" and chance.random() < 0.5)
    line = source.side(temperature, 0 if is_liquid else 1)
    if region == "beside":
        # A liquid hardly changes with pressure: it is drawn by its distance in density.
        distance = 10 ** chance.uniform(-8 if is_liquid else -5, -2)
        return temperature, line["density"] * (1 + distance if is_liquid else 1 - distance)
    if is_liquid:
        low, high = max(line["pressure"], LOWEST_PRESSURE), source.highest_pressure(temperature)
        return (temperature, source.density(temperature, log_uniform(chance, low, high))) if high > low else None
    low = min(LOWEST_PRESSURE, 1e-3 * line["pressure"])
    return temperature, source.density(temperature, log_uniform(chance, low, line["pressure"]))


def is_stable(source, row):
    """Whether a state lies in one phase, inside the limits and off the saturation line."""
    temperature, density, pressure = row["temperature"], row["density"], row["pressure"]
    if not source.coldest <= temperature <= source.warmest:
        return False
    if not 0 < pressure <= source.highest_pressure(temperature) or not 0 < row["cp"] < math.inf:
        return False
    if source.slope(temperature, density) <= 0:
        return False
    if temperature >= source.critical_temperature:
        return True
    liquid, vapour = source.side(temperature, 0), source.side(temperature, 1)
    if density > liquid["density"]:
        return pressure > liquid["pressure"] * (1 + LINE_DISTANCE)
    return density < vapour["density"] and pressure < vapour["pressure"] * (1 - LINE_DISTANCE)


def single_phase_rows(source, chance):
    rows = []
    for region, count in COUNTS.items():
        kept, tries = 0, 0
        while kept < count:
            tries += 1
            if tries > 40 * count:
                raise SystemExit(f"{source.record['name']}: {region} gives only {kept} states")
            point = drawn(source, region, chance)
            if point is None:
                continue
            row = source.at(float(f"{point[0]:.4f}"), float(f"{point[1]:.10g}"))
            if is_stable(source, row):
                rows.append(row)
                kept += 1
    return rows


def saturation_temperatures(source, chance):
    cold, critical = source.coldest, source.critical_temperature
    shares = [0.9, 0.92, 0.94, 0.96, 0.97, 0.98, 0.985, 0.99, 0.992, 0.994, 0.996, 0.997, 0.998, 0.9985, 0.999, 0.9993,
              0.9995, 0.9997, 0.9998, 0.9999]
    near = [math.floor(critical * share * 1e4) / 1e4 for share in shares]
    low = [math.ceil((cold + step) * 1e4) / 1e4 for step in (0, 0.01, 0.1, 1, 3)]
    count = SATURATION_COUNT - len(near) - len(low)
    return sorted(low + near + [round(chance.uniform(cold + 0.001, 0.98 * critical), 4) for _ in range(count)])


def saturation_rows(source, chance):
    rows = []
    for temperature in saturation_temperatures(source, chance):
        liquid, vapour = source.side(temperature, 0), source.side(temperature, 1)
        rows.append({
            "temperature": temperature, "bubblePressure": liquid["pressure"], "dewPressure": vapour["pressure"],
            **{f"liquid.{key}": liquid[key] for key in SIDE}, **{f"vapour.{key}": vapour[key] for key in SIDE},
        })
    return rows


def two_phase_rows(source, chance):
    """Pure: at T and x. Blend: at p and x, everything linear in x between the library's two sides at that pressure."""
    rows = []
    for _ in range(TWO_PHASE_COUNT):
        temperature = round(chance.uniform(source.coldest + 0.001, 0.999 * source.critical_temperature), 4)
        quality = round(chance.uniform(0.001, 0.999), 4)
        if source.is_blend:
            # Given to six digits, inside the range where both lines have it.
            lowest, highest = source.side(source.coldest, 0)["pressure"], 0.999 * source.critical_pressure
            pressure = min(max(source.side(temperature, 0)["pressure"], 1.0001 * lowest), highest)
            pressure = float(f"{pressure:.6g}")
            sides = [source.side(source.line(side, pressure), side) for side in (0, 1)]
        else:
            sides = [source.side(temperature, side) for side in (0, 1)]
            pressure = sides[1]["pressure"]
        mixed = lambda key: (1 - quality) * sides[0][key] + quality * sides[1][key]
        volume = (1 - quality) / sides[0]["density"] + quality / sides[1]["density"]
        rows.append({
            "temperature": mixed("temperature") if source.is_blend else temperature, "pressure": pressure,
            "quality": quality, "density": 1 / volume, "enthalpy": mixed("enthalpy"), "entropy": mixed("entropy"),
        })
    return rows


def table(title, columns, rows):
    """Rows under their columns: 12 digits, 13 of a pressure; 14 inside the dome, where h and s together give T badly."""
    digits = lambda key: 14 if title == "twoPhase" else 13 if "ressure" in key else 12
    lines = [",".join(format(row[key], f".{digits(key)}g") for key in columns) for row in rows]
    return [f"[{title}]", ",".join(columns), *lines]


def reference_text(record, library_name):
    """The file of a fluid: head lines with #, then three tables, each under its title and its columns."""
    source = Source(record, library_name)
    seed = f"{record['name']} reference states"
    chance = random.Random(seed)
    head = {
        "refrigerant": record["name"],
        "source": f"CoolProp {LIBRARY_VERSION}, equation: {record['citations']['equation']}",
        "script": "data/refrigerants/export.py",
        "seed": seed,
        "coefficients": record["source"]["sha256"],
        "reference state": "200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 degrees Celsius",
        "units": "K, Pa, kg/m3, J/kg, J/(kg K), m/s",
        "single": "given: temperature, density",
        "saturation": "given: temperature",
        "twoPhase": "given: pressure, quality; not the library's own: linear in quality between its two sides"
        if source.is_blend else "given: temperature, quality",
    }
    lines = [f"# {key}: {value}" for key, value in head.items()]
    lines += table("single", SINGLE, single_phase_rows(source, chance))
    lines += table("saturation", SATURATION, saturation_rows(source, chance))
    lines += table("twoPhase", TWO_PHASE, two_phase_rows(source, chance))
    return "\n".join(lines) + "\n"
