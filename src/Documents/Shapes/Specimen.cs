using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Shapes;

/// <summary>How a plant looks.</summary>
internal enum PlantHabit
{
    /// <summary>A rosette of straps around a cup.</summary>
    Tank,

    /// <summary>A flat star of leaves.</summary>
    Star,

    /// <summary>Thin curled leaves from one foot, without roots in soil.</summary>
    Air,

    /// <summary>Fronds with leaflets.</summary>
    Fern,

    /// <summary>A funnel of undivided fronds.</summary>
    Nest,

    /// <summary>Forked fronds from a shield.</summary>
    Antler,

    /// <summary>Stems on the ground with small leaves.</summary>
    Creeping,

    /// <summary>A low mound of leaves.</summary>
    Mat,

    /// <summary>Leaves flat on a wall, like shingles.</summary>
    Shingling,

    /// <summary>A climbing stem with leaves on stalks.</summary>
    Vine,

    /// <summary>Hanging stems with leaves.</summary>
    Trailing,

    /// <summary>Leaves on stalks from one foot.</summary>
    Leafy,

    /// <summary>Upright stems with pairs of leaves.</summary>
    Bush,

    /// <summary>Canes with feathered leaves.</summary>
    Cane,

    /// <summary>A fan of blades.</summary>
    Grass,

    /// <summary>A small tuft, often with a flower on a stalk.</summary>
    Tuft,

    /// <summary>Moss.</summary>
    Moss,
}

/// <summary>One plant of a line of plants: each stands at its own place and looks like its kind.</summary>
/// <param name="Spot">The line it belongs to.</param>
/// <param name="Index">0 for the first of the line.</param>
internal sealed record Specimen(PlantSpot Spot, int Index)
{
    /// <summary>More of one line are not drawn: they would cover each other.</summary>
    private const int Most = 60;

    private const double DrawnMonths = 12;
    private const double Least = 0.012;

    /// <summary>Creepers stay low; what the library has is how far they reach.</summary>
    private const double MostCreeping = 0.045;

    private const double UsualGrown = 0.15;
    private const double GoldenAngle = 2.39996;

    /// <summary>How it looks.</summary>
    public required PlantHabit Habit { get; init; }

    /// <summary>Shape of its leaves, in a word.</summary>
    public required string Leaf { get; init; }

    /// <summary>Color of its leaves, then of marks or flower, in words.</summary>
    public required ImmutableArray<string> Colors { get; init; }

    /// <summary>Along the front, m.</summary>
    public required double X { get; init; }

    /// <summary>From front to back, m.</summary>
    public required double Y { get; init; }

    /// <summary>Its foot over the base, m.</summary>
    public required double Z { get; init; }

    /// <summary>Size when grown, as the library has it, m.</summary>
    public required double Grown { get; init; }

    /// <summary>Its size so long after planting, m.</summary>
    /// <param name="months">Months since planting.</param>
    public double Size(double months) => PlantAge.Size(Grown, months);

    /// <summary>Its size in drawings: after a year, no higher than the box lets it, m.</summary>
    /// <param name="terrain">The ground.</param>
    public double Drawn(Terrain terrain)
    {
        var size = Size(DrawnMonths);
        var room = Habit switch
        {
            PlantHabit.Trailing => Z - terrain.Ground(X, Y),
            PlantHabit.Creeping => MostCreeping,
            _ => terrain.Height - Z,
        };
        return Math.Max(Least, Math.Min(size, room));
    }

    /// <summary>Every plant of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="terrain">Its ground.</param>
    /// <param name="spots">Its lines of plants.</param>
    public static ImmutableArray<Specimen> Of(
        CheckedDesign design,
        Terrain terrain,
        ImmutableArray<PlantSpot> spots
    ) =>
        [
            .. spots.SelectMany(
                (spot, i) =>
                    Enumerable
                        .Range(0, Math.Clamp(spot.Count, 0, Most))
                        .Select(k => One(design, terrain, spot, (i, k)))
            ),
        ];

    private static Specimen One(CheckedDesign design, Terrain terrain, PlantSpot spot, (int Line, int K) at)
    {
        var entry = design.Entry<PlantEntry>(FormattableString.Invariant($"plants[{at.Line}].plant"));
        var grown = entry.LargestGrown?.Si ?? UsualGrown;
        var (x, y) = Beside(spot, terrain, (at.K, Math.Clamp(grown * 0.55, 0.035, 0.11)));
        var rise = spot.Mounted ? 0 : terrain.Ground(x, y) - terrain.Ground(spot.X, spot.Y);
        return new Specimen(spot, at.K)
        {
            Habit = HabitOf(entry),
            Leaf = entry.Leaf?.Text ?? "oval",
            Colors = [.. (entry.Color?.Text ?? "green").Split(',', StringSplitOptions.TrimEntries)],
            X = x,
            Y = y,
            Z = Math.Clamp(spot.Z + rise, 0, terrain.Height),
            Grown = grown,
        };
    }

    /// <summary>The first at the place of the line, the next around it; on a wall beside it.</summary>
    private static (double X, double Y) Beside(PlantSpot spot, Terrain terrain, (int K, double Apart) of)
    {
        if (of.K == 0)
        {
            return (spot.X, spot.Y);
        }

        var far = of.Apart * Math.Sqrt(of.K);
        var (sin, cos) = Math.SinCos(of.K * GoldenAngle);
        var side = of.K % 2 == 0 ? 1 : -1;
        return (
            Math.Clamp(
                spot.X + (spot.Mounted ? side * of.Apart * ((of.K + 1) / 2) : far * cos),
                Math.Min(spot.X, terrain.Left + 0.01),
                Math.Max(spot.X, terrain.Right - 0.01)
            ),
            spot.Mounted
                ? spot.Y
                : Math.Clamp(
                    spot.Y + (far * sin),
                    Math.Min(spot.Y, terrain.Front + 0.01),
                    Math.Max(spot.Y, terrain.Back - 0.01)
                )
        );
    }

    /// <summary>As the library has it; by how it grows where an own entry does not say.</summary>
    private static PlantHabit HabitOf(PlantEntry entry)
    {
        if (Enum.TryParse<PlantHabit>(entry.Form?.Text, ignoreCase: true, out var habit))
        {
            return habit;
        }

        var words = $"{entry.Habit?.Text} {entry.RootPlace?.Text}";
        (string Word, PlantHabit Habit)[] known =
        [
            ("tank", PlantHabit.Tank),
            ("bromeliad", PlantHabit.Star),
            ("atmospheric", PlantHabit.Air),
            ("nest", PlantHabit.Nest),
            ("shingling", PlantHabit.Shingling),
            ("climber", PlantHabit.Vine),
            ("hemiepiphyte", PlantHabit.Vine),
            ("mat", PlantHabit.Mat),
            ("moss", PlantHabit.Moss),
            ("creeping", PlantHabit.Creeping),
            ("orchid", PlantHabit.Tuft),
            ("fern", PlantHabit.Fern),
        ];
        return
            known.FirstOrDefault(k => words.Contains(k.Word, StringComparison.Ordinal))
                is { Word: not null } found
            ? found.Habit
            : PlantHabit.Leafy;
    }
}
