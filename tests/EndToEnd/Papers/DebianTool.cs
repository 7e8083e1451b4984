using System.Diagnostics;
using System.Text;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// Programs of Debian that read our files with code that is not ours. A test whose program is missing is
/// skipped with the reason.
/// </summary>
internal static class DebianTool
{
    private const string Python = "/usr/bin/python3";

    private static readonly Lazy<bool> Ezdxf = new(() =>
        File.Exists(Python) && Run(Python, ["-c", "import ezdxf"], "").Code == 0
    );

    /// <summary>Path of a program, or the test is skipped.</summary>
    public static string Find(string program, string package)
    {
        var path = $"/usr/bin/{program}";
        Assert.SkipUnless(File.Exists(path), $"{path} is missing; it comes with Debian's {package}");
        return path;
    }

    /// <summary>What ezdxf says of exchange files, by path.</summary>
    public static string Audit(IEnumerable<string> files)
    {
        Assert.SkipUnless(Ezdxf.Value, $"{Python} has no ezdxf; it comes with Debian's python3-ezdxf");
        var script = Path.Combine(Cli.Root, "tests", "EndToEnd", "Papers", "Data", "audit.py");
        var ended = Run(Python, [script], string.Join('\n', files));
        Assert.True(ended.Code == 0, ended.Error);
        return ended.Out;
    }

    /// <summary>Runs a program and waits for its end.</summary>
    public static (int Code, string Out, string Error) Run(
        string program,
        IEnumerable<string> arguments,
        string input
    )
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = new UTF8Encoding(false),
        };
        // The modules belong to Debian's own Python; settings of another one would lead it astray.
        start.Environment.Remove("PYTHONPATH");
        start.Environment.Remove("PYTHONHOME");
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(2)), $"{program} does not end");
        process.WaitForExit();
        return (process.ExitCode, output.Result, error.Result);
    }
}
