namespace Litterfall.Documents.Shapes;

/// <summary>
/// How large a plant is drawn so long after planting: fast at first, then slower, grown after two years.
/// Common practice, no source; growth in a box depends on light and feeding, and pruning keeps it smaller.
/// </summary>
internal static class PlantAge
{
    /// <summary>Months after which a plant is drawn as large as the library has it.</summary>
    public const double Adult = 24;

    private const double PlantedShare = 0.45;
    private const double MostPlanted = 0.12;
    private const double Bend = 2.2;

    /// <summary>Size of a young plant as it is sold, m.</summary>
    /// <param name="grownMeters">Its size when grown, m.</param>
    public static double Planted(double grownMeters) => Math.Min(grownMeters * PlantedShare, MostPlanted);

    /// <summary>Size at an age, m.</summary>
    /// <param name="grownMeters">Its size when grown, m.</param>
    /// <param name="months">Months since planting; 0 for the day of planting.</param>
    public static double Size(double grownMeters, double months)
    {
        var young = Planted(grownMeters);
        var share = Math.Clamp(months / Adult, 0, 1);
        return young + ((grownMeters - young) * (1 - Math.Exp(-Bend * share)) / (1 - Math.Exp(-Bend)));
    }
}
