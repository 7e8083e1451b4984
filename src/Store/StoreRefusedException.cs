namespace Litterfall.Store;

/// <summary>A file of the bench is refused: what is wrong in one sentence, and what was expected.</summary>
public sealed class StoreRefusedException : Exception
{
    /// <summary>Refused for a reason.</summary>
    /// <param name="message">What is wrong, without a full stop.</param>
    /// <param name="expected">What was expected.</param>
    public StoreRefusedException(string message, string expected)
        : base(message) => Expected = expected;

    /// <summary>Refused for a reason; a file of the bench was expected.</summary>
    public StoreRefusedException(string message)
        : this(message, "a file of the bench") { }

    /// <summary>Refused for a reason that another fault gave.</summary>
    public StoreRefusedException(string message, Exception inner)
        : base(message, inner) => Expected = "a file of the bench";

    /// <summary>Refused.</summary>
    public StoreRefusedException()
        : this("the file is refused") { }

    /// <summary>What was expected.</summary>
    public string Expected { get; }
}
