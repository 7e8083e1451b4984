using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// Debian's Python as an independent reader of our files; tests skip, with the reason, where it is missing.
/// </summary>
internal static class Python
{
    private const string Program = "/usr/bin/python3";

    /// <summary>Runs a script that reads the bytes on standard input and prints one JSON document.</summary>
    /// <param name="module">Module the script needs.</param>
    /// <param name="script">The script.</param>
    /// <param name="input">Bytes it reads.</param>
    public static JsonNode Read(string module, string script, byte[] input)
    {
        Assert.SkipUnless(File.Exists(Program), $"{Program} is not installed");
        var probe = Run($"import {module}", []);
        Assert.SkipUnless(probe.Code == 0, $"{Program} has no module {module}");
        var (code, output, error) = Run(script, input);
        Assert.True(code == 0, error);
        return JsonNode.Parse(output)!;
    }

    private static (int Code, string Out, string Error) Run(string script, byte[] input)
    {
        var start = new ProcessStartInfo(Program, ["-I", "-X", "utf8", "-c", script])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.BaseStream.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return (process.ExitCode, output.Result, error.Result);
    }
}
