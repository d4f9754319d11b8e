namespace FarmTwin.Farm.Business;

/// <summary>Goods of one harvest that wait to be sold.</summary>
public sealed class ProduceLot
{
    /// <summary>The day it was harvested.</summary>
    public double Day { get; init; }

    /// <summary>Heads or trays.</summary>
    public double Pieces { get; set; }

    /// <summary>Fresh weight, kg.</summary>
    public double Kilograms { get; set; }

    /// <summary>What it is made of, g.</summary>
    public ElementGrams Elements { get; set; }

    /// <summary>Water in it, L.</summary>
    public double WaterLitres { get; set; }

    /// <summary>Its price over the full price: below 1 where part of it is second grade.</summary>
    public double Worth { get; init; } = 1;

    /// <summary>A copy.</summary>
    public ProduceLot Clone() => (ProduceLot)MemberwiseClone();

    /// <summary>Takes a share of it out; all of it to the last gram when the share is 1.</summary>
    /// <param name="share">0 to 1.</param>
    public ProduceLot Split(double share)
    {
        ProduceLot part = Clone();
        if (share < 1)
        {
            part.Pieces *= share;
            part.Kilograms *= share;
            part.Elements = Elements * share;
            part.WaterLitres *= share;
        }

        Pieces -= part.Pieces;
        Kilograms -= part.Kilograms;
        Elements -= part.Elements;
        WaterLitres -= part.WaterLitres;
        return part;
    }
}
