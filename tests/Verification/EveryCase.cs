using System.Globalization;
using Litterfall.App.Files;
using Litterfall.App.Pages;
using Litterfall.Verification;
using Litterfall.Verification.Cases;
using Xunit;

namespace Litterfall.Tests.Verification;

/// <summary>
/// Runs every case of the verification list. A case is green when it agrees, or when it disagrees and is
/// listed with its reason; a listed case that agrees is red, so the list cannot go stale.
/// </summary>
public sealed class EveryCase
{
    private static readonly IReadOnlyList<VerificationCase> All = VerificationList.All();
    private static readonly Dictionary<VerificationCase, Lazy<VerificationResult>> Results = All.ToDictionary(
        one => one,
        one => new Lazy<VerificationResult>(one.Run),
        (IEqualityComparer<VerificationCase>)ReferenceEqualityComparer.Instance
    );
    private static readonly KnownShortfalls Known = KnownShortfalls.Read();

    public static TheoryData<string, string> Names()
    {
        var names = new TheoryData<string, string>();
        foreach (VerificationCase one in All)
        {
            names.Add(one.Source, one.Quantity + " [" + one.Unit + "]");
        }

        return names;
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Agrees_or_is_a_known_shortfall(string source, string quantity)
    {
        VerificationCase one = All.Single(c =>
            string.Equals(c.Source, source, StringComparison.Ordinal)
            && string.Equals(c.Quantity + " [" + c.Unit + "]", quantity, StringComparison.Ordinal)
        );
        VerificationResult result = Results[one].Value;
        bool known = Known.Names(one.Source, one.Quantity);
        Assert.True(
            (result.Outcome != Outcome.Disagrees) != known,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{source}: {quantity}: expected {one.Expected} ± {one.Tolerance}, "
                    + $"got {result.Got:G7}; known: {known}"
            )
        );
    }

    /// <summary>
    /// The page shows what was just computed; LITTERFALL_WRITE_DOCS=1 rewrites it.
    /// </summary>
    [Fact]
    public void The_page_of_all_cases_is_current()
    {
        string path = Path.Combine(Root(), "docs", "verification.md");
        string text = VerificationPage.Write(
            [.. All.Select(one => Results[one].Value)],
            Shop.Catalog(null).Value!
        );
        if (Environment.GetEnvironmentVariable("LITTERFALL_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path));
    }

    [Fact]
    public void Every_known_shortfall_names_a_case_and_a_reason()
    {
        Assert.All(Known.Shortfalls, shortfall =>
        {
            Assert.Contains(All, c =>
                string.Equals(c.Source, shortfall.Source, StringComparison.Ordinal)
                && string.Equals(c.Quantity, shortfall.Quantity, StringComparison.Ordinal)
            );
            Assert.False(string.IsNullOrWhiteSpace(shortfall.Reason));
        });
        Assert.Distinct(Known.Shortfalls.Select(s => (s.Source, s.Quantity)));
    }

    [Fact]
    public void Cases_are_complete_and_distinct()
    {
        Assert.Distinct(All.Select(c => (c.Source, c.Quantity, c.Unit)));
        Assert.All(All, c =>
        {
            Assert.False(string.IsNullOrWhiteSpace(c.Subject + c.Unit));
            Assert.False(string.IsNullOrWhiteSpace(c.Reason));
            Assert.True(c.Tolerance >= 0.0);
            Assert.True(double.IsFinite(c.Expected));
        });
    }

    [Fact]
    public void A_wide_tolerance_tells_the_spread_of_its_source()
    {
        string[] silent = [.. All.Where(c => c.IsWide && string.IsNullOrWhiteSpace(c.Spread)).Select(Name)];
        Assert.True(silent.Length == 0, string.Join("\n", silent));
    }

    [Fact]
    public void A_source_is_in_error_only_where_a_second_solution_sides_with_us()
    {
        var excused = All.Select(c => Results[c].Value).Where(r => r.Outcome == Outcome.SourceInError);
        Assert.All(
            excused,
            r =>
            {
                double second = r.Case.Second!.Got();
                Assert.Equal(r.Got, second, r.Case.Second.Tolerance);
                Assert.True(Math.Abs(second - r.Case.Expected) > Math.Abs(second - r.Got), Name(r.Case));
            }
        );
    }

    [Fact]
    public void Second_solutions_agree_wherever_they_stand() =>
        Assert.All(
            All.Where(c => c.Second is not null),
            c => Assert.Equal(Results[c].Value.Got, c.Second!.Got(), c.Second.Tolerance)
        );

    private static string Name(VerificationCase one) => $"{one.Source}: {one.Quantity}";

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Litterfall.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
