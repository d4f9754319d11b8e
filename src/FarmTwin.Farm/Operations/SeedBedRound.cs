using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>The look into the seed trays each morning: how many came up, and whether the bed was too warm or too cold.</summary>
public sealed class SeedBedRound(FarmContext farm, FarmLog log) : FarmWork(farm, log)
{
    /// <summary>Notes what came up since the last look.</summary>
    public void Look(long seconds)
    {
        foreach (NurseryTray tray in State.Growing.Trays)
        {
            if (tray.IsUp && !tray.IsCounted)
            {
                tray.IsCounted = true;
                Note(Parts.CropNames[tray.Crop], Parts.Crops[tray.Crop], tray.Seeds, seconds);
            }
        }

        foreach (MicrogreenTrays trays in State.Growing.Nursery.Microgreens)
        {
            if (trays.IsUp && !trays.IsCounted)
            {
                trays.IsCounted = true;
                Note(Parts.MicrogreenNames[trays.Kind], Parts.Crops[trays.Crop], trays.Seeds, seconds);
            }
        }
    }

    private void Note(string name, CropParameters crop, SeedStage seeds, long seconds)
    {
        double share = seeds.Share(crop);
        if (share < Parts.Practice.PoorGermination * crop.SeedLotShare * crop.Germination.BestShare)
        {
            Log.Add(seconds, "poor germination", name, share, "of the seed",
                $"the seed bed was at {seeds.MeanCelsius:0.0} °C for {seeds.Days:0} days");
        }
    }
}
