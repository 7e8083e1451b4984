using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Faults;

/// <summary>Something in a text that cannot be used: where, what, and what was expected.</summary>
public sealed record TextFault(string File, int Line, int Column, string Message, string Expected)
{
    /// <summary>"file:line:column: message; expected ...".</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Message}; expected {Expected}";
}

/// <summary>A value, or the faults that kept it from being read.</summary>
public sealed record Reading<T>(T? Value, Seq<TextFault> Faults)
    where T : class
{
    /// <summary>True when there is a value.</summary>
    public bool IsGood => Value is not null && Faults.Count == 0;
}
