using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Plants that the cold of a day killed are cleared away: off the boards, out of trough and beds, to compost.</summary>
/// <remarks>The nursery is spared: it is heated apart.</remarks>
public sealed class FrostWork : FarmWork
{
    // Below this share nothing dies that a person would find.
    private const double NobodySees = 1e-4;
    private const double HalfAPlant = 0.5;

    private readonly PlantProcess _plants;
    private readonly PlantLot _waste = new();
    private readonly double[] _killed;

    /// <summary>Makes it.</summary>
    public FrostWork(FarmContext farm, FarmLog log, PlantProcess plants)
        : base(farm, log)
    {
        _plants = plants;
        _killed = new double[Parts.Crops.Length];
    }

    /// <summary>Looks at the day's cold; call before the plants' own end of the day.</summary>
    public void EndDay(long seconds)
    {
        GrowingState growing = State.Growing;
        if (!Kills(growing))
        {
            return;
        }

        _plants.Settle();
        Array.Clear(_killed);
        foreach (TransplantTrough trough in growing.Troughs)
        {
            for (int i = trough.Count - 1; i >= 0; i--)
            {
                double dead = Dead(trough[i], out int crop);
                if (dead > 0)
                {
                    trough.Lose(i, dead, _waste);
                    Clear(crop, dead);
                }
            }
        }

        foreach (RaftLane lane in growing.Lanes)
        {
            for (int i = 0; i < lane.Count; i++)
            {
                double dead = Dead(lane[i], out int crop);
                if (dead > 0)
                {
                    lane.Lose(i, dead, _waste);
                    Clear(crop, dead);
                }
            }

            lane.TakeOffEmpty();
        }

        foreach (MediaBed bed in growing.Beds)
        {
            double dead = Dead(bed.Plants, out int crop);
            if (dead > 0)
            {
                bed.Plants.MoveInto(_waste, dead, keepArea: true);
                Clear(crop, dead);
            }
        }

        growing.Changed = true;
        for (int crop = 0; crop < _killed.Length; crop++)
        {
            if (_killed[crop] >= HalfAPlant)
            {
                Log.Add(seconds, growing.ColdestCelsius < 0 ? "frost" : "chill", Parts.CropNames[crop], _killed[crop], "plants",
                    $"died, the air of the house was down to {growing.ColdestCelsius:0.0} °C");
            }
        }
    }

    private bool Kills(GrowingState growing)
    {
        for (int crop = 0; crop < Parts.Crops.Length; crop++)
        {
            if (Parts.Crops[crop].Cold is { } cold && cold.KilledShare(growing.ColdestCelsius, growing.ChillDegreeHours[crop], 0) > NobodySees)
            {
                return true;
            }
        }

        return false;
    }

    private double Dead(PlantLot lot, out int crop)
    {
        crop = lot.Crop;
        if (lot.IsEmpty || Parts.Crops[crop].Cold is not { } cold)
        {
            return 0;
        }

        GrowingState growing = State.Growing;
        double share = cold.KilledShare(growing.ColdestCelsius, growing.ChillDegreeHours[crop], lot.Damage.FrostTriedShare);
        lot.Damage = lot.Damage with { FrostTriedShare = Math.Max(lot.Damage.FrostTriedShare, cold.FrostShare(growing.ColdestCelsius)) };

        // The last plant of a lot does not linger as a fraction.
        double dead = share * lot.Plants;
        return share <= NobodySees ? 0 : lot.Plants - dead < HalfAPlant ? lot.Plants : dead;
    }

    private void Clear(int crop, double dead)
    {
        _killed[crop] += dead;
        State.Growing.KilledByCold[crop] += dead;
        CropParameters parameters = Parts.Crops[crop];
        _plants.PostPlants(Door.CropCompost, _waste.Elements, _waste.WaterLitres(parameters), -1);
        State.Growing.WasteDryGrams[crop] += _waste.DryGrams + (_waste.Fruit?.DryGrams ?? 0);
        if (parameters.Fruit is { } fruit && _waste.Fruit is { } load)
        {
            State.Growing.Fruit[crop].LostGrams += fruit.FreshGrams(load.DryGrams);
        }

        _waste.Clear();
    }
}
