using System.Collections.Immutable;
using Litterfall.Domain.Photometry;

namespace Litterfall.Domain.Checking;

/// <summary>
/// What the files that a design names hold; files it names but that are missing here are faults.
/// </summary>
public sealed record DesignFiles
{
    /// <summary>A design without files.</summary>
    public static readonly DesignFiles None = new();

    /// <summary>What the logger in its room recorded; null without one.</summary>
    public RoomLog? RoomLog { get; init; }

    /// <summary>Measured luminaires by the name in the design.</summary>
    public ImmutableDictionary<string, LampFile> Lamps { get; init; } =
        ImmutableDictionary<string, LampFile>.Empty;

    /// <summary>Spectra by the name in the design.</summary>
    public ImmutableDictionary<string, SpectrumTable> Spectra { get; init; } =
        ImmutableDictionary<string, SpectrumTable>.Empty;
}
