using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>A lamp.</summary>
[Means("A lamp.")]
public sealed record Lamp
{
    /// <summary>Catalog lamp.</summary>
    [Key("lamp"), Means("Lamp."), Names(EntryKind.Lamp)]
    public required string Kind { get; init; }

    /// <summary>Light.</summary>
    [Means("Luminous flux in lumens.")]
    public Typed<LuminousFlux>? Lumens { get; init; }

    /// <summary>Power.</summary>
    [Means("Electrical power in watts.")]
    public Typed<Power>? Watts { get; init; }

    /// <summary>Photons.</summary>
    [Means("Photons of 400 to 700 nm it sends out; for lamps whose lumens say little, such as plant lamps.")]
    public Typed<PhotonFlux>? Photons { get; init; }

    /// <summary>Spectrum file.</summary>
    [Means("File with its spectrum, wavelength in nm and value on each line, seen from this file.")]
    public string? Spectrum { get; init; }

    /// <summary>Luminaire file.</summary>
    [Means("Measured luminaire file, IES LM-63 or EULUMDAT, seen from this file.")]
    public string? File { get; init; }

    /// <summary>Length of what shines.</summary>
    [Means("Length of the part that shines, along the front before it is turned.")]
    public Typed<Length>? Length { get; init; }

    /// <summary>Width of what shines.</summary>
    [Means("Width of the part that shines; the diameter of a round one.")]
    public Typed<Length>? Width { get; init; }

    /// <summary>Beam of a lens or reflector.</summary>
    [Means("Full angle of its beam to half of the intensity, for lenses and reflectors; 120 deg has none.")]
    public Typed<Angle>? Beam { get; init; }

    /// <summary>Height above the lid.</summary>
    [Means("Height above the lid.")]
    public Typed<Length>? Above { get; init; }

    /// <summary>Place over the lid.</summary>
    [Means("Where its middle is over the box; the middle if left out.")]
    public OverBox? At { get; init; }

    /// <summary>Turned about the vertical.</summary>
    [Means("How far it is turned, counter-clockwise seen from above.")]
    public Typed<Angle>? Turn { get; init; }

    /// <summary>Hours burnt.</summary>
    [Means("Hours it has burnt; a new lamp if left out.")]
    public Typed<Duration>? Age { get; init; }

    /// <summary>Dawn and dusk.</summary>
    [Means("Length of dawn and of dusk within the time it is on.")]
    public Typed<Duration>? Ramp { get; init; }

    /// <summary>Switched on at.</summary>
    [Means("Time it goes on, as \"08:00\".")]
    public TimeOnly? On { get; init; }

    /// <summary>Switched off at.</summary>
    [Means("Time it goes off, as \"20:00\".")]
    public TimeOnly? Off { get; init; }
}

/// <summary>A point over the box: x along the front from the left, y from front to back.</summary>
[Means("A point over the box: x along the front from the left, y from front to back.")]
public sealed record OverBox
{
    /// <summary>Along the front.</summary>
    [Means("Along the front from the left.")]
    public required Typed<Length> X { get; init; }

    /// <summary>Front to back.</summary>
    [Means("From front to back.")]
    public required Typed<Length> Y { get; init; }
}
