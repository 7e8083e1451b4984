using Litterfall.Domain;
using Litterfall.Domain.Designs;

namespace Litterfall.App.Cases;

/// <summary>Faults of one case file, gathered while it is read; the first so many are kept.</summary>
public sealed class CaseFaults(string file)
{
    private const int MostKept = 20;
    private readonly List<TextFault> faults = [];

    /// <summary>Name of the file in messages.</summary>
    public string File { get; } = file;

    /// <summary>True when nothing was wrong so far.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>The faults in the order of the file.</summary>
    public Seq<TextFault> All => [.. faults.OrderBy(f => f.Line).ThenBy(f => f.Column)];

    /// <summary>One more fault at a place.</summary>
    public void Add(int line, int column, string message, string expected)
    {
        if (faults.Count < MostKept)
        {
            faults.Add(new TextFault(File, line, column, message, expected));
        }
    }
}
