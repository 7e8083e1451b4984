using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Store;

namespace Litterfall.Web.Tanks.Register;

/// <summary>What is typed of a permit.</summary>
public sealed class PermitDraft
{
    /// <summary>Its key; empty for a new one.</summary>
    public string Key { get; private init; } = "";

    /// <summary>Version it is changed from; 0 for a new one.</summary>
    public int Version { get; private init; }

    /// <summary>What it is.</summary>
    public PermitKind Kind { get; set; }

    /// <summary>Number on it.</summary>
    public string Number { get; set; } = "";

    /// <summary>Who gave it.</summary>
    public string Issuer { get; set; } = "";

    /// <summary>Key of its species; empty for all.</summary>
    public string Species { get; set; } = "";

    /// <summary>Day it was given.</summary>
    public DateOnly? Issued { get; set; }

    /// <summary>Last day.</summary>
    public DateOnly? Expires { get; set; }

    /// <summary>Notes.</summary>
    public string Note { get; set; } = "";

    /// <summary>A permit as it is.</summary>
    /// <param name="kept">The permit.</param>
    public static PermitDraft From(Kept<Permit> kept) =>
        new()
        {
            Key = kept.Key,
            Version = kept.Version,
            Kind = kept.Value.Kind,
            Number = kept.Value.Number,
            Issuer = kept.Value.Issuer,
            Species = kept.Value.Species is [var first, ..] ? first : "",
            Issued = kept.Value.Issued,
            Expires = kept.Value.Expires,
            Note = kept.Value.Note,
        };

    /// <summary>The permit that is typed, or what is wrong, in one sentence.</summary>
    public (Permit? Permit, string? Fault) Read()
    {
        if (Number.Trim().Length == 0)
        {
            return (null, "Type the number that stands on the permit.");
        }

        if (Issued is not { } issued)
        {
            return (null, "Choose the day on which it was given.");
        }

        return Expires < issued
            ? (null, "It cannot end before it was given.")
            : (
                new Permit
                {
                    Key = Key.Length > 0 ? Key : Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture),
                    Kind = Kind,
                    Number = Number.Trim(),
                    Issuer = Issuer.Trim(),
                    Species = Species.Length > 0 ? [Species] : [],
                    Issued = issued,
                    Expires = Expires,
                    Note = Note.Trim(),
                },
                null
            );
    }
}
