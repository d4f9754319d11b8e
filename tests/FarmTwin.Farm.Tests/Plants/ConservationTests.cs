using CsCheck;
using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>Plants, dry mass and every element are conserved, whatever is split, joined, grown, lost or harvested.</summary>
public sealed class ConservationTests
{
    private const double Relative = 1e-12;

    [Fact]
    public void Splitting_and_joining_conserve_everything() =>
        Gen.Select(Gen.Double[0.1, 500], Gen.Double[0, 1].Array[1, 12], Gen.Double[0.001, 20]).Sample((plants, cuts, grams) =>
        {
            PlantLot lot = Filled(plants, grams);
            PlantLot whole = lot.Clone();
            var parts = new List<PlantLot>();
            foreach (double cut in cuts)
            {
                var part = new PlantLot();
                lot.MoveInto(part, lot.Plants * cut);
                parts.Add(part);
            }

            parts.Add(lot);
            var joined = new PlantLot();
            foreach (PlantLot part in parts)
            {
                part.MoveInto(joined, double.PositiveInfinity);
                Assert.True(part.IsEmpty);
                Assert.Equal(default, part.Pools);
            }

            Close(whole.Plants, joined.Plants);
            Close(whole.DryGrams, joined.DryGrams);
            Close(whole.AreaSquareMetres, joined.AreaSquareMetres);
            Close(whole.Planned.Nitrate, joined.Planned.Nitrate);
            for (int e = 0; e < Element.Count; e++)
            {
                Close(whole.Pools[e], joined.Pools[e]);
            }
        });

    [Fact]
    public void What_the_plants_hold_is_what_seed_and_water_brought_less_what_left() =>
        Gen.Select(Gen.Int[20, 120], Gen.Double[0, 60], Gen.Double[0, 20], Gen.Double[0, 0.2]).Sample(
            (days, nitrate, potassium, loss) => RunFarm(days, nitrate, potassium, loss), iter: 30);

    private static void RunFarm(int days, double nitrate, double potassium, double lossShare)
    {
        CropParameters crop = Crops.Lettuce;
        RootZone root = Crops.Rich with { NitrateMilligramsNPerLitre = nitrate, TanMilligramsNPerLitre = 0.5, PotassiumMilligramsPerLitre = potassium };
        DayLight day = Crops.Day(crop, 14, 14, 23, 18);
        var trough = new TransplantTrough(1.0 / 97, 150);
        var lane = new RaftLane(6, 18, 0.72);
        var trays = new List<NurseryTray>();
        var gone = new PlantLot();
        ElementGrams brought = default;
        double seedDry = 0;
        double gained = 0;
        for (int d = 0; d < days; d++)
        {
            if (d % 7 == 0)
            {
                trays.Add(new NurseryTray(0, 60, 60 / 1550.0, d));
            }

            for (int i = trays.Count - 1; i >= 0; i--)
            {
                NurseryTray tray = trays[i];
                if (tray.AdvanceSeeds(crop, 21))
                {
                    brought += tray.Lot.Pools;
                    seedDry += tray.Lot.DryGrams;
                    tray.Cull(crop, gone);
                }

                if (tray.IsUp && !tray.Lot.IsEmpty && tray.AgeDays(d) >= crop.NurseryDays)
                {
                    trough.Enter(tray.Lot);
                    tray.Lot.MoveInto(gone, double.PositiveInfinity);
                    trays.RemoveAt(i);
                }
            }

            if (d % 3 == 0)
            {
                if (lane.IsFull)
                {
                    lane.HarvestOldest(gone);
                }

                var board = new PlantLot();
                trough.TakeForBoard(0, 18, d, 24, board);
                lane.Push(board);
            }

            for (int i = 0; i < lane.Count; i++)
            {
                lane.Lose(i, lane[i].Plants * lossShare * 0.05, gone);
            }

            foreach (PlantLot lot in All(trays, trough, lane))
            {
                Uptake.PlanDay(lot, crop, Crops.Common, root);
                UptakeAmounts taken = lot.Planned * new UptakeAmounts(1, 0.9, 0.8, 0.7, 1, 1, 0.5, 0.3);
                brought += new ElementGrams(
                    taken.Nitrogen, taken.Phosphorus, taken.Potassium, taken.Calcium, taken.Magnesium, 0.001, 0.002, taken.Sulfur, taken.Iron);
                lot.Take(taken);
                lot.TakePassive(0.001, 0.002);
                gained += Growth.DailyStep(lot, crop, day, root, Crops.Common);
            }
        }

        ElementGrams held = gone.Pools;
        double dry = gone.DryGrams;
        foreach (PlantLot lot in All(trays, trough, lane))
        {
            held += lot.Pools;
            dry += lot.DryGrams;
        }

        Close(seedDry + gained, dry);
        for (int e = 0; e < Element.Count; e++)
        {
            Close(brought[e], held[e]);
        }
    }

    private static IEnumerable<PlantLot> All(List<NurseryTray> trays, TransplantTrough trough, RaftLane lane)
    {
        foreach (NurseryTray tray in trays)
        {
            if (!tray.Lot.IsEmpty)
            {
                yield return tray.Lot;
            }
        }

        for (int i = 0; i < trough.Count; i++)
        {
            yield return trough[i];
        }

        for (int i = 0; i < lane.Count; i++)
        {
            yield return lane[i];
        }
    }

    private static PlantLot Filled(double plants, double grams)
    {
        PlantLot lot = PlantLot.FromSeed(0, Crops.Lettuce, plants, plants / 50, 3);
        lot.GramsDryPerPlant = grams;
        lot.Pools = (Crops.Lettuce.TissueGramsPerGramDry * lot.DryGrams) with { Sodium = 0.3, Chloride = 0.7 };
        Uptake.PlanDay(lot, Crops.Lettuce, Crops.Common, Crops.Rich);
        lot.Planned = lot.Planned with { Nitrate = 1.5 };
        return lot;
    }

    private static void Close(double expected, double actual) =>
        Assert.InRange(actual - expected, -Relative * Math.Max(1e-9, Math.Abs(expected)), Relative * Math.Max(1e-9, Math.Abs(expected)));
}
