using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>A carrier's service as it is typed.</summary>
public sealed class CarrierDraft
{
    private static readonly (double, double) Guaranteed = (
        Unit.Celsius.ToSiValue(-40),
        Unit.Celsius.ToSiValue(50)
    );

    private readonly CarrierTerms? kept;
    private readonly UnitPreferences units;

    /// <summary>Begins with a service; null for a new one.</summary>
    public CarrierDraft(CarrierTerms? carrier, UnitPreferences units)
    {
        (kept, this.units) = (carrier, units);
        var celsius = units.For(Unit.Celsius);
        Name = new("Name", carrier?.Name ?? "") { Help = "such as overnight" };
        Transit = TypedText.ForNumber("Working days it travels", carrier?.TransitDays ?? 1);
        HandOver = TypedText.ForNumber("Handed over by (hour)", carrier?.HandOverHour ?? 17);
        From = TypedText.ForNumber("Brings parcels from (hour)", carrier?.DeliversFromHour ?? 9);
        Until = TypedText.ForNumber("until (hour)", carrier?.DeliversUntilHour ?? 12);
        HubFrom = TypedText.ForNumber("Reaches the hub at (hour)", carrier?.HubFromHour ?? 22);
        HubHours = TypedText.ForNumber("Hours in the hub", carrier?.HubHours ?? 5);
        Late = TypedText.ForNumber("One day late, % of parcels", 100 * (carrier?.DayLateChance ?? 0.03));
        Low = TypedMeasure.Begin(
            "Guarantees arrival alive from",
            Kelvin(carrier?.GuaranteedFromCelsius),
            celsius,
            "empty where it says none"
        );
        High = TypedMeasure.Begin("to", Kelvin(carrier?.GuaranteedToCelsius), celsius);
        Price = TypedText.ForMoney("Price of a parcel, net", carrier?.Price);
        Note = new("What to remember of its rules", carrier?.Note ?? "") { IsLong = true };
        Arrival = [.. (carrier ?? new CarrierTerms { Key = "", Name = "" }).ArrivalDays];
        HasDepot = carrier?.HasDepot ?? true;
        Takes = carrier?.TakesAnimals switch
        {
            true => "yes",
            false => "no",
            _ => "",
        };
        RulesReadOn = carrier?.RulesReadOn;
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>Working days on the way.</summary>
    public TypedText Transit { get; }

    /// <summary>Hour of hand-over.</summary>
    public TypedText HandOver { get; }

    /// <summary>First hour of delivery.</summary>
    public TypedText From { get; }

    /// <summary>Last hour of delivery.</summary>
    public TypedText Until { get; }

    /// <summary>Hour at the hub.</summary>
    public TypedText HubFrom { get; }

    /// <summary>Hours in the hub.</summary>
    public TypedText HubHours { get; }

    /// <summary>Chance of a day more.</summary>
    public TypedText Late { get; }

    /// <summary>Coldest guaranteed.</summary>
    public TypedText Low { get; }

    /// <summary>Warmest guaranteed.</summary>
    public TypedText High { get; }

    /// <summary>Price.</summary>
    public TypedText Price { get; }

    /// <summary>What to remember.</summary>
    public TypedText Note { get; }

    /// <summary>Days on which it brings parcels.</summary>
    public HashSet<DayOfWeek> Arrival { get; }

    /// <summary>True where a depot keeps parcels.</summary>
    public bool HasDepot { get; set; }

    /// <summary>"yes", "no" or nothing.</summary>
    public string Takes { get; set; }

    /// <summary>Day its rules were read.</summary>
    public DateOnly? RulesReadOn { get; set; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields =>
        [Name, Transit, HandOver, HubFrom, HubHours, From, Until, Late, Low, High, Price, Note];

    /// <summary>The service; its fields say what is wrong with them.</summary>
    public CarrierTerms Read()
    {
        var name = Name.Required();
        var (from, until) = (From.Number(0, 24), Until.Number(0, 24));
        if (until <= from && Until.Fault is null)
        {
            Until.Refuse("Enter an hour after the one from which it brings parcels.");
        }

        return new()
        {
            Key = kept?.Key ?? OwnKey.From(name),
            Name = name,
            TransitDays = Transit.Whole(1, 10),
            ArrivalDays = [.. Arrival.Order()],
            HandOverHour = HandOver.Number(0, 23.99),
            DeliversFromHour = from,
            DeliversUntilHour = until,
            HubFromHour = HubFrom.Number(0, 23.99),
            HubHours = HubHours.Number(0, 24),
            DayLateChance = Late.Number(0, 60) / 100,
            HasDepot = HasDepot,
            TakesAnimals = Takes switch
            {
                "yes" => true,
                "no" => false,
                _ => null,
            },
            RulesReadOn = RulesReadOn,
            GuaranteedFromCelsius = Celsius(Low),
            GuaranteedToCelsius = Celsius(High),
            Price = Price.MoneyOrNone(),
            Note = Note.Free(),
        };
    }

    private static double? Kelvin(double? celsius) =>
        celsius is { } said ? Unit.Celsius.ToSiValue(said) : null;

    private double? Celsius(TypedText field) =>
        TypedMeasure.ReadOrNone(field, QuantityKinds.Temperature, units.For(Unit.Celsius), Guaranteed)
            is { } kelvin
            ? Math.Round(Unit.Celsius.FromSi(kelvin), 6)
            : null;
}
