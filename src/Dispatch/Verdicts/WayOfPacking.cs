using System.Collections.Immutable;
using Litterfall.Dispatch.Routes;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>A carton with what lies in it and the room that is left.</summary>
/// <param name="Carton">The carton.</param>
/// <param name="KilogramsOfWater">Heat capacity of contents and padding, as kg of water.</param>
/// <param name="FreeLiters">Room left for packs, L.</param>
internal sealed record PackedCarton(Carton Carton, double KilogramsOfWater, double FreeLiters);

/// <summary>A way of packing that is tried.</summary>
internal sealed class WayOfPacking
{
    private readonly ImmutableArray<(TransportPack Pack, PackUse Use)> packs;

    public WayOfPacking(PackedCarton carton, ImmutableArray<(TransportPack Pack, PackUse Use)> packs)
    {
        this.packs = packs;
        Carton = carton;
        Parcel = new PackedParcel(
            carton.Carton,
            carton.KilogramsOfWater,
            packs.Select(p => (p.Pack, p.Use.Count, p.Use.LiquidShare))
        );
        Kilograms = carton.Carton.EmptyKilograms + packs.Sum(p => p.Use.Count * p.Pack.Kilograms);
        Liters = packs.Sum(p => p.Use.Count * p.Pack.Liters);
    }

    /// <summary>The carton.</summary>
    public PackedCarton Carton { get; }

    /// <summary>How its heat goes.</summary>
    public PackedParcel Parcel { get; }

    /// <summary>Carton and packs, kg: what it costs, in the mean.</summary>
    public double Kilograms { get; }

    /// <summary>Room of the packs, L.</summary>
    public double Liters { get; }

    /// <summary>Packs as they go in.</summary>
    public IEnumerable<PackUse> Uses => packs.Select(p => p.Use);

    /// <summary>True where a heat pack is in it.</summary>
    public bool HasHeat => packs.Any(p => p.Pack.Kind == PackKind.Heat);

    /// <summary>Whether its packs can do what is asked of them.</summary>
    public bool Does(PackDuty duty) =>
        duty switch
        {
            PackDuty.None => true,
            PackDuty.Both => Has(PackKind.PhaseChange),
            PackDuty.Warm => Has(PackKind.PhaseChange) || Has(PackKind.Heat),
            _ => Has(PackKind.PhaseChange) || Has(PackKind.Ice),
        };

    /// <summary>In words: "2 × …, half melted, in the medium carton".</summary>
    public string Words =>
        packs.IsEmpty
            ? Carton.Carton.Name
            : string.Join(" and ", packs.Select(p => VerdictWords.Pack(p.Use, p.Pack)))
                + $" in the {Carton.Carton.Name}";

    private bool Has(PackKind kind) => packs.Any(p => p.Pack.Kind == kind);
}
