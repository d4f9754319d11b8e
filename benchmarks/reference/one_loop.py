#!/usr/bin/python3
"""A fish tank, a bead filter and a sump over a season, as a straightforward script would have it: NumPy, SciPy and SimPy.

The same equations as FarmTwin.Benchmarks.OneLoop, which works them out on the twin's own engine and kernels: meals as events; excretion
and the oxygen of digestion through two stages of first order, exactly; every hour one implicit solve of TAN, nitrite and oxygen in the
three basins, the films' flux law (Best 1955) written as flux over concentration in a fixed number of passes; films that grow by what
they oxidized. Temperature and pH are held. Parameters come as JSON on the standard input; the daily TAN and oxygen of the tank, and
the seconds that the season took, go as JSON to the standard output. Needs python3-scipy and python3-simpy of Debian.
"""
import json
import math
import sys
import time

import numpy as np
import scipy.linalg
import simpy

TANK, FILTER, SUMP = range(3)


class Loop:
    def __init__(self, p):
        self.p = p
        self.litres = np.array(p["litres"])
        self.area = np.array(p["filmSquareMetres"])
        self.aeration = np.array(p["aerationLitresPerHour"])
        self.oxygen = np.full(3, p["saturation"])  # mg/L
        self.tan = np.zeros(3)
        self.nitrite = np.zeros(3)
        self.film_a = np.full(3, p["ammonia"]["start"])  # g COD/m2
        self.film_b = np.full(3, p["nitrite"]["start"])
        self.nitrogen_lag = [0.0, 0.0]  # g
        self.oxygen_lag = [0.0, 0.0]
        flow = p["flowLitresPerHour"]
        self.transport = np.diag(self.litres + flow)
        for source, target in ((TANK, FILTER), (FILTER, SUMP), (SUMP, TANK)):
            self.transport[target, source] -= flow
        self.daily_tan = []
        self.daily_oxygen = []

    def meal(self, day):
        feed = self.p["feedGramsPerMeal"] + self.p["feedRisePerDay"] * day
        self.nitrogen_lag[0] += feed * self.p["nitrogenPerFeed"]
        self.oxygen_lag[0] += feed * self.p["oxygenPerFeed"]

    @staticmethod
    def lag(pools, rate):
        kept = math.exp(-rate)
        before = sum(pools)
        second = pools[1] * kept + pools[0] * rate * kept
        pools[0], pools[1] = pools[0] * kept, second
        return before - sum(pools)

    def film(self, kinetics, biomass, nitrogen, oxygen, unionized, cap):
        capacity = (kinetics["growth"] * biomass / kinetics["yield"]
                    * oxygen / (kinetics["halfOxygen"] + oxygen)
                    * kinetics["inhibition"] / (kinetics["inhibition"] + unionized))
        transfer, half = self.p["transferVelocity"], kinetics["half"]
        scaled = capacity / transfer
        root = np.sqrt((nitrogen - scaled) ** 2 + half * (half + 2 * (nitrogen + scaled)))
        ratio = 2 * capacity / (nitrogen + half + scaled + root)
        limited = ratio * nitrogen > cap
        ratio[limited] = cap[limited] / nitrogen[limited]
        return self.area * ratio * 1000 / 24  # L/h

    def grow(self, kinetics, biomass, oxidized):
        flux = np.divide(oxidized * 24, self.area, out=np.zeros(3), where=self.area > 0)
        gain = kinetics["yield"] * flux
        rate = gain / kinetics["full"] + kinetics["decay"]
        rest = gain / rate
        return np.maximum(rest + (biomass - rest) * np.exp(-rate / 24), kinetics["floor"])

    def step(self):
        p = self.p
        excreted = self.lag(self.nitrogen_lag, p["lagPerHour"])
        breathed = self.lag(self.oxygen_lag, p["lagPerHour"]) + p["restingOxygenGramsPerHour"]
        tan, nitrite, oxygen = self.tan, self.nitrite, self.oxygen
        for _ in range(p["passes"]):
            conductance_a = self.film(
                p["ammonia"], self.film_a, tan, oxygen, tan * p["unionizedShare"], p["capPerOxygen"] * oxygen)
            right = self.litres * self.tan
            right[TANK] += excreted * 1000
            tan = scipy.linalg.solve(self.transport + np.diag(conductance_a), right)
            conductance_b = self.film(
                p["nitrite"], self.film_b, nitrite, oxygen, tan * p["unionizedShare"], np.full(3, np.inf))
            right = self.litres * self.nitrite + conductance_a * tan
            nitrite = scipy.linalg.solve(self.transport + np.diag(conductance_b), right)
            loss = (conductance_a * tan * p["oxygenPerAmmonia"] + conductance_b * nitrite * p["oxygenPerNitrite"]) / oxygen
            loss[TANK] += breathed * 1000 / max(p["fishOxygenLimit"], oxygen[TANK])
            right = self.litres * self.oxygen + self.aeration * p["saturation"]
            oxygen = scipy.linalg.solve(self.transport + np.diag(self.aeration + loss), right)
        self.film_a = self.grow(p["ammonia"], self.film_a, conductance_a * tan / 1000)
        self.film_b = self.grow(p["nitrite"], self.film_b, conductance_b * nitrite / 1000)
        self.tan, self.nitrite, self.oxygen = tan, nitrite, oxygen

    def record(self):
        self.daily_tan.append(float(self.tan[TANK]))
        self.daily_oxygen.append(float(self.oxygen[TANK]))


def meals(environment, loop, hour):
    yield environment.timeout(hour)
    while True:
        # Behind the hour's own event of this instant, which was laid down before.
        yield environment.timeout(0)
        loop.meal(environment.now // 24)
        yield environment.timeout(24)


def hours(environment, loop):
    while True:
        # The hour is solved at its end, before the events of that instant.
        yield environment.timeout(1)
        loop.step()
        if environment.now % 24 == 0:
            loop.record()


def main():
    parameters = json.load(sys.stdin)
    start = time.process_time()
    loop = Loop(parameters)
    environment = simpy.Environment()
    environment.process(hours(environment, loop))
    for hour in parameters["mealHours"]:
        environment.process(meals(environment, loop, hour))
    environment.run(until=parameters["days"] * 24 + 0.5)
    seconds = time.process_time() - start
    json.dump({"seconds": seconds, "tan": loop.daily_tan, "oxygen": loop.daily_oxygen}, sys.stdout)


if __name__ == "__main__":
    main()
