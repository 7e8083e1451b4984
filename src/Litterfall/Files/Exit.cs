using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Faults;

namespace Litterfall.App.Files;

/// <summary>Exit codes, and the messages that go with them.</summary>
internal static class Exit
{
    public const int Done = 0;
    public const int Stopped = 1;
    public const int BadInput = 2;
    public const int NoNumbers = 3;

    /// <summary>What a shell gives to a program ended by Ctrl-C.</summary>
    public const int Interrupted = 130;

    /// <summary>Says when, where and why the numbers would not come out.</summary>
    public static int NotSolved(bool json, TextFault fault)
    {
        Unusable(json, fault);
        return NoNumbers;
    }

    /// <summary>
    /// Says what cannot be used, one line each, or one JSON document; nothing else is printed.
    /// </summary>
    public static int Unusable(bool json, params IReadOnlyList<TextFault> faults)
    {
        if (json)
        {
            Console.Out.WriteLine(ReportJson.Errors(faults));
            return BadInput;
        }

        foreach (var fault in faults)
        {
            Console.Error.WriteLine(
                Terminal.Clean(
                    fault.File is "" or "command line"
                        ? $"{fault.Message}; expected {fault.Expected}"
                        : fault.ToString()
                )
            );
        }

        return BadInput;
    }
}
