using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Litterfall.App.Files;
using Litterfall.App.Forecasts;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Faults;
using Litterfall.Forecasting.Climate;
using Litterfall.Laboratory.Column;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall forecast DESIGN --days N</c>.</summary>
internal static class ForecastCommand
{
    private const int LongestDays = 3660;
    private const int MostMembers = 256;
    private const int UsualMembers = 16;

    public static Command Create()
    {
        var design = Arguments.Design();
        var days = Whole("--days", "Days to run, 1 to 3660; 30 if left out.", 30, (1, LongestDays));
        var members = Whole(
            "--members",
            "Runs over what nobody measures, for the band; 16 if left out, 0 for none.",
            UsualMembers,
            (0, MostMembers)
        );
        var seed = Whole("--seed", "Seed of these runs; 1 if left out.", 1, (0, int.MaxValue));
        var from = Arguments.From("First day, as 2026-08-14; the design's planting day if left out.");
        var undrained = new Option<bool>("--undrained") { Description = "As if nobody drew the water off." };
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        Arguments.RefuseOptionsAsValues(days, members, seed, from);
        var command = new Command("forecast", "Water, air, fog and drain dates of a design, hour by hour.")
        {
            design,
            days,
            members,
            seed,
            from,
            undrained,
            json,
            workshop,
        };
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () =>
                        Run(
                            (parsed.GetValue(design)!, parsed.GetValue(workshop)),
                            (parsed.GetValue(days), parsed.GetValue(members), parsed.GetValue(seed)),
                            (Arguments.Day(parsed.GetValue(from)), !parsed.GetValue(undrained)),
                            parsed.GetValue(json),
                            cancel
                        ),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int Run(
        (string Design, string? Workshop) asked,
        (int Days, int Members, int Seed) how,
        (DateOnly? Day, bool IsDrained) from,
        bool json,
        CancellationToken cancel
    )
    {
        var watch = Stopwatch.StartNew();
        var reading = Shop.Design(asked.Design, asked.Workshop);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        var design = reading.Value!;
        var wish = new ForecastWish(from.Day ?? BoxRun.FirstDay(design), how.Days, how.Members, how.Seed)
        {
            IsDrained = from.IsDrained,
        };
        try
        {
            var forecast = Forecast(design, wish, cancel);
            if (forecast is null)
            {
                return Exit.NotSolved(
                    json,
                    Fault(
                        asked.Design,
                        "there is nothing to forecast",
                        "a floor with a soil whose water curve is known"
                    )
                );
            }

            if (forecast.Result.StoppedEarly is { } why)
            {
                return Exit.NotSolved(json, Fault(asked.Design, $"the run stopped {why}", "a milder design"));
            }

            Console.Out.Write(
                json
                    ? ForecastJson.Write(design, forecast, from.Day is null, watch.Elapsed.TotalMilliseconds)
                        + "\n"
                    : ForecastText.Write(design, forecast)
            );
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static DesignForecast? Forecast(CheckedDesign design, ForecastWish wish, CancellationToken cancel)
    {
        using var progress = new LabProgress();
        progress.Begin(24.0 * wish.Days);
        return DesignForecast.Of(design, wish, share => progress.Past(share * 24.0 * wish.Days), cancel);
    }

    private static TextFault Fault(string path, string message, string expected) =>
        new(path, 1, 1, message, expected);

    /// <summary>An option that takes a whole number of a range.</summary>
    internal static Option<int> Whole(string name, string means, int usual, (int Least, int Most) range)
    {
        var option = new Option<int>(name)
        {
            Description = means,
            HelpName = "N",
            DefaultValueFactory = _ => usual,
        };
        option.Validators.Add(result =>
        {
            if (
                result.Tokens.Count == 1
                && (
                    !int.TryParse(
                        result.Tokens[0].Value,
                        NumberStyles.None,
                        CultureInfo.InvariantCulture,
                        out var value
                    )
                    || value < range.Least
                    || value > range.Most
                )
            )
            {
                result.AddError(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"'{result.Tokens[0].Value}' is no whole number from {range.Least} to {range.Most}"
                    )
                );
            }
        });
        return option;
    }
}
