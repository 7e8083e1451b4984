using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>A plant that grows higher than the room above its foot.</summary>
internal static class OutgrowsBox
{
    public static readonly Rule Rule = new(
        "plant-outgrows-box",
        Protects.Build,
        "a plant grows higher than the room above its foot; climbers and trailers only need trimming",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Without(finding, design),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n))
        {
            if (
                plant.Species.LargestGrown is not { } size
                || Room(n, plant) is not { } room
                || size.Si <= room.Si + 1e-9
            )
            {
                continue;
            }

            var growth = plant.Species.Growth?.Text;
            var climbs =
                growth is "climbs" or "trails"
                || plant.Species.RootPlace?.Text is "climber" or "hemiepiphyte";
            bool isNear = size.Si - room.Si <= ModelError.PlantMeters + 1e-9;
            yield return Rule.Found(
                climbs || isNear ? Severity.Note : Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{plant.Species.Name} grows to {size.Value:0.#} cm; the space above its base is "
                        + $"{room.Si * 100:0.#} cm."
                ) + ModelError.Words(isNear),
                (size, room),
                climbs
                    ? $"Trim it every {Practice.Trims}, at most a third at a time."
                    : "Take a smaller kind, or plan to replace it; trimming does not keep it low.",
                $"{plant.Path}.plant"
            );
        }
    }

    /// <summary>Room above the foot; null for a mounted plant whose height is not entered.</summary>
    private static Figure? Room(DesignNumbers n, PlacedPlant plant)
    {
        if (plant.Entry.At?.Z is { } z)
        {
            var foot = n.Design.Figure($"{plant.Path}.at.z", "height of its foot", z, Unit.Centimeter);
            return Figure
                .NotNegative(n.Box.InsideHeight - foot)
                .As($"free height above {plant.Species.Name}", Unit.Centimeter);
        }

        return plant.Entry.Mounted ? null : n.Headspace.AirHeight;
    }

    /// <summary>A plant that only needs trimming stays.</summary>
    private static DesignFix? Without(Finding finding, CheckedDesign design) =>
        FixEdit.Index(finding) is { } i && finding.Fix.StartsWith("Take", StringComparison.Ordinal)
            ? DesignFix.From(
                $"without {FixEdit.Named(design, $"plants[{i}].plant")}",
                DesignEdits.Remove(design.Document, FormattableString.Invariant($"plants[{i}]"))
            )
            : null;
}
