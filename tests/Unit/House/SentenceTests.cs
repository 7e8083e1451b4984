using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Litterfall.UnitTests.House;

/// <summary>
/// A number in a sentence of a finding, a step or a caution is formatted from the constant it tells, so that
/// the two cannot part: no digit is typed into such a sentence. Citations tell what a source says and may.
/// </summary>
public sealed class SentenceTests
{
    /// <summary>What may be typed, and why.</summary>
    private static readonly (string Text, string Why)[] Allowed =
    [
        ("FFP2", "name of a class of masks"),
        ("N95", "name of a class of masks"),
        ("D3", "name of a vitamin"),
        ("0-9 and A-Z", "an alphabet, told to a programmer"),
        (":00", "full hour of a clock"),
    ];

    private static readonly string[] Sources = ["Citation", "Cautions"];
    private static readonly string[] Told = ["Figure", "Citation", "PracticeNumber"];

    [Fact]
    public void No_number_is_typed_into_a_sentence()
    {
        var hits =
            from file in SourceTree.Files(["src/Judging", "src/Instructions"], ".cs")
            from hit in Typed(File.ReadAllText(file))
            select $"{SourceTree.Relative(file)}:{hit}";
        Assert.Empty(hits);
    }

    [Theory]
    [InlineData("""void M() { Say("less than 30 days"); }""", true)]
    [InlineData("""void M() { Say($"less than {d} days, 2 a week"); }""", true)]
    [InlineData("""static Figure F = Figure.Choice("time below 12 °C", 1, "an hour");""", true)]
    [InlineData("""static Figure F = Figure.Choice("time below it", 1, "30 minutes is long");""", false)]
    [InlineData("""static Citation C = new("x", "recalled: 30 d", P.Recalled);""", false)]
    [InlineData("""void M() { Say($"less than {d:0.0} days"); }""", false)]
    [InlineData("""void M() { Set("animals[0].count", "led-6500k"); }""", false)]
    [InlineData("""void M() { Say("an FFP2 or N95 mask"); }""", false)]
    [InlineData("""void M() { DesignEdits.Add(d, "vents", "at: 17:00, for: 20 s"); }""", false)]
    [InlineData("""void M() { Cite(Citation.Habit("every 2 weeks")); }""", false)]
    public void The_rule_knows_a_sentence(string member, bool isTyped) =>
        Assert.Equal(isTyped, Typed($"class C {{ {member} }}").Any());

    private static IEnumerable<string> Typed(string code)
    {
        var root = CSharpSyntaxTree
            .ParseText(code, cancellationToken: TestContext.Current.CancellationToken)
            .GetRoot(TestContext.Current.CancellationToken);
        return from token in root.DescendantTokens()
               where
                   token.IsKind(SyntaxKind.StringLiteralToken)
                   || (
                       token.IsKind(SyntaxKind.InterpolatedStringTextToken)
                       && token.Parent is not InterpolationFormatClauseSyntax
                   )
               where IsSentence(token) && HasDigit(token.ValueText) && !IsCited(token.Parent!)
               select $"{token.GetLocation().GetLineSpan().StartLinePosition.Line + 1}: {token.ValueText}";
    }

    /// <summary>Keys, units, formats and texts of a design have no spaces, or begin with a brace.</summary>
    private static bool IsSentence(SyntaxToken token)
    {
        var whole = token.Parent
            is InterpolatedStringTextSyntax { Parent: InterpolatedStringExpressionSyntax all }
            ? string.Concat(
                all.Contents.Select(c => c is InterpolatedStringTextSyntax t ? t.TextToken.ValueText : "x")
            )
            : token.ValueText;
        return whole.Contains(' ', StringComparison.Ordinal) && !whole.StartsWith('{');
    }

    private static bool HasDigit(string text)
    {
        foreach (var (allowed, _) in Allowed)
        {
            text = text.Replace(allowed, "", StringComparison.Ordinal);
        }

        return text.Any(char.IsAsciiDigit);
    }

    /// <summary>
    /// True for what a source says, for equations, for the reason of a choice, and for text of a design.
    /// </summary>
    private static bool IsCited(SyntaxNode node)
    {
        foreach (var above in node.AncestorsAndSelf())
        {
            if (
                above is InvocationExpressionSyntax call && IsCitation(call.Expression)
                || above is ObjectCreationExpressionSyntax made && Sources.Contains(made.Type.ToString())
                || above is ArgumentSyntax { Parent: ArgumentListSyntax list } argument
                    && list.Arguments[0] != argument
                    && IsFigure(list.Parent!)
            )
            {
                return true;
            }

            if (DeclaredType(above) is { } type)
            {
                return type == "Citation" || Told.Contains(type) && !IsName(node);
            }
        }

        return false;
    }

    private static bool IsCitation(ExpressionSyntax called) =>
        called switch
        {
            MemberAccessExpressionSyntax { Expression: var of, Name.Identifier.Text: var name } =>
                of.ToString() is "Citation" or "Cautions" or "DesignEdits"
                    || (of.ToString() is "Figure" && name == "Computed")
                    || (of.ToString() is "SimulatedFigure" && name == "From"),
            IdentifierNameSyntax { Identifier.Text: var name } => name is "Habit" or "Recalled",
            _ => false,
        };

    private static bool IsFigure(SyntaxNode call) =>
        call is InvocationExpressionSyntax { Expression: var called }
        && called.ToString().EndsWith("Figure.Choice", StringComparison.Ordinal);

    /// <summary>The first argument of the outermost call names the figure: findings print it.</summary>
    private static bool IsName(SyntaxNode node) =>
        node.AncestorsAndSelf().OfType<ArgumentSyntax>().LastOrDefault()
            is { Parent: ArgumentListSyntax list } last
        && list.Arguments[0] == last;

    private static string? DeclaredType(SyntaxNode node) =>
        node switch
        {
            VariableDeclarationSyntax { Parent: FieldDeclarationSyntax, Type: var type } => type.ToString(),
            PropertyDeclarationSyntax { Type: var type } => type.ToString(),
            MethodDeclarationSyntax => "",
            _ => null,
        };
}
