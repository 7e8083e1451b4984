using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Placing;

/// <summary>
/// A vent, in meters: along its side from the left or front end, and its middle over the base, as the plan of
/// its opening has it.
/// </summary>
/// <param name="Number">1 for the first.</param>
/// <param name="Key">Its key in the design.</param>
/// <param name="Side">The side it is in.</param>
/// <param name="Middle">Its middle along that side, m.</param>
public sealed record VentSpot(int Number, string Key, Side Side, double Middle)
{
    /// <summary>Along its side, m.</summary>
    public required double Length { get; init; }

    /// <summary>Across, m.</summary>
    public required double Width { get; init; }

    /// <summary>Its middle over the base, m; the inside height for one in the top.</summary>
    public required double Height { get; init; }

    /// <summary>Its middle behind the front, m, of one in the top.</summary>
    public double Behind { get; init; }

    /// <summary>True for a round one.</summary>
    public bool IsRound { get; init; }

    /// <summary>True where the program placed it.</summary>
    public bool IsPlaced { get; init; }

    /// <summary>All vents of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<VentSpot> Of(CheckedDesign design, BoxGeometry box)
    {
        if (design.Design.Vents.Count == 0)
        {
            return [];
        }

        var lid = LidPlan.Of(design, box);
        return [.. VentShape.Of(design, box).Select(v => One(v, box, lid))];
    }

    private static VentSpot One(VentShape vent, BoxGeometry box, OpeningPlan? lid) =>
        new(vent.Index + 1, vent.Path, vent.Side, vent.Along.Si)
        {
            Length = vent.Length.Si,
            Width = vent.Width.Si,
            Height = vent.Side == Side.Top ? box.InsideHeight.Si : vent.Across!.Si,
            Behind = vent.Side == Side.Top ? PlaceBehind(vent, box, lid) : 0,
            IsRound = vent.IsRound,
            IsPlaced = vent.IsPlaced,
        };

    /// <summary>Where its strip or pane has it; near the back where it fits nowhere.</summary>
    private static double PlaceBehind(VentShape vent, BoxGeometry box, OpeningPlan? lid)
    {
        var rim = (box.InsideDepth.Si - box.OpeningDepth.Si) / 2;
        var laid = lid?.Cells.SelectMany(c => c.Openings).FirstOrDefault(o => o.Vent.Index == vent.Index);
        return laid is not null
            ? rim + laid.Low.Si + (laid.Width.Si / 2)
            : vent.Across?.Si ?? box.InsideDepth.Si - rim - OpeningPolicy.Sliver.Si - (vent.Width.Si / 2);
    }
}
