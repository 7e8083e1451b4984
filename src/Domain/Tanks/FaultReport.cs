using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>A fact as somebody told it.</summary>
/// <param name="Key">Which: "ventTaped".</param>
/// <param name="Value">"yes", "no", a number or a day as 2026-03-01.</param>
public sealed record ReportedFact(string Key, string Value);

/// <summary>What somebody tells of a tank that goes wrong; its key is the tank's number.</summary>
public sealed record FaultReport
{
    /// <summary>Number of the tank.</summary>
    public required string Tank { get; init; }

    /// <summary>In their words, a line each.</summary>
    public Seq<string> Told { get; init; } = [];

    /// <summary>Facts.</summary>
    public Seq<ReportedFact> Facts { get; init; } = [];

    /// <summary>Day it was told.</summary>
    public required DateOnly On { get; init; }
}
