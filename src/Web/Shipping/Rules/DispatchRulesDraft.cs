using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>An own band as it is typed.</summary>
public sealed class BandDraft(OwnBand? band, Unit celsius)
{
    private static readonly (double, double) Range = (
        Unit.Celsius.ToSiValue(-20),
        Unit.Celsius.ToSiValue(45)
    );

    /// <summary>Letter of the class.</summary>
    public string Class { get; set; } = band?.Class ?? "B";

    /// <summary>Held below.</summary>
    public TypedText Low { get; } =
        TypedMeasure.Begin("Hold below", Unit.Celsius.ToSiValue(band?.HoldBelowCelsius ?? 15), celsius);

    /// <summary>Held above.</summary>
    public TypedText High { get; } =
        TypedMeasure.Begin("Hold above", Unit.Celsius.ToSiValue(band?.HoldAboveCelsius ?? 26), celsius);

    /// <summary>The band; its fields say what is wrong with them.</summary>
    public OwnBand Read()
    {
        var (low, high) = (Celsius(Low), Celsius(High));
        if (Low.Fault is null && High.Fault is null && high <= low)
        {
            High.Refuse("It has to be above the other limit, or nothing ever leaves.");
        }

        return new(Class, low, high);
    }

    private double Celsius(TypedText field) =>
        Math.Round(
            Unit.Celsius.FromSi(TypedMeasure.Read(field, QuantityKinds.Temperature, celsius, Range)),
            6
        );
}

/// <summary>The shop's rules of dispatch as they are typed.</summary>
public sealed class DispatchRulesDraft
{
    // Ours; a shop may be stricter, not looser.
    private const double MostRisk = 2;
    private const double LeastError = 1;
    private readonly DispatchRules kept;
    private readonly UnitPreferences units;

    /// <summary>Begins with rules.</summary>
    public DispatchRulesDraft(DispatchRules kept, UnitPreferences units)
    {
        (this.kept, this.units) = (kept, units);
        Place = new("Place of the workshop", kept.HomePlace);
        HomeRegion = kept.HomeRegion;
        Risk = TypedText.ForNumber(
            "Journeys that may leave the band, %",
            kept.RiskPercent,
            "at most 2; fewer is stricter"
        );
        Van = TypedText.ForNumber("A van in the sun is warmer than the shade by, K", kept.VanSunKelvin);
        Door = TypedText.ForNumber("Longest time at the door, hours", kept.DoorstepHours);
        DoorSun = TypedText.ForNumber("A doorstep is warmer than the shade by, K", kept.DoorstepSunKelvin);
        Error = TypedText.ForNumber("A forecast misses on the first day by, K", kept.ForecastErrorKelvin);
        ErrorPerDay = TypedText.ForNumber("and each day more, K", kept.ForecastErrorPerDayKelvin);
        Claim = TypedText.ForNumber("Photo for a claim within, hours", kept.ClaimHours);
        Answer = TypedText.ForNumber("A claim is answered within, days", kept.AnswerDays);
        CarrierDays = TypedText.ForNumber("Read a carrier's rules again after, days", kept.CarrierRulesDays);
        Fast = TypedText.ForNumber("Animals fast before packing, hours", kept.FastHours);
        Phone = new("Telephone on the label", kept.EmergencyPhone);
        Terms = new("Terms of claims", string.Join("\n", kept.ClaimTerms))
        {
            IsLong = true,
            Help = "one sentence a line",
        };
        Cartons = [.. kept.Cartons.Select(c => new CartonDraft(c, units))];
        Packs = [.. kept.Packs.Select(p => new PackDraft(p, units))];
        Cups = [.. kept.Cups.Select(c => new CupDraft(c, units))];
        Carriers = [.. kept.Carriers.Select(c => new CarrierDraft(c, units))];
        Regions = [.. kept.Regions.Select(r => new RegionDraft(r))];
        Bands = [.. kept.Bands.Select(b => new BandDraft(b, units.For(Unit.Celsius)))];
    }

    /// <summary>Place of the workshop.</summary>
    public TypedText Place { get; }

    /// <summary>Key of the region of the workshop.</summary>
    public string HomeRegion { get; set; }

    /// <summary>Risk.</summary>
    public TypedText Risk { get; }

    /// <summary>Sun on the van.</summary>
    public TypedText Van { get; }

    /// <summary>Time at the door.</summary>
    public TypedText Door { get; }

    /// <summary>Sun at the door.</summary>
    public TypedText DoorSun { get; }

    /// <summary>Error of a forecast.</summary>
    public TypedText Error { get; }

    /// <summary>What a day adds.</summary>
    public TypedText ErrorPerDay { get; }

    /// <summary>Hours of a claim.</summary>
    public TypedText Claim { get; }

    /// <summary>Days of an answer.</summary>
    public TypedText Answer { get; }

    /// <summary>Days that rules of a carrier count as read.</summary>
    public TypedText CarrierDays { get; }

    /// <summary>Hours of fasting.</summary>
    public TypedText Fast { get; }

    /// <summary>Telephone.</summary>
    public TypedText Phone { get; }

    /// <summary>Terms of claims.</summary>
    public TypedText Terms { get; }

    /// <summary>Cartons.</summary>
    public List<CartonDraft> Cartons { get; }

    /// <summary>Packs.</summary>
    public List<PackDraft> Packs { get; }

    /// <summary>Cups.</summary>
    public List<CupDraft> Cups { get; }

    /// <summary>Carriers.</summary>
    public List<CarrierDraft> Carriers { get; }

    /// <summary>Regions.</summary>
    public List<RegionDraft> Regions { get; }

    /// <summary>Own bands.</summary>
    public List<BandDraft> Bands { get; }

    /// <summary>Fields of journeys in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Journeys => [Risk, Error, ErrorPerDay, Van, Door, DoorSun];

    /// <summary>Fields of work in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Work => [Fast, Claim, Answer, CarrierDays, Phone, Terms];

    /// <summary>A new carton.</summary>
    public void AddCarton() => Cartons.Add(new(null, units));

    /// <summary>A new pack.</summary>
    public void AddPack() => Packs.Add(new(null, units));

    /// <summary>A new cup.</summary>
    public void AddCup() => Cups.Add(new(null, units));

    /// <summary>A new carrier.</summary>
    public void AddCarrier() => Carriers.Add(new(null, units));

    /// <summary>A new region.</summary>
    public void AddRegion() => Regions.Add(new(null));

    /// <summary>A new own band.</summary>
    public void AddBand() => Bands.Add(new(null, units.For(Unit.Celsius)));

    /// <summary>The rules, or a sentence on what is wrong.</summary>
    /// <param name="regionRefusal">Why a region cannot be used; null where it can.</param>
    public (DispatchRules? Rules, string? Fault) Read(Func<DeliveryRegion, string?> regionRefusal)
    {
        var read = kept with
        {
            HomePlace = Place.Required(),
            HomeRegion = HomeRegion,
            RiskPercent = Risk.Number(0.1, MostRisk),
            VanSunKelvin = Van.Number(0, 20),
            DoorstepHours = Door.Number(0, 24),
            DoorstepSunKelvin = DoorSun.Number(0, 20),
            ForecastErrorKelvin = Error.Number(LeastError, 6),
            ForecastErrorPerDayKelvin = ErrorPerDay.Number(0, 3),
            ClaimHours = Claim.Whole(1, 168),
            AnswerDays = Answer.Whole(1, 30),
            CarrierRulesDays = CarrierDays.Whole(1, 1000),
            FastHours = Fast.Whole(0, 72),
            EmergencyPhone = Phone.Free(),
            ClaimTerms = [.. Terms.Lines()],
            Cartons = [.. Cartons.Select(c => c.Read())],
            Packs = [.. Packs.Select(p => p.Read())],
            Cups = [.. Cups.Select(c => c.Read())],
            Carriers = [.. Carriers.Select(c => c.Read())],
            Regions = [.. Regions.Select(r => r.Read(regionRefusal))],
            Bands = [.. Bands.Select(b => b.Read())],
        };
        return AllFields().Any(f => f.Fault is not null)
                ? (null, "Some fields cannot be taken yet; each says why.")
            : Double(read) is { } fault ? (null, fault)
            : read.Regions.All(r => r.Key != read.HomeRegion)
                ? (null, "Choose the region of the workshop from the list of regions.")
            : (read, null);
    }

    private static string? Double(DispatchRules rules)
    {
        (string What, IEnumerable<string> Keys)[] lists =
        [
            ("cartons", rules.Cartons.Select(c => c.Key)),
            ("packs", rules.Packs.Select(p => p.Key)),
            ("cups", rules.Cups.Select(c => c.Key)),
            ("carriers", rules.Carriers.Select(c => c.Key)),
            ("regions", rules.Regions.Select(r => r.Key)),
            ("own bands", rules.Bands.Select(b => b.Class)),
        ];
        return lists
            .Where(l => l.Keys.Distinct(StringComparer.Ordinal).Count() < l.Keys.Count())
            .Select(l =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Two {l.What} have the same name; change one or remove it."
                )
            )
            .FirstOrDefault();
    }

    private IEnumerable<TypedText> AllFields() =>
        [
            Place,
            .. Journeys,
            .. Work,
            .. Cartons.SelectMany(c => c.Fields),
            .. Packs.SelectMany(p => p.Fields),
            .. Cups.SelectMany(c => c.Fields),
            .. Carriers.SelectMany(c => c.Fields),
            .. Regions.SelectMany(r => r.Fields),
            .. Bands.SelectMany(b => new[] { b.Low, b.High }),
        ];
}
