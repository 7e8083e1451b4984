namespace Litterfall.Physics.Soil;

/// <summary>What happens at the surface of a column.</summary>
public abstract record TopBoundary
{
    private TopBoundary() { }

    /// <summary>
    /// Open to the air: rain infiltrates, water ponds up to a depth and the rest runs off; evaporation runs
    /// at its demand until the surface is as dry as it may get, then at what the soil delivers. The switches
    /// are smooth over 5 % of the driest head and a millimeter of pond.
    /// </summary>
    /// <param name="DriestHeadMeters">Driest head of the surface, m, below 0.</param>
    /// <param name="LargestPondMeters">Depth of the pond before water runs off, m, 0 or more.</param>
    public sealed record Air(double DriestHeadMeters, double LargestPondMeters) : TopBoundary;

    /// <summary>A given pressure head; a jump of it counts as infiltrated.</summary>
    /// <param name="HeadMeters">Head, m.</param>
    public sealed record FixedHead(double HeadMeters) : TopBoundary;

    /// <summary>
    /// A given flux, the rain of the forcing, positive into the soil, without pond; it is not limited.
    /// </summary>
    public sealed record FixedFlux : TopBoundary;
}

/// <summary>What happens at the foot of a column.</summary>
public abstract record LowerBoundary
{
    private LowerBoundary() { }

    /// <summary>A given pressure head.</summary>
    /// <param name="HeadMeters">Head, m.</param>
    public sealed record FixedHead(double HeadMeters) : LowerBoundary;

    /// <summary>
    /// A closed floor, the reservoir being the saturated part of the column: water leaves only above
    /// <paramref name="OverflowHeadMeters"/>, at <paramref name="OverflowPerSecond"/> × the excess head.
    /// </summary>
    /// <param name="OverflowHeadMeters">Height of the outlet above the foot, m; infinite for none.</param>
    /// <param name="OverflowPerSecond">Conductance of the outlet, 1/s.</param>
    /// <param name="SumpShare">Free water beside the column per meter of level, m²/m².</param>
    public sealed record Closed(
        double OverflowHeadMeters = double.PositiveInfinity,
        double OverflowPerSecond = 0.0,
        double SumpShare = 0.0
    ) : LowerBoundary;

    /// <summary>Unit gradient: the flux is K of the lowest node.</summary>
    public sealed record FreeDrainage : LowerBoundary;

    /// <summary>Water leaves only where the foot is saturated.</summary>
    public sealed record SeepageFace : LowerBoundary;

    /// <summary>
    /// A store below the foot: a seepage face until the store is full, a closed floor from then on.
    /// </summary>
    /// <param name="DepthMeters">Depth of its water surface below the foot at the start, m.</param>
    /// <param name="Porosity">Water per meter of rise, m³/m³.</param>
    public sealed record Store(double DepthMeters, double Porosity) : LowerBoundary
    {
        /// <summary>Water it takes before it is full, m.</summary>
        public double RoomMeters => DepthMeters * Porosity;
    }
}

/// <summary>Both ends of a column.</summary>
public sealed record ColumnBoundaries(TopBoundary Top, LowerBoundary Foot);

/// <summary>What the weather above asks of the surface, m/s, each over the whole area.</summary>
/// <param name="RainMetersPerSecond">Rain, mist or drip; for a fixed flux, the flux.</param>
/// <param name="EvaporationMetersPerSecond">Demand of the air on the soil surface, 0 or more.</param>
/// <param name="TranspirationMetersPerSecond">Demand of the leaves on the roots, 0 or more.</param>
public readonly record struct SurfaceForcing(
    double RainMetersPerSecond,
    double EvaporationMetersPerSecond,
    double TranspirationMetersPerSecond
);

/// <summary>A forcing held until a time.</summary>
/// <param name="UntilSeconds">End of the span, s since the start of the run's clock.</param>
/// <param name="Forcing">What holds until then.</param>
/// <param name="Report">True when the state at its end is wanted.</param>
public readonly record struct ForcingSpan(double UntilSeconds, SurfaceForcing Forcing, bool Report = false);
