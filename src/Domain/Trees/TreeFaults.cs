using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trees;

/// <summary>What is wrong with one text; the first fifty faults are kept.</summary>
/// <param name="file">Name of the text in messages.</param>
public sealed class TreeFaults(string file)
{
    private const int Most = 50;
    private static readonly TextSpan Start = new(0, 0, 1, 1);
    private readonly List<TextFault> faults = [];

    /// <summary>Name of the text in messages.</summary>
    public string File => file;

    /// <summary>True while nothing is wrong.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>Number of faults kept.</summary>
    public int Count => faults.Count;

    /// <summary>Adds a fault.</summary>
    /// <param name="span">Where; only line and column are told.</param>
    /// <param name="message">What is wrong there.</param>
    /// <param name="expected">What was expected.</param>
    public void Add(TextSpan span, string message, string expected) =>
        Add(new TextFault(file, span.Line, span.Column, message, expected));

    /// <summary>Adds a fault of the whole text.</summary>
    /// <param name="message">What is wrong with it.</param>
    /// <param name="expected">What was expected.</param>
    public void Add(string message, string expected) => Add(Start, message, expected);

    /// <summary>Adds a fault made elsewhere.</summary>
    /// <param name="fault">The fault.</param>
    public void Add(TextFault fault)
    {
        if (faults.Count < Most)
        {
            faults.Add(fault);
        }
    }

    /// <summary>The faults in the order of the text.</summary>
    public Seq<TextFault> ToSeq() => [.. faults.OrderBy(f => (f.Line, f.Column))];
}
