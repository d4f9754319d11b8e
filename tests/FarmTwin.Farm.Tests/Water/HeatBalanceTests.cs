using CsCheck;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

/// <summary>The thermostat's duty is part of the heat solve: just what reaches the set-point, or all there is.</summary>
public class HeatBalanceTests
{
    private const int Tank = 0;
    private const int FishSump = 1;
    private const int PlantSump = 3;
    private static readonly double[] Litres = [2000, 700, 7200, 1800];
    private static readonly FarmDescription Farm = BareFarm.TwoLoops(2000, 700, 7200, 1800, 5000);

    [Fact]
    public void The_duty_just_reaches_the_set_point_when_the_heater_can()
    {
        Gen.Select(Gen.Double[5, 26.9], Gen.Double[0, 400], Gen.Double[0, 1500], Gen.Int[0, 2].Select(i => i == 0 ? 1 : i == 1 ? 0.5 : 1.0 / 60)).Sample(
            (celsius, wattsPerKelvin, valve, hours) =>
            {
                Bench bench = new(celsius, wattsPerKelvin, valve, hours, [FishSump], [27], [1e7]);
                Assert.Equal(27, bench.Heat.After[FishSump], 1e-8);
                Assert.InRange(bench.Heat.HeaterWatts[0], 0, 1e7);
                bench.AssertClosed();
            }, iter: 500, threads: 1);
    }

    [Fact]
    public void A_small_heater_gives_all_it_has_and_falls_short()
    {
        Bench bench = new(18, 60, 0, 1, [FishSump], [27], [3000]);
        Assert.Equal(3000, bench.Heat.HeaterWatts[0]);
        Assert.InRange(bench.Heat.After[FishSump], 18, 26.9);
        bench.AssertClosed();
    }

    [Fact]
    public void Water_above_the_set_point_is_not_heated()
    {
        Bench bench = new(29, 10, 0, 1, [FishSump], [27], [12_000]);
        Assert.Equal(0, bench.Heat.HeaterWatts[0]);
        bench.AssertClosed();
    }

    [Fact]
    public void Two_heaters_reach_both_set_points_together()
    {
        Bench bench = new(15, 50, 600, 1, [FishSump, PlantSump], [27, 20], [1e7, 1e7]);
        Assert.InRange(bench.Heat.After[FishSump], 27 - 1e-9, 27.5);
        Assert.Equal(20, bench.Heat.After[PlantSump], 1e-8);
        bench.AssertClosed();
    }

    [Fact]
    public void A_heater_in_an_empty_basin_gives_nothing()
    {
        Bench bench = new(15, 0, 0, 1, [FishSump], [27], [12_000], [0, 0, 7200, 1800]);
        Assert.Equal(0, bench.Heat.HeaterWatts[0]);
        bench.AssertClosed();
    }

    [Fact]
    public void Coupled_the_duty_carries_the_plant_loop_s_colder_water()
    {
        // Own calculation: 386 L/h at 7 K colder takes 3.1 kW (1.163 W per L/h and K).
        Bench bench = new(20, 0, 386, 1, [FishSump], [27], [1e7], startFish: 27);
        Assert.Equal(3.1, bench.Heat.HeaterWatts[0] / 1000, 0.1);
        bench.AssertClosed();
    }

    private sealed class Bench
    {
        private readonly Basins _before = new(4);
        private readonly WaterStep _step = new(4);
        private readonly FlowNetwork _network = new(Farm);
        private readonly double _hours;

        public Bench(
            double celsius, double wattsPerKelvin, double valve, double hours, int[] heaters, double[] hold, double[] largest, double[]? litres = null,
            double startFish = double.NaN)
        {
            _hours = hours;
            (litres ?? Litres).CopyTo(_before.Litres, 0);
            Array.Fill(_before.Celsius, celsius);
            if (!double.IsNaN(startFish))
            {
                _before.Celsius[Tank] = startFish;
                _before.Celsius[FishSump] = startFish;
            }

            _step.Open(0, (long)(hours * UnitConstants.SecondsPerHour));
            for (int b = 0; b < 4; b++)
            {
                _step.HeatWattsPerKelvin[b] = wattsPerKelvin;
                _step.HeatWatts[b] = wattsPerKelvin * 8;
                _step.VapourLitresPerHour[b] = 0.5;
            }

            _network.Solve(_before.Litres, _step.VapourLitresPerHour, [valve], hours);
            Heat = new HeatBalance(_network, heaters);
            hold.CopyTo(Heat.HoldCelsius, 0);
            largest.CopyTo(Heat.LargestWatts, 0);
            Heat.Solve(_before, _step, 12);
        }

        public HeatBalance Heat { get; }

        public void AssertClosed()
        {
            double change = 0;
            double moved = Heat.HeaterWatts.Sum() * _hours * UnitConstants.SecondsPerHour;
            double scale = 0;
            for (int b = 0; b < 4; b++)
            {
                double after = _network.LitresAfter[b] * Heat.After[b] * HeatBalance.JoulesPerLitreKelvin;
                change += after - (_before.Litres[b] * _before.Celsius[b] * HeatBalance.JoulesPerLitreKelvin);
                scale += after;
                if (_network.LitresAfter[b] > 0)
                {
                    moved += (_step.HeatWatts[b] - (_step.HeatWattsPerKelvin[b] * Heat.After[b])) * _hours * UnitConstants.SecondsPerHour;
                    moved += ((_network.TopUp[b] * 12) - ((_network.Loss[b] + _network.Spill[b]) * Heat.After[b]))
                        * _hours * HeatBalance.JoulesPerLitreKelvin;
                }
            }

            Assert.Equal(change, moved, 1e-10 * scale);
        }
    }
}
