using System.Globalization;
using System.Text;
using Litterfall.Dispatch.Regions;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.App.Shipping;

/// <summary>The answer of <c>ship</c> for people: the week at a glance, then why.</summary>
internal static class ShipText
{
    private const int DayWidth = 16;
    private const string Caution =
        "Check your carrier's and your authority's rules; this sheet does not decide them.\n";

    /// <summary>The lines.</summary>
    public static string Lines(ShipCase asked, WeekVerdict week)
    {
        var text = new StringBuilder();
        if (week is { BandLowCelsius: { } low, BandHighCelsius: { } high })
        {
            text.Append(
                $"Class {week.Class}, keep {VerdictWords.Celsius(low)} to {VerdictWords.Celsius(high)} "
            );
            text.Append("inside. Class limits are from memory, source not checked.\n\n");
        }

        foreach (var day in week.Days)
        {
            var mark = day.Day == asked.Day ? ">" : " ";
            var name = CalendarWords.Day(day.Day).PadRight(DayWidth);
            text.Append($"{mark} {name}{VerdictWords.Verdict(day.Verdict).PadRight(20)}");
            text.Append(
                day is { MayShip: true, Arrives: { } on } ? $"arrives {CalendarWords.Day(on)}\n" : "\n"
            );
        }

        text.Append($"\nNext day that works: {Next(week)}. ");
        text.Append($"Next day that needs neither pack nor depot: {Named(week.NextPlainDay)}.\n");
        foreach (var day in week.Days.Where(d => asked.Day is null || d.Day == asked.Day))
        {
            Why(text, asked, day);
        }

        foreach (var note in asked.Notes)
        {
            text.Append($"\n{note}");
        }

        return text.Append($"\n{Caution}").ToString();
    }

    private static string Named(DateOnly? day) => day is { } on ? CalendarWords.Day(on) : "none of these";

    private static string Next(WeekVerdict week) =>
        week.Days.FirstOrDefault(d => d.Day == week.NextDayOnceDone) is { } day
            ? $"{CalendarWords.Day(day.Day)}, {OpenTasks.Once(day)}"
            : Named(week.NextDay);

    private static void Why(StringBuilder text, ShipCase asked, DayVerdict day)
    {
        text.Append($"\n{CalendarWords.Day(day.Day)}: {VerdictWords.Verdict(day.Verdict)}\n");
        foreach (var rule in day.Rules.Where(r => r.Verdict > ShipVerdict.Ship || IsShown(r.Rule)))
        {
            text.Append($"  {VerdictWords.Rule(rule.Rule).PadRight(20)}{rule.Words}\n");
        }

        foreach (var reason in day.Reasons)
        {
            text.Append($"  - {reason.Text}{(reason.Cure.Length > 0 ? $" Cure: {reason.Cure}" : "")}\n");
        }

        if (day.Choice is { } choice)
        {
            Packing(text, asked, choice);
        }
    }

    private static bool IsShown(ShipRule rule) =>
        rule is ShipRule.PublishedGuide or ShipRule.ClassBands or ShipRule.Journey;

    private static void Packing(StringBuilder text, ShipCase asked, PackChoice choice)
    {
        var rules = asked.Task.Rules;
        var carton = rules.Cartons.FirstOrDefault(c => c.Key == choice.Carton)?.Name ?? choice.Carton;
        var packs = choice
            .Packs.Select(u =>
                rules.Packs.FirstOrDefault(p => p.Key == u.Pack) is { } pack
                    ? VerdictWords.Pack(u, pack)
                    : u.Pack
            )
            .DefaultIfEmpty("no pack");
        text.Append($"  Packing: {carton}, {string.Join(", ", packs)}, ");
        text.Append($"handed over at {CalendarWords.Hour(choice.HandOverHour)}.\n");
        if (choice.Hours.Count > 0)
        {
            var (cold, warm) = (choice.Hours.MinBy(h => h.Low)!, choice.Hours.MaxBy(h => h.High)!);
            var (least, most) = (VerdictWords.Celsius(cold.Low), VerdictWords.Celsius(warm.High));
            text.Append(
                CultureInfo.InvariantCulture,
                $"  Inside, nine of ten of {choice.Journeys} journeys: at least {least} "
            );
            text.Append(
                CultureInfo.InvariantCulture,
                $"({cold.Hour:0} h after hand-over), at most {most} ({warm.Hour:0} h).\n"
            );
        }
    }
}
