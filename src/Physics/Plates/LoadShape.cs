namespace Litterfall.Physics.Plates;

/// <summary>A piecewise linear load as a line through y = 0 plus steps in value and in slope.</summary>
internal readonly struct LoadShape
{
    private LoadShape(double startPascals, double startSlope, LoadStep[] steps)
    {
        StartPascals = startPascals;
        StartSlope = startSlope;
        Steps = steps;
    }

    /// <summary>Pressure just above the bottom edge, Pa.</summary>
    public double StartPascals { get; }

    /// <summary>Slope just above the bottom edge, Pa/m.</summary>
    public double StartSlope { get; }

    /// <summary>Changes inside the pane.</summary>
    public LoadStep[] Steps { get; }

    public static LoadShape From(ReadOnlySpan<PressureKnot> load, double heightMeters)
    {
        ThrowIfImpossible(load, heightMeters);
        var steps = new List<LoadStep>(load.Length);
        double startValue = 0.0,
            startSlope = 0.0,
            slopeBefore = 0.0;
        int first = 0;
        while (first < load.Length)
        {
            int last = LastAtSameHeight(load, first);
            bool ends = last == load.Length - 1;
            double before = first == 0 ? 0.0 : load[first].Pascals;
            double after = ends ? 0.0 : load[last].Pascals;
            double slopeAfter = ends
                ? 0.0
                : (load[last + 1].Pascals - after) / (load[last + 1].YMeters - load[last].YMeters);
            if (load[first].YMeters <= 0.0)
            {
                startValue = after;
                startSlope = slopeAfter;
            }
            else if (load[first].YMeters < heightMeters)
            {
                steps.Add(new LoadStep(load[first].YMeters, after - before, slopeAfter - slopeBefore));
            }

            slopeBefore = slopeAfter;
            first = last + 1;
        }

        return new LoadShape(startValue, startSlope, [.. steps]);
    }

    private static int LastAtSameHeight(ReadOnlySpan<PressureKnot> load, int first)
    {
        int last = first;
        while (last + 1 < load.Length && load[last + 1].YMeters <= load[first].YMeters)
        {
            last++;
        }

        return last;
    }

    private static void ThrowIfImpossible(ReadOnlySpan<PressureKnot> load, double heightMeters)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(load.Length, 2, nameof(load));
        double previous = 0.0;
        foreach (PressureKnot knot in load)
        {
            if (!(knot.YMeters >= previous && knot.YMeters <= heightMeters) || !double.IsFinite(knot.Pascals))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(load),
                    knot,
                    "Knots must rise from the bottom edge to at most the top edge."
                );
            }

            previous = knot.YMeters;
        }
    }
}

/// <summary>A change of the load at one height.</summary>
internal readonly record struct LoadStep(double YMeters, double Jump, double SlopeChange);
