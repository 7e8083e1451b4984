using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Trade;

/// <summary>How far an order is.</summary>
public enum OrderState
{
    /// <summary>Somebody asked.</summary>
    Enquiry,

    /// <summary>A quote was sent.</summary>
    Quoted,

    /// <summary>The customer agreed.</summary>
    Accepted,

    /// <summary>Being made.</summary>
    InWork,

    /// <summary>Made, not yet handed over.</summary>
    Ready,

    /// <summary>Handed over.</summary>
    Delivered,

    /// <summary>Paid and done.</summary>
    Closed,

    /// <summary>It came to nothing.</summary>
    Lost,
}

/// <summary>What kind of thing is ordered.</summary>
public enum OrderItemKind
{
    /// <summary>A design, built and planted.</summary>
    Build,

    /// <summary>A design as a boxed kit.</summary>
    Kit,

    /// <summary>Loose goods: bagged mix, cultures, plants, feeders, animals.</summary>
    Loose,
}

/// <summary>One line of an order.</summary>
public sealed record OrderItem
{
    /// <summary>What kind of thing.</summary>
    public required OrderItemKind Kind { get; init; }

    /// <summary>As the customer knows it.</summary>
    public required string Name { get; init; }

    /// <summary>The design; null for loose goods.</summary>
    public Guid? Design { get; init; }

    /// <summary>Frozen version of the design; 0 for loose goods.</summary>
    public int Version { get; init; }

    /// <summary>Key of the good; null for designs.</summary>
    public string? Good { get; init; }

    /// <summary>Boxes, or amount in the unit of the good.</summary>
    public required double Amount { get; init; }

    /// <summary>
    /// What in this version would harm an animal, in words; empty where nothing does, null while nobody
    /// looked.
    /// </summary>
    public string? Harm { get; init; }
}

/// <summary>Something that happened to an order; only ever added.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Who">Who did it.</param>
/// <param name="State">State from then on.</param>
/// <param name="Note">In words.</param>
public sealed record OrderEvent(DateTime At, string Who, OrderState State, string Note);

/// <summary>Hours that were really worked at a stage.</summary>
/// <param name="Stage">Key of the stage.</param>
/// <param name="Minutes">Minutes worked.</param>
/// <param name="Day">Day.</param>
/// <param name="Who">Who worked.</param>
public sealed record WorkedTime(string Stage, double Minutes, DateOnly Day, string Who);

/// <summary>Money that came, or was given back.</summary>
/// <param name="Day">Day it came.</param>
/// <param name="Amount">With tax; below 0 for what was given back.</param>
/// <param name="Note">How it was paid, in words.</param>
/// <param name="Who">Who wrote it.</param>
public sealed record Payment(DateOnly Day, decimal Amount, string Note, string Who);

/// <summary>What a customer asked for, from the first message to the last payment.</summary>
public sealed record Order
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Key of the customer.</summary>
    public required string Customer { get; init; }

    /// <summary>What is ordered.</summary>
    public Seq<OrderItem> Items { get; init; } = [];

    /// <summary>State.</summary>
    public OrderState State { get; init; }

    /// <summary>Day it was promised for; null where nothing was.</summary>
    public DateOnly? Promised { get; init; }

    /// <summary>Accepted price, net; null before acceptance.</summary>
    public decimal? Net { get; init; }

    /// <summary>Accepted price with tax; null before acceptance.</summary>
    public decimal? Gross { get; init; }

    /// <summary>Deposit that was agreed, with tax; 0 for none.</summary>
    public decimal Deposit { get; init; }

    /// <summary>Last day on which the last quote holds; null before one was sent.</summary>
    public DateOnly? QuotedUntil { get; init; }

    /// <summary>Number of the accepted quote; null before acceptance.</summary>
    public int? AcceptedQuote { get; init; }

    /// <summary>Index of the accepted option of that quote.</summary>
    public int AcceptedOption { get; init; }

    /// <summary>What was agreed beside the terms of the workshop.</summary>
    public string Terms { get; init; } = "";

    /// <summary>What to remember.</summary>
    public string Notes { get; init; } = "";

    /// <summary>What blocks it, in words; empty where nothing does.</summary>
    public string Blocked { get; init; } = "";

    /// <summary>What happened, in order.</summary>
    public Seq<OrderEvent> History { get; init; } = [];

    /// <summary>Time that was worked.</summary>
    public Seq<WorkedTime> Worked { get; init; } = [];

    /// <summary>Money that came, in order.</summary>
    public Seq<Payment> Payments { get; init; } = [];

    /// <summary>Goods of the accepted option; empty before acceptance.</summary>
    public Seq<QuotedGood> Goods { get; init; } = [];

    /// <summary>
    /// True where it goes by parcel, false where it is handed over in person; null for the usual: tanks that
    /// are built here are handed over, all else goes by parcel.
    /// </summary>
    public bool? IsByParcel { get; init; }

    /// <summary>All that was paid, with tax.</summary>
    public decimal Paid => Payments.Sum(p => p.Amount);

    /// <summary>True from acceptance to delivery: it needs goods and hands.</summary>
    public bool IsOpen => State is OrderState.Accepted or OrderState.InWork or OrderState.Ready;
}
