namespace Litterfall.Store;

/// <summary>Names under which files of the evidence are kept among the files of the bench.</summary>
public static class EvidenceName
{
    /// <summary>The name of a file by the fingerprint of its bytes: other bytes have another name.</summary>
    /// <param name="sha256">64 small hexadecimal digits.</param>
    public static string From(string sha256) => $"evidence-{sha256}.bin";
}
