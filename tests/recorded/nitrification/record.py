#!/usr/bin/env python3
"""Records the nitrification chain of a fed tank with film growth as SciPy integrates it.

Problem: TAN, nitrite, nitrate and two film populations in 1 m3 of water with 40 m2 of film, fed a constant load; Best's
flux law, logistic growth; written here from the equations and independently of the twin.
Method: scipy.integrate.solve_ivp, LSODA, rtol 1e-11, atol 1e-13. Recorded with SciPy 1.10.1 (Debian 12, package python3-scipy).
Usage: python3 record.py > ../../FarmTwin.Farm.Tests/Published/filter-nitrification-chain.csv
"""
import math

import scipy
from scipy.integrate import solve_ivp

GAS_CONSTANT = 8.314462618
TRANSFER = 0.43  # m/d
CAPACITY = 0.9  # g N/(m2 d), full film at 20 degC
AREA = 40.0  # m2 per m3
POPULATIONS = (  # growth 1/d, yield g COD/g N, K mg N/L, K_O2 mg/L, activation J/mol, K_I mg N/L
    (0.50, 0.18, 0.5, 0.6, 68e3, 10.0),
    (0.45, 0.06, 0.5, 1.2, 44e3, 0.2),
)
SCENARIOS = (  # name, load g N/(m3 d), degC, pH, oxygen mg/L, start share of both films
    ("warm", 1.0, 25.0, 7.4, 6.5, 1e-4),
    ("cool-acid", 0.5, 18.0, 6.8, 6.5, 1e-3),
    ("seeded", 1.0, 25.0, 7.4, 6.5, 2.51e-2),
)


def acidity(ph):
    return 2.35 ** (ph - 7.2) if ph <= 7.2 else 1.13 * (9.5 - ph) / (9.8 - ph)


def flux(substrate, capacity, half):
    scaled = capacity / TRANSFER
    total = substrate + half + scaled
    return TRANSFER / 2 * (total - math.sqrt(total * total - 4 * substrate * scaled))


def chain(load, celsius, ph, oxygen):
    decay = 0.05 * 1.04 ** (celsius - 20)
    ammonia_share = 1 / (1 + 10 ** (0.09018 + 2729.92 / (celsius + 273.15) - ph))

    def rates(_, state):
        substrates, films = state[0:2], state[3:5]
        free = ammonia_share * substrates[0]
        fluxes, growth = [], []
        for (rate, crop, half, half_oxygen, activation, inhibition), substrate, film in zip(POPULATIONS, substrates, films):
            warm = math.exp(activation / GAS_CONSTANT * (1 / 293.15 - 1 / (celsius + 273.15)))
            capacity = rate * warm * acidity(ph) * oxygen / (half_oxygen + oxygen) * inhibition / (inhibition + free) * film / crop
            into = flux(substrate, capacity, half)
            fluxes.append(into)
            growth.append(crop * into * (1 - film / (CAPACITY * crop / rate)) - decay * film)
        ammonia, nitrite = (AREA * into for into in fluxes)
        return [load - ammonia, ammonia - nitrite, nitrite, *growth]

    return rates


def main():
    print("# source: Own calculation with solve_ivp (LSODA, rtol 1e-11, atol 1e-13) of SciPy " + scipy.__version__
          + "; Virtanen et al. 2020, Nature Methods 17, 261-272")
    print("# locator: tests/recorded/nitrification/record.py")
    print("# unit: d; mg N/L; g COD/m2")
    print("# basis: recorded, an outside solver of the same equations; not a measurement")
    print("# tolerance: 1e-6 relative for a Runge-Kutta at 0.005 d; the hourly implicit scheme within 3 % of each peak")
    print("scenario,day,tan,nitrite,nitrate,x_a,x_b")
    for name, load, celsius, ph, oxygen, share in SCENARIOS:
        start = [0.0, 0.0, 0.0] + [share * CAPACITY * p[1] / p[0] for p in POPULATIONS]
        days = list(range(0, 61))
        solution = solve_ivp(chain(load, celsius, ph, oxygen), (0, days[-1]), start, method="LSODA", t_eval=days,
                             rtol=1e-11, atol=1e-13, max_step=0.05)
        assert solution.success, solution.message
        for day, *values in zip(days, *solution.y):
            print(",".join([name, str(day)] + [f"{value:.12g}" for value in values]))


if __name__ == "__main__":
    main()
