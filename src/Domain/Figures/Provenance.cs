namespace Litterfall.Domain.Figures;

/// <summary>How far a value can be trusted, strongest first.</summary>
public enum Provenance
{
    /// <summary>Typed into the design or the workshop folder by its maker.</summary>
    Entered,

    /// <summary>Measured by the maker.</summary>
    Measured,

    /// <summary>Read in the cited publication.</summary>
    Read,

    /// <summary>Read off a published figure.</summary>
    Digitized,

    /// <summary>Computed from other values.</summary>
    Recomputed,

    /// <summary>Our own choice, with its reason.</summary>
    OwnChoice,

    /// <summary>A habit of the trade without published source.</summary>
    CommonPractice,

    /// <summary>Recalled from a publication or field, not yet read.</summary>
    Recalled,
}

/// <summary>Words for provenance.</summary>
public static class ProvenanceWords
{
    /// <summary>As written in files and on screens.</summary>
    public static string Word(this Provenance provenance) =>
        provenance switch
        {
            Provenance.Entered => "entered",
            Provenance.Measured => "measured",
            Provenance.Read => "read",
            Provenance.Digitized => "digitized",
            Provenance.Recomputed => "recomputed",
            Provenance.OwnChoice => "own choice",
            Provenance.CommonPractice => "common practice",
            Provenance.Recalled => "recalled",
            _ => throw new ArgumentOutOfRangeException(nameof(provenance)),
        };

    /// <summary>The same for people: what was recalled is from memory.</summary>
    public static string Spoken(this Provenance provenance) =>
        provenance == Provenance.Recalled ? "from memory" : provenance.Word();

    /// <summary>The provenance written so in a catalog file, or null.</summary>
    public static Provenance? Find(string word) =>
        word switch
        {
            "measured" => Provenance.Measured,
            "entered" => Provenance.Entered,
            "read" => Provenance.Read,
            "digitized" => Provenance.Digitized,
            "recomputed" => Provenance.Recomputed,
            "common practice" => Provenance.CommonPractice,
            "recalled" => Provenance.Recalled,
            _ => null,
        };

    /// <summary>
    /// True for values that back at most a caution, unless they protect an animal or a person.
    /// </summary>
    public static bool IsWeak(this Provenance provenance) =>
        provenance is Provenance.CommonPractice or Provenance.Recalled;
}

/// <summary>Where a value stands: a source, the place in it, and how far it can be trusted.</summary>
/// <param name="Source">Key in the catalog's list of sources, "design" or "workshop".</param>
/// <param name="Place">Section and row in the source, or the key in the design file.</param>
/// <param name="Provenance">How it came here.</param>
public sealed record Citation(string Source, string Place, Provenance Provenance)
{
    /// <summary>Geometry and book-keeping derived here; the equation is its own evidence.</summary>
    public static readonly Citation OwnDerivation = new(
        "own-derivation",
        "the equation as shown",
        Provenance.Recomputed
    );

    /// <summary>A habit of the trade without published source.</summary>
    public static Citation Habit(string what) =>
        new("common-practice", $"no source; {what}", Provenance.CommonPractice);

    /// <summary>A value remembered from a publication that was not read again.</summary>
    /// <param name="source">Key of the source.</param>
    /// <param name="place">Place in it, and what is remembered.</param>
    public static Citation Recalled(string source, string place) =>
        new(source, $"recalled: {place}", Provenance.Recalled);

    /// <summary>Our own choice.</summary>
    /// <param name="reason">Why.</param>
    public static Citation Choice(string reason) => new("own-choice", reason, Provenance.OwnChoice);
}
