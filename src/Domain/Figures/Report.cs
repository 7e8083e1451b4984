using System.Collections.Immutable;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Figures;

/// <summary>
/// A node of a machine-readable report. A number can only enter as a <see cref="Figure"/>, so every number
/// printed can be asked where it comes from.
/// </summary>
public abstract record ReportNode
{
    /// <summary>
    /// All numbers and named gaps below this node, by path such as <c>quantities[2].massKg</c>.
    /// </summary>
    public IEnumerable<(string Path, ReportNode Node)> Leaves(string path = "") =>
        this switch
        {
            ReportObject branch => branch.Members.SelectMany(member =>
                member.Value.Leaves(path.Length == 0 ? member.Key : $"{path}.{member.Key}")
            ),
            ReportList list => list.Items.SelectMany((item, i) => item.Leaves($"{path}[{i}]")),
            _ => [(path, this)],
        };
}

/// <summary>Named members in order.</summary>
public sealed record ReportObject(ImmutableArray<KeyValuePair<string, ReportNode>> Members) : ReportNode
{
    /// <summary>From pairs.</summary>
    public static ReportObject Of(params ReadOnlySpan<(string Key, ReportNode Node)> members)
    {
        var builder = ImmutableArray.CreateBuilder<KeyValuePair<string, ReportNode>>(members.Length);
        foreach (var (key, node) in members)
        {
            builder.Add(new(key, node));
        }

        return new ReportObject(builder.MoveToImmutable());
    }

    /// <summary>The member with this key, or null.</summary>
    public ReportNode? Find(string key)
    {
        foreach (var member in Members)
        {
            if (string.Equals(member.Key, key, StringComparison.OrdinalIgnoreCase))
            {
                return member.Value;
            }
        }

        return null;
    }
}

/// <summary>Items in order.</summary>
public sealed record ReportList(ImmutableArray<ReportNode> Items) : ReportNode;

/// <summary>A text.</summary>
public sealed record ReportText(string Text) : ReportNode;

/// <summary>Yes or no.</summary>
public sealed record ReportFlag(bool Value) : ReportNode;

/// <summary>A number in the unit its key names.</summary>
public sealed record ReportNumber(Figure Figure, Unit Unit) : ReportNode
{
    /// <summary>The number as printed: 10 significant digits.</summary>
    public double Number => Rounded(Unit.FromSi(Figure.Si));

    private double Rounded(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return double.IsFinite(value)
                ? 0
                : throw new InvalidOperationException($"The figure '{Figure.Name}' is not finite.");
        }

        var digits = 9 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return digits is >= 0 and <= 15 ? Math.Round(value, digits) : value;
    }
}

/// <summary>A number that cannot be given, and why; printed as null.</summary>
public sealed record ReportAbsent(string Reason) : ReportNode;
