using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Quantities.Packs;

namespace Litterfall.Documents.Text;

/// <summary>A check as a maker reads it on a terminal or prints it.</summary>
public static class CheckText
{
    /// <summary>Verdict and findings first, then what to buy, cut and weigh.</summary>
    public static string Write(DesignResult result)
    {
        var n = result.Numbers;
        var text = new StringBuilder();
        text.Append(Terminal.Clean(n.Design.Design.Name)).Append("\n\n");
        Findings(text, result);
        StockingText.Write(text, n.Stocking);
        Section(text, "Sizes", Sizes(n));
        AirText.Write(text, n.Climate);
        LightText.Write(text, n.Light);
        WaterText.Write(text, n.Water);
        LifeText.Write(text, n.Life, result.Findings);
        Section(text, Boxes(n) > 1 ? "Floor, for one box" : "Floor", Layers(n));
        text.Append(Band(n));
        Section(text, "Parts of the mix", Components(n));
        Section(text, Boxes(n) > 1 ? $"Packs to buy, for {Boxes(n)} boxes" : "Packs to buy", Packs(n));
        Section(text, "Cut", Cuts(n));
        Section(text, "Foam, silicone, weights, shelf", Weights(n));
        Section(text, "Glass (an estimate; ask a glazier)", Glass(n));
        if (n.Dip is not null)
        {
            Section(text, "Plant dip", Dip(n));
            text.Append(Terminal.Wrapped(DipCaution, "  ")).Append('\n');
        }

        text.Append(Cost(n));
        text.Append(
            "\nAsk any number where it comes from: litterfall why DESIGN KEY (keys as in check --json)\n"
        );
        return text.ToString();
    }

    private static int Boxes(DesignNumbers n) => n.Design.Design.Boxes;

    private static void Section(StringBuilder text, string title, TextTable table)
    {
        if (!table.IsEmpty)
        {
            text.Append(title).Append('\n').Append(table).Append('\n');
        }
    }

    internal static void Findings(StringBuilder text, DesignResult result)
    {
        if (result.Findings.Length == 0)
        {
            text.Append("Nothing to object.\n\n");
            return;
        }

        foreach (var finding in result.Open)
        {
            var word = finding.Severity switch
            {
                Severity.Stop => "STOP",
                Severity.Caution => "CAUTION",
                _ => "note",
            };
            text.Append(Terminal.Wrapped($"{word}: {finding.Text}", "  "));
            text.Append(Terminal.Wrapped($"Fix: {finding.Fix}", "      "));
            foreach (var lever in finding.Levers)
            {
                text.Append(Terminal.Wrapped(Turned(lever), "      "));
            }

            text.Append(
                Terminal.Wrapped(
                    finding.Provenance.IsWeak()
                        ? $"Rests on {Weak(finding.Provenance)} ({finding.Slug})."
                        : $"Rule {finding.Slug}.",
                    "      "
                )
            );
        }

        foreach (var finding in result.Findings.Where(f => !f.IsOpen))
        {
            text.Append(Terminal.Wrapped(Terminal.Clean(AcceptedWords.Of(finding)), "  "));
        }

        text.Append('\n');
    }

    /// <summary>
    /// A lever and the value at which the changed design, checked anew, is free of the finding.
    /// </summary>
    private static string Turned(LeverFix fix)
    {
        var unit = fix.To.Unit!;
        return string.Create(
                CultureInfo.InvariantCulture,
                $"Tested: solved by {fix.To.Name!.Split(" at ")[0]} of {unit.FromSi(fix.To.Si):0.#} "
                    + $"{unit.Symbol} instead of {unit.FromSi(fix.From.Si):0.#}"
            )
            + (
                fix.Brings.IsEmpty
                    ? "."
                    : $"; it leads to: {string.Join(", ", fix.Brings.Select(RuleBook.Words))}."
            );
    }

    private static string Weak(Provenance provenance) =>
        provenance == Provenance.Recalled
            ? "a value from memory, source not checked"
            : "common practice, no published source";

    private static TextTable Sizes(DesignNumbers n)
    {
        var table = new TextTable("", "length", "depth", "height", "");
        if (n.Box.OutsideLength is not null)
        {
            table.Add(
                "outside",
                Mm(n.Box.OutsideLength),
                Mm(n.Box.OutsideDepth!),
                Mm(n.Box.OutsideHeight!),
                "mm"
            );
        }

        table.Add("inside", Mm(n.Box.InsideLength), Mm(n.Box.InsideDepth), Mm(n.Box.InsideHeight), "mm");
        table.Add(
            "inside",
            Inches(n.Box.InsideLength),
            Inches(n.Box.InsideDepth),
            Inches(n.Box.InsideHeight),
            "in"
        );
        table.Add("floor between backgrounds", Of(n.Box.OpenFloor, Unit.SquareCentimeter, 0), "", "", "cm2");
        table.Add(
            "air above the floor",
            Of(n.Headspace.AirHeight, Unit.Centimeter, 1),
            "",
            "",
            $"cm mean, {Of(n.Headspace.Volume, Unit.Liter, 1)} L"
        );
        return table;
    }

    private static TextTable Layers(DesignNumbers n)
    {
        var table = new TextTable(
            "layer",
            "material",
            "depth cm",
            "finished L",
            "mixed L",
            "loose L",
            "to buy L",
            "gal",
            "dry qt",
            "water L"
        );
        foreach (var layer in n.Layers)
        {
            if (layer.Material is null)
            {
                var height = Of(layer.Depth, Unit.Centimeter, 1);
                table.Add(layer.Layer, "raised floor over water", height, "", "", "", "", "", "", "");
                continue;
            }

            table.Add(
                layer.Layer,
                layer.Material.Name,
                Of(layer.Depth, Unit.Centimeter, 1),
                Of(layer.Finished, Unit.Liter, 1),
                Of(layer.Mixed, Unit.Liter, 1),
                Of(layer.Loose, Unit.Liter, 1),
                Of(layer.ToBuy, Unit.Liter, 1),
                Of(layer.ToBuy, Unit.Gallon, 2),
                Of(layer.ToBuy, Unit.DryQuart, 1),
                layer.WaterToAdd is { } water ? Of(water, Unit.Liter, 1) : ""
            );
        }

        return table;
    }

    private static string Band(DesignNumbers n) =>
        n.Layers.FirstOrDefault(l => l.ToBuyLow is not null) is { } soil
            ? $"  Until settling and mixing yield are measured: {Of(soil.ToBuyLow!, Unit.Liter, 1)} to "
                + $"{Of(soil.ToBuyHigh!, Unit.Liter, 1)} L of soil parts to buy.\n\n"
            : "";

    private static TextTable Components(DesignNumbers n)
    {
        var table = new TextTable("part", "loose L", "to buy L", "dry qt", "kg as sold");
        foreach (var part in n.Layers.SelectMany(l => l.Components))
        {
            table.Add(
                part.Material.Name,
                Of(part.Loose, Unit.Liter, 1),
                Of(part.ToBuy, Unit.Liter, 1),
                Of(part.ToBuy, Unit.DryQuart, 1),
                part.Mass is { } mass ? Of(mass, Unit.Kilogram, 2) : ""
            );
        }

        return table;
    }

    private static TextTable Packs(DesignNumbers n)
    {
        var table = new TextTable("material", "need L", "buy", "left L", "cost", "");
        foreach (var need in n.Packs)
        {
            var buy = string.Join(
                " + ",
                need.Packs.Select(p => $"{p.Count.Value:0} × {Short(p.Pack, need.Material)}")
            );
            table.Add(
                need.Material.Name,
                Of(need.Need, Unit.Liter, 1),
                buy.Length > 0 ? buy : "nothing",
                Of(need.Left, Unit.Liter, 1),
                need.Cost is { } cost ? Of(cost, Unit.Money, 2) : "–",
                need.Note
            );
        }

        return table;
    }

    private static TextTable Cuts(DesignNumbers n)
    {
        var table = new TextTable("part", "material", "pieces", "mm", "mm", "in", "in", "");
        foreach (var cut in n.Cuts)
        {
            table.Add(
                cut.Part,
                cut.Material,
                $"{cut.Count.Value:0}",
                Mm(cut.Length),
                Mm(cut.Width),
                Inches(cut.Length),
                Inches(cut.Width),
                cut.Note
            );
        }

        return table;
    }

    private static TextTable Weights(DesignNumbers n)
    {
        var table = new TextTable("", "", "");
        AddIf(table, "foam", n.Sealants.FoamCans, Unit.One, "cans");
        AddIf(table, "silicone", n.Sealants.Cartridges, Unit.One, "cartridges");
        AddIf(table, "cure before planting", n.Sealants.CureBeforePlanting, Unit.Day, "days");
        AddIf(table, "cure before animals", n.Sealants.CureBeforeAnimals, Unit.Day, "days");
        table.Add("dry", Of(n.Weights.Dry, Unit.Kilogram, 1), "kg");
        table.Add("planted", Of(n.Weights.Planted, Unit.Kilogram, 1), "kg");
        table.Add("heaviest (waterlogged)", Of(n.Weights.Wet, Unit.Kilogram, 1), "kg");
        AddIf(table, "on its footprint", n.Shelf.Pressure, Unit.Kilopascal, "kPa");
        AddIf(table, "per meter of shelf", n.Shelf.PerMeter, Unit.KilogramPerMeter, "kg");
        if (n.Float is { } f)
        {
            table.Add(
                "aggregate lifts at",
                Of(f.LiftHeight, Unit.Centimeter, 1),
                f.Lifts ? "cm of water" : "cm of water, more than the layer holds"
            );
        }

        foreach (var missing in n.Weights.Missing)
        {
            table.Add("not weighed", "–", missing);
        }

        return table;
    }

    /// <summary>The pack without the name of its material, which stands in the row already.</summary>
    private static string Short(CatalogEntry pack, CatalogEntry material) =>
        pack.Name.StartsWith(material.Name + ", ", StringComparison.Ordinal)
            ? pack.Name[(material.Name.Length + 2)..]
            : pack.Name;

    private static void AddIf(TextTable table, string name, Figure? figure, Unit unit, string word)
    {
        if (figure is { Si: > 0 })
        {
            table.Add(name, Of(figure, unit, unit == Unit.Kilopascal ? 2 : 0), word);
        }
    }

    private static TextTable Glass(DesignNumbers n)
    {
        var table = new TextTable(
            "pane",
            "stress MPa at worst",
            "allowed",
            "bends mm",
            "needs mm",
            "carries water to cm"
        );
        foreach (var pane in n.Panes)
        {
            table.Add(
                pane.Pane,
                Of(pane.Stress, Unit.Megapascal, 2),
                Of(pane.Allowable, Unit.Megapascal, 1),
                Of(pane.Sag, Unit.Millimeter, 1) + (pane.IsLinear ? "" : " at most"),
                pane.Needed is { } needed ? Of(needed, Unit.Millimeter, 1) : "–",
                pane.LargestWaterDepth is { } water ? Of(water, Unit.Centimeter, 0) : "–"
            );
        }

        return table;
    }

    private static TextTable Dip(DesignNumbers n)
    {
        var table = new TextTable("", "", "");
        if (n.Dip is { } dip)
        {
            table.Add(
                "bleach",
                Of(dip.ProductMilliliters, Unit.Milliliter, 0),
                "mL, poured into the water, never the other way"
            );
            table.Add("water", Of(dip.WaterLiters, Unit.Liter, 1), "L");
            table.Add(
                "strength",
                Of(dip.Strength, Unit.Percent, 2),
                $"% sodium hypochlorite, {Of(dip.OverDose, Unit.One, 1)} times the dose against the "
                    + $"frog chytrid"
            );
        }

        return table;
    }

    private const string DipCaution =
        "Gloves, goggles, open window; never with acid or ammonia; rinse five times; not for soft leaves.";

    private static string Cost(DesignNumbers n)
    {
        var workshop = n.Design.Catalog.Workshop;
        var currency = workshop?.Currency is { } code ? " " + code : "";
        if (GoodsCost.Goods(n.Packs) is { } goods && GoodsCost.Purchase(n.Packs) is { } purchase)
        {
            return $"Cost of goods: {Of(goods, Unit.Money, 2)}{currency} used, "
                + $"{Of(purchase, Unit.Money, 2)}{currency} of packs to buy now.\n";
        }

        return workshop is null
            ? "Cost of goods: not known; name a folder with prices by --workshop or in the design.\n"
            : "Cost of goods: not known, because a price is missing.\n";
    }

    private static string Mm(Figure figure) => Of(figure, Unit.Millimeter, 1);

    private static string Inches(Figure figure) => Of(figure, Unit.InchUnit, 2);

    private static string Of(Figure figure, Unit unit, int decimals) =>
        unit.FromSi(figure.Si)
            .ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
