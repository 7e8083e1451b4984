using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Correcting;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Forecasts;

/// <summary>
/// The forecast of one tank before and after its readings, what was learned, and what to measure next.
/// </summary>
public sealed partial class ForecastPage : ComponentBase
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private TankView? view;
    private Tank? tank;
    private TankCase? known;
    private string? why;
    private LevelPicture? picture;
    private TankCorrection? drawn;
    private IDisposable? care;

    /// <summary>Number of the tank, or of its label.</summary>
    [Parameter]
    public string Code { get; set; } = "";

    private CorrectionRun? Run => tank is null ? null : Runs.Find(tank.Code);

    private TankCorrection? Result => Run?.Result;

    /// <summary>True where the log has grown since the last correction.</summary>
    private bool IsOld =>
        Run is not { } run
        || known is null
        || run.Result is null
        || !run.Tank.Readings.SequenceEqual(known.Readings);

    private string Counted =>
        known is not { } all ? ""
        : all.Readings.IsEmpty ? "No readings yet: write the level in the log when you read it."
        : string.Create(
            Invariant,
            $"{all.Readings.Length} {(all.Readings.Length == 1 ? "reading" : "readings")} in the log"
                + $"{(IsOld && Result is not null ? "; the log has changed since" : "")}"
        );

    private IEnumerable<(ParameterBand Was, ParameterBand Now)> Parameters =>
        Result!.Before.Parameters.Zip(Result.After.Parameters);

    private IReadOnlyList<DueDate> Due =>
        TankOutlook.Due(
            Result!.First,
            Result.After.NextDrain,
            null,
            Run!.Tank.Readings.LastOrDefault(r => r.Kind == ReadingKind.Level) is { } last
                ? DateOnly.FromDateTime(last.At)
                : null
        );

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Runs.Changed += Told;
        care = Store.WatchCare(grown =>
        {
            if (grown == tank?.Code)
            {
                _ = InvokeAsync(LoadAsync);
            }
        });
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await LoadAsync();
        if (Run is null)
        {
            Recompute();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Runs.Changed -= Told;
        care?.Dispose();
    }

    private void Told(object? sender, EventArgs e) =>
        _ = InvokeAsync(() =>
        {
            Draw();
            StateHasChanged();
        });

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        tank = view.Find(Code)?.Value;
        if (tank is not null)
        {
            (known, why) = await Cases.LoadAsync(view, tank);
        }

        Draw();
        StateHasChanged();
    }

    private void Draw()
    {
        if (Result is { } result && !ReferenceEquals(result, drawn))
        {
            picture = new LevelPicture(result, Run!.Tank.DrainMillimeters);
            drawn = result;
        }
    }

    private void Recompute()
    {
        if (tank is not null && known is not null)
        {
            _ = Runs.StartAsync(tank.Code, known);
        }
    }

    private string Page(string part) => $"/tanks/{Uri.EscapeDataString(tank!.Code)}{part}";

    private string Drain(CorrectedSide side)
    {
        if (side.NextDrain is not { } drain)
        {
            return string.Create(Invariant, $"none within {Result!.Days} days");
        }

        string On(double day) => Result!.First.AddDays((int)Math.Floor(day)).ToString("MMM d", Invariant);
        return drain.High is { } high
            ? $"{On(drain.Day)} (between {On(drain.Low)} and {On(high)})"
            : $"{On(drain.Day)} (from {On(drain.Low)} on)";
    }

    private static string Band(ParameterBand band)
    {
        var form = Math.Abs(band.Mean) >= 10 ? "0" : "0.00";
        string Shown(double value) => value.ToString(form, Invariant);
        return $"{Shown(band.Mean)} ({Shown(band.Low)}–{Shown(band.High)})";
    }
}
