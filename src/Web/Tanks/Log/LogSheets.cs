using System.Collections.Immutable;
using System.Text.Json;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;

namespace Litterfall.Web.Tanks.Log;

/// <summary>Makes what the log page of a phone works with.</summary>
/// <param name="view">The tanks.</param>
/// <param name="telling">Words in the units of the browser.</param>
internal sealed class LogSheets(TankView view, CareTelling telling)
{
    private const int MostRepeats = 3;
    private const int LinesKept = 12;

    /// <summary>The whole sheet.</summary>
    public LogSheet Make() =>
        new(
            [.. view.Running.Select(Tank)],
            [.. CareForm.All.Select(Form)],
            [
                .. view
                    .Catalog.Of<AnimalEntry>()
                    .OrderBy(a => a.Name, StringComparer.Ordinal)
                    .Select(a => new LogName(a.Key, a.Name)),
            ]
        );

    /// <summary>Word of a kind, as it is sent.</summary>
    /// <param name="kind">The kind.</param>
    public static string Word(CareKind kind) => JsonNamingPolicy.KebabCaseLower.ConvertName($"{kind}");

    private LogTank Tank(Tank tank)
    {
        var lines = view.Care[tank.Code].ToImmutableArray();
        var animals = AnimalCounts.Find(lines).Where(a => a.Count > 0).ToImmutableArray();
        return new(
            tank.Code,
            tank.Label.Length > 0 ? tank.Label : null,
            tank.Name,
            view.PlaceOf(tank),
            string.Join(
                ", ",
                animals.Select(a => CareTelling.Count(a.Count, view.NameOf(a.Species)))
            ),
            [.. animals.Select(a => a.Species)],
            lines
                .Where(l => l.Amount is not null)
                .GroupBy(l => l.Kind)
                .ToDictionary(g => Word(g.Key), IReadOnlyList<double> (g) => Repeats(g)),
            [
                .. lines
                    .Reverse()
                    .Take(LinesKept)
                    .Select(l => new LogLine(l.Key, l.At, telling.Tell(l), l.Who)),
            ]
        );
    }

    /// <summary>What was written last, each amount once.</summary>
    private static ImmutableArray<double> Repeats(IEnumerable<CareEntry> lines) =>
        [.. lines.Reverse().Select(l => l.Amount!.Value).Distinct().Take(MostRepeats)];

    private LogForm Form(CareForm form)
    {
        var unit = form.Kept is null ? null : telling.Unit(form);
        var factor = unit is null ? 1 : form.Keep(1, unit) - form.Keep(0, unit);
        return new(
            Word(form.Kind),
            form.Button,
            form.Past,
            unit is null ? Said(form.Counted) : CareTelling.Symbol(unit),
            factor,
            unit is null ? 0 : form.Say(0, unit),
            unit is null ? 0 : CareTelling.Places(unit),
            unit is not null || form.Counted.Length > 0 || form.IsOfAnimals,
            form.MayBeEmpty,
            form.IsOfAnimals,
            Said(form.Words),
            Said(form.OtherParty)
        );
    }

    private static string? Said(string words) => words.Length > 0 ? words : null;
}
