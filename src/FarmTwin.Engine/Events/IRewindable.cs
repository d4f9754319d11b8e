namespace FarmTwin.Engine;

/// <summary>A model whose last step can be undone, so that a guard can be localised within it.</summary>
public interface IRewindable
{
    /// <summary>Remembers the present state, with whatever a step changes besides (ledgers, accumulated records).</summary>
    /// <remarks>Called before each step in which a localised guard is armed; should allocate nothing.</remarks>
    void Mark();

    /// <summary>Returns to the state last marked; may be called several times after one mark.</summary>
    void Rewind();
}
