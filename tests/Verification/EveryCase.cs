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
            result.Agrees != known,
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
