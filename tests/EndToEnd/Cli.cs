using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary>What a command printed, and how it ended.</summary>
internal sealed record Ended(int Code, string Out, string Error, long Milliseconds)
{
    /// <summary>The one JSON document on standard output.</summary>
    public JsonNode Json => JsonNode.Parse(Out)!;

    public override string ToString() => $"exit {Code}\n{Out}\n{Error}";
}

/// <summary>Runs the commands of the program.</summary>
internal static class Cli
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(2);

    public static string Root { get; } = FindRoot();

    /// <summary>The program of the same configuration as these tests.</summary>
    public static string Built { get; } =
        Path.Combine(
            AppContext
                .BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)
                .Replace(Path.Combine("tests", "EndToEnd"), Path.Combine("src", "Litterfall"), Ordinal),
            "litterfall.dll"
        );

    private const StringComparison Ordinal = StringComparison.Ordinal;

    private static readonly ConcurrentDictionary<string, Lazy<Ended>> Known = new(StringComparer.Ordinal);

    public static IReadOnlyList<string> Samples { get; } =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(Root, "samples"), "*.viv.yaml")
            .Select(file => Path.GetRelativePath(Root, file))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Release or Debug, as these tests were built.</summary>
    public static string Configuration { get; } =
        AppContext.BaseDirectory.Split(Path.DirectorySeparatorChar).Contains("Debug") ? "Debug" : "Release";

    /// <summary>
    /// What a command that only reads files of the checkout prints: run once, shared by all tests that ask.
    /// </summary>
    public static Ended Once(params string[] arguments) =>
        Known.GetOrAdd(string.Join('\n', arguments), _ => new(() => Run(arguments))).Value;

    /// <summary>
    /// Runs one command in the root of the checkout, within the process of the tests: the start of a process,
    /// which is most of the time of a short command, is left out.
    /// </summary>
    public static Ended Run(params string[] arguments)
    {
        using var spoken = Spoken.Begin();
        var watch = Stopwatch.StartNew();
        var code = App.Program.Main(arguments);
        return new Ended(code, spoken.Out, spoken.Error, watch.ElapsedMilliseconds);
    }

    /// <summary>Runs one command as a process of its own, as people do, and waits for its end.</summary>
    public static Ended Start(params string[] arguments)
    {
        Assert.True(File.Exists(Built), $"{Built} is not built");
        return StartIn(Root, "dotnet", [Built, .. arguments]);
    }

    /// <summary>Starts any program in a folder and waits for its end.</summary>
    public static Ended StartIn(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            StandardOutputEncoding = new UTF8Encoding(false),
            StandardErrorEncoding = new UTF8Encoding(false),
            WorkingDirectory = folder,
        };
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        Assert.True(process.WaitForExit(Longest), $"{string.Join(' ', arguments)} does not end");
        process.WaitForExit();
        return new Ended(process.ExitCode, output.Result, error.Result, watch.ElapsedMilliseconds);
    }

    /// <summary>
    /// The command was refused in plain words: exit 2, nothing on standard output, no trace.
    /// </summary>
    public static Ended Refuses(params string[] arguments) => Refused(Run(arguments));

    /// <summary>The same of a command that has ended.</summary>
    public static Ended Refused(Ended ended)
    {
        Assert.True(ended.Code == 2, ended.ToString());
        Assert.Equal("", ended.Out);
        Assert.Contains("expected", ended.Error, Ordinal);
        NoTrace(ended);
        return ended;
    }

    /// <summary>The same with --json: one document with errors on standard output and nothing else.</summary>
    public static JsonArray RefusesInJson(params string[] arguments)
    {
        var ended = Run([.. arguments, "--json"]);
        Assert.True(ended.Code == 2, ended.ToString());
        Assert.Equal("", ended.Error);
        NoTrace(ended);
        var errors = ended.Json["errors"]!.AsArray();
        Assert.NotEmpty(errors);
        foreach (var error in errors)
        {
            string[] keys = ["file", "line", "column", "message", "expected"];
            Assert.Equal(keys, error!.AsObject().Select(member => member.Key));
            Assert.True(error["line"]!.GetValue<int>() >= 1);
            Assert.True(error["column"]!.GetValue<int>() >= 1);
            Assert.NotEqual("", error["message"]!.GetValue<string>());
            Assert.NotEqual("", error["expected"]!.GetValue<string>());
        }

        return errors;
    }

    public static void NoTrace(Ended ended)
    {
        Assert.DoesNotContain("   at ", ended.Out + ended.Error, Ordinal);
        Assert.DoesNotContain("Exception", ended.Out + ended.Error, Ordinal);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Litterfall.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }
}

/// <summary>An empty folder that disappears with the test.</summary>
internal sealed class Scratch : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("litterfall-").FullName;

    public string Write(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    public string At(string name) => Path.Combine(Folder, name);

    public void Dispose() => Directory.Delete(Folder, true);
}
