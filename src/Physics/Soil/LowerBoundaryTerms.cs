namespace Litterfall.Physics.Soil;

/// <summary>The foot that all zones share: what leaves there, and free water beside the columns.</summary>
internal readonly struct LowerBoundaryTerms
{
    private const double SeepagePerGradient = 1e3;
    private readonly LowerBoundary boundary;
    private readonly double seepage;

    public LowerBoundaryTerms(LowerBoundary boundary, SoilColumns columns)
    {
        this.boundary = boundary;
        FixedHead = boundary is LowerBoundary.FixedHead fixedHead ? fixedHead.HeadMeters : null;
        SumpShare = boundary is LowerBoundary.Closed closed ? closed.SumpShare : 0.0;
        int last = (columns.Nodes - 2) * columns.Zones;
        seepage =
            SeepagePerGradient
            * columns.Tables[columns.ElementTable[last]].Curve.SaturatedConductivityMetersPerSecond
            / columns.ElementMeters[last];
        DrainsFreely = boundary is LowerBoundary.FreeDrainage && columns.HasGravity;
    }

    public double? FixedHead { get; }

    public double SumpShare { get; }

    public bool DrainsFreely { get; }

    public bool HasStore => boundary is LowerBoundary.Store;

    /// <summary>What leaves in a step, m, at a head of the foot; free drainage is not in it.</summary>
    /// <param name="head">Head of the foot, m.</param>
    /// <param name="seconds">Length of the step, s.</param>
    /// <param name="storeMeters">What the store holds already, m.</param>
    public Term Out(double head, double seconds, double storeMeters)
    {
        switch (boundary)
        {
            case LowerBoundary.Closed closed when head > closed.OverflowHeadMeters:
                double rate = seconds * closed.OverflowPerSecond;
                return new(rate * (head - closed.OverflowHeadMeters), rate);
            case LowerBoundary.SeepageFace when head > 0.0:
                return new(seconds * seepage * head, seconds * seepage);
            case LowerBoundary.Store store when head > 0.0:
                double room = Math.Max(0.0, store.RoomMeters - storeMeters);
                double out1 = seconds * seepage * head;
                return out1 < room ? new(out1, seconds * seepage) : new(room, 0.0);
            default:
                return default;
        }
    }
}
