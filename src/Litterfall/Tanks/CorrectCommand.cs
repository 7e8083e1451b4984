using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trees;
using Litterfall.Forecasting.Climate;
using Litterfall.Laboratory.Cases;
using Litterfall.Laboratory.Column;
using Litterfall.Running.Correcting;

namespace Litterfall.App.Tanks;

/// <summary><c>litterfall correct DESIGN --readings FILE.json</c>.</summary>
internal static class CorrectCommand
{
    private const int LongestDays = 1200;
    private const int MostMembers = 512;
    private const int LeastMembers = 16;
    private const int UsualMembers = 64;

    private sealed record Readings(IReadOnlyList<TankReading> All);

    private sealed record Asked(string Design, string? Workshop, string ReadingsFile, DateOnly? From);

    public static Command Create()
    {
        var design = Arguments.Design();
        var readings = new Option<string>("--readings")
        {
            Description = "A file with the readings of the tank (*.json).",
            HelpName = "FILE",
            Required = true,
        };
        var (members, seed, days) = (Members(), Seed(), Days());
        var from = Arguments.From("First day, as 2026-08-14; the design's planting day if left out.");
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        Arguments.RefuseOptionsAsValues(readings, members, seed, days, from);
        var command = new Command(
            "correct",
            "Forecast of a tank before and after its readings, and what to measure next."
        )
        {
            design,
            readings,
            members,
            seed,
            days,
            from,
            json,
            workshop,
        };
        // Another thread, so that Ctrl-C is heard while it computes.
        command.SetAction(
            (parsed, cancel) =>
            {
                var asked = new Asked(
                    parsed.GetValue(design)!,
                    parsed.GetValue(workshop),
                    parsed.GetValue(readings)!,
                    Arguments.Day(parsed.GetValue(from))
                );
                var wish = new CorrectionWish(
                    parsed.GetValue(members),
                    parsed.GetValue(seed),
                    parsed.GetValue(days)
                );
                return Task.Run(
                    () => Run(asked, wish, parsed.GetValue(json), cancel),
                    CancellationToken.None
                );
            }
        );
        return command;
    }

    private static Option<int> Members() =>
        ForecastCommand.Whole(
            "--members",
            "Runs over what nobody measures; 64 if left out.",
            UsualMembers,
            (LeastMembers, MostMembers)
        );

    private static Option<int> Seed() =>
        ForecastCommand.Whole("--seed", "Seed of these runs; 1 if left out.", 1, (0, int.MaxValue));

    private static Option<int> Days() =>
        ForecastCommand.Whole(
            "--days",
            "Days to run; sixty after the last reading if left out.",
            0,
            (0, LongestDays)
        );

    private static int Run(Asked asked, CorrectionWish wish, bool json, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var read = Shop.Design(asked.Design, asked.Workshop);
        if (!read.IsGood)
        {
            return Exit.Unusable(json, [.. read.Faults]);
        }

        var design = read.Value!;
        var setup = new BoxSetup(design) { Cancel = cancel };
        var planted = asked.From ?? BoxRun.FirstDay(design);
        var bounds = new ReadingBounds(
            planted.ToDateTime(TimeOnly.MinValue),
            1000 * setup.Box.InsideHeight.Si
        );
        var readings = CaseFile.Read(asked.ReadingsFile, form => Read(form, bounds));
        if (!readings.IsGood || readings.Value is null)
        {
            return Exit.Unusable(json, [.. readings.Faults]);
        }

        var tank = TankCase.From(setup, [.. readings.Value.All], planted);
        try
        {
            return Told(asked, (tank, planted, wish), json, (watch, cancel));
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static int Told(
        Asked asked,
        (TankCase Tank, DateOnly Planted, CorrectionWish Wish) of,
        bool json,
        (Stopwatch Watch, CancellationToken Cancel) by
    )
    {
        if (Corrected(of.Tank, of.Wish, by.Cancel) is not { } corrected)
        {
            return Exit.NotSolved(
                json,
                new(
                    asked.Design,
                    1,
                    1,
                    "there is no forecast to correct",
                    "a floor with a soil whose water curve is known, and a climate that can be computed"
                )
            );
        }

        var design = of.Tank.Design;
        var hasOwnDate = asked.From is null && design.Design.Planted is null;
        var notes = CorrectText.Notes(of.Tank, corrected, of.Planted, hasOwnDate);
        Console.Out.Write(
            json
                ? CorrectText.Json(corrected, of.Planted, notes, by.Watch.Elapsed.TotalMilliseconds) + "\n"
                : CorrectText.Lines(design, corrected, notes)
        );
        return Exit.Done;
    }

    private static Readings? Read(TreeForm form, ReadingBounds bounds)
    {
        var readings = ReadingsForm.Read(form, bounds);
        form.Close();
        return form.IsGood ? new(readings) : null;
    }

    private static TankCorrection? Corrected(TankCase tank, CorrectionWish wish, CancellationToken cancel)
    {
        using var progress = new LabProgress();
        progress.Begin(1);
        return Corrector.Run(tank, wish, progress.Past, cancel);
    }
}
