using Litterfall.Domain.Faults;
using Litterfall.Domain.Lists;

namespace Litterfall.Laboratory.Cases;

/// <summary>What is wrong with one case file; the first fifty faults are kept.</summary>
public sealed class CaseFaults(string file)
{
    private const int Most = 50;
    private readonly List<TextFault> faults = [];

    /// <summary>True while nothing is wrong.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>Number of faults kept.</summary>
    public int Count => faults.Count;

    /// <summary>Adds a fault.</summary>
    public void Add(TextPlace place, string message, string expected)
    {
        if (faults.Count < Most)
        {
            faults.Add(new TextFault(file, place.Line, place.Column, message, expected));
        }
    }

    /// <summary>The faults in the order of the file.</summary>
    public Seq<TextFault> ToSeq() => [.. faults.OrderBy(f => (f.Line, f.Column))];
}
