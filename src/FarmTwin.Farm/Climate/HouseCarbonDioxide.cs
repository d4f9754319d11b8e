using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Climate;

/// <summary>Carbon dioxide of the house air: what water and plants give off, plants take, enrichment adds and ventilation exchanges.</summary>
/// <remarks>
/// One mixed volume, solved exactly over a step of steady flows; what the water gives is that of the step before. Plants fix, for a mole
/// of light, what they fixed for a mole of yesterday's, in proportion to the carbon dioxide in the air; the share that they respire comes back
/// evenly through the day (docs/model/climate-house.md).
/// </remarks>
public sealed class HouseCarbonDioxide
{
    private const double GramsPerMole = 44.0095;
    private const double DryAirGramsPerMole = 28.9647;
    private const double GramsPerGramCarbon = GramsPerMole / UnitConstants.AtomicWeight.Carbon;

    private readonly FarmContext _farm;
    private readonly HouseDescription _house;
    private readonly double _gramsPerPpm;
    private readonly double _fixedPerGain;

    /// <summary>Makes the process.</summary>
    /// <param name="farm">The farm.</param>
    /// <exception cref="DescriptionException">Enrichment without the balance.</exception>
    public HouseCarbonDioxide(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _house = farm.Parts.Farm.House;
        if (_house.Enrichment is not null && !_house.CarbonDioxideBalance)
        {
            throw new DescriptionException("house.enrichment: it acts in the balance of the house's carbon dioxide; state \"carbonDioxideBalance\": true.");
        }

        double density = Psychrometrics.DryAirDensity(20, 0, Psychrometrics.PressureKilopascal(farm.Parts.Farm.Site.ElevationMetres));
        _gramsPerPpm = _house.AirCubicMetres * density * UnitConstants.GramsPerKilogram / DryAirGramsPerMole * GramsPerMole * 1e-6;
        _fixedPerGain = farm.Parts.Climate.CropCarbonShare * GramsPerGramCarbon;
    }

    /// <summary>Ends a step.</summary>
    /// <param name="airCubicMetresPerHour">Outside air that came in, m3/h.</param>
    /// <param name="ventsShut">Whether nothing but leaks exchanged air.</param>
    /// <param name="photonsMicromoles">Light at the crop, µmol/(m2 s).</param>
    public void Commit(double airCubicMetresPerHour, bool ventsShut, double photonsMicromoles)
    {
        HouseState state = _farm.State.House;
        if (!_house.CarbonDioxideBalance)
        {
            return;
        }

        double hours = _farm.Step.Hours;
        double exchange = airCubicMetresPerHour / _house.AirCubicMetres;
        double fixation = Par.LightIntegral(photonsMicromoles, 1) * state.FixedGramsPerMole;
        double rate = exchange + (fixation / (_gramsPerPpm * Math.Max(1, _house.CarbonDioxidePpm)));
        double sources = (state.WaterCarbonGramsPerHour * GramsPerGramCarbon) + state.RespiredGramsPerHour;
        double end = End(state.CarbonDioxidePpm, sources, exchange, rate, hours);
        double added = 0;
        if (_house.Enrichment is { } enrichment && ventsShut && photonsMicromoles > 0 && end < enrichment.HoldPpm)
        {
            // The end is linear in the source: what a gram an hour lifts it by.
            double lift = End(0, 1, 0, rate, hours);
            added = Math.Min((enrichment.HoldPpm - end) / lift, enrichment.LargestKilogramsPerHour * UnitConstants.GramsPerKilogram);
            end += added * lift;
        }

        state.CarbonDioxidePpm = Math.Max(0, end);
        _farm.State.Totals.EnrichedGrams += added * hours;
    }

    /// <summary>Ends a day: what the plants fixed for the light they had.</summary>
    public void EndDay()
    {
        HouseState state = _farm.State.House;
        double net = state.CropGainGrams * _fixedPerGain;
        double share = _farm.Parts.Climate.CropRespiredShare;
        double gross = net / (1 - share);
        double moles = state.NaturalMolesToday + state.LampMolesToday;
        state.FixedGramsPerMole = moles > 0 ? gross / moles : 0;
        state.RespiredGramsPerHour = (gross - net) / UnitConstants.HoursPerDay;
        state.CropGainGrams = 0;
    }

    private double End(double ppm, double gramsPerHour, double exchange, double rate, double hours)
    {
        double inflow = (exchange * _house.CarbonDioxidePpm) + (gramsPerHour / _gramsPerPpm);
        if (rate * hours < 1e-9)
        {
            return ppm + (inflow * hours);
        }

        double steady = inflow / rate;
        return steady + ((ppm - steady) * Math.Exp(-rate * hours));
    }
}
