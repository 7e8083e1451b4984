using Litterfall.Domain;
using Litterfall.Domain.Checking;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// Which parts of a design a stage never reads: two designs that differ in these alone have the same numbers
/// there.
/// </summary>
internal static class StageInputs
{
    /// <summary>True where the light of both is the same.</summary>
    /// <param name="a">One design.</param>
    /// <param name="b">Another.</param>
    public static bool SameLight(CheckedDesign a, CheckedDesign b) =>
        ReferenceEquals(a.Catalog, b.Catalog)
        && ReferenceEquals(a.Files, b.Files)
        && Lit(a.Design) == Lit(b.Design);

    /// <summary>True where water and air of both are the same.</summary>
    /// <param name="a">One design.</param>
    /// <param name="b">Another.</param>
    public static bool SameAir(CheckedDesign a, CheckedDesign b) =>
        ReferenceEquals(a.Catalog, b.Catalog)
        && ReferenceEquals(a.Files, b.Files)
        && Aired(a.Design) == Aired(b.Design);

    /// <summary>Animals, crew, papers and habits of feeding touch neither water nor air.</summary>
    private static Design Aired(Design design) =>
        design with
        {
            Name = "",
            Animals = [],
            RatedFor = [],
            Crew = [],
            Hygiene = null,
            Shelf = null,
            Electrics = null,
            AnimalsIn = null,
        };

    /// <summary>Nor do water, room and fittings touch the light.</summary>
    private static Design Lit(Design design) =>
        Aired(design) with
        {
            Misting = null,
            Drain = null,
            Habits = null,
            Heating = null,
            Fan = null,
            Fogger = null,
            Room = null,
            Headspace = null,
        };
}
