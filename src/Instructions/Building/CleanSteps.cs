using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Care;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Rules;
using Litterfall.Physics.Hygiene;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Building;

/// <summary>Cleaning of aggregate, leaves, wood, stone and plants before anything goes into the
/// box.</summary>
internal static class CleanSteps
{
    private const string Hot = "Hot water and steam scald: tongs, gloves, lid away from you.";
    private const string Bleach =
        "Never mix bleach with acid or ammonia. Gloves, goggles, open window; bleach into water.";

    private static readonly Citation Recipe = new(
        "keeper-practice",
        "recalled: bleach dip of plants, times by softness of the leaf, five rinses, 24 h in air, 30 d apart",
        Provenance.Recalled
    );

    public static StepGroup? Of(DesignNumbers numbers)
    {
        var writer = new StepWriter(numbers);
        Aggregate(numbers, writer);
        Leaves(numbers, writer);
        Hardscape(numbers, writer);
        Wetting(numbers, writer);
        Plants(numbers, writer);
        return writer.Group(
            numbers.Design.Design.Form == BuildForm.Kit
                ? "In the workshop: clean and prepare"
                : "Clean and prepare",
            "clean",
            "parts"
        );
    }

    private static void Aggregate(DesignNumbers numbers, StepWriter writer)
    {
        if (
            numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)
            is not { Material: { } material } layer
        )
        {
            return;
        }

        var rinse = writer.Text((material as AggregateEntry)?.Rinse) ?? "Rinse until the water runs clear.";
        var text = $"{NumberText.Capital(material.Name)}, {Amount(numbers, writer, layer)}: {rinse}";
        if (Goods.IsDusty(material))
        {
            var wet = text.Contains("wet it", StringComparison.OrdinalIgnoreCase)
                ? ""
                : " Wet it before you pour it.";
            writer.Step("floor.drainage", $"{text}{wet}", null, Goods.DustCaution);
        }
        else
        {
            writer.Step("floor.drainage", text);
        }
    }

    /// <summary>What is cleaned: for one box, and for all where there are several.</summary>
    private static string Amount(DesignNumbers numbers, StepWriter writer, FloorLayer layer)
    {
        var count = numbers.Design.Design.Boxes;
        if (count == 1)
        {
            return writer.Liters(layer.Loose);
        }

        var boxes = numbers.Design.Count("boxes", "number of boxes", count);
        var all = (layer.Loose * boxes).As($"{layer.Layer} for all boxes", Unit.Liter);
        return $"{writer.Liters(layer.Loose)} a box, {writer.Liters(all)} for "
            + $"{NumberText.Integer(count)} boxes";
    }

    private static void Leaves(DesignNumbers numbers, StepWriter writer)
    {
        if (
            numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)
            is not { Material: { } leaves } layer
        )
        {
            return;
        }

        var amount = $"{NumberText.Capital(leaves.Name)}, {Amount(numbers, writer, layer)}";
        var prepared = numbers.Design.Design.Floor.Litter!.Prepared;
        if (!Goods.NeedsHeat(prepared))
        {
            writer.Step("floor.litter", $"{amount}: already {Word(prepared)}. Keep them dry and closed.");
            return;
        }

        var how = writer.Text((leaves as LitterEntry)?.Preparation)
            ?? $"{Practice.CleanLeaves}; drain and dry.";
        writer.Step(
            "floor.litter",
            $"{amount}: {Goods.Degrees(how)}",
            "Heat is meant to kill slugs, mites and the chytrid fungus; soaking alone does not do it.",
            Hot
        );
    }

    private static void Hardscape(DesignNumbers numbers, StepWriter writer)
    {
        var pieces = numbers
            .Design.Design.Hardscape.Select(
                (piece, i) =>
                    (
                        Entry: numbers.Design.Entry<HardscapeEntry>(
                            $"hardscape[{NumberText.Integer(i)}].material"
                        ),
                        piece.Prepared,
                        Key: $"hardscape[{NumberText.Integer(i)}]"
                    )
            )
            .DistinctBy(p => (p.Entry.Key, Goods.NeedsHeat(p.Prepared)));
        foreach (var (entry, prepared, key) in pieces)
        {
            if (!Goods.NeedsHeat(prepared))
            {
                writer.Step(
                    key,
                    $"{NumberText.Capital(entry.Name)}: already {Word(prepared)}. Rinse off the dust."
                );
                continue;
            }

            var how = writer.Text(entry.Preparation) ?? "Scrub and scald; let it cool.";
            writer.Step(key, $"{NumberText.Capital(entry.Name)}: {Goods.Degrees(how)}", entry.Note, Hot);
        }
    }

    /// <summary>Peat and dried moss are wetted before use because they repel water.</summary>
    private static void Wetting(DesignNumbers numbers, StepWriter writer)
    {
        var dry = Goods.Of(numbers).Where(Goods.RepelsWater).ToArray();
        if (dry.Length == 0)
        {
            return;
        }

        writer.Cite(Told.Soak.Origin);
        string[] cautions =
        [
            .. dry.Any(Goods.IsDusty) ? [Goods.DustCaution] : Array.Empty<string>(),
            .. dry.Any(Goods.IsSphagnum) ? [Goods.MossCaution] : Array.Empty<string>(),
        ];
        writer.Step(
            dry.Any(d => d is SoilEntry) ? "floor.soil" : "floor.moss",
            $"Wet these first: {string.Join("; ", dry.Select(d => d.Name))}. {Told.Soak} in warm "
                + $"water, or "
                + "overnight. Squeeze out what drips.",
            "Dry peat and moss repel water; wetted in the box they stay dry inside.",
            cautions
        );
    }

    private static void Plants(DesignNumbers numbers, StepWriter writer)
    {
        var plants = numbers.Design.Design.Plants;
        if (plants.Count == 0)
        {
            return;
        }

        writer.Step(
            "plants",
            "Plants: take off pots, soil, eggs, snails and dead leaves. Wash the roots.",
            "Dirt eats bleach, and shop soil brings pests, prills and pesticide."
        );
        Dip(numbers, writer);
        writer.Cite(Recipe);
        writer.Step("plants", $"Rinse each plant five times in fresh water. Let it stand {Told.Day} in air.");
        Apart(numbers, writer);
    }

    /// <summary>Quarantine of plants without an entered one; what is entered is told as done.</summary>
    private static void Apart(DesignNumbers numbers, StepWriter writer)
    {
        var plants = numbers.Design.Design.Plants;
        var done = plants
            .Select((p, i) => (p.Quarantined, Name: PlantSteps.Name(numbers, i)))
            .Where(p => p.Quarantined is not null)
            .Select(p => $"{p.Name} {p.Quarantined!.Value.Text}")
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        var known = done.Length > 0 ? $"Kept apart already, as entered: {string.Join("; ", done)}. " : "";
        if (plants.All(p => p.Quarantined is not null))
        {
            writer.Step("plants", $"{known}Look once more for slugs, snails and eggs.");
            return;
        }

        writer.Cite(Recipe);
        writer.Step(
            "plants",
            $"{known}Keep the {(done.Length > 0 ? "other " : "")}plants apart for "
                + $"{writer.Whole(CareIntervals.PlantQuarantine)} days. Look for slugs, snails and eggs, at "
                + "night too.",
            "Systemic pesticides fade in time, eggs hatch and show."
        );
    }

    private static void Dip(DesignNumbers numbers, StepWriter writer)
    {
        if (numbers.Dip is not { } dip)
        {
            writer.Step(
                "hygiene.bleach",
                "Read the strength on the bleach label and enter it in the design (your own "
                    + "number); the dip is calculated from it. Until then skip the dip and keep the "
                    + "quarantine.",
                $"Bleach is sold at {Told.BleachSold}; a recipe without the label can be two or three "
                    + $"times off.",
                Bleach
            );
            return;
        }

        writer.Step(
            "hygiene.bleach",
            $"Mix the dip fresh: {writer.Milliliters(dip.ProductMilliliters)} of bleach "
                + $"({LabelText(dip.Label, writer)} on the label) into {writer.Liters(dip.WaterLiters)} of "
                + $"water. That is {StrengthText(dip.Strength, writer)} sodium hypochlorite.",
            "Throw it away the same day: dirt and time use it up.",
            Bleach
        );
        ByLeaf(numbers, writer, dip);
    }

    private static void ByLeaf(DesignNumbers numbers, StepWriter writer, PlantDip dip)
    {
        var names = numbers
            .Design.Design.Plants.Select(
                (_, i) => numbers.Design.Entry<PlantEntry>($"plants[{NumberText.Integer(i)}].plant")
            )
            .DistinctBy(e => e.Key)
            .ToLookup(e => e.BleachTolerance?.Text == "hardy");
        if (names[true].Any())
        {
            writer.Cite(Recipe);
            writer.Step("plants", $"Dip the hardy plants {Practice.HardyDip}: {List(names[true])}.");
        }

        if (names[false].Any())
        {
            writer.Cite(Recipe);
            var half = (dip.ProductMilliliters * PlantDip.SoftShare).As(
                "bleach for soft leaves",
                Unit.Milliliter
            );
            writer.Step(
                "plants",
                $"Dip the soft plants {Practice.SoftDip} in a bath with half the bleach "
                    + $"({writer.Milliliters(half)}), or skip the dip: {List(names[false])}. Try one leaf "
                    + "first and wait a day.",
                "Begonias, gesneriads, mosses and other soft leaves can burn."
                    + (
                        dip.RanavirusSoft == DoseVerdict.Sufficient
                            ? ""
                            : " So weak and so short a bath was not shown to kill ranavirus: their "
                                + "quarantine counts."
                    )
            );
        }
    }

    private static string List(IEnumerable<CatalogEntry> plants) =>
        string.Join("; ", plants.Select(p => p.Name));

    /// <summary>Labels are printed to a hundredth of a percent: 5.25 %.</summary>
    private static string LabelText(Figure share, StepWriter writer)
    {
        writer.Of(share);
        return Percent(share, "0.##");
    }

    private static string StrengthText(Figure share, StepWriter writer)
    {
        writer.Of(share);
        return Percent(share, "0.00");
    }

    private static string Percent(Figure share, string format) =>
        $"{Math.Round(share.Si * 100, 9).ToString(format, CultureInfo.InvariantCulture)} %";

    private static string Word(Preparation? prepared) => prepared!.Value.ToString().ToLowerInvariant();
}
