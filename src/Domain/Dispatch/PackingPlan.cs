using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Dispatch;

/// <summary>Cups of one kind that go into a parcel.</summary>
public sealed record PackedCup
{
    /// <summary>Key of what lives in it.</summary>
    public required string Animal { get; init; }

    /// <summary>Its name, common name first.</summary>
    public required string Name { get; init; }

    /// <summary>Key of the cup; empty for goods that travel in their own cup or pot.</summary>
    public string Cup { get; init; } = "";

    /// <summary>Name of the cup.</summary>
    public required string CupName { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Volume of one, L.</summary>
    public required double Liters { get; init; }

    /// <summary>Outer width, m.</summary>
    public double WidthMeters { get; init; }

    /// <summary>Height with its lid, m.</summary>
    public double HeightMeters { get; init; }

    /// <summary>Appendix of the convention on endangered species: "I", "II"; empty for none.</summary>
    public string Cites { get; init; } = "";

    /// <summary>Where it comes from: number of its tank or lot; empty where nobody said.</summary>
    public string From { get; init; } = "";

    /// <summary>True for an animal alone in its cup; false for cultures, feeders and plants.</summary>
    public bool IsAnimal { get; init; }

    /// <summary>Pin holes in the lid of one.</summary>
    public int Holes { get; init; }

    /// <summary>Long-fibre moss for one, dry, g.</summary>
    public double MossGrams { get; init; }

    /// <summary>Water for the moss of one, g.</summary>
    public double WaterGrams { get; init; }

    /// <summary>What stands on its label, one line each.</summary>
    public Seq<string> Label { get; init; } = [];
}

/// <summary>Something drawn in the carton seen from above: x along its length, y along its width.</summary>
/// <param name="Kind">"cup", "pot", "pack", "heat".</param>
/// <param name="Label">Short word beside it.</param>
/// <param name="XMeters">Left edge, m.</param>
/// <param name="YMeters">Near edge, m.</param>
/// <param name="LengthMeters">Along x, m.</param>
/// <param name="WidthMeters">Along y, m.</param>
public sealed record PlacedThing(
    string Kind,
    string Label,
    double XMeters,
    double YMeters,
    double LengthMeters,
    double WidthMeters
)
{
    /// <summary>Layer from below: 0 is on the floor.</summary>
    public int Layer { get; init; }

    /// <summary>Lower edge over the floor of the carton, m.</summary>
    public double ZMeters { get; init; }

    /// <summary>Height, m.</summary>
    public double HeightMeters { get; init; }

    /// <summary>True for what is round seen from above.</summary>
    public bool IsRound { get; init; }
}

/// <summary>A line of the packing list that is ticked off.</summary>
/// <param name="Amount">How much: "2", "6 g".</param>
/// <param name="What">What.</param>
/// <param name="Good">Key of the good in stock; empty for none.</param>
/// <param name="Units">Amount taken from stock, in the unit of the good.</param>
public sealed record PackingLine(string Amount, string What, string Good, double Units);

/// <summary>How a parcel is packed.</summary>
public sealed record PackingPlan
{
    /// <summary>The carton.</summary>
    public required Carton Carton { get; init; }

    /// <summary>Cups and pots.</summary>
    public required Seq<PackedCup> Cups { get; init; }

    /// <summary>Packs with their names and how they are conditioned, one line each.</summary>
    public Seq<string> Packs { get; init; } = [];

    /// <summary>Where everything lies.</summary>
    public Seq<PlacedThing> Places { get; init; } = [];

    /// <summary>The list to tick off.</summary>
    public Seq<PackingLine> List { get; init; } = [];

    /// <summary>Steps, one sentence each.</summary>
    public Seq<string> Steps { get; init; } = [];

    /// <summary>Cautions, one sentence each.</summary>
    public Seq<string> Cautions { get; init; } = [];

    /// <summary>Mass of all, kg.</summary>
    public double Kilograms { get; init; }

    /// <summary>Heat capacity of what is in it, as kg of water.</summary>
    public double ContentsKilogramsOfWater { get; init; }

    /// <summary>Loose padding that fills the rest so that nothing shifts, L.</summary>
    public double PaddingLiters { get; init; }

    /// <summary>Hours that the animals are fasted before; 0 where no animal goes.</summary>
    public int FastHours { get; init; }

    /// <summary>What stands on the carton, one line each, the largest first.</summary>
    public Seq<string> CartonLabel { get; init; } = [];

    /// <summary>Why it does not fit; empty where it does.</summary>
    public string Refusal { get; init; } = "";

    /// <summary>Key of the smallest carton that would do; empty for none, and where it fits.</summary>
    public string SmallestCarton { get; init; } = "";

    /// <summary>True where it can be packed so.</summary>
    public bool Fits => Refusal.Length == 0;
}

/// <summary>A paper that an animal needs, or may need, on its way.</summary>
/// <param name="Key">Its stable name.</param>
/// <param name="Text">What it is and for what, in one sentence.</param>
/// <param name="IsNeeded">True where it must be there; false where somebody must ask an authority.</param>
public sealed record AnimalPaper(string Key, string Text, bool IsNeeded)
{
    /// <summary>Name of the species, common name first; empty for a paper of the whole parcel.</summary>
    public string Species { get; init; } = "";

    /// <summary>True where somebody looked at it and it is with the parcel.</summary>
    public bool IsThere { get; init; }
}
