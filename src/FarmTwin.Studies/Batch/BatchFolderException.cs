namespace FarmTwin.Studies.Batch;

/// <summary>A batch cannot work in a folder; the message says why and what to do.</summary>
public sealed class BatchFolderException : Exception
{
    /// <summary>Makes one.</summary>
    public BatchFolderException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one.</summary>
    public BatchFolderException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Makes one.</summary>
    public BatchFolderException()
    {
    }
}
