using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Dispatch;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>
/// The card at the packing bench, on one side: verdict and fingerprint, where everything lies, what goes in,
/// the steps and the cautions.
/// </summary>
public static class PackingCard
{
    private const double PictureHeight = 62;

    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cleared">The cleared parcel.</param>
    public static PaperFile Write(ShopSheet sheet, ClearedParcel cleared)
    {
        var inside = PageFrame.Inside(sheet.Size);
        var drawing = PackingPicture.Draw(cleared.Plan, inside.Width, PictureHeight);
        drawing = sheet.IsUs ? UsUnits.Of(drawing) : drawing;
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"Packing card, parcel {cleared.Parcel.Number}"
        );
        var upper = Upper(cleared, drawing);
        return sheet.Pdf(
            "packing-card.pdf",
            name,
            PageFrame.Sides(
                sheet.Size,
                sheet.Head(name, cleared.Parcel.Recipient),
                (style, sketch) =>
                {
                    var y = inside.Y + Height(upper, inside.Width, style);
                    sketch?.Place(drawing, new(inside.X, y));
                    return
                    [
                        .. upper,
                        new ColumnBreak(),
                        .. Left(cleared),
                        new ColumnBreak(),
                        .. Right(cleared),
                    ];
                },
                style =>
                {
                    var top = Height(upper, inside.Width, style);
                    var below = inside with
                    {
                        Y = inside.Y + top + drawing.Height + 2,
                        Height = inside.Height - top - drawing.Height - 2,
                    };
                    return [inside with { Height = top + 0.1 }, .. Flow.Columns(below, 2)];
                }
            )
        );
    }

    private static double Height(ImmutableArray<Block> blocks, double width, Style style) =>
        Flow.Height(blocks, width, style);

    private static ImmutableArray<Block> Upper(ClearedParcel cleared, Drawing drawing) =>
        [
            new Words(Verdict(cleared)) { Bold = true, Larger = 2 },
            new Words(Odds(cleared)),
            new Words(
                $"Frozen under {Fingerprint.Short(cleared.Fingerprint)}: compare with the evidence of this parcel."
            )
            {
                Tone = Tone.Quiet,
            },
            new Words($"{cleared.Plan.Carton.Name}, {PackingPicture.Scale(drawing)}. {Legend(cleared.Plan)}")
            {
                After = 2,
            },
        ];

    private static string Verdict(ClearedParcel cleared)
    {
        var what = cleared.Day.Verdict switch
        {
            ShipVerdict.Ship => "Ship",
            ShipVerdict.ShipWithPacks => "Ship with the packs below",
            ShipVerdict.DepotOnly => "Depot pick-up only",
            _ => "Do not ship",
        };
        var arrives = cleared.Day.Arrives is { } day ? $", arrives {NumberText.Day(day)}" : "";
        return $"{what}: leaves {NumberText.Day(cleared.Day.Day)}{arrives}";
    }

    private static string Odds(ClearedParcel cleared)
    {
        var hand = cleared.Day.Choice is { } choice
            ? $"Hand over by {Clock(choice.HandOverHour)}. "
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"Of {choice.Journeys} computed journeys {choice.OutShare * 100:0.#} % leave the band"
                )
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $" and {choice.LethalShare * 100:0.#} % pass the absolute limit."
                )
            : $"Hand over by {Clock(cleared.Carrier.HandOverHour)}. No journey was computed.";
        return $"{cleared.Carrier.Name}. {hand}";
    }

    private static string Legend(PackingPlan plan)
    {
        var keys = PackingPicture.Keys(plan);
        var cups = keys.Select((k, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {k}"));
        string[] packs =
        [
            .. plan.Places.Any(p => p.Kind == "pack") ? new[] { "P: pack behind its spacer" } : [],
            .. plan.Places.Any(p => p.Kind == "heat") ? new[] { "H: heat pack taped under the lid" } : [],
        ];
        return string.Join("; ", cups.Concat(packs)) + ". White: padding.";
    }

    private static List<Block> Left(ClearedParcel cleared)
    {
        var plan = cleared.Plan;
        var list = Table.Of("Lay out", (0.07, "", false), (0.2, "", false), (0.73, "", false));
        foreach (var line in plan.List)
        {
            list.Tick("", "", line.Amount, line.What);
        }

        var cups = Table.Of(
            "Into each cup",
            (0.47, "for", false),
            (0.17, "holes", true),
            (0.18, "dry moss", true),
            (0.18, "water", true)
        );
        foreach (var cup in plan.Cups.Where(c => c.IsAnimal))
        {
            cups.Row(
                "",
                $"{cup.Name.Split(" (", 2)[0]}, {cup.CupName}",
                cup.Holes.ToString(CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"{cup.MossGrams:0.#} g"),
                string.Create(CultureInfo.InvariantCulture, $"{cup.WaterGrams:0} g")
            );
        }

        return
        [
            .. list.Blocks,
            .. cups.Blocks,
            .. plan.Packs.Count > 0 ? new Block[] { new Heading("Packs") { KeepsWithNext = true } } : [],
            .. plan.Packs.Select(p => new Words(p) { Sign = Sign.Tick }),
        ];
    }

    private static List<Block> Right(ClearedParcel cleared) =>
        [
            new Heading("Steps") { KeepsWithNext = true },
            .. cleared.Plan.Steps.Select(s => new Words(s) { Sign = Sign.Tick }),
            .. cleared.Plan.Cautions.Count > 0
                ? new Block[] { new Heading("Cautions") { KeepsWithNext = true } }
                : [],
            .. cleared.Plan.Cautions.Select(c => new Words(c) { Sign = Sign.Caution, Tone = Tone.Caution }),
            new Blank("Packed by, time"),
            new Blank("Handed over, time"),
        ];

    private static string Clock(double hour) =>
        NumberText.Clock(TimeOnly.MinValue.AddMinutes(Math.Round(hour * 60)));
}
