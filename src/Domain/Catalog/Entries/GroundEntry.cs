using Litterfall.Domain.Figures;

namespace Litterfall.Domain.Catalog.Entries;

/// <summary>What a soil layer is made of: a recipe, or one soil material used alone.</summary>
public abstract record GroundEntry : SubstrateEntry
{
    /// <summary>Name of <see cref="MixingYield"/> in files, for those who write a measured value.</summary>
    public const string MixingYieldKey = "mixingYield";

    /// <summary>Volume of the mix over the volumes put in.</summary>
    public Figure? MixingYield => Number(MixingYieldKey);

    /// <summary>Both ends of the band of <see cref="MixingYield"/>; null without one.</summary>
    public (Figure Low, Figure High)? MixingYieldBand => Band(MixingYieldKey);

    /// <summary>Name of <see cref="Settling"/> in files, for those who write a measured value.</summary>
    public const string SettlingKey = "settling";

    /// <summary>Share of the loose depth lost in the first weeks.</summary>
    public Figure? Settling => Number(SettlingKey);

    /// <summary>Both ends of the band of <see cref="Settling"/>; null without one.</summary>
    public (Figure Low, Figure High)? SettlingBand => Band(SettlingKey);
}
