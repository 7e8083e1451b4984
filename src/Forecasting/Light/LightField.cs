using System.Collections.Immutable;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Light;

/// <summary>All lamps of a design in their box: lux, photons and sums of a day at any place.</summary>
internal sealed class LightField
{
    private readonly LightBox box;
    private readonly ImmutableArray<LampSource> lamps;
    private readonly LightModel model;
    private readonly ImmutableArray<(LampSource Lamp, LitLamp Lit)> lit;

    /// <summary>The lamps of a design, lit.</summary>
    /// <param name="box">The box.</param>
    /// <param name="lamps">The lamps.</param>
    /// <param name="cancel">Ends it, until <see cref="Keep"/>.</param>
    public LightField(LightBox box, ImmutableArray<LampSource> lamps, CancellationToken cancel = default)
    {
        this.box = box;
        this.lamps = lamps;
        model = new LightModel(box.Scene, LightDetail.Live, cancel);
        lit = [.. lamps.SelectMany(lamp => lamp.Luminaires.Select(part => (lamp, model.Light(part))))];
    }

    /// <summary>
    /// All lamps are lit and all maps drawn: what is asked from now on are places, and it is no part of the
    /// run that the field was made in.
    /// </summary>
    public void Keep()
    {
        model.Cancel = CancellationToken.None;
        model.Release();
    }

    /// <summary>Multiplies all light; 1 without a reading.</summary>
    public double Turned { get; set; } = 1.0;

    /// <summary>Light at a place.</summary>
    /// <param name="Lux">lx.</param>
    /// <param name="Micromoles">µmol/(m² s).</param>
    /// <param name="Daily">mol/(m² d).</param>
    internal readonly record struct Sums(double Lux, double Micromoles, double Daily)
    {
        public static Sums operator +(Sums a, Sums b) =>
            new(a.Lux + b.Lux, a.Micromoles + b.Micromoles, a.Daily + b.Daily);

        public static Sums operator *(double factor, Sums a) =>
            new(factor * a.Lux, factor * a.Micromoles, factor * a.Daily);
    }

    /// <summary>Light of all lamps at places, under leaves of choice.</summary>
    /// <param name="receivers">Places in the scene and where they face.</param>
    /// <param name="canopies">Leaves.</param>
    public Sums[] At(ReadOnlySpan<Receiver> receivers, ImmutableArray<Canopy> canopies)
    {
        var under = canopies.Equals(box.Scene.Canopies) ? model : model.Under(canopies);
        var sums = new Sums[receivers.Length];
        LitLamp[] parts = [.. lit.Select(one => one.Lit)];
        for (int i = 0; i < receivers.Length; i++)
        {
            double[] lux = under.At(receivers[i], parts);
            for (int k = 0; k < lux.Length; k++)
            {
                sums[i] += Of(lit[k].Lamp, lux[k]);
            }
        }

        return sums;
    }

    /// <summary>Level light of all lamps on cells.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="rises">Height of each over the lowest ground, m.</param>
    /// <param name="canopies">Leaves.</param>
    /// <param name="lampMeans">
    /// Takes the photons of each lamp on the mean, µmol/(m² s); null where not asked.
    /// </param>
    public Sums[] Map(
        MapGrid grid,
        double[] rises,
        ImmutableArray<Canopy> canopies,
        double[]? lampMeans = null
    )
    {
        var under = canopies.Equals(box.Scene.Canopies) ? model : model.Under(canopies);
        var sums = new Sums[grid.CellsX * grid.CellsY];
        foreach (var (lamp, part) in lit)
        {
            double[] cells = under.Map(grid, part, rises);
            for (int i = 0; i < cells.Length; i++)
            {
                var one = Of(lamp, cells[i]);
                sums[i] += one;
                if (lampMeans is not null)
                {
                    lampMeans[lamps.IndexOf(lamp)] += one.Micromoles / cells.Length;
                }
            }
        }

        return sums;
    }

    /// <summary>How many lamps.</summary>
    public int LampCount => lamps.Length;

    /// <summary>Level photons at places of the box, m inside it; 0 inside wood and stone.</summary>
    public ImmutableArray<double> Along(IEnumerable<(double X, double Y, double Z)> places)
    {
        var origin = box.Origin;
        var receivers = places
            .Select(p => new Receiver(new Point3(p.X - origin.X, p.Y - origin.Y, p.Z - origin.Z), Point3.Up))
            .ToArray();
        var sums = At(receivers, box.Scene.Canopies);
        return
        [
            .. sums.Select(
                (s, i) => box.Scene.Blocks.Any(b => b.Extent.Contains(receivers[i].At)) ? 0.0 : s.Micromoles
            ),
        ];
    }

    private Sums Of(LampSource lamp, double lux)
    {
        double micromoles = lux * lamp.Photons.Si * 1e6;
        return Turned * new Sums(lux, micromoles, DailyLight.Integral(micromoles, lamp.FullSeconds.Si));
    }

    /// <summary>What is known of the lamp that gives most light.</summary>
    public LampKnowledge Knowledge =>
        lamps.OrderByDescending(l => l.Lumens.Si).Select(l => l.Knowledge).FirstOrDefault();
}
