using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Defaults;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trees;

namespace Litterfall.App.Shipping;

/// <summary>Carrier, cartons and packs of a case.</summary>
internal static class ShipGoods
{
    private const int MostItems = 20;
    private const int MostInStock = 10_000;
    private static readonly NumberRange Side = new(2, 200);
    private static readonly NumberRange Wall = new(0, 200);
    private static readonly NumberRange Conductivity = new(0.005, 1);

    // Air clings to every wall.
    private static readonly NumberRange Films = new(0.02, 1);
    private static readonly NumberRange Mass = NumberRange.Positive(20);
    private static readonly NumberRange Latent = NumberRange.Positive(500);
    private static readonly NumberRange Melt = new(-30, 60);
    private static readonly NumberRange Hour = new(0, 24);
    private static readonly NumberRange HubHours = new(0, 72);

    /// <summary>Terms of the carrier.</summary>
    public static CarrierTerms Carrier(TreeForm top)
    {
        var usual = DispatchDefaults.Carrier;
        if (top.ObjectOrNull("carrier", "the carrier") is not { } form)
        {
            return usual;
        }

        var days = ShipFields.Weekdays(form, "arrivalDays");
        var carrier = usual with
        {
            Name = form.OptionalText("name") ?? usual.Name,
            TransitDays = form.OptionalWhole("transitDays", 1, 10) ?? usual.TransitDays,
            ArrivalDays = days.IsEmpty ? usual.ArrivalDays : [.. days],
            HandOverHour = form.Number("handOverHour", Hour, usual.HandOverHour),
            DeliversFromHour = form.Number("deliversFromHour", Hour, usual.DeliversFromHour),
            DeliversUntilHour = form.Number("deliversUntilHour", Hour, usual.DeliversUntilHour),
            HubFromHour = form.Number("hubFromHour", Hour, usual.HubFromHour),
            HubHours = form.Number("hubHours", HubHours, usual.HubHours),
            DayLateChance =
                form.Number("dayLatePercent", NumberRange.UpTo(100), 100 * usual.DayLateChance) / 100,
            HasDepot = form.Flag("hasDepot", usual.HasDepot),
            TakesAnimals = form.Holds("takesAnimals") ? form.Flag("takesAnimals", false) : null,
            RulesReadOn = ShipFields.OptionalDay(form, "rulesReadOn"),
            GuaranteedFromCelsius = form.OptionalNumber("guaranteedFromC", ShipFields.Air),
            GuaranteedToCelsius = form.OptionalNumber("guaranteedToC", ShipFields.Air),
        };
        form.Ignore("takesAnimals");
        form.Close();
        if (form.IsGood && carrier.DeliversUntilHour < carrier.DeliversFromHour)
        {
            form.Refuse(
                "deliversUntilHour",
                "delivery ends before it begins",
                "an hour after deliversFromHour"
            );
        }

        return carrier;
    }

    /// <summary>Cartons; those of a case are counted where it says how many.</summary>
    public static ImmutableArray<Carton> Cartons(TreeForm top, List<StockCount> stock)
    {
        var cartons = ImmutableArray.CreateBuilder<Carton>();
        foreach (var form in top.ObjectsOrNull("cartons", "a carton", MostItems))
        {
            if (form.OptionalText("use") is { } use)
            {
                Known(form, use, DispatchDefaults.Cartons, c => c.Key, cartons);
            }
            else
            {
                cartons.Add(Own(form, cartons.Count));
            }

            Count(form, cartons.Count > 0 ? cartons[^1].Key : "", stock);
            form.Close();
        }

        None(top, "cartons", cartons.Count, DispatchDefaults.Cartons.Select(c => c.Key), stock);
        return cartons.ToImmutable();
    }

    /// <summary>Packs.</summary>
    public static ImmutableArray<TransportPack> Packs(TreeForm top, List<StockCount> stock)
    {
        var packs = ImmutableArray.CreateBuilder<TransportPack>();
        foreach (var form in top.ObjectsOrNull("packs", "a pack", MostItems))
        {
            if (form.OptionalText("use") is { } use)
            {
                Known(form, use, DispatchDefaults.Packs, p => p.Key, packs);
            }
            else
            {
                packs.Add(OwnPack(form, packs.Count));
            }

            Count(form, packs.Count > 0 ? packs[^1].Key : "", stock);
            form.Close();
        }

        None(top, "packs", packs.Count, DispatchDefaults.Packs.Select(p => p.Key), stock);
        return packs.ToImmutable();
    }

    /// <summary>A list that is there and empty says that none is in stock, not that nobody asked.</summary>
    private static void None(
        TreeForm top,
        string list,
        int count,
        IEnumerable<string> usual,
        List<StockCount> stock
    )
    {
        if (count == 0 && top.Holds(list))
        {
            stock.AddRange(usual.Select(key => new StockCount(key, 0)));
        }
    }

    private static void Known<T>(
        TreeForm form,
        string use,
        ImmutableArray<T> all,
        Func<T, string> key,
        ImmutableArray<T>.Builder found
    )
    {
        if (all.FirstOrDefault(a => key(a) == use) is { } known)
        {
            found.Add(known);
        }
        else
        {
            form.Refuse("use", $"{TreeNode.Shown(use)} is not known", string.Join(", ", all.Select(key)));
        }
    }

    private static void Count(TreeForm form, string key, List<StockCount> stock)
    {
        if (form.OptionalWhole("count", 0, MostInStock) is { } count)
        {
            stock.Add(new(key, count));
        }
    }

    private static Carton Own(TreeForm form, int number)
    {
        var inside = form.Numbers("insideCm", Side, 3);
        if (form.IsGood && inside.Length != 3)
        {
            form.Refuse(
                "insideCm",
                "insideCm has not three numbers",
                "inside length, width and height in cm"
            );
        }

        var like = DispatchDefaults.Cartons[0];
        return new()
        {
            Key = Numbered("carton", number),
            Name = form.OptionalText("name") ?? Numbered("carton", number),
            LengthMeters = inside.ElementAtOrDefault(0) / 100,
            WidthMeters = inside.ElementAtOrDefault(1) / 100,
            HeightMeters = inside.ElementAtOrDefault(2) / 100,
            WallMeters = form.Number("wallMm", Wall) / 1000,
            ConductivityWPerMeterKelvin = form.Number(
                "wallWPerMK",
                Conductivity,
                like.ConductivityWPerMeterKelvin
            ),
            FilmsSquareMeterKelvinPerW = form.Number("filmsM2KPerW", Films, like.FilmsSquareMeterKelvinPerW),
            VentHoles = form.OptionalWhole("ventHoles", 0, 100) ?? like.VentHoles,
            EmptyKilograms = form.Number("kg", NumberRange.UpTo(20), like.EmptyKilograms),
        };
    }

    private static TransportPack OwnPack(TreeForm form, int number)
    {
        var kind = form.Choice("kind", "phase-change", "ice", "heat");
        var isHeat = kind == "heat";
        var mass = form.Number("kg", Mass);
        return new()
        {
            Key = Numbered("pack", number),
            Name = form.OptionalText("name") ?? Numbered("pack", number),
            Kind = kind switch
            {
                "heat" => PackKind.Heat,
                "ice" => PackKind.Ice,
                _ => PackKind.PhaseChange,
            },
            Kilograms = mass,
            MeltCelsius = kind == "phase-change" ? form.Number("meltC", Melt) : 0,
            LatentKilojoulesPerKilogram = isHeat ? 0 : form.Number("latentKJPerKg", Latent),
            Hours = isHeat ? form.Number("hours", NumberRange.Positive(240)) : 0,
            Watts = isHeat ? form.Number("watts", NumberRange.Positive(50)) : 0,
            Liters = form.Number("liters", NumberRange.UpTo(50), 1.25 * mass),
        };
    }

    private static string Numbered(string word, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{word} {number + 1}");
}
