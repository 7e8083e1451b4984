using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop;

/// <summary>What of one component goes into one tub.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Lots">Lots it is taken from.</param>
/// <param name="Liters">Liters, loose.</param>
/// <param name="Jugs">Jugs of the workshop's size.</param>
/// <param name="Kilograms">Mass; null where nobody knows the density.</param>
public sealed record BatchCardPart(string Name, string Lots, double Liters, double Jugs, double? Kilograms);

/// <summary>What a batch card says.</summary>
public sealed record BatchCardText
{
    /// <summary>Recipe.</summary>
    public required string Recipe { get; init; }

    /// <summary>Which batch of how many: "1 of 4".</summary>
    public required string Which { get; init; }

    /// <summary>What the code holds.</summary>
    public required string Code { get; init; }

    /// <summary>Mixed liters that are expected.</summary>
    public required double MixedLiters { get; init; }

    /// <summary>Loose liters in the tub before mixing.</summary>
    public required double LooseLiters { get; init; }

    /// <summary>Volume of the tub, liters.</summary>
    public required double TubLiters { get; init; }

    /// <summary>Size of the jug, liters.</summary>
    public required double JugLiters { get; init; }

    /// <summary>Water to pour in, liters; null where it is not dosed.</summary>
    public double? WaterLiters { get; init; }

    /// <summary>Mass when done, kg; null where nobody knows.</summary>
    public double? Kilograms { get; init; }

    /// <summary>What goes in.</summary>
    public required Seq<BatchCardPart> Parts { get; init; }

    /// <summary>Orders it is for, with their liters: "LD-201: 18.2 L".</summary>
    public Seq<string> Orders { get; init; } = [];

    /// <summary>What was learned of this recipe, in a sentence; empty for nothing.</summary>
    public string Learned { get; init; } = "";

    /// <summary>Cautions.</summary>
    public Seq<string> Cautions { get; init; } = [];
}

/// <summary>The card that lies beside the tub: what goes in, how much water, what came out.</summary>
public static class BatchCard
{
    private const double TubWidth = 58;

    /// <summary>A card for each batch.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cards">What they say.</param>
    public static PaperFile Write(ShopSheet sheet, IEnumerable<BatchCardText> cards) =>
        sheet.Pdf("batch-cards.pdf", "Batch cards", cards.SelectMany(c => Sides(sheet, c)));

    private static IReadOnlyList<Drawing> Sides(ShopSheet sheet, BatchCardText card) =>
        sheet.Coded(
            sheet.Head($"Batch {card.Which}", card.Recipe),
            card.Code,
            [
                new Words($"{Liters(card.MixedLiters)} of {card.Recipe}") { Bold = true, Larger = 3 },
                new Words(
                    $"From {Liters(card.LooseLiters)} of loose parts in a tub of {Liters(card.TubLiters)}. "
                        + (card.Kilograms is { } kg ? $"About {Kilograms(kg)} when done. " : "")
                        + card.Learned
                ),
                .. card.Orders.Count > 0 ? new[] { new Words($"For {string.Join("; ", card.Orders)}") } : [],
            ],
            Below(card)
        );

    private static ImmutableArray<Block> Below(BatchCardText card)
    {
        var jug = $"jugs of {Liters(card.JugLiters)}";
        var table = Table.Of(
            "Put into the tub",
            (0.05, "", false),
            (0.3, "component", false),
            (0.21, "from lot", false),
            (0.1, "liters", true),
            (0.14, jug, true),
            (0.08, "kg", true),
            (0.02, "", false),
            (0.1, "initials", false)
        );
        foreach (var part in card.Parts)
        {
            table.Tick(
                "",
                "",
                part.Name,
                part.Lots,
                Plain(part.Liters, "0.0"),
                Plain(part.Jugs, "0.#"),
                part.Kilograms is { } kg ? Plain(kg, "0.0") : "",
                "",
                "______"
            );
        }

        return
        [
            .. table.Blocks,
            new TubPicture(card, TubWidth),
            new Heading("Water"),
            new Words(
                card.WaterLiters is { } water
                    ? $"Pour in {Liters(water)} in three portions and turn the mix each time. Stop early "
                        + "when a handful squeezed hard gives a few drops: the materials may be wetter "
                        + "than we know."
                    : "Wet it by hand: a handful squeezed hard gives a few drops, no stream."
            )
            {
                Sign = Sign.Tick,
            },
            new Heading("Measure, and write it down"),
            new Blank("Water poured in, L"),
            new Blank("Mix that came out, measured loose, L"),
            new Blank("Its mass, kg"),
            new Blank("Sample before drying, g   /   after drying, g"),
            new Blank("Squeeze test (crumbles, few drops, stream)"),
            new Blank("Mixed by, day"),
            .. card.Cautions.Count > 0 ? new Block[] { new Heading("Cautions") } : [],
            .. card.Cautions.Select(c => new Words(c) { Sign = Sign.Caution, Tone = Tone.Caution }),
        ];
    }

    private static string Liters(double liters) => $"{Plain(liters, "0.0")} L";

    private static string Kilograms(double kg) => $"{Plain(kg, "0.0")} kg";

    private static string Plain(double value, string form) =>
        Math.Round(value, 9).ToString(form, CultureInfo.InvariantCulture);
}
