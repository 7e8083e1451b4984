using System.Globalization;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Diagnosis.Finding;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Faults;

/// <summary>Causes with their reasons, the next check, and what was no evidence.</summary>
public sealed partial class FaultFindings : ComponentBase
{
    private const double Least = 0.04;
    private const int Most = 5;

    /// <summary>What is thought.</summary>
    [Parameter, EditorRequired]
    public required FaultAnswer Answer { get; set; }

    /// <summary>What was asked.</summary>
    [Parameter, EditorRequired]
    public required FaultQuestion Question { get; set; }

    private string Used =>
        $"Used: {NumberText.Count(Question.Levels, "reading by hand", "readings by hand")} and "
        + $"{NumberText.Count(Question.Channels, "logger channel", "logger channels")}.";

    private static string Percent(double chance) =>
        chance >= 0.99 ? "over 99 %"
        : chance < 0.01 ? "under 1 %"
        : string.Create(CultureInfo.InvariantCulture, $"{100 * chance:0} %");

    private static string Width(double chance) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * chance:0.#}");

    private static string Millimeters(double level) =>
        string.Create(CultureInfo.InvariantCulture, $"{level:0} mm ({level / 25.4:0.0} in)");

    private static string Capital(string text) =>
        string.Concat(char.ToUpper(text[0], CultureInfo.InvariantCulture).ToString(), text.AsSpan(1), ".");
}
