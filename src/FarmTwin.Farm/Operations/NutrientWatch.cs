using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>The look at the leaves each evening: a deficiency that shows is written down with what is seen, and when it is past.</summary>
public sealed class NutrientWatch : FarmWork
{
    /// <summary>Makes it.</summary>
    public NutrientWatch(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
    }

    /// <summary>Looks at all crops.</summary>
    public void Look(long seconds)
    {
        NutritionState nutrition = State.Growing.Nutrition;
        foreach (int element in Stress.Nutritive)
        {
            bool shows = false;
            for (int crop = 0; crop < Parts.CropNames.Length; crop++)
            {
                int i = (crop * Element.Count) + element;
                double lost = nutrition.Deficiency[i];
                if (!nutrition.IsDeficient[i] && lost >= Parts.Plants.DeficiencyShowsAt)
                {
                    nutrition.IsDeficient[i] = true;
                    Log.Add(seconds, "deficiency", Parts.CropNames[crop], lost, "of growth", $"{Element.Names[element]}: {DeficiencySymptoms.Of(element)}");
                }
                else if (nutrition.IsDeficient[i] && lost < Parts.Plants.DeficiencyShowsAt / 2)
                {
                    nutrition.IsDeficient[i] = false;
                    Log.Add(seconds, "deficiency past", Parts.CropNames[crop], lost, "of growth", $"{Element.Names[element]}: new leaves are sound");
                }

                shows |= nutrition.IsDeficient[i];
                if (nutrition.IsDeficient[i])
                {
                    nutrition.WorstDeficiency[element] = Math.Max(nutrition.WorstDeficiency[element], lost);
                }
            }

            nutrition.DaysShort[element] += shows ? 1 : 0;
        }
    }
}
