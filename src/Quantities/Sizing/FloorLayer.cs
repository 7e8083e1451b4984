using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;

namespace Litterfall.Quantities.Sizing;

/// <summary>One component of a mixed layer.</summary>
public sealed record LayerComponent
{
    /// <summary>Its catalog entry.</summary>
    public required CatalogEntry Material { get; init; }

    /// <summary>Its share of the loose parts.</summary>
    public required Figure Share { get; init; }

    /// <summary>Its share of the finished liters.</summary>
    public required Figure Finished { get; init; }

    /// <summary>Its share of the mixed liters.</summary>
    public required Figure Mixed { get; init; }

    /// <summary>Its own loose part.</summary>
    public required Figure Loose { get; init; }

    /// <summary>Loose part with loss.</summary>
    public required Figure ToBuy { get; init; }

    /// <summary>Mass as sold; null when the catalog has no density.</summary>
    public Figure? Mass { get; init; }

    /// <summary>Water it brings along.</summary>
    public Figure? WaterIn { get; init; }

    /// <summary>Dry mass.</summary>
    public Figure? DryMass { get; init; }
}

/// <summary>A layer of the floor with its four volumes (m³) and its masses (kg).</summary>
public sealed record FloorLayer
{
    /// <summary>Which layer it is.</summary>
    public required LayerKind Kind { get; init; }

    /// <summary>Its word.</summary>
    public string Layer => Kind.Word();

    /// <summary>Its material or recipe; null for the water space of a raised floor.</summary>
    public PorousEntry? Material { get; init; }

    /// <summary>Mean depth.</summary>
    public required Figure Depth { get; init; }

    /// <summary>Depth at the front.</summary>
    public required Figure FrontDepth { get; init; }

    /// <summary>Depth at the back.</summary>
    public required Figure BackDepth { get; init; }

    /// <summary>Smallest depth anywhere.</summary>
    public required Figure Lowest { get; init; }

    /// <summary>Largest depth anywhere.</summary>
    public required Figure Highest { get; init; }

    /// <summary>Area it lies on.</summary>
    public required Figure Area { get; init; }

    /// <summary>In the tank, settled, less what wood and stone displace.</summary>
    public required Figure Finished { get; init; }

    /// <summary>Before settling.</summary>
    public required Figure Mixed { get; init; }

    /// <summary>Sum of the loose parts.</summary>
    public required Figure Loose { get; init; }

    /// <summary>Loose liters with loss.</summary>
    public required Figure ToBuy { get; init; }

    /// <summary>
    /// To buy if settling and mixing yield lie at the favorable ends of their bands; null when both were
    /// entered.
    /// </summary>
    public Figure? ToBuyLow { get; init; }

    /// <summary>To buy if they lie at the unfavorable ends.</summary>
    public Figure? ToBuyHigh { get; init; }

    /// <summary>Mass as sold.</summary>
    public Figure? Mass { get; init; }

    /// <summary>Dry mass in the tank.</summary>
    public Figure? DryMass { get; init; }

    /// <summary>Water at squeeze wetness; null for layers that are not wetted.</summary>
    public Figure? SqueezeWater { get; init; }

    /// <summary>
    /// Most water the fresh mix may hold: the wet end of squeeze wetness, before it settles.
    /// </summary>
    public Figure? MostWater { get; init; }

    /// <summary>Water the goods hold as sold.</summary>
    public Figure? WaterBrought { get; init; }

    /// <summary>Water to add to reach it from the goods as sold.</summary>
    public Figure? WaterToAdd { get; init; }

    /// <summary>Water when saturated.</summary>
    public Figure? SaturatedWater { get; init; }

    /// <summary>Components of a mix.</summary>
    public ImmutableArray<LayerComponent> Components { get; init; } = [];
}
