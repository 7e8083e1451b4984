using Litterfall.Domain.Faults;

namespace Litterfall.Web.Desk.Form;

/// <summary>
/// Faults of a design as a field tells them: without line and key, which nobody sees there.
/// </summary>
public static class FaultWords
{
    /// <summary>One sentence.</summary>
    /// <param name="fault">What does not read.</param>
    public static string Of(TextFault fault)
    {
        var message = fault.Message;
        var colon = message.IndexOf(": ", StringComparison.Ordinal);
        if (colon > 0 && message[..colon].All(char.IsLetterOrDigit))
        {
            message = message[(colon + 2)..];
        }

        return $"{message}; expected {fault.Expected}.";
    }
}
