using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Starting;

/// <summary>
/// A first build on a plain starter design: vents and mist that hold the air of the animal's band with the
/// floor in balance, plants whose bands of light meet, a lamp that reaches them, and no more animals than
/// every stocking rule allows. Each choice is computed on the design itself; the findings say what is left.
/// </summary>
public sealed class FirstBuild
{
    private const double Inch = 0.0254;
    private const int MostMistTurns = 5;
    private readonly TradeCatalog catalog;
    private readonly CancellationToken cancel;
    private readonly IProgress<string>? progress;
    private readonly List<string> reasons = [];
    private DesignDocument document;
    private double ground;

    private FirstBuild(
        DesignDocument document,
        TradeCatalog catalog,
        (IProgress<string>? Progress, CancellationToken Cancel) watch
    )
    {
        this.document = document;
        this.catalog = catalog;
        (progress, cancel) = watch;
    }

    /// <summary>
    /// The design with its first build, and why each choice; null where it cannot be checked.
    /// </summary>
    /// <param name="starter">A plain starter design with its inside size.</param>
    /// <param name="catalog">The library.</param>
    /// <param name="progress">Told what is being tried; null for none.</param>
    /// <param name="cancel">Cancels between two computed months.</param>
    public static (DesignDocument Document, ImmutableArray<string> Reasons)? Of(
        DesignDocument starter,
        TradeCatalog catalog,
        IProgress<string>? progress = null,
        CancellationToken cancel = default
    )
    {
        var build = new FirstBuild(starter, catalog, (progress, cancel));
        if (build.Check(starter) is not { } plain)
        {
            return null;
        }

        var shape = DesignNumbers.Shape(plain);
        build.Frame(shape);
        build.Stock(shape);
        build.Plant(shape);
        build.Settle(plain);
        return (build.document, [.. build.reasons]);
    }

    private bool IsImperial { get; set; }

    private DesignNumbers? Latest { get; set; }

    /// <summary>A month of a design; what no change reaches is taken from the one before.</summary>
    private DesignNumbers Month(CheckedDesign design) => Latest = DesignNumbers.Month(design, Latest);

    private CheckedDesign? Check(DesignDocument changed) =>
        DesignChecker.Check(changed, catalog) is { Value: { } design, IsGood: true } ? design : null;

    /// <summary>Takes a change only where the whole design still checks.</summary>
    private bool Take(Reading<DesignDocument> edit)
    {
        if (edit is { Value: { } changed, IsGood: true } && Check(changed) is not null)
        {
            document = changed;
            return true;
        }

        return false;
    }

    /// <summary>
    /// A front that opens over a sill, a background, vents low and high, nozzles, a weekly look.
    /// </summary>
    private void Frame(DesignNumbers shape)
    {
        IsImperial = Imperial.IsUsed(document.Design);
        var (length, height) = (shape.Box.InsideLength.Si, shape.Box.InsideHeight.Si);
        var (drainage, front, back) = FirstBuildPolicy.Floor(height);
        ground = drainage + front;
        Take(DesignEdits.Set(document, "floor.drainage.depth", Text(drainage)));
        Take(DesignEdits.Set(document, "floor.soil.front", Text(front)));
        Take(DesignEdits.Set(document, "floor.soil.back", Text(back)));
        var sill = ground + FirstBuildPolicy.SillOverSoil;
        Take(DesignEdits.Set(document, "box.opening", "front"));
        Take(DesignEdits.Set(document, "box.sill", Text(sill)));
        Take(
            DesignEdits.SetPart(
                document,
                "background",
                $"{{ material: cork-tile, thickness: {Text(0.02)}, sides: [back] }}"
            )
        );
        var vent = Text(length * FirstBuildPolicy.VentShare);
        foreach (var (side, up) in new[] { ("front", sill + 0.01), ("top", height - 0.01) })
        {
            Take(
                DesignEdits.Add(
                    document,
                    "vents",
                    $"{{ length: {vent}, width: 20 mm, height: {Text(up)}, mesh: steel-gauze-0.5, "
                        + $"side: {side} }}"
                )
            );
        }

        var nozzles = Math.Max(2, (int)Math.Round(length / FirstBuildPolicy.NozzleSpacingMeters));
        Take(
            DesignEdits.SetPart(
                document,
                "misting",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{{ nozzles: {nozzles}, each: 90 mL/min, times: [ {{ at: \"08:00\", for: 20 s }}, "
                        + $"{{ at: \"17:00\", for: 20 s }} ] }}"
                )
            )
        );
        Take(DesignEdits.Set(document, "habits.levelCheck", "7 d"));
        // Any light will do to begin with: the map is linear in lumens.
        Lamp(1000 * Math.Max(1, Math.Round(shape.Box.OpenFloor.Si * 10)));
    }

    private bool Lamp(double lumens)
    {
        var watts = lumens / FirstBuildPolicy.LumensPerWatt;
        return Take(
            DesignEdits.SetPart(
                document,
                "lamps",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"[ {{ lamp: led-bar-6500k, lumens: {lumens:0}, watts: {watts:0}, "
                        + $"above: {Text(0.03)}, on: \"08:00\", off: \"20:00\" }} ]"
                )
            )
        );
    }

    /// <summary>As many animals as every rule allows; where that is none, as many as were asked.</summary>
    private void Stock(DesignNumbers shape)
    {
        var rows = shape.Stocking.Where(r => !r.IsGroupRule);
        if (
            document.Design.Animals.Count == 1
            && StockingTable.Strictest(rows) is { } strictest
            && strictest.Allowed!.Si is >= 1 and var allowed
            && allowed < strictest.Asked.Si
            && Take(
                DesignEdits.Set(
                    document,
                    "animals[0].count",
                    Math.Floor(allowed).ToString("0", CultureInfo.InvariantCulture)
                )
            )
        )
        {
            reasons.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Math.Floor(allowed):0} animals: {strictest.Name} allows no more"
                )
            );
        }
    }

    /// <summary>
    /// The widest vents whose air is inside the band, else those that come nearest, with the floor in
    /// balance.
    /// </summary>
    private void Settle(CheckedDesign plain)
    {
        var animal = StockedSpecies.Of(plain).FirstOrDefault()?.Species;
        var (low, high) = FirstBuildPolicy.Humidity(animal);
        var wanted = low + (FirstBuildPolicy.HumidityAboveLow * (high - low));
        ((double BalanceError, DesignDocument Document, double Humidity, double Mist) best, var found) = (
            default,
            false
        );
        foreach (var width in FirstBuildPolicy.VentWidths)
        {
            progress?.Report(
                string.Create(CultureInfo.InvariantCulture, $"trying vents {width * 1000:0} mm wide")
            );
            if (Balanced(document, width) is not { } there)
            {
                continue;
            }

            var fog =
                there.Fog > FirstBuildPolicy.BearableFogHours
                    ? there.Fog - FirstBuildPolicy.BearableFogHours
                    : 0;
            var miss =
                Math.Max(0, wanted - there.Humidity)
                + Math.Max(0, there.Humidity - (high - (FirstBuildPolicy.HumidityBelowHigh * (high - low))))
                + (there.Dry * FirstBuildPolicy.FogHourAsHumidity)
                + (fog * FirstBuildPolicy.FogHourAsHumidity);
            if (!found || miss < best.BalanceError)
            {
                (best, found) = ((miss, there.Document, there.Humidity, there.Mist), true);
            }

            if (best.BalanceError <= 0)
            {
                break;
            }
        }

        if (found && Take(new Reading<DesignDocument>(best.Document, [])))
        {
            reasons.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"vents and {1000 * best.Mist:0} mL of mist a day: air of "
                        + $"{100 * best.Humidity:0} % on average, the band is {100 * low:0} to "
                        + $"{100 * high:0} %, and the floor loses what it gets"
                )
            );
        }
    }

    /// <summary>A vent in front begins at the upper edge of the sill, however wide it is.</summary>
    private DesignDocument? OverSill(DesignDocument from, int vent, double width) =>
        from.Design.Box.Sill is { } sill
            ? DesignEdits
                .Set(
                    from,
                    string.Create(CultureInfo.InvariantCulture, $"vents[{vent}].height"),
                    Text(sill.Si + (width / 2))
                )
                .Value
            : null;

    /// <summary>
    /// The mist at which the floor neither dries nor fills, with vents of a width; fog and dry air in hours
    /// of a day.
    /// </summary>
    private (DesignDocument Document, double Humidity, double Mist, double Fog, double Dry)? Balanced(
        DesignDocument from,
        double width
    )
    {
        var changed = from;
        for (var i = 0; i < from.Design.Vents.Count; i++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"vents[{i}].width");
            var edit = DesignEdits.Set(
                changed,
                path,
                string.Create(CultureInfo.InvariantCulture, $"{width * 1000:0} mm")
            );
            if (edit.Value is null || !edit.IsGood)
            {
                return null;
            }

            changed = edit.Value;
            if (from.Design.Vents[i].Side == Side.Front && OverSill(changed, i, width) is { } raised)
            {
                changed = raised;
            }
        }

        for (var turn = 0; ; turn++)
        {
            cancel.ThrowIfCancellationRequested();
            if (Check(changed) is not { } design || Month(design).Climate?.Computed?.Days is not { } days)
            {
                return null;
            }

            var wanted = days.Vented * FirstBuildPolicy.MistOverVented;
            var isNear = Math.Abs(days.Misted - wanted) <= FirstBuildPolicy.MistTolerance * wanted;
            var next = isNear || turn >= MostMistTurns ? null : Misted(changed, wanted);
            if (next is null || next.Text == changed.Text)
            {
                return (
                    changed,
                    days.Humidity.Mean,
                    days.Misted,
                    days.Fog.Select(f => f.Hours).DefaultIfEmpty(0).Max(),
                    days.HoursDrier(FirstBuildPolicy.DryAir)
                );
            }

            changed = next;
        }
    }

    /// <summary>The design with about a mass of mist a day, in whole seconds.</summary>
    private static DesignDocument? Misted(DesignDocument from, double kilograms)
    {
        var misting = from.Design.Misting!;
        var rate = FirstBuildPolicy.NozzleKilogramsPerSecond * Math.Max(1, misting.Nozzles);
        var seconds = (int)Math.Clamp(Math.Round(kilograms / rate), FirstBuildPolicy.MistingsADay, 1200);
        var changed = from;
        for (var i = 0; i < misting.Times.Count; i++)
        {
            var share = (seconds + i) / misting.Times.Count;
            var edit = DesignEdits.Set(
                changed,
                string.Create(CultureInfo.InvariantCulture, $"misting.times[{i}].for"),
                string.Create(CultureInfo.InvariantCulture, $"{share} s")
            );
            if (edit.Value is null || !edit.IsGood)
            {
                return null;
            }

            changed = edit.Value;
        }

        return changed;
    }

    /// <summary>The most plants whose bands of light meet, and the lamp that meets them.</summary>
    private void Plant(DesignNumbers shape)
    {
        progress?.Report("choosing plants and light");
        Offer(shape);
        if (Check(document) is not { } design || LightOf(design) is not { } light)
        {
            return;
        }

        var factors = light
            .Plants.Where(p => p.Band is not null && p.Daily.Value.Si > 0)
            .Select(p =>
                (
                    p.Spot.Number,
                    p.Spot.Name,
                    Low: (1 + FirstBuildPolicy.BandMargin) * p.Band!.Value.Low.Si / p.Daily.Value.Si,
                    High: (1 - FirstBuildPolicy.BandMargin) * p.Most!.Si / p.Daily.Value.Si
                )
            )
            .ToList();
        var lumens = document.Design.Lamps[0].Lumens?.Si ?? 0;
        var area = shape.Box.InsideLength.Si * shape.Box.InsideDepth.Si;
        var most = FirstBuildPolicy.MostLumensPerSquareMeter * area / Math.Max(1, lumens);
        var best = factors
            .Select(f => f.Low)
            .Where(low => low <= most)
            .Select(low => (Low: low, Count: factors.Count(f => f.Low <= low && low <= f.High)))
            .OrderByDescending(c => c.Count)
            .ThenBy(c => c.Low)
            .FirstOrDefault();
        if (best.Count > 0)
        {
            Lit(
                factors.ConvertAll(f => (f.Number, f.Name, Meets: f.Low <= best.Low && best.Low <= f.High)),
                best.Low * lumens
            );
        }
    }

    /// <summary>Sets the offered plants for which there is room.</summary>
    private void Offer(DesignNumbers shape)
    {
        var (length, depth, height) = (
            shape.Box.InsideLength.Si,
            shape.Box.InsideDepth.Si,
            shape.Box.InsideHeight.Si
        );
        var free = height - ground - FirstBuildPolicy.SillOverSoil;
        foreach (var plant in FirstBuildPolicy.Plants)
        {
            if (
                catalog.Find<PlantEntry>(plant.Key) is not { } entry
                || (plant.Up is null && entry.LargestGrown?.Si > free)
            )
            {
                continue;
            }

            var z = plant.Up is { } up ? $", z: {Text(up * height)}" : "";
            var mounted = plant.Up is null ? "" : ", mounted: true";
            Take(
                DesignEdits.Add(
                    document,
                    "plants",
                    $"{{ plant: {plant.Key}, at: {{ x: {Text(plant.Along * length)}, "
                        + $"y: {Text(plant.Behind * depth)}{z} }}{mounted} }}"
                )
            );
        }
    }

    private void Lit(List<(int Number, string Name, bool Meets)> plants, double lumens)
    {
        foreach (var (number, _, _) in plants.Where(p => !p.Meets).OrderByDescending(p => p.Number))
        {
            Take(
                DesignEdits.Remove(
                    document,
                    string.Create(CultureInfo.InvariantCulture, $"plants[{number - 1}]")
                )
            );
        }

        var step = FirstBuildPolicy.LumenStep;
        var rounded = Math.Ceiling(lumens / step) * step;
        if (Lamp(rounded))
        {
            var met = string.Join(", ", plants.Where(p => p.Meets).Select(p => p.Name));
            reasons.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a lamp of {rounded:0} lm: so much brings {met} into the light they want"
                )
            );
        }
    }

    private static LightFigures? LightOf(CheckedDesign design) => new DesignNumbers(design).Light;

    private string Text(double meters) =>
        IsImperial
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(meters / Inch * 4) / 4:0.##} in")
            : string.Create(CultureInfo.InvariantCulture, $"{meters * 100:0.#} cm");
}
