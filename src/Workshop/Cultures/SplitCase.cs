using System.Collections.Immutable;

namespace Litterfall.Workshop.Cultures;

/// <summary>Equal mothers that a plan starts from.</summary>
/// <param name="Name">As people call them.</param>
/// <param name="Line">Their line.</param>
/// <param name="Count">How many alike.</param>
/// <param name="State">One of them on the first day.</param>
public sealed record MotherCups(string Name, string Line, int Count, CultureRun State);

/// <summary>Cups that must be ready on a day.</summary>
/// <param name="Name">What they are for.</param>
/// <param name="Due">Day on which they are seeded or sent.</param>
/// <param name="Cups">How many.</param>
/// <param name="Animals">Animals that walk in each.</param>
/// <param name="Liters">Substrate of each, liters.</param>
public sealed record CupOrder(string Name, DateOnly Due, int Cups, double Animals, double Liters);

/// <summary>What a plan of splits is made from.</summary>
public sealed record SplitCase
{
    /// <summary>The animal.</summary>
    public required CultureKind Kind { get; init; }

    /// <summary>Mothers.</summary>
    public required ImmutableArray<MotherCups> Mothers { get; init; }

    /// <summary>Mean temperature of a day, °C.</summary>
    public required Func<DateOnly, double> Celsius { get; init; }

    /// <summary>First day on which something can be done.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Share of started cups that fail, 0 to below 1.</summary>
    public double Failing { get; init; } = CulturePractice.Failing.Si;

    /// <summary>Days a cup rests after it holds enough.</summary>
    public int Conditioning { get; init; } = CulturePractice.Days(CulturePractice.Conditioning);

    /// <summary>Share of a mother that a split takes.</summary>
    public double Share { get; init; } = CulturePractice.SplitShare.Si;

    /// <summary>Days the plan looks ahead for the earliest day.</summary>
    public int Horizon { get; init; } = 400;

    /// <summary>Cups to start, so that enough are left: cups ÷ (1 − failing), rounded up.</summary>
    /// <param name="cups">Cups that must be ready.</param>
    public int ToStart(int cups) => (int)Math.Ceiling((cups / (1 - Failing)) - 1e-9);
}
