using System.Collections.Immutable;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>Steps and cautions of packing, a plain sentence each.</summary>
internal static class PackingWords
{
    private const double Melted = 0.95;
    private const double Frozen = 0.05;

    /// <summary>Packs with their conditioning.</summary>
    public static Seq<string> Packs(PackingCase asked) =>
        [
            .. asked
                .Packs.Where(u => u.Count > 0)
                .Select(u => (Use: u, Pack: asked.Rules.Packs.First(p => p.Key == u.Pack)))
                .Select(p => Invariant($"{p.Use.Count} × {p.Pack.Name}: {Condition(p.Pack, p.Use)}")),
        ];

    /// <summary>Steps in the order they are done.</summary>
    public static Seq<string> Steps(
        PackingCase asked,
        List<PackedItem> items,
        ImmutableArray<TransportPack> packs
    )
    {
        var animals = items.FindAll(i => i.Cup.IsAnimal);
        var steps = new List<string>();
        if (animals.Count > 0)
        {
            steps.Add(
                Invariant($"Stop feeding {asked.Rules.FastHours} hours before; look each animal over in ")
                    + "bright light, and keep back any that is thin, hurt, weak or about to shed."
            );
            steps.Add(
                "Wash and rinse hands, then wear new wet gloves without powder; change them between tanks."
            );
            steps.Add(Holes(animals));
            steps.Add(
                "Wet the moss with the water of the list and squeeze it: damp, and no drop stands in the cup."
            );
            steps.Add("Put one animal into each cup, close the lid all around and stick the label on.");
        }

        if (items.Exists(i => i.Traveler.Kind is TravelerKind.Culture or TravelerKind.Feeder))
        {
            steps.Add("Look each culture over for mites, tape its lid and check that its vent is open.");
        }

        if (items.Exists(i => i.Traveler.Kind == TravelerKind.Plant))
        {
            steps.Add(
                "Water plants the day before, not today; hold the soil with paper and slip a sleeve on."
            );
        }

        steps.Add("Photograph each closed cup with its label, and add the photos to the evidence.");
        Add(steps, packs);
        steps.Add(
            "Set the cups as drawn, card between layers, and fill all gaps with padding: shake it, nothing "
                + "may shift. Leave the holes of the lids free."
        );
        steps.Add(
            "Lay the packing list and the papers in a bag on top; start the logger, if one goes along."
        );
        steps.Add("Close the liner, then the carton; stick its label on top and on one side.");
        return [.. steps];
    }

    private static string Holes(List<PackedItem> animals)
    {
        var kinds = animals
            .GroupBy(i => i.Cup.Holes)
            .OrderBy(g => g.Key)
            .Select(g => Invariant($"{g.Key} pin holes"))
            .ToList();
        return $"Pierce {string.Join(" or ", kinds)} in each lid from the inside out, so that no edge "
            + "stands into the cup.";
    }

    private static void Add(List<string> steps, ImmutableArray<TransportPack> packs)
    {
        if (packs.Any(p => p.Kind == PackKind.Heat))
        {
            steps.Add(
                "Open the heat pack 30 minutes before and let it warm; tape it under the lid over its "
                    + "spacer, never against a cup, and check that the vent holes of the carton are open."
            );
        }

        if (packs.Any(p => p.Kind != PackKind.Heat))
        {
            steps.Add(
                "Stand the packs along the walls as drawn, each behind its spacer, none against a cup."
            );
        }
    }

    /// <summary>Cautions that this parcel calls for.</summary>
    public static IEnumerable<string> Cautions(
        PackingCase asked,
        List<PackedItem> items,
        ImmutableArray<TransportPack> packs
    )
    {
        foreach (var kind in items.Where(i => i.Traveler.Toxin.Length > 0).GroupBy(i => i.Traveler.Toxin))
        {
            var names = string.Join(", ", kind.Select(i => i.Traveler.CommonName).Distinct());
            yield return $"{char.ToUpperInvariant(names[0])}{names[1..]}: {Sentence(kind.Key)}";
        }

        if (items.Exists(i => i.Cup.IsAnimal))
        {
            yield return "Amphibians and reptiles can carry Salmonella: wash hands before and after, never "
                + "near food or in a kitchen sink.";
            yield return "No sick animal travels, and nothing here is a diagnosis: ask a veterinarian who "
                + "knows these animals.";
        }

        if (packs.Any(p => p.Kind == PackKind.Heat))
        {
            yield return "Heat packs take oxygen and can overheat a closed box: one only, vent holes open, "
                + "never on a mild day.";
        }

        if (packs.Any(p => p.Kind == PackKind.Ice))
        {
            yield return "Ice kills what lies against it: keep its spacer in place.";
        }

        if (items.Exists(i => i.Traveler.Kind is TravelerKind.Culture or TravelerKind.Feeder))
        {
            yield return "Springtails, isopods and feeder insects escape through any gap: seal the lids.";
        }

        yield return "Never release animals, feeders, plants, moss or water outdoors.";
        yield return "Carriers, authorities and states have rules of their own for live goods: check them "
            + "for this parcel; this plan does not decide them.";
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";

    private static string Condition(TransportPack pack, PackUse use) =>
        pack.Kind switch
        {
            PackKind.Heat => Invariant($"opened 30 minutes before, warms about {pack.Hours:0} h"),
            _ when use.LiquidShare >= Melted => Invariant(
                $"melted through, a little over {pack.MeltCelsius:0} °C when it goes in"
            ),
            _ when use.LiquidShare <= Frozen => Invariant(
                $"frozen through, a little under {pack.MeltCelsius:0} °C when it goes in"
            ),
            _ => Invariant($"half melted, at {pack.MeltCelsius:0} °C: {use.LiquidShare * 100:0} % liquid"),
        };
}
