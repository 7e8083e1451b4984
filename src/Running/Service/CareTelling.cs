using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Units;

namespace Litterfall.Running.Service;

/// <summary>Tells lines of a log in words.</summary>
/// <param name="units">The reader's unit for the one it is said in.</param>
/// <param name="names">Name of a species by its key.</param>
public sealed class CareTelling(Func<Unit, Unit> units, Func<string, string> names)
{
    /// <summary>Units as they are usually said; species by their keys.</summary>
    public static CareTelling Plain { get; } = new(u => u, s => s.Replace('-', ' '));

    /// <summary>One line: "drained 1.2 L", "2 dyeing poison frogs came in from LD-203".</summary>
    /// <param name="line">The line.</param>
    public string Tell(CareEntry line)
    {
        var form = CareForm.Find(line.Kind);
        var said = form.IsOfAnimals ? Animals(form, line) : Plainly(form, line);
        return line.Note.Length > 0 ? $"{said}: {line.Note}" : said;
    }

    /// <summary>An amount with its unit: "1.2 L"; empty where the line has none.</summary>
    /// <param name="line">The line.</param>
    public string Amount(CareEntry line) =>
        line.Amount is not { } amount ? "" : Amount(CareForm.Find(line.Kind), amount);

    /// <summary>An amount of a kind with its unit.</summary>
    /// <param name="form">The kind.</param>
    /// <param name="amount">Amount as it is kept.</param>
    public string Amount(CareForm form, double amount)
    {
        if (form.Kept is null)
        {
            var word = amount == 1 && form.Counted.EndsWith('s') ? One(form.Counted) : form.Counted;
            return $"{Digits(amount, 0)} {word}".TrimEnd();
        }

        var unit = Unit(form);
        return $"{Digits(form.Say(amount, unit), Places(unit))} {Symbol(unit)}";
    }

    /// <summary>The reader's unit of a kind; liters that are few are told in milliliters elsewhere.</summary>
    /// <param name="form">The kind; it has a unit.</param>
    public Unit Unit(CareForm form) => units((form.Said ?? form.Kept)!);

    /// <summary>A unit as people read it.</summary>
    /// <param name="unit">The unit.</param>
    public static string Symbol(Unit unit) =>
        unit.Symbol switch
        {
            "C" => "°C",
            "F" => "°F",
            "mL/min" => "mL a minute",
            var other => other,
        };

    /// <summary>Digits behind the point that such a reading has.</summary>
    /// <param name="unit">The unit it is told in.</param>
    public static int Places(Unit unit) =>
        unit.Symbol switch
        {
            "L" or "gal" or "in" => 2,
            "cm" or "kg" or "lb" or "C" or "F" or "fl oz" => 1,
            _ => 0,
        };

    /// <summary>"3 phantasmal poison frogs", "1 mourning gecko".</summary>
    /// <param name="count">How many.</param>
    /// <param name="name">Common name of one.</param>
    public static string Count(int count, string name)
    {
        var plain = name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
        var many = count == 1 || plain.EndsWith('s') || plain.EndsWith(')') ? plain : plain + "s";
        return string.Create(CultureInfo.InvariantCulture, $"{count} {many}");
    }

    private string Plainly(CareForm form, CareEntry line)
    {
        var amount = Amount(line);
        var humidity = line.HumidityPercent is { } percent ? $"{Digits(percent, 1)} %" : "";
        var parts = new[] { form.Past, amount, humidity }.Where(p => p.Length > 0);
        var other = line.Other.Length > 0 ? $" ({line.Other})" : "";
        return string.Join(' ', parts) + other;
    }

    private string Animals(CareForm form, CareEntry line)
    {
        var count = (int)Math.Round(line.Amount ?? 1);
        var name = line.Species.Length > 0 ? names(line.Species) : "animal";
        var where =
            line.Other.Length == 0 ? ""
            : form.OtherParty.Length > 0 ? $" {form.OtherParty.ToLowerInvariant()} {line.Other}"
            : $" ({line.Other})";
        return $"{Count(count, name)} {form.Past}{where}";
    }

    private static string One(string many) =>
        many.EndsWith("ies", StringComparison.Ordinal) ? many[..^3] + "y" : many[..^1];

    private static string Digits(double number, int places) =>
        Math.Round(number, places)
            .ToString(places == 0 ? "0" : "0." + new string('#', places), CultureInfo.InvariantCulture);
}
