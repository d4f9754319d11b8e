using FarmTwin.Farm.Library;

namespace FarmTwin.Studies.Compare;

/// <summary>How finely a daily sheet is read, and what emergency care is: common practice, no source (see the library).</summary>
public sealed record DailySheetParameters
{
    private readonly ParameterSet _set;

    private DailySheetParameters(ParameterSet set) => _set = set;

    /// <summary>Reads them.</summary>
    public static DailySheetParameters From(FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return new DailySheetParameters(library.Set("processes", "daily-sheet"));
    }

    /// <summary>Days on end for which a reading must differ.</summary>
    public int ConfirmDays => (int)_set.Get("confirmDays", "d");

    /// <summary>Clock hour at which whoever acts on the sheet acts.</summary>
    public double EveningHour => _set.Get("eveningHour", "h");

    /// <summary>Days of emergency care.</summary>
    public int CareDays => (int)_set.Get("careDays", "d");

    /// <summary>A number by its name in the library.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="unit">The unit that is expected.</param>
    public double this[string name, string unit = "1"] => _set.Get(name, unit);
}
