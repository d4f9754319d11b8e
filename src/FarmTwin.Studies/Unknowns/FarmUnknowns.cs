using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;

namespace FarmTwin.Studies.Unknowns;

/// <summary>What nobody knows of a farm beforehand, apart from its weather; every replicate of a study draws it anew.</summary>
/// <remarks>
/// Inoculum, nitrifiers' rates, the strain's growth, uneaten feed, gas loss, the site's yield and the house's infiltration. A figure that the
/// scenario states under <c>parameters</c>, or a strain rate set from weigh-ins, is known and is not drawn. Draws are keyed by the
/// unknown's name: two plans meet the same unknowns in the same replicate, whatever else differs between them.
/// </remarks>
public static class FarmUnknowns
{
    private static readonly uint Process = StableHash.Of("unknown");

    private static readonly string[] Always = ["processes/plants/siteFactor"];

    private static readonly string[] WithFilms =
    [
        "processes/nitrification/ammoniaOxidizerMaximumGrowthRate", "processes/nitrification/nitriteOxidizerMaximumGrowthRate",
        "processes/nitrification/transferVelocity", "processes/nitrification/tapWaterInoculum", "processes/nitrification/seedingEfficiency",
        "processes/mineralization/denitrificationRate", "processes/mineralization/backgroundDenitrification",
    ];

    /// <summary>The unknowns of a farm, in the order of their names.</summary>
    /// <param name="farm">The farm as its scenario states it.</param>
    /// <param name="library">The library whose ranges are used.</param>
    public static IReadOnlyList<Unknown> Of(FarmDescription farm, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(library);
        IEnumerable<string> fish = farm.Stocking.Values.Where(s => s.StrainRate == 1).Select(s => $"fish/{s.Fish}/growthCoefficient");
        IEnumerable<string> feeds = farm.Stocking.Values.Select(s => $"feeds/{s.Feed ?? farm.Feeding.Feed}/uneatenFraction");
        var unknowns = Always.Concat(WithFilms).Concat(fish).Concat(feeds)
            .Distinct(StringComparer.Ordinal)
            .Where(path => !farm.Parameters.ContainsKey(path))
            .Select(path => OfParameter(path, library))
            .ToList();
        unknowns.Add(Infiltration(farm, library));
        return [.. unknowns.OrderBy(u => u.Name, StringComparer.Ordinal)];
    }

    /// <summary>What one replicate draws, in the order of <paramref name="unknowns"/>.</summary>
    /// <param name="unknowns">The unknowns.</param>
    /// <param name="seed">Seed of all chance.</param>
    /// <param name="replicate">Which repetition; 0 is a single run and draws nothing: it has the middle of everything.</param>
    public static double[] Draw(IReadOnlyList<Unknown> unknowns, ulong seed, uint replicate)
    {
        ArgumentNullException.ThrowIfNull(unknowns);
        var streams = new RandomStreams(seed, replicate);
        return [.. unknowns.Select(u => replicate == 0 ? u.Middle : u.Quantile(streams.Uniform(Process, StableHash.Of(u.Name), 0)))];
    }

    /// <summary>The farm with a value for each unknown.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="unknowns">The unknowns, [n].</param>
    /// <param name="values">Their values, [n], each in its published unit.</param>
    public static FarmDescription With(FarmDescription farm, IReadOnlyList<Unknown> unknowns, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(unknowns);
        ArgumentNullException.ThrowIfNull(values);
        for (int i = 0; i < unknowns.Count; i++)
        {
            farm = unknowns[i].Put(farm, values[i]);
        }

        return farm;
    }

    private static Unknown OfParameter(string path, FarmLibrary library)
    {
        string[] names = path.Split('/');
        Parameter parameter = library.Set(names[0], names[1]).All.First(p => p.Name == names[2]);
        return new Unknown(path, parameter.About, parameter.Unit, parameter.Low, parameter.Value, parameter.High, (farm, value) =>
            farm with { Parameters = new Dictionary<string, double>(farm.Parameters, StringComparer.Ordinal) { [path] = value } });
    }

    // The scenario states what the house was designed for; how tight it is built is known by the cover's range about its usual value.
    private static Unknown Infiltration(FarmDescription farm, FarmLibrary library)
    {
        Parameter cover = library.Set("covers", farm.House.Cover).All.First(p => p.Name == "infiltration");
        double stated = farm.House.InfiltrationPerHour;
        return new Unknown("house/infiltration", cover.About, cover.Unit, stated * cover.Low / cover.Value, stated, stated * cover.High / cover.Value,
            (other, value) => other with { House = other.House with { InfiltrationPerHour = value } });
    }
}
