using System.Collections.Frozen;
using PublicHoliday;

namespace Litterfall.Dispatch.Regions;

/// <summary>
/// Public holidays by country, from a kept library. They are the days on which people rest by law; whether a
/// carrier drives on them is its own matter, so every region can add days and take days out.
/// </summary>
public static class HolidayLibrary
{
    private static readonly FrozenDictionary<string, Func<string, IPublicHolidays?>> Countries =
        new Dictionary<string, Func<string, IPublicHolidays?>>(StringComparer.OrdinalIgnoreCase)
        {
            ["AT"] = Whole(() => new AustriaPublicHoliday()),
            ["AU"] = Parted<AustraliaPublicHoliday.States>(
                () => new AustraliaPublicHoliday(),
                s => new AustraliaPublicHoliday { State = s }
            ),
            ["BE"] = Whole(() => new BelgiumPublicHoliday()),
            ["BR"] = Whole(() => new BrazilPublicHoliday()),
            ["CA"] = part =>
                part.Length is 0 or 2 && part.All(char.IsAsciiLetter)
                    ? part.Length == 0
                        ? new CanadaPublicHoliday()
                        : new CanadaPublicHoliday(part.ToUpperInvariant())
                    : null,
            ["CH"] = Parted<SwitzerlandPublicHoliday.Cantons>(
                () => new SwitzerlandPublicHoliday(),
                c => new SwitzerlandPublicHoliday { Canton = c }
            ),
            ["CZ"] = Whole(() => new CzechRepublicPublicHoliday()),
            ["DE"] = Parted<GermanPublicHoliday.States>(
                () => new GermanPublicHoliday(),
                s => new GermanPublicHoliday { State = s }
            ),
            ["DK"] = Whole(() => new DenmarkPublicHoliday()),
            ["EE"] = Whole(() => new EstoniaPublicHoliday()),
            ["ES"] = Whole(() => new SpainPublicHoliday()),
            ["FI"] = Whole(() => new FinlandPublicHoliday()),
            ["FR"] = Parted<FrancePublicHoliday.Regions>(
                () => new FrancePublicHoliday(),
                r => new FrancePublicHoliday { Region = r }
            ),
            ["GB"] = Parted<UKBankHoliday.UkCountries>(
                () => new UKBankHoliday(),
                c => new UKBankHoliday { UkCountry = c }
            ),
            ["GR"] = Whole(() => new GreecePublicHoliday()),
            ["HR"] = Whole(() => new CroatiaPublicHoliday()),
            ["HU"] = Whole(() => new HungaryPublicHoliday()),
            ["IE"] = Whole(() => new IrelandPublicHoliday()),
            ["IT"] = Whole(() => new ItalyPublicHoliday()),
            ["JP"] = Whole(() => new JapanPublicHoliday()),
            ["KZ"] = Whole(() => new KazakhstanPublicHoliday()),
            ["LT"] = Whole(() => new LithuaniaPublicHoliday()),
            ["LU"] = Whole(() => new LuxembourgPublicHoliday()),
            ["LV"] = Whole(() => new LatviaPublicHoliday()),
            ["ME"] = Whole(() => new MontenegroPublicHoliday()),
            ["MX"] = Whole(() => new MexicoPublicHoliday()),
            ["NL"] = Whole(() => new DutchPublicHoliday()),
            ["NO"] = Whole(() => new NorwayPublicHoliday()),
            ["NZ"] = Whole(() => new NewZealandPublicHoliday()),
            ["PL"] = Whole(() => new PolandPublicHoliday()),
            ["PT"] = Parted<PortugalPublicHoliday.Regions>(
                () => new PortugalPublicHoliday(),
                r => new PortugalPublicHoliday { Region = r }
            ),
            ["RO"] = Whole(() => new RomanianPublicHoliday()),
            ["RS"] = Whole(() => new SerbianPublicHoliday()),
            ["SE"] = Whole(() => new SwedenPublicHoliday()),
            ["SI"] = Whole(() => new SloveniaPublicHoliday()),
            ["SK"] = Whole(() => new SlovakiaPublicHoliday()),
            ["TR"] = Whole(() => new TurkeyPublicHoliday()),
            ["US"] = Whole(() => new USAPublicHoliday()),
            ["ZA"] = Whole(() => new SouthAfricaPublicHoliday()),
        }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Countries that are known, in the order of their codes.</summary>
    public static IEnumerable<string> Known => Countries.Keys.Order(StringComparer.Ordinal);

    /// <summary>Why a country or its part cannot be used, in one sentence; empty where it can.</summary>
    /// <param name="country">ISO 3166 code; empty for none.</param>
    /// <param name="part">Part of the country; empty for the whole.</param>
    public static string Refusal(string country, string part)
    {
        if (country.Length == 0)
        {
            return "";
        }

        if (!Countries.TryGetValue(country, out var make))
        {
            return $"No holidays are known for the country “{country}”; expected one of "
                + $"{string.Join(", ", Known)}, or none and your own days.";
        }

        return make(part) is null
            ? $"No part “{part}” with holidays of its own is known in {country.ToUpperInvariant()}; "
                + "leave it empty for the whole country and add your own days."
            : "";
    }

    /// <summary>Holidays of a year by day; none for an unknown country.</summary>
    /// <param name="country">ISO 3166 code.</param>
    /// <param name="part">Part of the country; empty for the whole.</param>
    /// <param name="year">The year.</param>
    public static IReadOnlyDictionary<DateOnly, string> Year(string country, string part, int year)
    {
        var days = new Dictionary<DateOnly, string>();
        if (Countries.TryGetValue(country, out var make) && make(part) is { } holidays)
        {
            foreach (var (day, name) in holidays.PublicHolidayNames(year))
            {
                days[DateOnly.FromDateTime(day)] = name;
            }
        }

        return days;
    }

    private static Func<string, IPublicHolidays?> Whole(Func<IPublicHolidays> make) =>
        part => part.Length == 0 ? make() : null;

    private static Func<string, IPublicHolidays?> Parted<T>(
        Func<IPublicHolidays> whole,
        Func<T, IPublicHolidays> make
    )
        where T : struct, Enum =>
        part =>
            part.Length == 0 ? whole()
            : !char.IsAsciiDigit(part[0]) && Enum.TryParse<T>(part, ignoreCase: true, out var known)
                ? make(known)
            : null;
}
