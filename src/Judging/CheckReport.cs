using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging;

/// <summary>
/// The machine-readable face of a check. Every number enters as a figure with its derivation.
/// </summary>
public static class CheckReport
{
    /// <summary>The report; the caller adds how long it took.</summary>
    public static ReportObject Write(DesignNumbers numbers, ImmutableArray<Finding> findings) =>
        ReportObject.Of(
            (
                "design",
                ReportObject.Of(
                    ("name", new ReportText(numbers.Design.Design.Name)),
                    ("hash", new ReportText(DesignHash.Of(numbers.Design.Document.Text))),
                    (
                        "boxes",
                        Number(
                            numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes),
                            Unit.One
                        )
                    )
                )
            ),
            ("geometry", Geometry(numbers)),
            ("quantities", List(numbers.Layers.SelectMany(Rows))),
            ("basins", BasinReport.Write(numbers)),
            ("packs", List(numbers.Packs.Select(Pack))),
            ("cuts", List(numbers.Cuts.Select(Cut))),
            ("sealants", Seal(numbers.Sealants)),
            ("weights", Weigh(numbers)),
            ("shelf", ShelfNode(numbers.Shelf)),
            ("glass", List(numbers.Panes.Select(Pane))),
            ("float", Float(numbers.Float)),
            ("dip", Dip(numbers)),
            ("cost", Cost(numbers)),
            ("water", WaterReport.Write(numbers.Water)),
            ("headspace", ClimateReport.Write(numbers.Climate)),
            ("light", LightReport.Write(numbers.Light)),
            ("crew", LifeReport.Write(numbers.Life, findings)),
            ("stocking", StockingReport.Write(numbers.Stocking)),
            ("findings", List(findings.Select(FindingNode)))
        );

    private static ReportObject Geometry(DesignNumbers n) =>
        ReportObject.Of(
            ("outsideLengthMm", Maybe(n.Box.OutsideLength, Unit.Millimeter, NoGlass)),
            ("outsideDepthMm", Maybe(n.Box.OutsideDepth, Unit.Millimeter, NoGlass)),
            ("outsideHeightMm", Maybe(n.Box.OutsideHeight, Unit.Millimeter, NoGlass)),
            ("insideLengthMm", Number(n.Box.InsideLength, Unit.Millimeter)),
            ("insideDepthMm", Number(n.Box.InsideDepth, Unit.Millimeter)),
            ("insideHeightMm", Number(n.Box.InsideHeight, Unit.Millimeter)),
            ("insideFloorCm2", Number(n.Box.GrossFloor, Unit.SquareCentimeter)),
            ("openFloorCm2", Number(n.Box.OpenFloor, Unit.SquareCentimeter)),
            ("layersHeightCm", Number(n.Headspace.LayersHeight, Unit.Centimeter)),
            ("airHeightCm", Number(n.Headspace.AirHeight, Unit.Centimeter)),
            ("headspaceLitres", Number(n.Headspace.Volume, Unit.Liter)),
            ("reservoirFullLitres", Number(n.Weights.ReservoirWater, Unit.Liter))
        );

    private const string NoGlass = "the outside is not known without the glass thickness";
    private const string NoBand = "its settling and mixing yield were entered, or it has none";
    private const string NoDensity = "the library has no density for it";

    private static IEnumerable<ReportNode> Rows(FloorLayer layer)
    {
        if (layer.Material is null)
        {
            yield break;
        }

        yield return ReportObject.Of(
            ("item", new ReportText(layer.Material.Key)),
            ("layer", new ReportText(layer.Layer)),
            ("row", new ReportText("layer")),
            ("name", new ReportText(layer.Material.Name)),
            ("finishedLitres", Number(layer.Finished, Unit.Liter)),
            ("mixedLitres", Number(layer.Mixed, Unit.Liter)),
            ("looseLitres", Number(layer.Loose, Unit.Liter)),
            ("toBuyLitres", Number(layer.ToBuy, Unit.Liter)),
            ("toBuyLitresLow", Maybe(layer.ToBuyLow, Unit.Liter, NoBand)),
            ("toBuyLitresHigh", Maybe(layer.ToBuyHigh, Unit.Liter, NoBand)),
            ("massKg", Maybe(layer.Mass, Unit.Kilogram, NoDensity)),
            ("meanDepthCm", Number(layer.Depth, Unit.Centimeter)),
            ("squeezeWaterLitres", Maybe(layer.SqueezeWater, Unit.Liter, "this layer is not wetted")),
            ("waterToAddLitres", Maybe(layer.WaterToAdd, Unit.Liter, "this layer is not wetted"))
        );
        foreach (var part in layer.Components)
        {
            yield return ReportObject.Of(
                ("item", new ReportText(part.Material.Key)),
                ("layer", new ReportText(layer.Layer)),
                ("row", new ReportText("component")),
                ("name", new ReportText(part.Material.Name)),
                ("finishedLitres", Number(part.Finished, Unit.Liter)),
                ("mixedLitres", Number(part.Mixed, Unit.Liter)),
                ("looseLitres", Number(part.Loose, Unit.Liter)),
                ("toBuyLitres", Number(part.ToBuy, Unit.Liter)),
                ("massKg", Maybe(part.Mass, Unit.Kilogram, NoDensity))
            );
        }
    }

    private static ReportObject Pack(PackNeed need) =>
        ReportObject.Of(
            ("material", new ReportText(need.Material.Key)),
            ("needLitres", Number(need.Need, Unit.Liter)),
            ("stockLitres", Number(need.Stock, Unit.Liter)),
            (
                "buy",
                List(
                    need.Packs.Select(pack =>
                        ReportObject.Of(
                            ("pack", new ReportText(pack.Pack.Key)),
                            ("name", new ReportText(pack.Pack.Name)),
                            ("packs", Number(pack.Count, Unit.One)),
                            ("litres", Number(pack.Liters, Unit.Liter)),
                            (
                                "price",
                                Maybe(pack.Price, Unit.Money, "the workshop has no price for this pack")
                            )
                        )
                    )
                )
            ),
            ("leftLitres", Number(need.Left, Unit.Liter)),
            ("cost", Maybe(need.Cost, Unit.Money, "a price is missing")),
            ("usedValue", Maybe(need.UsedValue, Unit.Money, "no pack of it has a price")),
            ("note", new ReportText(need.Note))
        );

    private static ReportObject Cut(CutPart part) =>
        ReportObject.Of([
            ("part", new ReportText(part.Part)),
            ("material", new ReportText(part.Material)),
            ("count", Number(part.Count, Unit.One)),
            ("lengthMm", Number(part.Length, Unit.Millimeter)),
            ("widthMm", Number(part.Width, Unit.Millimeter)),
            ("thicknessMm", Maybe(part.Thickness, Unit.Millimeter, "no thickness is entered for it")),
            ("note", new ReportText(part.Note)),
            .. If("massKg", part.Mass),
            .. Cut(part.CutOuts),
            .. Drilled(part.Holes),
        ]);

    /// <summary>Openings and notches of a part, told where there are any.</summary>
    private static (string, ReportNode)[] Cut(ImmutableArray<CutOut> cuts) =>
        cuts.Length == 0
            ? []
            :
            [
                (
                    "cutOuts",
                    List(
                        cuts.Select(c =>
                            ReportObject.Of(
                                ("for", new ReportText(c.For)),
                                ("fromLeftMm", Number(c.FromLeft, Unit.Millimeter)),
                                ("fromBottomMm", Number(c.FromBottom, Unit.Millimeter)),
                                ("lengthMm", Number(c.Length, Unit.Millimeter)),
                                ("widthMm", Number(c.Width, Unit.Millimeter))
                            )
                        )
                    )
                ),
            ];

    private static (string, ReportNode)[] Drilled(ImmutableArray<CutHole> holes) =>
        holes.Length == 0
            ? []
            :
            [
                (
                    "holes",
                    List(
                        holes.Select(h =>
                            ReportObject.Of(
                                ("for", new ReportText(h.For)),
                                ("fromLeftMm", Number(h.FromLeft, Unit.Millimeter)),
                                ("fromBottomMm", Number(h.FromBottom, Unit.Millimeter)),
                                ("diameterMm", Number(h.Diameter, Unit.Millimeter))
                            )
                        )
                    )
                ),
            ];

    /// <summary>A mass that is told only where there is what it weighs.</summary>
    private static (string, ReportNode)[] If(string key, Figure? mass) =>
        mass is null ? [] : [(key, Number(mass, Unit.Kilogram))];

    private static ReportObject Seal(Sealants s) =>
        ReportObject.Of(
            ("foamLitres", Maybe(s.FoamVolume, Unit.Liter, "nothing is foamed")),
            ("foamCans", Maybe(s.FoamCans, Unit.One, "nothing is foamed")),
            ("siliconeMl", Number(s.Silicone, Unit.Milliliter)),
            ("siliconeCartridges", Maybe(s.Cartridges, Unit.One, "the library has no cartridge")),
            ("cureDaysBeforePlanting", Maybe(s.CureBeforePlanting, Unit.Day, "nothing has to cure")),
            ("cureDaysBeforeAnimals", Maybe(s.CureBeforeAnimals, Unit.Day, "nothing has to cure"))
        );

    private static ReportObject Weigh(DesignNumbers n) =>
        ReportObject.Of([
            ("boxKg", Maybe(n.Weights.Box, Unit.Kilogram, NoGlass)),
            ("lidKg", Maybe(n.Weights.Lid, Unit.Kilogram, "there is no lid of known thickness")),
            .. If("doorsKg", n.Weights.Doors),
            .. If("shelvesKg", n.Weights.Shelves),
            ("dryKg", Number(n.Weights.Dry, Unit.Kilogram)),
            ("dryKgLow", Number(n.Weights.DryBand.Low, Unit.Kilogram)),
            ("dryKgHigh", Number(n.Weights.DryBand.High, Unit.Kilogram)),
            ("plantedKg", Number(n.Weights.Planted, Unit.Kilogram)),
            ("plantedKgLow", Number(n.Weights.PlantedBand.Low, Unit.Kilogram)),
            ("plantedKgHigh", Number(n.Weights.PlantedBand.High, Unit.Kilogram)),
            ("wetKg", Number(n.Weights.Wet, Unit.Kilogram)),
            ("wetKgLow", Number(n.Weights.WetBand.Low, Unit.Kilogram)),
            ("wetKgHigh", Number(n.Weights.WetBand.High, Unit.Kilogram)),
            ("basinWaterLitres", Maybe(n.Weights.BasinWater, Unit.Liter, "there is no basin")),
            ("missing", List(n.Weights.Missing.Select(m => new ReportText(m)))),
        ]);

    private static ReportObject ShelfNode(ShelfLoad s) =>
        ReportObject.Of(
            ("wetKg", Number(s.Total, Unit.Kilogram)),
            ("pressureKPa", Maybe(s.Pressure, Unit.Kilopascal, NoGlass)),
            ("kgPerMetre", Maybe(s.PerMeter, Unit.KilogramPerMeter, NoGlass)),
            ("ratedKg", Maybe(s.Rated, Unit.Kilogram, "no rated load was entered for the shelf"))
        );

    private static ReportObject Pane(PaneCheck p) =>
        ReportObject.Of(
            ("pane", new ReportText(p.Pane)),
            ("widthMm", Number(p.Width, Unit.Millimeter)),
            ("heightMm", Number(p.Height, Unit.Millimeter)),
            ("stressMPa", Number(p.Stress, Unit.Megapascal)),
            ("allowableMPa", Number(p.Allowable, Unit.Megapascal)),
            (
                "neededMm",
                Maybe(
                    p.Needed,
                    Unit.Millimeter,
                    p.Pane is "lid" or "strip"
                        ? "the lid carries itself, so no thickness follows from the load"
                        : "it is computed for walls alone"
                )
            ),
            (
                "deepestWaterMm",
                Maybe(
                    p.LargestWaterDepth,
                    Unit.Millimeter,
                    p.Pane is "lid" or "strip" ? "a lid holds no water" : "it holds no water"
                )
            ),
            ("held", new ReportText(p.Held)),
            ("sagMm", Number(p.Sag, Unit.Millimeter)),
            ("sagLimitMm", Maybe(p.SagLimit, Unit.Millimeter, "walls are judged by their stress")),
            ("isLinear", new ReportFlag(p.IsLinear))
        );

    private static ReportNode Float(FloatCheck? f) =>
        f is null
            ? new ReportAbsent("there is no aggregate of known density")
            : ReportObject.Of(
                ("liftHeightCm", Number(f.LiftHeight, Unit.Centimeter)),
                ("safetyWhenFull", Number(f.SafetyWhenFull, Unit.One)),
                ("loadKgPerM2", Number(f.Load, Unit.KilogramPerSquareMeter)),
                ("lifts", new ReportFlag(f.Lifts))
            );

    private static ReportNode Dip(DesignNumbers n) =>
        n.Dip is not { } d
            ? new ReportAbsent("enter hygiene: { bleach: ... } with the strength on the product's label")
            : ReportObject.Of(
                ("labelPercent", Number(d.Label, Unit.Percent)),
                ("bathLitres", Number(d.Bath, Unit.Liter)),
                ("productMl", Number(d.ProductMilliliters, Unit.Milliliter)),
                ("waterLitres", Number(d.WaterLiters, Unit.Liter)),
                ("strengthPercent", Number(d.Strength, Unit.Percent)),
                ("chlorineMgPerLitre", Number(d.ChlorineMgPerLiter, Unit.MilligramPerLiter)),
                ("overChytridDose", Number(d.OverDose, Unit.One))
            );

    private static ReportObject Cost(DesignNumbers n) =>
        ReportObject.Of(
            (
                "currency",
                n.Design.Catalog.Workshop?.Currency is { } c
                    ? new ReportText(c)
                    : new ReportAbsent("no workshop folder names a currency")
            ),
            ("goods", Maybe(GoodsCost.Goods(n.Packs), Unit.Money, "a price is missing; see missingPrices")),
            (
                "purchase",
                Maybe(GoodsCost.Purchase(n.Packs), Unit.Money, "a price is missing; see missingPrices")
            ),
            (
                "missingPrices",
                List(
                    n.Packs.Where(p => p.UsedValue is null || p.Cost is null)
                        .Select(p => new ReportText(p.Material.Key))
                )
            ),
            (
                "note",
                new ReportText(
                    n.Design.Catalog.Workshop is null
                        ? "no workshop folder was named, so nothing has a price"
                        : "goods: bulk goods used; purchase: whole packs to buy; labor, glass and live "
                            + "goods are in neither"
                )
            )
        );

    private static ReportObject FindingNode(Finding f) =>
        ReportObject.Of(
            ("slug", new ReportText(f.Slug)),
            ("severity", new ReportText(Lower(f.Severity))),
            ("text", new ReportText(f.Text)),
            ("protects", new ReportText(Lower(f.Protects))),
            ("measured", Maybe(f.Measured, f.Measured?.Unit ?? Unit.One, "this rule measures nothing")),
            (
                "limit",
                Maybe(
                    f.Limit,
                    f.Measured?.Unit ?? f.Limit?.Unit ?? Unit.One,
                    "this rule has no numeric limit"
                )
            ),
            (
                "unit",
                f.Measured?.Unit is { } unit
                    ? new ReportText(unit.Symbol)
                    : new ReportAbsent("this rule measures nothing")
            ),
            ("source", new ReportText(f.Source.Source)),
            ("place", new ReportText(f.Source.Place)),
            ("provenance", new ReportText(f.Provenance.Word())),
            ("where", new ReportText(f.Where)),
            ("about", new ReportText(f.About)),
            ("title", new ReportText(RuleBook.Title(f.Slug))),
            ("accepted", Acceptance(f)),
            ("fix", new ReportText(f.Fix)),
            ("levers", List(f.Levers.Select(LeverNode)))
        );

    private static ReportNode Acceptance(Finding f) =>
        f.Accepted is not { } accepted
            ? new ReportAbsent("nobody accepts it")
            : ReportObject.Of(
                ("reason", new ReportText(accepted.Reason)),
                ("on", new ReportText(accepted.On.ToString("O", CultureInfo.InvariantCulture))),
                ("by", accepted.By is { } by ? new ReportText(by) : new ReportAbsent("no name is entered"))
            );

    private static ReportNode LeverNode(LeverFix fix) =>
        ReportObject.Of(
            ("lever", new ReportText(fix.Lever)),
            ("from", new ReportNumber(fix.From, fix.From.Unit!)),
            ("to", new ReportNumber(fix.To, fix.To.Unit!)),
            ("unit", new ReportText(fix.To.Unit!.Symbol)),
            ("brings", List(fix.Brings.Select(slug => (ReportNode)new ReportText(slug))))
        );

    private static string Lower<T>(T word)
        where T : struct, Enum => word.ToString().ToLowerInvariant();

    private static ReportNumber Number(Figure figure, Unit unit) => new(figure, unit);

    private static ReportNode Maybe(Figure? figure, Unit unit, string why) =>
        figure is null ? new ReportAbsent(why) : new ReportNumber(figure, unit);

    private static ReportList List(IEnumerable<ReportNode> items) => new([.. items]);
}
