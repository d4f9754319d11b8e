namespace FarmTwin.Farm.Tests.Biofilter;

/// <summary>Values at whole days of a start-up.</summary>
internal sealed class StartUpCourse
{
    public List<double> Tan { get; } = [];

    public List<double> Nitrite { get; } = [];

    public List<double> Nitrate { get; } = [];

    public List<double> FilmA { get; } = [];

    public List<double> FilmB { get; } = [];

    public void Add(double tan, double nitrite, double nitrate, double filmA, double filmB)
    {
        Tan.Add(tan);
        Nitrite.Add(nitrite);
        Nitrate.Add(nitrate);
        FilmA.Add(filmA);
        FilmB.Add(filmB);
    }

    public static int DayOfPeak(List<double> values) => values.IndexOf(values.Max());

    /// <summary>First day from which the value stays below a level.</summary>
    public static int BelowFrom(List<double> values, double level) => values.FindLastIndex(v => v >= level) + 1;
}
