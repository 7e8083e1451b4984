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
        && ReferenceEquals(a.Coefficients, b.Coefficients)
        && Lit(a.Design) == Lit(b.Design);

    /// <summary>
    /// True where the light of the lamps of an earlier set-up ends at the same places in another design; it
    /// may differ by coefficients that it was not traced with.
    /// </summary>
    /// <param name="earlier">The earlier set-up.</param>
    /// <param name="design">The other design.</param>
    public static bool SameShares(BoxSetup earlier, CheckedDesign design) =>
        SameLight(earlier.Design, design)
        || (
            earlier.HasShares
            && ReferenceEquals(earlier.Design.Catalog, design.Catalog)
            && ReferenceEquals(earlier.Design.Document, design.Document)
            && !design.Coefficients.Keys.Any(earlier.Shares.Keys.Contains)
            && !earlier.Design.Coefficients.Keys.Any(earlier.Shares.Keys.Contains)
        );

    /// <summary>True where water and air of both are the same.</summary>
    /// <param name="a">One design.</param>
    /// <param name="b">Another.</param>
    public static bool SameAir(CheckedDesign a, CheckedDesign b) =>
        ReferenceEquals(a.Catalog, b.Catalog)
        && ReferenceEquals(a.Files, b.Files)
        && ReferenceEquals(a.Coefficients, b.Coefficients)
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
            Shelves = [],
            Electrics = null,
            AnimalsIn = null,
            WaterCups = null,
            Accepted = [],
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
