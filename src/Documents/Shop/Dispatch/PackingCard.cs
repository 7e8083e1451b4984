using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Dispatch;

/// <summary>
/// The card at the packing bench, on one side: verdict and fingerprint, where everything lies, what goes in,
/// the steps and the cautions.
/// </summary>
public static class PackingCard
{
    private static readonly double[] PictureHeights = [78, 62, 48];

    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="cleared">The cleared parcel.</param>
    public static PaperFile Write(ShopSheet sheet, ClearedParcel cleared)
    {
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"Packing card, parcel {cleared.Parcel.Number}"
        );
        var head = sheet.Head(name, cleared.Parcel.Recipient);
        // The largest picture that leaves room for all on one side.
        var ways = PictureHeights.Select(h => Sides(sheet, head, cleared, h)).ToList();
        return sheet.Pdf("packing-card.pdf", name, ways.Find(w => w.Count == 1) ?? ways[^1]);
    }

    private static IReadOnlyList<Drawing> Sides(
        ShopSheet sheet,
        PageHead head,
        ClearedParcel cleared,
        double pictureHeight
    )
    {
        var inside = PageFrame.Inside(sheet.Size);
        var drawing = PackingPicture.Draw(cleared.Plan, inside.Width, pictureHeight);
        drawing = sheet.IsUs ? UsUnits.Of(drawing) : drawing;
        var upper = Upper(cleared, drawing);
        return PageFrame.Sides(
            sheet.Size,
            head,
            (style, sketch) =>
            {
                var top = Flow.Height(upper, inside.Width, style);
                sketch?.Place(drawing, new(inside.X, inside.Y + top));
                var column = Flow.Columns(Below(inside, drawing, top), 2)[0];
                return [.. upper, new ColumnBreak(), .. Flow.Shared(Groups(cleared), column, style)];
            },
            style =>
            {
                var top = Flow.Height(upper, inside.Width, style);
                return [inside with { Height = top + 0.1 }, .. Flow.Columns(Below(inside, drawing, top), 2)];
            }
        );
    }

    private static Room Below(Room inside, Drawing drawing, double top) =>
        inside with
        {
            Y = inside.Y + top + drawing.Height + 1,
            Height = inside.Height - top - drawing.Height - 1,
        };

    private static ImmutableArray<Block> Upper(ClearedParcel cleared, Drawing drawing) =>
        [
            new Words(Verdict(cleared)) { Bold = true, Larger = 2 },
            new Words(Odds(cleared)),
            new Words($"Frozen under {Fingerprint.Short(cleared.Fingerprint)}: compare with its evidence.")
            {
                Tone = Tone.Quiet,
            },
            new Words(
                $"{Carton(cleared.Plan.Carton)}. From above and across, {PackingPicture.Scale(drawing)}. "
                    + Legend(cleared.Plan)
            )
            {
                After = 2,
            },
        ];

    private static string Carton(Carton carton) =>
        NumberText.Capital(carton.Name)
        + string.Create(
            CultureInfo.InvariantCulture,
            $", inside {carton.LengthMeters * 100:0.#} × {carton.WidthMeters * 100:0.#} × "
        )
        + string.Create(CultureInfo.InvariantCulture, $"{carton.HeightMeters * 100:0.#} cm");

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

    /// <summary>What stands below the picture; groups stay together and are shared out over two columns.
    /// </summary>
    private static List<Block>[] Groups(ClearedParcel cleared) =>
        [
            List(cleared.Plan),
            Cups(cleared.Plan),
            Signed("Packs", cleared.Plan.Packs, Sign.Tick),
            Signed("Steps", cleared.Plan.Steps, Sign.Tick),
            Signed("Cautions", cleared.Plan.Cautions, Sign.Caution),
            [new Blank("Packed by, time"), new Blank("Handed over, time")],
        ];

    private static List<Block> List(PackingPlan plan)
    {
        var list = Table.Of("Lay out", (0.07, "", false), (0.17, "", false), (0.76, "", false));
        foreach (var line in plan.List)
        {
            list.Tick("", "", line.Amount, line.What);
        }

        return [.. list.Blocks];
    }

    private static List<Block> Cups(PackingPlan plan)
    {
        var cups = Table.Of(
            "Into each cup",
            (0.5, "for", false),
            (0.14, "holes", true),
            (0.2, "dry moss", true),
            (0.16, "water", true)
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

        return [.. cups.Blocks];
    }

    private static List<Block> Signed(string title, Seq<string> lines, Sign sign) =>
        lines.Count == 0
            ? []
            :
            [
                new Heading(title) { KeepsWithNext = true },
                .. lines.Select(l => new Words(l)
                {
                    Sign = sign,
                    Tone = sign == Sign.Caution ? Tone.Caution : Tone.Ink,
                }),
            ];

    private static string Clock(double hour) =>
        NumberText.Clock(TimeOnly.MinValue.AddMinutes(Math.Round(hour * 60)));
}
