using FarmTwin.Farm.Library;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Water;

/// <summary>Shipped parameters, read once.</summary>
internal static class WaterLibrary
{
    public static readonly ParameterSet Set = ParameterLibrary.Load("processes", "water");

    public static readonly AerationParameters Aeration = AerationParameters.From(Set);

    public static readonly ConductivityParameters Meters = ConductivityParameters.From(Set);

    public static readonly DosingParameters Dosing = DosingParameters.From(Set);

    public static readonly MineralParameters Minerals = MineralParameters.From(Set);

    public static Supplement Product(string name) => Supplement.From(ParameterLibrary.Load("supplements", name));

    public static Supplement Pure(string name) => Supplement.From(ParameterLibrary.Load("supplements", name).With("purity", 1));

    public static Ions Millimolar(
        double na = 0, double k = 0, double ca = 0, double mg = 0, double cl = 0, double no3 = 0, double so4 = 0, double p = 0, double tan = 0) =>
        new(na / 1000, k / 1000, ca / 1000, mg / 1000, cl / 1000, no3 / 1000, 0, so4 / 1000, p / 1000, tan / 1000);
}
