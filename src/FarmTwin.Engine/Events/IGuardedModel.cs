namespace FarmTwin.Engine;

/// <summary>A model that gives the values which guards watch.</summary>
public interface IGuardedModel
{
    /// <summary>The value watched by a guard, from the present state; calling it changes nothing.</summary>
    /// <param name="guard">The id that <see cref="GuardSet.Add"/> returned.</param>
    /// <returns>In the unit of the guard's level. Where the quantity does not exist (a dry basin) give an infinity on the side on
    /// which the guard does not fire; a value that is not a number is an error.</returns>
    double GuardValue(int guard);
}
