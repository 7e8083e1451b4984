namespace Litterfall.Forecasting.Coefficients;

/// <summary>How long the life of the floor is run, and which seedings are tried: our own choices.</summary>
internal static class LifePolicy
{
    /// <summary>Days run for answers: five years of a tank.</summary>
    public const int Days = 5 * 365;

    /// <summary>Days run where inputs are ranked.</summary>
    public const int BriefDays = 2 * 365;

    /// <summary>Days within which a crew must settle.</summary>
    public const int ReadyDays = 300;

    /// <summary>
    /// Carbon of dry leaves, and carbon to nitrogen of leaves that say none, the middle of oak's 45 to 65
    /// (both
    /// recalled): nothing but the ledger of nitrogen rests on them.
    /// </summary>
    public const double Carbon = 0.45;

    public const double UsualCarbonToNitrogen = 55.0;

    /// <summary>Weeks between seedings that are tried, longest first.</summary>
    public static readonly int[] ReseedWeeks = [52, 39, 26, 17, 13, 8, 6, 4];
}
