using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Cultures;

/// <summary>A need that is short, and the plan that makes up for it, or what would.</summary>
/// <param name="Cover">The need and what it gets.</param>
/// <param name="Plan">Splits that make the rest, or why none do.</param>
public sealed record ShortNeed(NeedCover Cover, SplitPlan Plan);

/// <summary>
/// Cultures, feeders and those who eat them as they stand on a day, with everything that follows.
/// </summary>
public sealed class CultureBook
{
    private const double UsualCelsius = 22;
    private readonly Dictionary<string, CultureKind?> kinds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CultureCurve> curves = new(StringComparer.Ordinal);
    private readonly Lazy<ImmutableArray<NeedCover>> covers;
    private readonly Lazy<ImmutableArray<ShortNeed>> shorts;
    private readonly Lazy<ImmutableArray<FlyForecast>> flies;

    /// <summary>Reads it all together.</summary>
    /// <param name="cultures">All cultures; those whose lot is used up or on hold count as such.</param>
    /// <param name="shelves">Shelves.</param>
    /// <param name="fed">Animals in care.</param>
    /// <param name="needs">Cups that accepted orders need.</param>
    /// <param name="at">Library, book of stock and today.</param>
    public CultureBook(
        IEnumerable<Culture> cultures,
        IEnumerable<CultureShelf> shelves,
        IEnumerable<FedGroup> fed,
        IEnumerable<CultureNeed> needs,
        (TradeCatalog Catalog, StockBook Stock, DateOnly Today) at
    )
    {
        (Catalog, Stock, Today) = at;
        Cultures =
        [
            .. cultures
                .Select(Settled)
                .OrderBy(c => c.Species, StringComparer.Ordinal)
                .ThenBy(c => c.Line, StringComparer.Ordinal)
                .ThenBy(c => c.Since)
                .ThenBy(c => c.Number, StringComparer.Ordinal),
        ];
        Shelves = [.. shelves.OrderBy(s => s.Name, StringComparer.Ordinal)];
        Fed = [.. fed.OrderBy(f => f.Tank, StringComparer.Ordinal)];
        Needs = [.. needs];
        covers = new(() =>
            CultureCover.Find(Needs.Where(n => Kind(n.Species) is not null), Curves, MadeFor, Today)
        );
        shorts = new(() => [.. Covers.Where(c => c.Missing > 0).Select(Made)]);
        flies = new(() => [.. Forecasts()]);
    }

    /// <summary>The library.</summary>
    public TradeCatalog Catalog { get; }

    /// <summary>The book of stock.</summary>
    public StockBook Stock { get; }

    /// <summary>Today.</summary>
    public DateOnly Today { get; }

    /// <summary>All cultures.</summary>
    public ImmutableArray<Culture> Cultures { get; }

    /// <summary>Shelves by name.</summary>
    public ImmutableArray<CultureShelf> Shelves { get; }

    /// <summary>Animals in care by tank.</summary>
    public ImmutableArray<FedGroup> Fed { get; }

    /// <summary>Cups that accepted orders need.</summary>
    public ImmutableArray<CultureNeed> Needs { get; }

    /// <summary>Cultures that stand.</summary>
    public IEnumerable<Culture> Standing => Cultures.Where(c => c.IsStanding);

    /// <summary>Standing cultures of crew animals as the model leads them.</summary>
    public IEnumerable<CultureCurve> Curves => Standing.Where(c => Kind(c.Species) is not null).Select(Curve);

    /// <summary>Needs of crew animals and what they get.</summary>
    public ImmutableArray<NeedCover> Covers => covers.Value;

    /// <summary>Needs that are short, with what can be done.</summary>
    public ImmutableArray<ShortNeed> Shorts => shorts.Value;

    /// <summary>Forecasts of flies, one for each feeder that is eaten or bred.</summary>
    public ImmutableArray<FlyForecast> Flies => flies.Value;

    /// <summary>Rations of the animals that are here today.</summary>
    public IEnumerable<Ration> Rations =>
        Fed.Where(f => f.IsHere(Today)).Select(f => RationTable.For(f, Catalog));

    /// <summary>A crew animal as it is bred; null for feeders and what the library does not have.</summary>
    /// <param name="species">Its key.</param>
    public CultureKind? Kind(string species)
    {
        if (!kinds.TryGetValue(species, out var kind))
        {
            kind = kinds[species] = Catalog.Find<CrewEntry>(species) is { } entry
                ? CultureKind.From(entry)
                : null;
        }

        return kind;
    }

    /// <summary>A culture by its number; null where there is none.</summary>
    /// <param name="number">Its number.</param>
    public Culture? Find(string number) => Cultures.FirstOrDefault(c => c.Number == number);

    /// <summary>Name of an animal.</summary>
    /// <param name="species">Its key.</param>
    public string NameOf(string species) => Catalog.Find(species)?.CommonFirst ?? species;

    /// <summary>Mean temperature of a day where a culture stands, °C.</summary>
    /// <param name="culture">The culture; null for the first shelf.</param>
    /// <param name="day">The day.</param>
    public double Celsius(Culture? culture, DateOnly day) =>
        (Shelves.FirstOrDefault(s => s.Key == culture?.Shelf) ?? Shelves.FirstOrDefault())?.CelsiusOn(day)
        ?? UsualCelsius;

    /// <summary>A culture of a crew animal as the model leads it, two months ahead.</summary>
    /// <param name="culture">The culture.</param>
    public CultureCurve Curve(Culture culture)
    {
        const int ahead = 60;
        if (!curves.TryGetValue(culture.Number, out var curve))
        {
            curve = curves[culture.Number] = CultureCurve.Lead(
                Kind(culture.Species)!,
                culture,
                day => Celsius(culture, day),
                Today.AddDays(ahead),
                Today
            );
        }

        return curve;
    }

    /// <summary>Odds of the cultures of a species.</summary>
    /// <param name="species">Its key.</param>
    public (ImmutableArray<ImmutableArray<Culture>> Groups, CrashRisk Risk) Odds(string species)
    {
        var groups = CrashRisk.Groups([.. Cultures.Where(c => c.Species == species)]);
        return (
            groups,
            CrashRisk.Find(
                groups.Select(g => g.Length),
                CulturePractice.LineLoss.Si,
                CulturePractice.Failing.Si
            )
        );
    }

    /// <summary>Needs that have fewer cups than they would have with a line that is out.</summary>
    /// <param name="species">Catalog key.</param>
    /// <param name="line">The line.</param>
    /// <returns>Needs with the cups they lost to it.</returns>
    public IEnumerable<(NeedCover Cover, int Lost)> LostWith(string species, string line)
    {
        var gone = Lineage.OfLine(Cultures, species, line).Select(c => c.Number).ToHashSet();
        var with = CultureCover.Find(
            Needs.Where(n => n.Species == species),
            Cultures
                .Where(c => c.Species == species && (c.IsStanding || gone.Contains(c.Number)))
                .Select(c =>
                    gone.Contains(c.Number) && c.End?.Reason != CultureEnd.GoneOut
                        ? c with
                        {
                            End = null,
                            Held = "",
                        }
                        : c
                )
                .Select(c => CultureCurve.Lead(Kind(species)!, c, day => Celsius(c, day), Last(c), Today)),
            MadeFor,
            Today
        );
        return Covers
            .Where(c => c.Need.Species == species)
            .Zip(with)
            .Where(p => p.First.Missing > p.Second.Missing)
            .Select(p => (p.First, p.First.Missing - p.Second.Missing));
    }

    /// <summary>Plans splits for cups of a species from its mothers as they stand.</summary>
    /// <param name="species">Its key.</param>
    /// <param name="orders">What is wanted.</param>
    /// <param name="cancel">Ends the search.</param>
    public ImmutableArray<SplitPlan> Plan(
        string species,
        IEnumerable<CupOrder> orders,
        CancellationToken cancel = default
    )
    {
        var kind = Kind(species)!;
        var mothers = CultureCover
            .Backups(Curves.Where(c => c.Culture.Species == species), MadeFor, Today)
            .OrderBy(c => c.Culture.Line, StringComparer.Ordinal)
            .ThenBy(c => c.Culture.Number, StringComparer.Ordinal)
            .Select(c => new MotherCups(
                c.Culture.Number,
                c.Culture.Line,
                1,
                CultureCurve.StateOn(kind, c.Culture, day => Celsius(c.Culture, day), Today)
            ));
        var first = Standing.FirstOrDefault(c => c.Species == species);
        return SplitSearch.Find(
            new()
            {
                Kind = kind,
                Mothers = [.. mothers],
                Celsius = day => Celsius(first, day),
                From = Today,
            },
            orders,
            cancel
        );
    }

    private int? MadeFor(Culture culture) => Stock.Find(culture.Number)?.Lot.Order;

    private DateOnly Last(Culture culture)
    {
        const int ahead = 60;
        return culture.Since > Today ? culture.Since : Today.AddDays(ahead);
    }

    private ShortNeed Made(NeedCover cover)
    {
        var need = cover.Need;
        var order = new CupOrder(need.Item, need.Day, cover.Missing, need.Animals, need.Liters);
        return new(cover, Plan(need.Species, [order])[0]);
    }

    private IEnumerable<FlyForecast> Forecasts()
    {
        var keys = Fed.Where(f => f.Until is null || f.Until >= Today)
            .Select(f => f.Feeder)
            .Concat(Standing.Select(c => c.Species))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
        foreach (var key in keys)
        {
            if (Catalog.Find<FeederEntry>(key) is { } entry && FlyKind.From(entry) is { } kind)
            {
                var eaten = Fed.Where(f => f.Feeder == key)
                    .Select(f => (Group: f, RationTable.For(f, Catalog).FliesPerDay))
                    .ToList();
                yield return FlyForecast.Find(
                    kind,
                    Standing,
                    Celsius,
                    day => eaten.Where(e => e.Group.IsHere(day)).Sum(e => e.FliesPerDay ?? 0),
                    (Today, FlyForecast.Ahead)
                );
            }
        }
    }

    /// <summary>What the book of stock says of the lot of a culture counts.</summary>
    private Culture Settled(Culture culture)
    {
        if (culture.End is not null || Stock.Find(culture.Number) is not { } lot)
        {
            return culture;
        }

        if (!lot.HasSome)
        {
            var last = lot.Standing.LastOrDefault(l => l.Line.Effect < 0);
            return culture with
            {
                End = new(
                    last?.Line.Day ?? Today,
                    last?.Line.Kind is MovementKind.Scrapped or MovementKind.Died
                        ? CultureEnd.Old
                        : CultureEnd.GoneOut,
                    last?.Line.Note ?? "",
                    last?.Line.Who ?? ""
                ),
            };
        }

        return lot.IsHeld && culture.Held.Length == 0
            ? culture with
            {
                Held = lot.Lines.LastOrDefault(l => l.Line.Kind == MovementKind.Held)?.Line.Note
                    is { Length: > 0 } note
                    ? note
                    : "on hold",
            }
            : culture;
    }
}
