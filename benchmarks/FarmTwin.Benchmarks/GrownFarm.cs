using FarmTwin.Farm.Description;

namespace FarmTwin.Benchmarks;

/// <summary>Larger farms made from a described one, to show how the cost grows.</summary>
public static class GrownFarm
{
    /// <summary>The farm over another length.</summary>
    public static FarmDescription OfLength(FarmDescription farm, double days)
    {
        ArgumentNullException.ThrowIfNull(farm);
        return farm with { LengthDays = days };
    }

    /// <summary>The farm with several times its tanks and lanes, each with its pipes; the flows are divided, the stock stays.</summary>
    public static FarmDescription WithMoreBasins(FarmDescription farm, int times)
    {
        ArgumentNullException.ThrowIfNull(farm);
        string[] grown = [.. farm.Basins.Where(b => b.Value.Use is BasinUse.FishTank or BasinUse.Lane).Select(b => b.Key)];
        var basins = farm.Basins.ToDictionary(b => b.Key, b => b.Value);
        var pipes = farm.Pipes.ToDictionary(p => p.Key, p => Divided(p.Value));
        var lanes = farm.Lanes.ToDictionary(l => l.Key, l => l.Value);
        for (int copy = 2; copy <= times; copy++)
        {
            foreach (string basin in grown)
            {
                basins.Add(Copy(basin), farm.Basins[basin]);
            }

            foreach ((string name, PipeDescription pipe) in farm.Pipes.Where(p => grown.Contains(p.Value.From) || grown.Contains(p.Value.To)))
            {
                pipes.Add(Copy(name), Divided(pipe) with { From = CopyOf(pipe.From), To = CopyOf(pipe.To) });
            }

            foreach ((string name, LaneDescription lane) in farm.Lanes)
            {
                lanes.Add(Copy(name), lane with { Basin = Copy(lane.Basin) });
            }

            string Copy(string name) => $"{name}-copy-{copy}";
            string CopyOf(string basin) => grown.Contains(basin) ? Copy(basin) : basin;
        }

        return farm with { Basins = basins, Pipes = pipes, Lanes = lanes };

        PipeDescription Divided(PipeDescription pipe) => grown.Contains(pipe.To) ? pipe with { FlowLitresPerHour = pipe.FlowLitresPerHour / times } : pipe;
    }

    /// <summary>The farm sowing the same plants in several times as many lots.</summary>
    public static FarmDescription WithMoreLots(FarmDescription farm, int times)
    {
        ArgumentNullException.ThrowIfNull(farm);
        return farm with
        {
            Crops = farm.Crops.ToDictionary(c => c.Key, c => c.Value with
            {
                SowEveryDays = c.Value.SowEveryDays / times,
                CellsPerSowing = c.Value.CellsPerSowing / times,
                Changes = c.Value.Changes.ToDictionary(k => k.Key, k => k.Value with { CellsPerSowing = k.Value.CellsPerSowing / times }),
            }),
        };
    }
}
