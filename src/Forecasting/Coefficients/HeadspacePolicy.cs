namespace Litterfall.Forecasting.Coefficients;

/// <summary>How long a box is run for a check: our own choices of computation, which no answer names as a
/// property.
/// </summary>
internal static class HeadspacePolicy
{
    /// <summary>Days of the run from planting.</summary>
    public const int CheckDays = 30;

    /// <summary>Days left out of means at its start, while films and ground settle.</summary>
    public const int SettleDays = 7;

    /// <summary>Days of the runs of bands and of seasons.</summary>
    public const int ShortDays = 10;

    /// <summary>Days left out at the start of these.</summary>
    public const int ShortSettleDays = 3;

    /// <summary>Days of the runs by which inputs are ranked, and days left out at their start.</summary>
    public const int BriefDays = 5;

    public const int BriefSettleDays = 2;

    /// <summary>"days 8 to 30": what means of the run from planting are over.</summary>
    public static string Settled => Days(SettleDays, CheckDays);

    /// <summary>The same of bands and seasons.</summary>
    public static string ShortSettled => Days(ShortSettleDays, ShortDays);

    private static string Days(int settle, int days) =>
        FormattableString.Invariant($"days {settle + 1} to {days}");
}
