namespace Litterfall.Physics.Parcel;

/// <summary>One run along a drive.</summary>
/// <remarks>
/// Between two bends of the drive the net heat changes its sign once at most: the state moves one way, turns
/// at most once, and passes each melting point once each way.
/// </remarks>
internal ref struct ParcelWalk
{
    private readonly ParcelModel model;
    private readonly ParcelDrive drive;
    private readonly ParcelReport report;
    private CurveCursor ambient;
    private CurveCursor heat;
    private PhaseState state;
    private ExposureTally tally;
    private double now;
    private double wall;
    private double added;
    private double turnover;
    private int rows;

    public ParcelWalk(ParcelModel model, in ParcelDrive drive, in ParcelReport report, Span<double> liquid)
    {
        this.model = model;
        this.drive = drive;
        this.report = report;
        ambient = new CurveCursor(drive.AmbientSeconds, drive.AmbientCelsius);
        heat = new CurveCursor(drive.HeatSeconds, drive.HeatWatts);
        state = new PhaseState(model, drive.StartCelsius, drive.LatentFactor, liquid);
    }

    /// <summary>Runs to the end.</summary>
    public ParcelOutcome Run()
    {
        bool isSettled = state.Settle();
        double start = state.Celsius;
        double latent = state.LatentJoules();
        tally = new ExposureTally(start, report.Levels);
        Write();
        while (now < drive.EndSeconds)
        {
            var air = ambient.MoveTo(now);
            var power = heat.MoveTo(now);
            double bend = Math.Min(ambient.NextSeconds, heat.NextSeconds);
            double row = NextRow();
            Cross(
                Math.Min(Math.Min(bend, row), drive.EndSeconds),
                air,
                (power.Value + drive.SteadyWatts, power.Slope)
            );
            if (now >= row)
            {
                Write();
            }
        }

        return new ParcelOutcome
        {
            StartCelsius = start,
            IsSettled = isSettled,
            EndCelsius = state.Celsius,
            ColdestCelsius = tally.Coldest.Celsius,
            ColdestSeconds = tally.Coldest.Seconds,
            WarmestCelsius = tally.Warmest.Celsius,
            WarmestSeconds = tally.Warmest.Seconds,
            WallJoules = wall,
            HeatJoules = added,
            StoredJoules = model.HeatCapacity * (state.Celsius - start),
            LatentJoules = state.LatentJoules() - latent,
            TurnoverJoules = turnover,
        };
    }

    /// <summary>Takes the state over one piece on which air and power are straight lines.</summary>
    private void Cross(double end, (double Value, double Slope) air, (double Value, double Slope) power)
    {
        double start = now;
        double slope = (drive.Conductance * air.Slope) + power.Slope;
        double first = (drive.Conductance * (air.Value - state.Celsius)) + power.Value;
        int direction = first != 0.0 ? Math.Sign(first) : Math.Sign(slope);
        bool mayTurn = first * slope < 0.0;
        while (now < end)
        {
            double passed = now - start;
            double colder = air.Value + (air.Slope * passed) - state.Celsius;
            double watts = power.Value + (power.Slope * passed);
            var step = new LumpStep(
                model.HeatCapacity,
                drive.Conductance,
                (drive.Conductance * colder) + watts,
                slope
            );
            double turn =
                !mayTurn ? double.PositiveInfinity
                : state.IsMelting ? -step.Power / slope
                : step.Turn();
            bool isTurning = turn < end - now;
            double most = isTurning ? Math.Max(turn, 0.0) : end - now;
            double used = Advance(step, most, direction, (colder, air.Slope, watts, power.Slope));
            now = used < most || isTurning ? Math.Min(now + used, end) : end;
            if (used == most && isTurning)
            {
                // From here on it goes the way of the slope; what rounding left of the power says nothing.
                mayTurn = false;
                direction = Math.Sign(slope);
            }
        }
    }

    /// <summary>Takes the state as far as it moves in one way, and books the heat.</summary>
    private double Advance(
        in LumpStep step,
        double most,
        int direction,
        (double Colder, double AirSlope, double Watts, double WattsSlope) drift
    )
    {
        double before = state.Celsius;
        bool isMelting = state.IsMelting;
        double used = isMelting ? state.Melt(step, most, direction) : state.Warm(step, most, direction);
        tally.Add(step, now, used, before, state.Celsius);
        double outside = used * (drift.Colder + (0.5 * drift.AirSlope * used));
        double own = used * (drift.Watts + (0.5 * drift.WattsSlope * used));
        double through = isMelting ? drive.Conductance * outside : step.Through(used, outside, own);
        wall += through;
        added += own;
        turnover += Math.Abs(through) + Math.Abs(own);
        return used;
    }

    private readonly double NextRow() =>
        report.EverySeconds > 0.0 ? Math.Min(rows * report.EverySeconds, drive.EndSeconds) : drive.EndSeconds;

    private void Write()
    {
        int row = rows++;
        if (row < report.Celsius.Length)
        {
            report.Celsius[row] = state.Celsius;
        }

        int packs = state.Liquid.Length;
        if ((row + 1) * packs <= report.PackLiquid.Length)
        {
            state.Liquid.CopyTo(report.PackLiquid.Slice(row * packs, packs));
        }

        if (row < report.Liquid.Length)
        {
            report.Liquid[row] = state.LiquidShare();
        }
    }
}
