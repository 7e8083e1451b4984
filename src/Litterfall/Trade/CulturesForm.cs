using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Trees;
using Litterfall.Workshop.Cultures;

namespace Litterfall.App.Trade;

/// <summary>A case of <c>cultures</c>: mothers, a shelf, and cups wanted by day.</summary>
/// <param name="Split">Mothers and shelf.</param>
/// <param name="Orders">What is wanted.</param>
/// <param name="CupsByLine">Mothers of each line.</param>
public sealed record CulturesCase(
    SplitCase Split,
    ImmutableArray<CupOrder> Orders,
    ImmutableArray<int> CupsByLine
);

/// <summary>Reads a case of <c>cultures</c>.</summary>
/// <param name="library">The library of animals.</param>
public sealed class CulturesForm(Func<TradeCatalog> library)
{
    private const int MostDays = 731;
    private const int MostMothers = 60;
    private const int MostOrders = 40;
    private const int MostCups = 500;
    private const string DayForm = "yyyy-MM-dd";
    private static readonly NumberRange Temperature = new(-20.0, 50.0);
    private static readonly NumberRange Animals = new(1.0, 1e6);
    private static readonly NumberRange Liters = new(0.01, 100.0);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public CulturesCase? Read(TreeForm form)
    {
        var kind = Kind(form);
        var from = Day(form, "from");
        var (celsius, isList) = form.NumberOrNumbers("shelfC", Temperature, MostDays);
        var habits = Habits(form);
        var mothers = form.Objects("mothers", "a mother culture", MostMothers);
        var orders = form.Objects("orders", "cups that are wanted", MostOrders);
        if (form.IsGood && celsius.IsEmpty)
        {
            form.Refuse("shelfC", "there is no temperature", "a number, or one for each day");
        }

        var read = orders.Select(o => Order(o, from)).ToImmutableArray();
        if (kind is null || !form.IsGood)
        {
            _ = mothers.Select(m => Mother(m, null, 0)).ToList();
            form.Close();
            return null;
        }

        var cups = mothers.Select((m, i) => Mother(m, (kind, celsius[0]), i)).ToImmutableArray();
        form.Close();
        var twice = cups.OfType<MotherCups>().GroupBy(m => m.Name).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
        {
            form.Refuse("mothers", $"{TreeNode.Shown(twice.Key)} stands there twice", "every mother once");
        }

        if (!form.IsGood)
        {
            return null;
        }

        var few = cups.OfType<MotherCups>().ToImmutableArray();
        double On(DateOnly day) =>
            isList ? celsius[Math.Clamp(day.DayNumber - from.DayNumber, 0, celsius.Length - 1)] : celsius[0];
        return new(
            habits(
                new()
                {
                    Kind = kind,
                    Mothers = few,
                    Celsius = On,
                    From = from,
                }
            ),
            read,
            [.. few.GroupBy(m => m.Line, StringComparer.Ordinal).Select(g => g.Sum(m => m.Count))]
        );
    }

    /// <summary>What a workshop does otherwise than most.</summary>
    private static Func<SplitCase, SplitCase> Habits(TreeForm form)
    {
        var failing = form.OptionalNumber("failPercent", NumberRange.UpTo(90.0));
        var rest = form.OptionalWhole("conditioningDays", 0, 60);
        var share = form.OptionalNumber("splitPercent", new NumberRange(1.0, 95.0));
        return split =>
            split with
            {
                Failing = failing / 100.0 ?? split.Failing,
                Conditioning = rest ?? split.Conditioning,
                Share = share / 100.0 ?? split.Share,
            };
    }

    private CultureKind? Kind(TreeForm form)
    {
        if (form.Text("species") is not { } name)
        {
            return null;
        }

        var catalog = library();
        if (catalog.Find<CrewEntry>(name) is { } entry && CultureKind.From(entry) is { } kind)
        {
            return kind;
        }

        var known = catalog.Of<CrewEntry>().Select(e => e.Key).Order(StringComparer.Ordinal);
        form.Refuse(
            "species",
            $"the library has no crew animal {TreeNode.Shown(name)}",
            $"one of {string.Join(", ", known)}"
        );
        return null;
    }

    private static MotherCups? Mother(TreeForm mother, (CultureKind Kind, double Celsius)? on, int i)
    {
        var line = mother.OptionalText("line") ?? "A";
        var name = mother.OptionalText("name")
            ?? string.Create(CultureInfo.InvariantCulture, $"{line}{i + 1}");
        var count = mother.OptionalWhole("count", 1, MostCups) ?? 1;
        var animals = mother.Number("animals", Animals);
        var liters = mother.Number("liters", Liters);
        var adults = mother.Flag("adultsOnly", false);
        mother.Close();
        return on is { } kind && double.IsFinite(animals) && double.IsFinite(liters)
            ? new(name, line, count, CultureRun.Start(kind.Kind, animals, adults, liters, kind.Celsius))
            : null;
    }

    private static CupOrder Order(TreeForm order, DateOnly from)
    {
        var day = Day(order, "date");
        if (order.IsGood && day < from)
        {
            order.Refuse("date", "the cups are wanted before the first day", "a day from the first one on");
        }

        var name = order.OptionalText("name") ?? "";
        var read = new CupOrder(
            name,
            day,
            order.Whole("cups", 1, MostCups),
            order.Number("animals", Animals),
            order.Number("liters", Liters)
        );
        order.Close();
        return read;
    }

    private static DateOnly Day(TreeForm form, string key)
    {
        const string expected = "a day such as 2026-08-14";
        if (form.Text(key) is not { } text)
        {
            return default;
        }

        if (
            DateOnly.TryParseExact(
                text,
                DayForm,
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            ) && day.Year is >= 1900 and <= 2200
        )
        {
            return day;
        }

        form.Refuse(key, $"{TreeNode.Shown(text)} is no day", expected);
        return default;
    }
}
