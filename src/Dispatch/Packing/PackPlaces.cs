using Litterfall.Domain.Dispatch;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>
/// Where packs lie: packs that melt stand along the long walls behind a spacer, a heat pack is taped under
/// the lid over one. None of them ever touches a cup.
/// </summary>
internal static class PackPlaces
{
    /// <summary>Thickness of a pack of gel or wax, m (common practice, no source).</summary>
    private const double SlabMeters = 0.025;

    /// <summary>Card or foam between a pack that melts and the cups, m; own choice.</summary>
    private const double SpacerMeters = 0.01;

    /// <summary>The same before ice, which would freeze what lies against it; own choice.</summary>
    private const double IceSpacerMeters = 0.03;

    private const double HeatPackMeters = 0.015;

    /// <summary>Air and spacer under a heat pack, m; own choice.</summary>
    private const double HeatSpacerMeters = 0.03;

    /// <summary>Padding on the floor and under the lid, m; own choice.</summary>
    private const double PaddingMeters = 0.01;

    private const double TallestFaceMeters = 0.2;

    /// <summary>Mass of a pack over its room where nobody measured the room, kg/L.</summary>
    private const double KilogramsPerLiter = 0.9;

    /// <summary>A heat pack never goes into a smaller box, outside, m (keeper practice).</summary>
    private static readonly double[] SmallestWithHeat = [0.15, 0.23, 0.30];

    private const double Rounding = 1e-9;

    /// <summary>Room of a pack, L.</summary>
    public static double Liters(TransportPack pack) =>
        pack.Liters > 0 ? pack.Liters : pack.Kilograms / KilogramsPerLiter;

    /// <summary>Places packs and tells the room that is left for cups.</summary>
    public static (List<PlacedThing> Places, CupRoom Room, string Refusal) Place(
        Carton carton,
        IReadOnlyCollection<TransportPack> packs
    )
    {
        var places = new List<PlacedThing>();
        var heat = packs.Where(p => p.Kind == PackKind.Heat).ToList();
        var why = Heat(carton, heat, places);
        var top = heat.Count > 0 ? HeatPackMeters + HeatSpacerMeters : PaddingMeters;
        var walls = new Walls(carton, carton.HeightMeters - top - PaddingMeters);
        foreach (
            var kind in packs.Where(p => p.Kind != PackKind.Heat).GroupBy(p => p.Key, StringComparer.Ordinal)
        )
        {
            why = why.Length > 0 ? why : walls.Stand([.. kind], places);
        }

        var room = new CupRoom(
            0,
            walls.Near,
            PaddingMeters,
            carton.LengthMeters,
            carton.WidthMeters - walls.Near - walls.Far,
            carton.HeightMeters - top - PaddingMeters
        );
        if (why.Length == 0 && (room.Width < 0 || room.Height < 0))
        {
            why = Invariant($"The packs take all of the {carton.Name}.");
        }

        return (places, room, why);
    }

    private static string Heat(Carton carton, List<TransportPack> heat, List<PlacedThing> places)
    {
        if (heat.Count == 0)
        {
            return "";
        }

        if (heat.Count > 1)
        {
            return "Never more than one heat pack in a parcel: together they overheat it and use up its air.";
        }

        double[] outside =
        [
            .. new[] { carton.LengthMeters, carton.WidthMeters, carton.HeightMeters }
                .Select(m => m + (2 * carton.WallMeters))
                .Order(),
        ];
        if (outside.Zip(SmallestWithHeat).Any(pair => pair.First < pair.Second - Rounding))
        {
            return Invariant($"The {carton.Name} is too small for a heat pack: the box has to measure at ")
                + "least 30 × 23 × 15 cm outside.";
        }

        if (carton.VentHoles == 0)
        {
            return Invariant($"The {carton.Name} has no vent holes, and a heat pack takes oxygen.");
        }

        var area = Liters(heat[0]) / 1000 / HeatPackMeters;
        var length = Math.Min(carton.LengthMeters, Math.Sqrt(area * 1.4));
        var width = Math.Min(carton.WidthMeters, area / length);
        places.Add(
            new(
                "heat",
                "heat pack under the lid",
                (carton.LengthMeters - length) / 2,
                (carton.WidthMeters - width) / 2,
                length,
                width
            )
            {
                ZMeters = carton.HeightMeters - HeatPackMeters,
                HeightMeters = HeatPackMeters,
            }
        );
        return "";
    }

    /// <summary>The two long walls, filled with packs in turn.</summary>
    private sealed class Walls(Carton carton, double height)
    {
        /// <summary>What packs and spacers take at the near wall, m.</summary>
        public double Near { get; private set; }

        /// <summary>What they take at the far wall, m.</summary>
        public double Far { get; private set; }

        public string Stand(List<TransportPack> packs, List<PlacedThing> places)
        {
            var face = Math.Min(height, TallestFaceMeters);
            if (face < SlabMeters)
            {
                return Invariant($"The {carton.Name} is too low for packs beside the cups.");
            }

            var cubic = Liters(packs[0]) / 1000;
            var thick = Math.Max(SlabMeters, cubic / (face * carton.LengthMeters));
            var length = Math.Min(carton.LengthMeters, cubic / (face * thick));
            var perWall = Math.Max(1, (int)((carton.LengthMeters + Rounding) / length));
            var spacer = packs[0].Kind == PackKind.Ice ? IceSpacerMeters : SpacerMeters;
            for (var at = 0; at < packs.Count; at += perWall)
            {
                var isNear = Near <= Far;
                var y = isNear ? Near : carton.WidthMeters - Far - thick;
                var count = Math.Min(perWall, packs.Count - at);
                var start = (carton.LengthMeters - (count * length)) / 2;
                for (var i = 0; i < count; i++)
                {
                    places.Add(
                        new("pack", packs[0].Name, start + (i * length), y, length, thick)
                        {
                            ZMeters = PaddingMeters,
                            HeightMeters = face,
                        }
                    );
                }

                (Near, Far) = isNear ? (Near + thick + spacer, Far) : (Near, Far + thick + spacer);
            }

            return Near + Far > carton.WidthMeters + Rounding
                ? Invariant($"The packs do not fit into the {carton.Name}.")
                : "";
        }
    }
}
