using System.CommandLine;
using System.Globalization;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Laboratory.Column;
using Litterfall.Laboratory.Crew;
using Litterfall.Laboratory.Headspace;
using Litterfall.Laboratory.Light;
using Litterfall.Laboratory.Parcel;
using Litterfall.Physics.Soil;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall lab PART CASE.json</c>: bare experiments on one part of the engine.</summary>
internal static class LabCommand
{
    public static Command Create() =>
        new("lab", "Bare experiments on one part of the engine, set up from a small JSON file.")
        {
            Column(),
            Headspace(),
            Light(),
            Crew(),
            Parcel(),
        };

    private static Command Column()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("column", "Vertical flow of water in layered soil.") { path, json };
        // Another thread, so that Ctrl-C is heard while it computes.
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => RunColumn(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int RunColumn(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, ColumnForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            using var progress = new LabProgress();
            var outcome = ColumnLab.Run(reading.Value!, progress, cancel);
            progress.Dispose();
            if (outcome.Result.StoppedEarly is { } stop)
            {
                return Exit.NotSolved(json, Stopped(path, stop));
            }

            Console.Out.Write(json ? ColumnJson.Write(outcome) + "\n" : ColumnText.Write(outcome));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static Command Headspace()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("headspace", "Air, panes and wet soil surface of a lumped box.")
        {
            path,
            json,
        };
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => RunHeadspace(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int RunHeadspace(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, HeadspaceForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            using var progress = new LabProgress();
            progress.Begin(reading.Value!.Hours);
            var outcome = HeadspaceLab.Run(reading.Value!, progress.Past, cancel);
            progress.Dispose();
            if (outcome.StoppedEarly is { } stop)
            {
                var message = string.Create(
                    CultureInfo.InvariantCulture,
                    $"the run stopped at hour {stop.Hour:0.######}: {stop.Reason}"
                );
                return Exit.NotSolved(
                    json,
                    new TextFault(path, 1, 1, message, "milder coefficients or shorter steps")
                );
            }

            Console.Out.Write(json ? HeadspaceText.Json(outcome) + "\n" : HeadspaceText.Table(outcome));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static Command Light()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("light", "Light of lamps in a box: points, maps, where the flux ends.")
        {
            path,
            json,
        };
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => RunLight(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int RunLight(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, form => LightForm.Read(form, path));
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            var asked = reading.Value!;
            using var progress = new LabProgress();
            progress.Begin(asked.Lamps.Length);
            var outcome = LightLab.Run(asked, progress.Past, cancel);
            progress.Dispose();
            if (!outcome.IsFinite)
            {
                return Exit.NotSolved(
                    json,
                    new TextFault(path, 1, 1, "the light of a point is not a number", "a simpler box")
                );
            }

            Console.Out.Write(json ? LightText.Json(asked, outcome) + "\n" : LightText.Table(asked, outcome));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static Command Crew()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("crew", "A population of the clean-up crew, day by day.") { path, json };
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => RunCrew(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int RunCrew(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, form => CrewForm.Read(form, Shop.Embedded()));
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            using var progress = new LabProgress();
            progress.Begin(reading.Value!.Days);
            var outcome = CrewLab.Run(reading.Value!, progress.Past, cancel);
            progress.Dispose();
            if (outcome.StoppedEarly is { } stop)
            {
                var message = $"the run stopped on day {stop.Day}: {stop.Reason}";
                return Exit.NotSolved(
                    json,
                    new TextFault(path, 1, 1, message, "fewer days, a carryingCapacity or more removal")
                );
            }

            Console.Out.Write(json ? CrewText.Json(outcome) + "\n" : CrewText.Table(outcome));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static Command Parcel()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("parcel", "Heat in an insulated carton with packs, hour by hour.")
        {
            path,
            json,
        };
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => RunParcel(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int RunParcel(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, ParcelForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            using var progress = new LabProgress();
            progress.Begin(reading.Value!.Hours);
            var result = ParcelLab.Run(reading.Value!, progress.Past, cancel);
            progress.Dispose();
            if (result.Stop is { } stop)
            {
                return Exit.NotSolved(json, new TextFault(path, 1, 1, stop, "less heat, or a thinner wall"));
            }

            Console.Out.Write(json ? ParcelText.Json(result) + "\n" : ParcelText.Table(result));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static TextFault Stopped(string path, ColumnStop stop)
    {
        string message = string.Create(
            CultureInfo.InvariantCulture,
            $"the run stopped at hour {stop.Seconds / LabUnits.SecondsPerHour:0.######}, at a depth of "
                + $"{LabUnits.Cm(stop.DepthMeters):0.####} cm, where the water content misses by "
                + $"{(double.IsFinite(stop.Residual) ? stop.Residual : 1.0):0.0e+0}: {stop.Reason}"
        );
        return new TextFault(path, 1, 1, message, "a case in which the water can come and go as asked");
    }
}
