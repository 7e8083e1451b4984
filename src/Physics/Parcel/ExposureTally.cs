namespace Litterfall.Physics.Parcel;

/// <summary>Extremes of a run and the time on either side of temperatures.</summary>
internal ref struct ExposureTally
{
    private readonly Span<LevelExposure> levels;

    public ExposureTally(double celsius, Span<LevelExposure> levels)
    {
        this.levels = levels;
        Coldest = (celsius, 0.0);
        Warmest = (celsius, 0.0);
    }

    /// <summary>Gets the coldest and when.</summary>
    public (double Celsius, double Seconds) Coldest { get; private set; }

    /// <summary>Gets the warmest and when.</summary>
    public (double Celsius, double Seconds) Warmest { get; private set; }

    /// <summary>Adds a stretch on which the temperature only rises, only falls or stands.</summary>
    /// <param name="step">The lump on it.</param>
    /// <param name="start">When it starts, s.</param>
    /// <param name="seconds">How long it is, s.</param>
    /// <param name="from">Temperature at its start, °C.</param>
    /// <param name="to">And at its end, °C.</param>
    public void Add(in LumpStep step, double start, double seconds, double from, double to)
    {
        if (to < Coldest.Celsius)
        {
            Coldest = (to, start + seconds);
        }

        if (to > Warmest.Celsius)
        {
            Warmest = (to, start + seconds);
        }

        foreach (ref var level in levels)
        {
            double before = from - level.Celsius;
            double after = to - level.Celsius;
            // Where it is crossed; a stretch on one side of it counts whole.
            double crossed =
                before == 0.0 ? 0.0
                : before * after < 0.0 ? step.Reach(-before, seconds)
                : seconds;
            Count(ref level, before, start, crossed);
            Count(ref level, after, start + crossed, seconds - crossed);
        }
    }

    private static void Count(ref LevelExposure level, double over, double start, double seconds)
    {
        if (seconds <= 0.0)
        {
            return;
        }

        if (over > 0.0)
        {
            level.SecondsAbove += seconds;
            level.FirstAbove = Math.Min(level.FirstAbove, start);
        }
        else if (over < 0.0)
        {
            level.SecondsBelow += seconds;
            level.FirstBelow = Math.Min(level.FirstBelow, start);
        }
    }
}
