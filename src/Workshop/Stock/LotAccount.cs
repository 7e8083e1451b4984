using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>A line of the book with the money it moved.</summary>
/// <param name="Line">The line.</param>
/// <param name="Cost">
/// Net cost of what it took out or brought in; negative where a line is taken back.
/// </param>
public sealed record BookLine(Movement Line, decimal Cost);

/// <summary>Everything the book says of one lot.</summary>
public sealed record LotAccount
{
    /// <summary>The lot.</summary>
    public required Lot Lot { get; init; }

    /// <summary>Amount on hand, in the unit of the good.</summary>
    public double OnHand { get; init; }

    /// <summary>True while it may not be used.</summary>
    public bool IsHeld { get; init; }

    /// <summary>Place it was moved to last; empty where it stands at the place of its good.</summary>
    public string Place { get; init; } = "";

    /// <summary>Received or made.</summary>
    public double In { get; init; }

    /// <summary>Went into other lots.</summary>
    public double Used { get; init; }

    /// <summary>Went to customers.</summary>
    public double Sold { get; init; }

    /// <summary>Died or was thrown away.</summary>
    public double Wasted { get; init; }

    /// <summary>What counts found beyond the book; negative where they found less.</summary>
    public double Counted { get; init; }

    /// <summary>Money in it.</summary>
    public LotCost Cost { get; init; }

    /// <summary>Its lines in the order they were written.</summary>
    public ImmutableArray<BookLine> Lines { get; init; } = [];

    /// <summary>Lines of other lots that went into it.</summary>
    public ImmutableArray<BookLine> Feeds { get; init; } = [];

    /// <summary>What is on hand cost so much, net.</summary>
    public decimal Value => Cost.Left;

    /// <summary>True where something of it is left.</summary>
    public bool HasSome => OnHand > Rounding;

    /// <summary>Amounts closer than this are the same, in the unit of the good.</summary>
    public double Rounding => StockGate.Rounding * Math.Max(1, Lot.Amount);

    /// <summary>Why it may not be used on a day; null where it may.</summary>
    /// <param name="day">The day.</param>
    public string? Bar(DateOnly day) =>
        IsHeld ? "on hold"
        : Lot.Expires is { } last && day > last ? $"good until {Day(last)}"
        : Lot.QuarantinedUntil is { } free && day < free ? $"in quarantine until {Day(free)}"
        : null;

    /// <summary>Numbers of lines that are taken back by later ones.</summary>
    public ImmutableHashSet<int> TakenBack =>
        [.. Lines.Where(l => l.Line.Reverses is not null).Select(l => l.Line.Reverses!.Value)];

    /// <summary>Lines that count: neither taken back nor taking back.</summary>
    public IEnumerable<BookLine> Standing
    {
        get
        {
            var gone = TakenBack;
            return Lines.Where(l => l.Line.Reverses is null && !gone.Contains(l.Line.Id));
        }
    }

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
