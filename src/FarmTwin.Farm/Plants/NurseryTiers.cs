using System.Globalization;
using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Plants;

/// <summary>The tiers of the nursery by number from 0: what each is for on a day, its light and power.</summary>
/// <remarks>Immutable; empty for a farm without a nursery.</remarks>
public sealed class NurseryTiers
{
    private readonly NurseryDescription? _nursery;
    private readonly TierDescription?[] _own;
    private readonly TierChange[][] _changes;

    /// <summary>Reads the tiers.</summary>
    /// <param name="nursery">The nursery, or none.</param>
    /// <exception cref="DescriptionException">A tier is called by something that is not one of their numbers.</exception>
    public NurseryTiers(NurseryDescription? nursery)
    {
        _nursery = nursery;
        Count = nursery?.Tiers ?? 0;
        _own = new TierDescription?[Count];
        _changes = new TierChange[Count][];
        Array.Fill(_changes, []);
        foreach ((string name, TierDescription tier) in nursery?.Tier ?? new Dictionary<string, TierDescription>())
        {
            if (!int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int number) || number < 1 || number > Count)
            {
                throw new DescriptionException($"nursery.tier.{name}: there is no such tier; they are called by number, from \"1\" to \"{Count}\".");
            }

            _own[number - 1] = tier;
            _changes[number - 1] = [.. tier.Changes.Values.OrderBy(c => c.FromDay)];
        }
    }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>Whether any tier is ever for microgreens.</summary>
    public bool EverGrowMicrogreens => _own.Any(t => t is not null
        && (t.Use == TierUse.Microgreens || t.Changes.Values.Any(c => c.Use == TierUse.Microgreens)));

    /// <summary>What a tier is for on a day.</summary>
    public TierUse UseOf(int tier, double day)
    {
        TierUse use = _own[tier]?.Use ?? TierUse.Seedlings;
        foreach (TierChange change in _changes[tier])
        {
            use = change.FromDay <= day ? change.Use : use;
        }

        return use;
    }

    /// <summary>Light at a tier's trays while its lamps are on, µmol/(m² s).</summary>
    public double Photons(int tier) => _own[tier]?.LightMicromoles ?? _nursery!.LightMicromoles;

    /// <summary>Hours that a tier's lamps are on each day.</summary>
    public double LightHours(int tier) => _own[tier]?.LightHours ?? _nursery!.LightHours;

    /// <summary>Power of a tier's lamps while on, W.</summary>
    public double Watts(int tier) => _own[tier]?.PowerWatts ?? _nursery!.PowerPerTierWatts;
}
