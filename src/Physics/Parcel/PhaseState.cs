namespace Litterfall.Physics.Parcel;

/// <summary>Contents and packs at one moment: a temperature, and how far each pack is melted.</summary>
/// <remarks>
/// Packs and contents have one temperature, so all packs of lower melting points are liquid, all of higher
/// ones frozen, and those of one melting point at most are between. Packs of the same melting point melt in
/// step: each takes of a heat in the proportion of what it has left.
/// </remarks>
internal ref struct PhaseState
{
    private readonly ParcelModel model;
    private readonly double factor;
    private readonly Span<double> liquid;

    /// <summary>Melting points below the state: all packs of these are liquid.</summary>
    private int melted;

    /// <summary>Heat that the packs between frozen and liquid have taken up since frozen, J.</summary>
    private double taken;

    public PhaseState(ParcelModel model, double celsius, double factor, Span<double> liquid)
    {
        this.model = model;
        this.factor = factor;
        this.liquid = liquid;
        Celsius = celsius;
    }

    /// <summary>Gets the temperature, °C.</summary>
    public double Celsius { get; private set; }

    /// <summary>Gets whether packs are between frozen and liquid, so that the temperature stands.</summary>
    public bool IsMelting { get; private set; }

    /// <summary>Gets the liquid share of each pack.</summary>
    public readonly ReadOnlySpan<double> Liquid => liquid;

    /// <summary>Heat that melting has taken up since all was frozen, J.</summary>
    public readonly double LatentJoules()
    {
        double sum = IsMelting ? taken : 0.0;
        for (int group = 0; group < melted; group++)
        {
            sum += Capacity(group);
        }

        return sum;
    }

    /// <summary>Liquid share of all latent heat; 1 where there is none.</summary>
    public readonly double LiquidShare()
    {
        double all = 0.0;
        for (int group = 0; group < model.LatentJoules.Length; group++)
        {
            all += Capacity(group);
        }

        return all > 0.0 ? LatentJoules() / all : 1.0;
    }

    /// <summary>Brings packs and contents to one temperature without loss of heat.</summary>
    /// <returns>Whether they were not.</returns>
    public bool Settle()
    {
        Span<double> held = stackalloc double[ParcelModel.MostPacks];
        held.Clear();
        var packs = model.Packs;
        for (int i = 0; i < packs.Length; i++)
        {
            liquid[i] = packs[i].StartLiquid;
            held[model.GroupOfPack[i]] += packs[i].LatentJoules * packs[i].StartLiquid * factor;
        }

        double surplus = Sort(held);
        GiveAway(surplus);
        for (int group = 0; group < model.MeltCelsius.Length; group++)
        {
            double then =
                group < melted ? Capacity(group)
                : group == melted && IsMelting ? taken
                : 0.0;
            Spread(group, held[group], then);
        }

        return surplus != 0.0;
    }

    /// <summary>Warms or cools, at most up to the next melting point.</summary>
    /// <param name="step">The lump.</param>
    /// <param name="most">Seconds on which its temperature only rises or only falls.</param>
    /// <param name="direction">1 rising, −1 falling, 0 standing.</param>
    /// <returns>Seconds used.</returns>
    public double Warm(in LumpStep step, double most, int direction)
    {
        double then = Celsius + step.Rise(most);
        double melt = direction == 0 ? double.NaN : NextMelt(direction > 0);
        if (!(direction * (then - melt) >= 0.0))
        {
            Celsius = then;
            return most;
        }

        double rise = melt - Celsius;
        double used = rise == 0.0 ? 0.0 : step.Reach(rise, most);
        EnterMelting(direction > 0);
        return used;
    }

    /// <summary>Melts or freezes, at most until nothing is left to.</summary>
    /// <param name="step">The lump; its power is all taken by the packs.</param>
    /// <param name="most">Seconds on which they only melt or only freeze.</param>
    /// <param name="direction">1 melting, −1 freezing, 0 standing.</param>
    /// <returns>Seconds used.</returns>
    public double Melt(in LumpStep step, double most, int direction)
    {
        double before = taken;
        double room = direction > 0 ? Capacity(melted) - taken : -taken;
        double joules = most * (step.Power + (0.5 * step.PowerSlope * most));
        if (direction == 0 || direction * (joules - room) < 0.0)
        {
            taken = Math.Clamp(taken + joules, 0.0, Capacity(melted));
            Spread(melted, before, taken);
            return most;
        }

        // The smaller root of room = P s + P' s²/2, in the form that does not cancel.
        double root = Math.Sqrt(Math.Max((step.Power * step.Power) + (2.0 * step.PowerSlope * room), 0.0));
        double used = room == 0.0 ? 0.0 : 2.0 * room / (step.Power + (direction * root));
        Spread(melted, before, direction > 0 ? Capacity(melted) : 0.0);
        LeaveMelting(direction > 0);
        return Math.Clamp(used, 0.0, most);
    }

    private readonly double Capacity(int group) => model.LatentJoules[group] * factor;

    /// <summary>Finds the place among the melting points.</summary>
    /// <returns>What packs on the wrong side of theirs give to the contents less what they want, J.</returns>
    private double Sort(scoped ReadOnlySpan<double> held)
    {
        double surplus = 0.0;
        for (int group = 0; group < held.Length && group < model.MeltCelsius.Length; group++)
        {
            double full = Capacity(group);
            double melt = model.MeltCelsius[group];
            if (melt == Celsius && held[group] < full)
            {
                IsMelting = true;
                taken = held[group];
            }
            else if (melt <= Celsius)
            {
                melted++;
                surplus -= full - held[group];
            }
            else
            {
                surplus += held[group];
            }
        }

        return surplus;
    }

    /// <summary>Heats or cools what is inside, through melting points on its way.</summary>
    private void GiveAway(double joules)
    {
        while (joules != 0.0)
        {
            bool isUp = joules > 0.0;
            double room =
                !IsMelting ? model.HeatCapacity * (NextMelt(isUp) - Celsius)
                : isUp ? Capacity(melted) - taken
                : -taken;
            if (Math.Abs(joules) < Math.Abs(room))
            {
                taken += IsMelting ? joules : 0.0;
                Celsius += IsMelting ? 0.0 : joules / model.HeatCapacity;
                return;
            }

            joules -= room;
            if (IsMelting)
            {
                LeaveMelting(isUp);
            }
            else
            {
                EnterMelting(isUp);
            }
        }
    }

    private readonly double NextMelt(bool isUp)
    {
        var melts = model.MeltCelsius;
        return isUp
            ? melted < melts.Length
                ? melts[melted]
                : double.PositiveInfinity
            : melted > 0
                ? melts[melted - 1]
                : double.NegativeInfinity;
    }

    private void EnterMelting(bool isUp)
    {
        melted -= isUp ? 0 : 1;
        IsMelting = true;
        Celsius = model.MeltCelsius[melted];
        taken = isUp ? 0.0 : Capacity(melted);
    }

    private void LeaveMelting(bool isUp)
    {
        IsMelting = false;
        melted += isUp ? 1 : 0;
    }

    /// <summary>Hands a change of heat to the packs of a melting point.</summary>
    private readonly void Spread(int group, double before, double after)
    {
        if (before == after)
        {
            return;
        }

        double full = Capacity(group);
        bool isUp = after > before;
        double left = isUp ? (full - after) / (full - before) : after / before;
        for (int i = 0; i < liquid.Length; i++)
        {
            if (model.GroupOfPack[i] == group)
            {
                liquid[i] = isUp ? 1.0 - ((1.0 - liquid[i]) * left) : liquid[i] * left;
            }
        }
    }
}
