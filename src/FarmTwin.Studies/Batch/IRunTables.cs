using FarmTwin.Farm.Seasons;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Batch;

/// <summary>What a batch keeps of every season besides its figures. Called from several threads at once, each with another run.</summary>
public interface IRunTables
{
    /// <summary>Whether they are there, whole, from an earlier start.</summary>
    bool Has(FarmPlan plan, BatchRun run);

    /// <summary>Writes them, before the run counts as finished.</summary>
    void Write(FarmPlan plan, BatchRun run, Season season);
}
