namespace Litterfall.Workshop.Pricing;

/// <summary>
/// What past shipments say of the chance of loss: the exact interval (Clopper and Pearson 1934) and the mean
/// of a Beta prior with what was seen added.
/// </summary>
/// <param name="Lost">Shipments lost.</param>
/// <param name="Shipped">Shipments sent, at least one.</param>
/// <param name="PriorLost">Shipments lost that the prior counts for; one in twenty by own choice.</param>
/// <param name="PriorKept">Shipments arrived that the prior counts for.</param>
public sealed record LossRate(int Lost, int Shipped, double PriorLost = 1.0, double PriorKept = 19.0)
{
    private const double Tail = 0.025;

    /// <summary>Lost of shipped.</summary>
    public double Seen => (double)Lost / Shipped;

    /// <summary>Lower end of the exact 95 % interval.</summary>
    public double Low => Lost == 0 ? 0.0 : BetaFunctions.Quantile(Tail, Lost, Shipped - Lost + 1);

    /// <summary>Upper end of the exact 95 % interval.</summary>
    public double High =>
        Lost == Shipped ? 1.0 : BetaFunctions.Quantile(1.0 - Tail, Lost + 1, Shipped - Lost);

    /// <summary>Mean of the posterior: the rate to compute with.</summary>
    public double Mean => (PriorLost + Lost) / (PriorLost + PriorKept + Shipped);

    /// <summary>The rate that is not exceeded with 95 % certainty.</summary>
    public double P95 => BetaFunctions.Quantile(0.95, PriorLost + Lost, PriorKept + Shipped - Lost);
}

/// <summary>Losses among the next shipments at a known chance: a binomial distribution.</summary>
/// <param name="Shipments">Shipments to come.</param>
/// <param name="Chance">Chance of each to be lost, 0 to 1.</param>
public sealed record LossFund(int Shipments, double Chance)
{
    /// <summary>Mean number lost.</summary>
    public double Mean => Shipments * Chance;

    /// <summary>Chance of at most so many losses.</summary>
    /// <param name="losses">Losses.</param>
    public double AtMost(int losses) =>
        losses >= Shipments ? 1.0
        : losses < 0 ? 0.0
        : BetaFunctions.Below(1.0 - Chance, Shipments - losses, losses + 1.0);

    /// <summary>The least number of losses that is not exceeded with a certainty.</summary>
    /// <param name="certainty">The certainty, 0 to 1.</param>
    public int Quantile(double certainty)
    {
        var (low, high) = (0, Shipments);
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = AtMost(middle) >= certainty ? (low, middle) : (middle + 1, high);
        }

        return low;
    }
}
