using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;

namespace Litterfall.Dispatch.Packing;

/// <summary>Cups of one kind with what they weigh and how they keep warmth.</summary>
/// <param name="Traveler">What lives in them.</param>
/// <param name="Cup">The cups.</param>
/// <param name="Stock">The cup of the shop's list; null for goods in their own.</param>
/// <param name="Kilograms">Mass of one, kg.</param>
/// <param name="KilogramsOfWater">Heat capacity of one, as kg of water.</param>
internal sealed record PackedItem(
    Traveler Traveler,
    PackedCup Cup,
    TransportCup? Stock,
    double Kilograms,
    double KilogramsOfWater
)
{
    /// <summary>Rim of a cup beyond its inside, both sides together, m; own choice.</summary>
    private const double RimMeters = 0.006;

    /// <summary>Share of a cup that is filled with moss (common practice, no source).</summary>
    private const double MossShare = 1.0 / 3.0;

    /// <summary>Bulk density of dry long-fiber moss, g/L; the library's value.</summary>
    private const double MossGramsPerLiter = 30;

    /// <summary>Water of moss that a firm squeeze leaves, share of its room; the library's value.</summary>
    private const double SqueezedShare = 0.3;

    /// <summary>At least so many times the water that the holes let out; own choice.</summary>
    private const double WaterMargin = 4;

    /// <summary>Mass of a cup with its lid over its volume, kg/L; own estimate.</summary>
    private const double CupKilogramsPerLiter = 0.04;

    /// <summary>Specific heat over that of water: body of an animal, dry plant matter, plastic.</summary>
    private const double BodyHeat = 0.84;

    private const double DryHeat = 0.3;
    private const double PlasticHeat = 0.45;

    /// <summary>What is alone in its cup.</summary>
    /// <param name="traveler">The animal.</param>
    /// <param name="choice">Its cup.</param>
    /// <param name="hours">Longest time on the way, h.</param>
    public static PackedItem Animal(Traveler traveler, CupChoice choice, double hours)
    {
        var cup = choice.Cup!;
        var moss = cup.Liters * MossShare;
        var lost = CupBreath.WaterGrams(cup, choice.Holes, hours);
        var dry = moss * MossGramsPerLiter;
        var water = Math.Max(moss * SqueezedShare * 1000, WaterMargin * lost);
        var plastic = cup.Liters * CupKilogramsPerLiter;
        var packed = new PackedCup
        {
            Animal = traveler.Content.Key,
            Name = traveler.Name,
            Cup = cup.Key,
            CupName = cup.Name,
            Count = traveler.Content.Count,
            Liters = cup.Liters,
            WidthMeters = cup.DiameterMeters + RimMeters,
            HeightMeters = cup.HeightMeters,
            Holes = choice.Holes,
            MossGrams = Math.Round(dry, 1),
            WaterGrams = Math.Round(water),
            Cites = traveler.Cites,
            From = traveler.Content.From,
            IsAnimal = true,
            Label = ParcelLabels.Cup(traveler),
        };
        return new(
            traveler,
            packed,
            cup,
            traveler.Kilograms + ((dry + water) / 1000) + plastic,
            (BodyHeat * traveler.Kilograms) + (((DryHeat * dry) + water) / 1000) + (PlasticHeat * plastic)
        );
    }

    /// <summary>Goods in their own cup or pot.</summary>
    public static PackedItem Goods(Traveler traveler)
    {
        var own = OwnCups.For(traveler.Kind);
        var packed = new PackedCup
        {
            Animal = traveler.Content.Key,
            Name = traveler.Name,
            CupName = own.Name,
            Count = traveler.Content.Count,
            Liters = own.Liters,
            WidthMeters = own.WidthMeters,
            HeightMeters = own.HeightMeters,
            Cites = traveler.Cites,
            From = traveler.Content.From,
            Label = ParcelLabels.Cup(traveler),
        };
        return new(traveler, packed, null, own.Kilograms, own.KilogramsOfWater);
    }

    /// <summary>All cups of it, to be placed.</summary>
    public IEnumerable<FitItem> Items() =>
        Enumerable.Repeat(
            new FitItem(
                Traveler.Kind == TravelerKind.Plant ? "pot" : "cup",
                Traveler.CommonName,
                Cup.WidthMeters,
                Cup.HeightMeters
            ),
            Cup.Count
        );
}
