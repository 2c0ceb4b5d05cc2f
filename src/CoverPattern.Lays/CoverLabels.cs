namespace CoverPattern.Lays;

/// <summary>Which cover a piece belongs to, read from its label.</summary>
internal static class CoverLabels
{
    /// <summary>The part of a label before its blank, such as "C03" of "C03 P1.07"; empty when the job has one cover.</summary>
    public static string CoverOf(string piece)
    {
        var blank = piece.LastIndexOf(' ');
        return blank < 0 ? string.Empty : piece[..blank];
    }
}
