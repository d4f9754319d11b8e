namespace FarmTwin.Farm.Plants;

/// <summary>A media bed: its plants, the height its water is set to, and what they met today.</summary>
/// <remarks>Mutable state of one season; the means of the day are reset at midnight.</remarks>
public sealed class MediaBed
{
    private double _hours;
    private double _oxygenHours;
    private double _heightHours;

    /// <summary>The plants, none while the bed lies fallow.</summary>
    public PlantLot Plants { get; } = new();

    /// <summary>Height above the floor at which its outlet is set, m.</summary>
    public double SetHeightMetres { get; set; }

    /// <summary>Whether somebody set the height by hand, so that it is not lowered by the plan until the next planting.</summary>
    public bool SetByHand { get; set; }

    /// <summary>Which planting stands in it; −1 for none.</summary>
    public int Planting { get; set; } = -1;

    /// <summary>Day of setting out; not a number while it lies fallow.</summary>
    public double SetOutDay { get; set; } = double.NaN;

    /// <summary>Oxygen of the water that leaves it, mean of the last whole day, mg/L.</summary>
    public double OxygenMilligramsPerLitre { get; private set; } = double.NaN;

    /// <summary>Height of its water above the floor, mean of the last whole day, m.</summary>
    public double HeightMetres { get; private set; }

    /// <summary>Days on end on which plants lacked water to live.</summary>
    public int DryDays { get; set; }

    /// <summary>Days on end on which water stood at the stems.</summary>
    public int DrownedDays { get; set; }

    /// <summary>Plants lost to dryness, or to rot at the stem, over the season.</summary>
    public double PlantsLost { get; set; }

    /// <summary>Adds a step to the day.</summary>
    public void Add(double hours, double oxygenMilligramsPerLitre, double heightMetres)
    {
        _hours += hours;
        _oxygenHours += hours * oxygenMilligramsPerLitre;
        _heightHours += hours * heightMetres;
    }

    /// <summary>Ends the day: takes its means.</summary>
    public void EndDay()
    {
        if (_hours > 0)
        {
            OxygenMilligramsPerLitre = _oxygenHours / _hours;
            HeightMetres = _heightHours / _hours;
        }

        _hours = 0;
        _oxygenHours = 0;
        _heightHours = 0;
    }

    /// <summary>Makes this bed equal to another.</summary>
    public void CopyFrom(MediaBed other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Plants.CopyFrom(other.Plants);
        SetHeightMetres = other.SetHeightMetres;
        SetByHand = other.SetByHand;
        Planting = other.Planting;
        SetOutDay = other.SetOutDay;
        OxygenMilligramsPerLitre = other.OxygenMilligramsPerLitre;
        HeightMetres = other.HeightMetres;
        DryDays = other.DryDays;
        DrownedDays = other.DrownedDays;
        PlantsLost = other.PlantsLost;
        _hours = other._hours;
        _oxygenHours = other._oxygenHours;
        _heightHours = other._heightHours;
    }
}
