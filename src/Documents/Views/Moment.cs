using System.Collections.Immutable;
using Litterfall.Domain;

namespace Litterfall.Documents.Views;

/// <summary>How a box stands at an hour of its forecast.</summary>
/// <param name="LevelMeters">Free water over the base, m.</param>
/// <param name="Wetness">
/// Share of the soil's depth below its surface and share of its pores that is full there, both 0 to 1, from
/// the surface down.
/// </param>
public sealed record Moment(double LevelMeters, ImmutableArray<(double Depth, double Share)> Wetness)
{
    /// <summary>True where dew can be seen on the front pane.</summary>
    public bool FrontFogs { get; init; }

    /// <summary>True where dew can be seen on the back pane.</summary>
    public bool BackFogs { get; init; }

    /// <summary>True while a lamp burns.</summary>
    public bool IsLit { get; init; }

    /// <summary>True from morning to evening, whether or not a lamp burns.</summary>
    public bool IsDay { get; init; } = true;

    /// <summary>Share of the hour in which each pane was fogged, 0 to 1.</summary>
    public ImmutableArray<(Side Pane, double Share)> Fogs { get; init; } = [];

    /// <summary>Colors from dry to full: sand, teal, deep blue in even steps of lightness.</summary>
    public static readonly ImmutableArray<uint> Colors =
    [
        0xE9D8B4,
        0xCDBB8A,
        0x93A27A,
        0x4F8076,
        0x1F5F6B,
        0x12405A,
    ];

    /// <summary>The color of a share of full pores.</summary>
    /// <param name="share">0 to 1.</param>
    public static uint ColorOf(double share) =>
        Colors[Math.Clamp((int)(share * Colors.Length), 0, Colors.Length - 1)];
}
