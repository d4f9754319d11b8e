using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>Probes: lag, drift, noise, resolution, calibration, and the controls that go by them.</summary>
public class ProbeTests
{
    private const long Week = 7 * UnitConstants.SecondsPerDay;

    [Fact]
    public void A_lag_answers_a_jump_by_63_percent_in_one_time_constant_and_trails_a_ramp_by_slope_times_lag()
    {
        Assert.Equal(1 - Math.Exp(-1), ProbeKernel.Lagged(0, 1, 0, 60, 60), 1e-12);
        Assert.Equal((0.01 * 36000) - (0.01 * 60), ProbeKernel.Lagged(0, 0, 0.01, 36000, 60), 1e-9);
        Assert.Equal(5, ProbeKernel.Lagged(0, 2, 0.05, 60, 0), 1e-12);
    }

    [Fact]
    public void A_lag_does_not_depend_on_how_a_stretch_is_cut()
    {
        double whole = ProbeKernel.Lagged(3, 5, 0.002, 3600, 90);
        double cut = 3;
        for (int minute = 0; minute < 60; minute++)
        {
            cut = ProbeKernel.Lagged(cut, 5 + (0.002 * 60 * minute), 0.002, 60, 90);
        }

        Assert.Equal(whole, cut, 1e-9);
    }

    [Fact]
    public void A_usual_pH_probe_drifts_by_0_02_a_week_and_scatters_by_0_05()
    {
        ProbeParameters probe = ProbeParameters.From(ShippedLibrary.Library.Set("probes", "ph"), ProbeQuantity.PH);
        Assert.Equal(0.02, ProbeKernel.Drift(probe.DriftPerWeek, Week), 1e-12);
        Assert.Equal(0.08, ProbeKernel.Drift(probe.DriftPerWeek, 4 * Week), 1e-12);
        var streams = new RandomStreams(1, 0);
        double sum = 0;
        double squares = 0;
        const int Samples = 20000;
        for (int i = 0; i < Samples; i++)
        {
            double noise = probe.Noise * ProbeKernel.Noise(streams, 0, i);
            sum += noise;
            squares += noise * noise;
        }

        Assert.Equal(0, sum / Samples, 3 * 0.05 / Math.Sqrt(Samples));
        Assert.Equal(0.05, Math.Sqrt(squares / Samples), 0.001);
    }

    [Fact]
    public void Readings_stand_on_the_steps_of_the_display() =>
        Assert.Equal(7.1, ProbeKernel.Quantised(7.1249, 0.1), 1e-12);

    [Fact]
    public void A_probe_drifts_beside_the_truth_until_it_is_calibrated()
    {
        FarmDescription farm = AlarmFarms.Of(
            new Dictionary<string, ProbeDescription> { ["pH"] = new() { Quantity = ProbeQuantity.PH, Basin = "tank", CalibrateEveryDays = 42 } },
            new Dictionary<string, AlarmDescription>());
        Season season = Farms.Run(farm, 60);
        double[] off = [.. Farms.Days(season, "probe_pH_pH").Zip(Farms.Days(season, "true_pH_pH"), (read, truth) => read - truth)];

        // From the second day to the day before the calibration of day 42: 39 days at 0.02 a week; two daily means of noisy hours.
        double drift = Math.Abs(Mean(off, 38, 42) - Mean(off, 1, 5));
        Assert.Equal(37.0 / 7 * 0.02, drift, 0.02);
        Assert.Equal("pH", Assert.Single(season.Log.Events, e => e.What == "calibrate probe").Where);
        Assert.True(Math.Abs(Mean(off, 43, 47)) < 0.11, "what a calibration leaves is within a few of its standard deviation of 0.03");
    }

    [Fact]
    public void A_thermostat_that_goes_by_a_drifting_probe_heats_by_its_error()
    {
        FarmDescription farm = Heated(new ProbeDrifts { Day = 3, Probe = "stat", KelvinPerDay = -0.5 });
        Season season = Farms.Run(farm, 8);
        double truth = season.State.Basins.Celsius[season.Parts.BasinIndex("fish-sump")];

        // Five days at −0.5 K/d: it reads 2.5 K low, and the water stands about 2.5 K above the set-point.
        Assert.Equal(26 + 2.5, truth, 0.5);
        Assert.Equal(26, season.State.Probes.Reading[0], 0.5);
    }

    [Fact]
    public void An_alarm_on_another_probe_leads_to_the_heaters_probe_that_lies()
    {
        FarmDescription farm = Heated(new ProbeDrifts { Day = 3, Probe = "stat", KelvinPerDay = -1 });
        farm = farm with
        {
            Probes = farm.Probes.Append(new("tank", new ProbeDescription { Quantity = ProbeQuantity.WaterTemperature, Basin = "tank" })).ToDictionary(StringComparer.Ordinal),
            Alarms = new Dictionary<string, AlarmDescription> { ["warm"] = new WatchTemperature { Probe = "tank", Above = 29 } },
        };
        Season season = Farms.Run(farm, 12);
        AlarmIncident incident = AlarmFarms.Only(season);
        Assert.False(incident.IsFalse);
        Assert.InRange(incident.RaisedSeconds / (double)UnitConstants.SecondsPerDay, 5.5, 7.5);
        Assert.Equal(1, season.State.Probes.Calibrations[0]);
        Assert.Equal(26, season.State.Basins.Celsius[season.Parts.BasinIndex("fish-sump")], 0.5);
    }

    [Fact]
    public void A_thermostat_stuck_below_its_setpoint_never_stops_heating()
    {
        FarmDescription farm = Heated(
            new SetHeater { Day = 2, Heater = "water", HoldCelsius = 29 }, new ProbeDrifts { Day = 2, Hour = 10, Probe = "stat", Stuck = true });
        Season season = Farms.Run(farm, 5);
        Assert.True(season.State.Basins.Celsius[season.Parts.BasinIndex("fish-sump")] > 33);
    }

    [Fact]
    public void A_drift_of_the_wrong_quantity_is_refused_by_name()
    {
        DescriptionException refused = Assert.Throws<DescriptionException>(() => Farms.Start(Heated(new ProbeDrifts { Day = 1, Probe = "stat", PHPerDay = 1 }), 2));
        Assert.Contains("stat", refused.Message, StringComparison.Ordinal);
        Assert.Contains("water temperature", refused.Message, StringComparison.Ordinal);
    }

    private static FarmDescription Heated(params PlannedEvent[] events) => AlarmFarms.Of(
        new Dictionary<string, ProbeDescription> { ["stat"] = new() { Quantity = ProbeQuantity.WaterTemperature, Basin = "fish-sump" } },
        new Dictionary<string, AlarmDescription>()).With(events) with
    {
        WaterHeaters = new Dictionary<string, WaterHeaterDescription>
        {
            ["water"] = Farms.FirstSeason.WaterHeaters["water"] with { HoldCelsius = 26, Thermostat = "stat" },
        },
        Basins = BareFarm.TwoLoops(1600, 700, 3240, 1800, 1600, 24, 20).Basins.With("fish-sump", b => b with { WallWattsPerKelvin = 40 }),
    };

    private static double Mean(double[] values, int from, int until) => values[from..until].Average();
}
