namespace FarmTwin.Farm.Description;

/// <summary>A farm's description is readable part by part, but its parts do not make a farm that can be computed.</summary>
/// <remarks>The message names the place, the cause and the cure.</remarks>
public sealed class DescriptionException : Exception
{
    /// <summary>Makes one.</summary>
    public DescriptionException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one.</summary>
    public DescriptionException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Makes one.</summary>
    public DescriptionException()
    {
    }
}
