using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Quantities.Openings;

/// <summary>A band across an opening that a vent takes, in meters from the lower (front) edge.</summary>
/// <param name="Low">Its lower edge.</param>
/// <param name="High">Its upper edge.</param>
/// <param name="Vents">The vents in it.</param>
internal sealed record VentBand(Figure Low, Figure High, ImmutableArray<VentShape> Vents)
{
    /// <summary>Bands in order; those that touch or come nearer than a sliver are one.</summary>
    /// <param name="wanted">A band for each vent.</param>
    /// <param name="sliver">What is too narrow for a pane of its own.</param>
    public static ImmutableArray<VentBand> Joined(IEnumerable<VentBand> wanted, Figure sliver)
    {
        var done = new List<VentBand>();
        foreach (var band in wanted.OrderBy(b => b.Low.Si))
        {
            if (done.Count > 0 && band.Low.Si < done[^1].High.Si + sliver.Si)
            {
                var last = done[^1];
                done[^1] = new VentBand(
                    last.Low,
                    band.High.Si > last.High.Si ? band.High : last.High,
                    [.. last.Vents, .. band.Vents]
                );
            }
            else
            {
                done.Add(band);
            }
        }

        return [.. done];
    }

    /// <summary>
    /// Vents of a wall as bands of one height each; what overlaps another, or leaves a sliver of glass
    /// between, is left out.
    /// </summary>
    /// <param name="wanted">A band for each vent.</param>
    /// <param name="sliver">What is too low for a pane of its own.</param>
    /// <param name="left">Left edge of a vent, m.</param>
    public static ImmutableArray<VentBand> Level(
        IEnumerable<VentBand> wanted,
        Figure sliver,
        Func<VentShape, double> left
    )
    {
        var done = new List<VentBand>();
        foreach (var band in wanted.OrderBy(b => b.Low.Si))
        {
            var vent = band.Vents[0];
            if (done.Count == 0 || band.Low.Si >= done[^1].High.Si + sliver.Si)
            {
                done.Add(band);
            }
            else if (
                Math.Abs(band.Low.Si - done[^1].Low.Si) < 1e-6
                && Math.Abs(band.High.Si - done[^1].High.Si) < 1e-6
                && done[^1]
                    .Vents.All(o =>
                        left(o) + o.Length.Si <= left(vent) + 1e-9
                        || left(vent) + vent.Length.Si <= left(o) + 1e-9
                    )
            )
            {
                done[^1] = done[^1] with { Vents = [.. done[^1].Vents, vent] };
            }
        }

        return [.. done];
    }
}
