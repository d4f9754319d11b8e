using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Outcomes;

/// <summary>The figures by which plans are compared, in the order in which tables show them.</summary>
public static class Headlines
{
    /// <summary>Every figure.</summary>
    public static IReadOnlyList<Headline> All { get; } =
    [
        new("cycled_day", "filter cycled", "day", Wanted.Less, (s, _) => s.Water.CycledDay ?? double.NaN),
        new("first_fish_day", "first fish delivered", "day", Wanted.Less, (s, _) => s.Fish.FirstDeliveryDay ?? double.NaN),
        new("valves_opened_day", "valves opened", "day", Wanted.Neither, (s, _) => s.Water.OpenedDay ?? double.NaN),
        new("coupled_day", "fully coupled", "day", Wanted.Neither, (s, _) => s.Water.CoupledDay ?? double.NaN),
        new("first_crop_day", "first crop", "day", Wanted.Less, (s, _) => First(s.Crops.Values.Select(c => c.FirstHarvestDay))),
        new("first_fish_sale_day", "first fish sold", "day", Wanted.Less, (s, _) => s.Fish.FirstSaleDay ?? double.NaN),
        new("fish_fed_kg", "feed", "kg", Wanted.Neither, (s, _) => s.Fish.FeedKg),
        new("fish_sold_kg", "fish sold", "kg", Wanted.More, (s, _) => s.Fish.HarvestedKg),
        new("fish_standing_kg", "fish standing at the end", "kg", Wanted.Neither, (s, _) => s.Fish.StandingKg),
        new("fish_peak_kg", "most fish at once", "kg", Wanted.Neither, (s, _) => s.Fish.PeakStandingKg?.Value ?? 0),
        new("fcr", "feed per gain", "kg/kg", Wanted.Less, (s, _) => s.Fish.Fcr ?? double.NaN),
        new("fish_survival_share", "fish survival", "1", Wanted.More, (s, _) => s.Fish.Survival ?? double.NaN),
        new("crops_kg", "crops fit for sale", "kg", Wanted.More, (s, _) => s.Crops.Values.Sum(c => c.HarvestedKg)),
        new("first_grade_heads", "first-grade heads", "heads", Wanted.More, (s, _) => s.Crops.Values.Sum(c => c.SaleableHeads)),
        new("heads_below_grade", "heads below first grade", "heads", Wanted.Less, (s, _) => s.Crops.Values.Sum(c => c.SecondGradeHeads + c.UnsaleableHeads)),
        new("peak_tan_with_fish_mgN_per_L", "highest TAN with fish", "mg N/L", Wanted.Less, (s, _) => s.Water.WithFish.TanMgNPerL?.Value ?? double.NaN),
        new("peak_nitrite_with_fish_mgN_per_L", "highest nitrite with fish", "mg N/L", Wanted.Less, (s, _) => s.Water.WithFish.NitriteMgNPerL?.Value ?? double.NaN),
        new("nitrite_above_band_h", "nitrite above its band with fish", "h", Wanted.Less, (s, _) => s.Water.HoursOutsideBand["nitrite"].HoursAbove),
        new("lowest_oxygen_with_fish_mg_per_L", "lowest oxygen with fish", "mg/L", Wanted.More, (s, _) => s.Water.WithFish.LowestOxygenMgPerL?.Value ?? double.NaN),
        new("coldest_fish_water_C", "coldest fish water with fish", "°C", Wanted.More, (_, r) => r.Peak("fish_water_C", false, true)?.Value ?? double.NaN),
        new("lowest_plant_nitrate_mgN_per_L", "lowest plant-loop nitrate from day 30", "mg N/L", Wanted.More, (_, r) => LowestAfter(r.Days("nitrate_plant_loop_mgN_per_L"), 30)),
        new("final_plant_nitrate_mgN_per_L", "plant-loop nitrate at the end", "mg N/L", Wanted.Neither, (_, r) => Last(r.Days("nitrate_plant_loop_mgN_per_L"))),
        new("final_fish_nitrate_mgN_per_L", "fish-loop nitrate at the end", "mg N/L", Wanted.Neither, (_, r) => Last(r.Days("nitrate_fish_loop_mgN_per_L"))),
        new("top_up_L_per_day", "top-up", "L/d", Wanted.Less, (s, _) => s.Water.TopUpLPerDay),
        new("electricity_kWh", "electricity", "kWh", Wanted.Less, (s, _) => s.Energy.KWh),
        new("heat_kWh", "heat of the heaters", "kWh", Wanted.Less, (s, _) => s.Energy.Heaters.Values.Sum(h => h.HeatKWh)),
        new("labour_h", "work", "h", Wanted.Less, (s, _) => s.Labour.Hours),
        new("busiest_week_h", "busiest week", "h", Wanted.Less, (s, _) => s.Labour.BusiestWeekHours ?? double.NaN),
        new("first_cost", "first cost", "money", Wanted.Less, (s, _) => s.Money?.FirstCosts ?? double.NaN),
        new("income", "income", "money", Wanted.More, (s, _) => s.Money?.Income ?? double.NaN),
        new("costs", "running costs", "money", Wanted.Less, (s, _) => s.Money?.Costs ?? double.NaN),
        new("margin", "margin", "money", Wanted.More, (s, _) => s.Money?.Margin ?? double.NaN),
        new("margin_after_wear", "margin after wear", "money", Wanted.More, (s, _) => s.Money?.MarginAfterWear ?? double.NaN),
        new("lowest_cash", "lowest cash", "money", Wanted.More, (s, _) => s.Money?.LowestCash ?? double.NaN),
    ];

    /// <summary>The index of a figure in <see cref="All"/>.</summary>
    /// <exception cref="ArgumentException">There is none of that key.</exception>
    public static int IndexOf(string key)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i].Key == key)
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no figure '{key}'. There are: {string.Join(", ", All.Select(h => h.Key))}.", nameof(key));
    }

    private static double First(IEnumerable<double?> days)
    {
        double first = double.NaN;
        foreach (double? day in days)
        {
            first = day is { } d && !(d >= first) ? d : first;
        }

        return first;
    }

    private static double LowestAfter(double[] days, int from)
    {
        double lowest = double.NaN;
        for (int d = from; d < days.Length; d++)
        {
            lowest = double.IsFinite(days[d]) && !(days[d] >= lowest) ? days[d] : lowest;
        }

        return lowest;
    }

    private static double Last(double[] days) => days.Length > 0 ? days[^1] : double.NaN;
}
