namespace Litterfall.Workshop.Stock;

/// <summary>
/// What is left of the money that was paid for a lot. Money leaves with the goods in proportion to what left
/// since the lot last grew, rounded to the cent as a running sum: what the issues cost and what is left
/// always add up to what was paid, and the last issue takes the rest.
/// </summary>
/// <param name="Amount">Amount on hand when it last grew, in the unit of the good.</param>
/// <param name="Paid">Money in it at that time.</param>
/// <param name="Out">Amount that left since.</param>
/// <param name="Charged">Money that left since.</param>
public readonly record struct LotCost(double Amount, decimal Paid, double Out, decimal Charged)
{
    /// <summary>Money still in the lot.</summary>
    public decimal Left => Paid - Charged;

    /// <summary>Takes an amount out.</summary>
    /// <param name="amount">Amount that leaves, in the unit of the good.</param>
    /// <param name="isAll">True where nothing is left then.</param>
    /// <returns>The money after, and what the issue cost.</returns>
    public (LotCost After, decimal Cost) Issue(double amount, bool isAll)
    {
        var gone = Out + amount;
        var charged =
            isAll || Amount <= 0 || gone >= Amount
                ? Paid
                : Math.Round(Paid * (decimal)(gone / Amount), 2, MidpointRounding.AwayFromZero);
        // After lines were taken back the running sum may lie a cent above: an issue never gives money.
        charged = Paid >= 0 ? Math.Clamp(charged, Math.Min(Charged, Paid), Paid) : charged;
        return (this with { Out = gone, Charged = charged }, charged - Charged);
    }

    /// <summary>The lot grew, or money came to it.</summary>
    /// <param name="onHand">Amount on hand now, in the unit of the good.</param>
    /// <param name="money">Money that came; negative where it is taken back.</param>
    public LotCost Grow(double onHand, decimal money) => new(Math.Max(0, onHand), Left + money, 0, 0);
}
