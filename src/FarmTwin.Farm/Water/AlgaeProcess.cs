using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Solids;

namespace FarmTwin.Farm.Water;

/// <summary>The green film on water whose cover is off: oxygen and pH up by day, oxygen down by night, nitrate and phosphorus taken.</summary>
/// <remarks>
/// dX/dt = μ(T) I/(K_I + I) N/(K_N + N) X/(1 + X/X_s) − (r(T) + s) X. Carbon, nitrate and phosphorus are first-order losses of the water, so
/// none runs below zero; what was solved is what grew. Surfaces that are open by description count as managed: only cover that was taken
/// off grows algae. See docs/model/mishaps.md.
/// </remarks>
public sealed class AlgaeProcess
{
    private const double ReferenceCelsius = 20;

    // Half-saturation of respiration for oxygen, and least concentration a demand is divided by, mg/L.
    private const double LeastOxygen = 0.2;
    private const double LeastDissolved = 1e-6;

    private readonly FarmContext _farm;
    private readonly AlgaeParameters _algae;
    private readonly double[] _carbon;
    private readonly double[] _nitrate;
    private readonly double[] _phosphorus;
    private readonly double[] _oxygenMade;
    private readonly double[] _oxygenTaken;
    private readonly double[] _respiredShare;
    private readonly bool[] _grows;

    /// <summary>Makes the process.</summary>
    public AlgaeProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _algae = farm.Parts.Algae;
        int count = farm.Parts.Basins.Length;
        _carbon = new double[count];
        _nitrate = new double[count];
        _phosphorus = new double[count];
        _oxygenMade = new double[count];
        _oxygenTaken = new double[count];
        _respiredShare = new double[count];
        _grows = new bool[count];
    }

    /// <summary>Adds what the film takes and gives in the step.</summary>
    public void Contribute()
    {
        for (int b = 0; b < _grows.Length; b++)
        {
            double area = LitSquareMetres(b);
            _grows[b] = _farm.Network.LitresAfter[b] > 0 && (area > 0 || _farm.State.Algae.DryGrams[b] > 0);
            if (_grows[b])
            {
                Add(b, area);
            }
        }
    }

    /// <summary>Grows the film by what the water gave; books it.</summary>
    public void Commit()
    {
        AlgaeState state = _farm.State.Algae;
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        double total = 0;
        for (int b = 0; b < _grows.Length; b++)
        {
            if (!_grows[b])
            {
                continue;
            }

            double respired = state.DryGrams[b] * _respiredShare[b];
            double nitrogenBack = state.NitrogenGrams[b] * _respiredShare[b];
            double phosphorusBack = state.PhosphorusGrams[b] * _respiredShare[b];
            double carbon = step.Lost(b, Substance.InorganicCarbon, _carbon[b]);
            double nitrate = step.Lost(b, Substance.Nitrate, _nitrate[b]);
            double phosphorus = step.Lost(b, Substance.Phosphorus, _phosphorus[b]);
            books.PostWater(Door.Algae, Substance.InorganicCarbon, (respired * _algae.CarbonShare) - carbon);
            books.PostWater(Door.Algae, Substance.Oxygen, (_oxygenMade[b] * step.Hours) - step.Lost(b, Substance.Oxygen, _oxygenTaken[b]));
            books.PostWater(Door.Algae, Substance.Nitrate, -nitrate);
            books.PostWater(Door.Algae, Substance.Tan, nitrogenBack);
            books.PostWater(Door.Algae, Substance.Phosphorus, phosphorusBack - phosphorus);
            state.DryGrams[b] += (carbon / _algae.CarbonShare) - respired;
            state.NitrogenGrams[b] += nitrate - nitrogenBack;
            state.PhosphorusGrams[b] += phosphorus - phosphorusBack;
            total += state.DryGrams[b];
        }

        state.MostGrams = Math.Max(state.MostGrams, total);
    }

    /// <summary>Lets the day's share drift off; where the light is shut out, all of it, as solids.</summary>
    public void EndDay()
    {
        AlgaeState state = _farm.State.Algae;
        for (int b = 0; b < _grows.Length; b++)
        {
            double share = LitSquareMetres(b) > 0 ? _algae.SloughingPerDay : 1;
            if (state.DryGrams[b] <= 0 || _farm.State.Basins.Litres[b] <= 0)
            {
                continue;
            }

            var elements = new ElementGrams(share * state.NitrogenGrams[b], share * state.PhosphorusGrams[b], 0, 0, 0, 0, 0, 0, 0);
            SolidsProcess.Add(_farm, b, share * state.DryGrams[b], elements);
            state.DryGrams[b] *= 1 - share;
            state.NitrogenGrams[b] *= 1 - share;
            state.PhosphorusGrams[b] *= 1 - share;
        }
    }

    /// <summary>Adds the film's part of the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        AlgaeState state = farm.State.Algae;
        for (int b = 0; b < state.DryGrams.Length; b++)
        {
            stocks[Element.Nitrogen] += state.NitrogenGrams[b];
            stocks[Element.Phosphorus] += state.PhosphorusGrams[b];
        }
    }

    private double LitSquareMetres(int b) =>
        _farm.Parts.Basins[b].SurfaceSquareMetres * _farm.Parts.Basins[b].CoveredShare * _farm.State.Husbandry.UncoveredShare[b];

    private void Add(int b, double area)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        AlgaeState state = _farm.State.Algae;
        double warm = Math.Exp(_algae.GrowthPerKelvin * (basins.Celsius[b] - ReferenceCelsius)) / UnitConstants.HoursPerDay;
        double light = _farm.State.House.NaturalPhotons + _farm.LampPhotons[b];
        double nitrate = basins.MilligramsPerLitre(b, Substance.Nitrate);
        double film = Math.Max(state.DryGrams[b], area * _algae.InoculumGrams);
        double growth = area <= 0 ? 0
            : _algae.GrowthAt20PerDay * warm * light / (_algae.HalfLightMicromoles + light)
                * nitrate / (_algae.NitrateHalfSaturation + nitrate)
                * film / (1 + (film / (area * _algae.SelfShadingGrams)));
        double carbon = growth * _algae.CarbonShare;
        _carbon[b] = Litres(b, Substance.InorganicCarbon, carbon);
        _nitrate[b] = Litres(b, Substance.Nitrate, carbon * _algae.NitrogenPerCarbon);
        _phosphorus[b] = Litres(b, Substance.Phosphorus, carbon * _algae.PhosphorusPerCarbon);
        _oxygenMade[b] = carbon * _algae.OxygenPerCarbon;
        _respiredShare[b] = 1 - Math.Exp(-_algae.RespirationAt20PerDay * warm * step.Hours);
        double respired = state.DryGrams[b] * _respiredShare[b] / step.Hours;
        double respiredCarbon = respired * _algae.CarbonShare;
        _oxygenTaken[b] = respiredCarbon * _algae.OxygenPerCarbon * UnitConstants.GramsPerKilogram
            / (LeastOxygen + basins.MilligramsPerLitre(b, Substance.Oxygen));
        step.Lose(b, Substance.InorganicCarbon, _carbon[b]);
        step.Lose(b, Substance.Nitrate, _nitrate[b]);
        step.Lose(b, Substance.Phosphorus, _phosphorus[b]);
        step.Lose(b, Substance.Oxygen, _oxygenTaken[b]);
        step.Add(b, Substance.Oxygen, _oxygenMade[b]);
        step.Add(b, Substance.InorganicCarbon, respiredCarbon);
        step.Add(b, Substance.Tan, state.NitrogenGrams[b] * _respiredShare[b] / step.Hours);
        step.Add(b, Substance.Phosphorus, state.PhosphorusGrams[b] * _respiredShare[b] / step.Hours);
    }

    // A demand as the litres an hour that it empties of the substance at its present concentration.
    private double Litres(int b, int substance, double gramsPerHour)
    {
        double gramsPerLitre = _farm.State.Basins.MilligramsPerLitre(b, substance) / UnitConstants.GramsPerKilogram;
        return gramsPerHour / Math.Max(LeastDissolved, gramsPerLitre);
    }
}
