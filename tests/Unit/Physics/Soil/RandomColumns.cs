using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Litterfall.Physics.Soil;
using Litterfall.UnitTests.Domain;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>A column with everything a run needs.</summary>
internal sealed record ColumnCase(
    SoilColumns Columns,
    ColumnBoundaries Boundaries,
    ColumnState Start,
    ImmutableArray<ForcingSpan> Spans,
    StepControl Control
)
{
    public ColumnResult Run(CancellationToken cancel = default) =>
        Richards.Run(Columns, Boundaries, Start, Spans, Control, cancel);

    /// <summary>All that is needed to build it again.</summary>
    public override string ToString()
    {
        var zones = Columns.Profiles.Select(p =>
            $"share {Round(p.AreaShare)} roots {p.Roots} layers "
            + string.Join("; ", p.Layers.Select(l => $"{Name(l.Curve)} × [{List(l.ElementMeters)}]"))
        );
        return $"{string.Join("\n", zones)}\n{Boundaries}\nstart {List(Start.HeadMeters)}\n"
            + $"spans {string.Join("; ", Spans)}\n{Control}";
    }

    private static string Name(HydraulicCurve curve) =>
        curve is VanGenuchten v
            ? $"{v.Parameters} modes {string.Join(", ", v.Parameters.Modes)}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"exponential θ {curve.ResidualWaterContent} to {curve.SaturatedWaterContent} Ks "
                    + $"{curve.SaturatedConductivityMetersPerSecond} C(0) {curve.CapacityPerMeter(-1e-12)}"
            );

    private static string List(IEnumerable<double> values) => string.Join(", ", values.Select(Round));

    private static string Round(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}

/// <summary>
/// Random columns: layers of fine and coarse, one and two pore systems, air entries, negative l, thin layers;
/// one to three zones; all surfaces and feet; starts from bone dry to under water; rain up to 50 cm/h.
/// One curve in seven is exponential, which runs out of water altogether.
/// </summary>
internal static class RandomColumns
{
    private const double CentimeterPerHour = 0.01 / 3600.0;

    private static Gen<double> Decades(double from, double to) =>
        Gen.Double[Math.Log10(from), Math.Log10(to)].Select(x => Math.Pow(10.0, x));

    private static readonly Gen<(double R, double S)> Theta = Gen.Select(
        Gen.Double[0.0, 0.25],
        Gen.Double[0.05, 0.95],
        (r, span) => (r, Math.Min(1.0, r + span))
    );

    private static readonly Gen<(double Alpha, double N)> Mode = Gen.Select(
        Decades(0.2, 2000.0),
        Gen.OneOf(Gen.Double[1.05, 1.6], Gen.Double[1.3, 4.0], Gen.Double[2.0, 8.0])
    );

    private static readonly Gen<double> Ks = Decades(1e-3 * CentimeterPerHour, 36000.0 * CentimeterPerHour);

    private static readonly Gen<double> AirEntry = Gen.OneOf(
        Gen.Const(0.0),
        Gen.Const(0.0),
        Gen.Double[0.002, 0.05]
    );

    private static readonly Gen<HydraulicCurve> Single = Gen.Select(
            Theta,
            Mode,
            Ks,
            Gen.OneOf(Gen.Const(0.5), Gen.Double[-5.0, 4.0]),
            AirEntry,
            (theta, mode, ks, l, entry) => Parameters(theta, [new(1.0, mode.Alpha, mode.N)], ks, l, entry)
        )
        .Where(p => p.Fault() is null)
        .Select(HydraulicCurve (p) => new VanGenuchten(p));

    private static readonly Gen<HydraulicCurve> Double = Gen.Select(
            Theta,
            Gen.Select(Mode, Mode, Gen.Double[0.05, 0.95]),
            Ks,
            Gen.OneOf(Gen.Const(0.5), Gen.Double[-2.0, 2.0]),
            AirEntry,
            (theta, modes, ks, l, entry) =>
                Parameters(
                    theta,
                    [
                        new(modes.Item3, modes.Item1.Alpha, modes.Item1.N),
                        new(1.0 - modes.Item3, modes.Item2.Alpha, modes.Item2.N),
                    ],
                    ks,
                    l,
                    entry
                )
        )
        .Where(p => p.Fault() is null)
        .Select(HydraulicCurve (p) => new VanGenuchten(p));

    private static readonly Gen<HydraulicCurve> Exponential = Gen.Select(
        Theta,
        Decades(0.2, 200.0),
        Ks,
        HydraulicCurve (theta, alpha, ks) => new Gardner(theta.R, theta.S, alpha, ks)
    );

    private static readonly Gen<HydraulicCurve> Curve = Gen.Frequency(
        (3, Single),
        (3, Double),
        (1, Exponential)
    );

    /// <summary>
    /// Published rows, cm and h turned into m and s: living moss, matrix-free gravel, Sphagnum peat of two
    /// densities, sand, loam and clay of Vanderborght and others (2005), the soil of Celia and others (1990);
    /// and two of our own: a bark of two pore systems, an aggregate with an air entry.
    /// </summary>
    private static readonly Gen<HydraulicCurve> Published = Pick.From<HydraulicCurve>(
        Row((0.176, 0.679), 38.1, 1.781, 122.4, -2.1),
        Row((0.02, 0.36), 111.6, 2.7, 3600.0),
        Row((0.0, 0.93), 139.3, 1.32, 576.0, -4.4),
        Row((0.0, 0.93), 16.3, 1.25, 719.0, -1.79),
        Row((0.045, 0.43), 15.0, 3.0, 1000.0 / 24.0),
        Row((0.08, 0.43), 4.0, 1.6, 50.0 / 24.0),
        Row((0.1, 0.4), 1.0, 1.1, 10.0 / 24.0),
        Row((0.102, 0.368), 3.35, 2.0, 33.2),
        new VanGenuchten(
            Parameters((0.08, 0.78), [new(0.77, 126.0, 2.8), new(0.23, 2.31, 1.2)], 0.01, 0.5, 0.0)
        ),
        new VanGenuchten(Parameters((0.05, 0.45), [new(1.0, 500.0, 3.0)], 0.1, 0.5, 0.001))
    );

    private static readonly Gen<RootZone> Roots = Gen.Select(
        Gen.Double[0.0, 0.05],
        Gen.Double[0.005, 0.10],
        Gen.Bool,
        (from, deep, isThirsty) =>
            new RootZone(
                from,
                from + deep,
                isThirsty ? new(-0.01, -0.05, -3.0, -80.0) : new(-0.01, -0.02, -5.0, -150.0)
            )
    );

    /// <summary>Numbers of elements of the layers; all zones share them.</summary>
    private static readonly Gen<int[]> Cuts = Gen.Int[1, 10].Array[1, 5];

    private static readonly Gen<TopBoundary> Air = Gen.Select(
        Decades(1.0, 10_000.0),
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0.0, 0.10]),
        TopBoundary (driest, pond) => new TopBoundary.Air(-driest, pond)
    );

    private static readonly Gen<TopBoundary> OtherTop = Gen.OneOf(
        Decades(1e-3, 1e3).Select(TopBoundary (s) => new TopBoundary.FixedHead(-s)),
        Gen.Double[0.0, 0.05].Select(TopBoundary (h) => new TopBoundary.FixedHead(h)),
        Gen.Const((TopBoundary)new TopBoundary.FixedFlux())
    );

    private static readonly Gen<LowerBoundary> Foot = Gen.OneOf(
        Gen.Double[-2.0, 0.3].Select(LowerBoundary (h) => new LowerBoundary.FixedHead(h)),
        Gen.Const((LowerBoundary)new LowerBoundary.Closed()),
        Gen.Select(
            Gen.Double[0.0, 0.08],
            Decades(1e-4, 1.0),
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0.0, 0.5]),
            LowerBoundary (level, rate, sump) => new LowerBoundary.Closed(level, rate, sump)
        ),
        Gen.Const((LowerBoundary)new LowerBoundary.FreeDrainage()),
        Gen.Const((LowerBoundary)new LowerBoundary.SeepageFace()),
        Gen.Select(Gen.Double[0.0, 0.1], Gen.Double[0.1, 1.0], LowerBoundary (depth, porosity) =>
            new LowerBoundary.Store(depth, porosity)
        )
    );

    private static readonly Gen<SurfaceForcing> Forcing = Gen.Select(
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0.0, 3.0], Gen.Double[0.0, 50.0]),
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0.0, 0.02], Gen.Double[0.0, 0.5]),
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0.0, 0.05]),
        (rain, evaporation, transpiration) =>
            new SurfaceForcing(
                rain * CentimeterPerHour,
                evaporation * CentimeterPerHour,
                transpiration * CentimeterPerHour
            )
    );

    private static readonly Gen<ImmutableArray<ForcingSpan>> Spans = Gen.Select(
            Decades(60.0, 2.0 * 86400.0),
            Forcing,
            (seconds, forcing) => (seconds, forcing)
        )
        .Array[1, 5]
        .Select(parts =>
        {
            double time = 0.0;
            return parts
                .Select(p => new ForcingSpan(time += p.seconds, p.forcing, Report: true))
                .ToImmutableArray();
        });

    private static readonly Gen<StepControl> Control = Pick.From(new StepControl(), StepControl.Planning);

    /// <summary>Columns under open air.</summary>
    public static readonly Gen<ColumnCase> Open = Of(Air, Curve);

    /// <summary>Columns of published soils under open air.</summary>
    public static readonly Gen<ColumnCase> OfPublishedSoils = Of(Air, Published);

    /// <summary>Columns with given heads or fluxes at the surface, which may have no solution.</summary>
    public static readonly Gen<ColumnCase> Held = Of(OtherTop, Curve);

    private static Gen<ColumnCase> Of(Gen<TopBoundary> tops, Gen<HydraulicCurve> curves) =>
        from cuts in Cuts
        from count in Gen.Int[1, 3]
        from shares in Gen.Double[0.1, 1.0].Array[count]
        from zones in Zone(cuts, curves).Array[count]
        from isUpright in Gen.Int[0, 9].Select(i => i > 0)
        let columns = new SoilColumns(
            [.. zones.Select((z, i) => z with { AreaShare = shares[i] / shares.Sum() })],
            isUpright
        )
        from start in Start(columns)
        from boundaries in Gen.Select(tops, Foot, (top, foot) => new ColumnBoundaries(top, foot))
        from spans in Spans
        from control in Control
        select new ColumnCase(columns, boundaries, start, spans, control);

    private static Gen<SoilProfile> Zone(int[] cuts, Gen<HydraulicCurve> curves) =>
        Gen.Select(
            Gen.Select(curves, Decades(0.001, 0.15), (curve, thickness) => (curve, thickness)).Array[
                cuts.Length
            ],
            Pick.Perhaps(Roots),
            (layers, roots) =>
                new SoilProfile(
                    [.. layers.Select((l, i) => ColumnLayer.Even(l.curve, l.thickness, cuts[i]))],
                    roots
                )
        );

    private static Gen<ColumnState> Start(SoilColumns columns) =>
        Gen.OneOf(
            Decades(1e-3, 1e4).Select(suction => columns.From((_, _) => -suction)),
            Gen.Double[-3.0, 0.5].Select(columns.AtRest),
            Gen.Double[0.0, 0.05].Select(pond => columns.From((_, depth) => pond + depth)),
            Decades(1e-3, 1e3)
                .Array[columns.Nodes * columns.Zones]
                .Select(s =>
                {
                    int i = 0;
                    return columns.From((_, _) => -s[i++]);
                })
        );

    private static VanGenuchten Row(
        (double R, double S) theta,
        double alpha,
        double n,
        double ksCentimetersPerHour,
        double l = 0.5
    ) => VanGenuchten.Single(theta, alpha, n, ksCentimetersPerHour * CentimeterPerHour, l);

    private static VanGenuchtenParameters Parameters(
        (double R, double S) theta,
        ImmutableArray<PoreMode> modes,
        double ks,
        double l,
        double entry
    ) =>
        new()
        {
            ThetaR = theta.R,
            ThetaS = theta.S,
            Modes = modes,
            KsMetersPerSecond = ks,
            L = l,
            AirEntryMeters = entry,
        };
}
