using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>One way of joining two pieces, as the shop's table names it.</summary>
/// <param name="Name">The shop's name; the form's own word where the job has no table.</param>
/// <param name="Form">How the edges come together.</param>
/// <param name="Width">Plain and bound: the allowance of each side; zip: the cloth turned back; else the finished width. Positive.</param>
/// <param name="OverMm">Cloth beyond the sew line on the side that lies over, millimetres.</param>
/// <param name="UnderMm">Cloth beyond the sew line on the side that lies under, millimetres.</param>
/// <param name="Rows">Rows of stitches; 0 for a weld.</param>
/// <param name="IsClosing">Whether it is the seam sewn last, after the girth is measured.</param>
public sealed record MakeUp(string Name, MakeUpForm Form, Measure Width, double OverMm, double UnderMm, int Rows, bool IsClosing = false)
{
    /// <summary>Joins any two cloths.</summary>
    public const string AnyCloth = "any";

    /// <summary>Joins cloths of one weld family.</summary>
    public const string WeldableCloth = "weldable";

    // 1/4 in between rows of stitches [Navy ch. 10, rule 7], as the shop rounds it.
    private const double UsualRowGap = 6;

    // Raw tape ends are turned in by 1/4 in [Navy ch. 10, rule 2]; taken for the edges of a binding too.
    private const double UsualTurnIn = 6;

    /// <summary>Distance between two rows of stitches, millimetres.</summary>
    public double RowGapMm { get; init; } = UsualRowGap;

    /// <summary>Cloth turned in at each edge of a binding strip, millimetres.</summary>
    public double TurnInMm { get; init; } = UsualTurnIn;

    /// <summary>Names of cloths it may join, or <see cref="AnyCloth"/> or <see cref="WeldableCloth"/>; empty where nobody said: the form decides.</summary>
    public ImmutableArray<string> Joins { get; init; } = [];

    /// <summary>Whether its notches are drawn with a pen and never slit.</summary>
    public bool IsTicked { get; init; } = NeverSlit(Form);

    /// <summary>Whether the edges are folded into each other.</summary>
    public bool IsFelled => Form is MakeUpForm.Felled or MakeUpForm.FolderFelled;

    /// <summary>Layers of cloth one above the other in the finished seam.</summary>
    public int Plies { get; init; } = UsualPlies(Form);

    /// <summary>Whether the edges are welded, so that they are never slit.</summary>
    public bool IsWelded => Welds(Form);

    /// <summary>Width of the strip that binds it: twice what is seen and twice what is turned in, millimetres; 0 for other forms.</summary>
    public double BindingMm => Form == MakeUpForm.Bound ? 2 * (Width.Millimetres + TurnInMm) : 0;

    /// <summary>Cloth beyond the sew line on the side that has more, millimetres.</summary>
    public double WidestSideMm => System.Math.Max(OverMm, UnderMm);

    /// <summary>Whether a form is a weld.</summary>
    public static bool Welds(MakeUpForm form) => form is MakeUpForm.Welded or MakeUpForm.SplitWelded;

    /// <summary>Whether a slit in an edge of this form would leak or tear: welds and bound edges.</summary>
    public static bool NeverSlit(MakeUpForm form) => Welds(form) || form == MakeUpForm.Bound;

    /// <summary>The usual make-up of a form.</summary>
    /// <param name="form">How the edges come together.</param>
    /// <param name="width">See <see cref="Width"/>.</param>
    /// <remarks>
    /// Sew lines: plain, the stitch line; lapped, the middle of the lap; felled, the first stitch row, both edges lying behind
    /// the upper piece, the under side twice as wide to fold over (checked against the blog rule 1/2 in and 1 in for a finished
    /// 1/2 in); felled by a folder, the middle of the seam, so that both constructions take three widths of cloth; welded, the
    /// edge of the upper piece.
    /// </remarks>
    public static MakeUp Of(MakeUpForm form, Measure width)
    {
        var w = width.Millimetres;
        var (over, under) = form switch
        {
            MakeUpForm.Lapped or MakeUpForm.SplitWelded => (w / 2, w / 2),
            MakeUpForm.Felled => (w, 2 * w),
            MakeUpForm.FolderFelled => (1.5 * w, 1.5 * w),
            MakeUpForm.Welded => (0, w),
            _ => (w, w),
        };
        return new MakeUp(WordOf(form), form, width, over, under, UsualRows(form));
    }

    /// <summary>The seam that is sewn last: notches and construction stay, both sides are wider, to be trimmed after the girth is measured.</summary>
    /// <param name="allowance">Cloth beyond the sew line on each side, millimetres; a side that has more keeps it.</param>
    public MakeUp Closing(double allowance) => this with
    {
        Name = Name + ", closing",
        OverMm = System.Math.Max(OverMm, allowance),
        UnderMm = System.Math.Max(UnderMm, allowance),
        IsClosing = true,
    };

    /// <summary>The plain seam that a felled one becomes near a hub: its width is the felled seam's.</summary>
    public MakeUp SewnPlain() => Of(MakeUpForm.Plain, Width) with { Name = Name + " sewn plain" };

    /// <summary>Rows of stitches where nobody says: none for a weld, one for plain and bound seams, else two.</summary>
    public static int UsualRows(MakeUpForm form) => form switch
    {
        MakeUpForm.Welded or MakeUpForm.SplitWelded => 0,
        MakeUpForm.Plain or MakeUpForm.Bound => 1,
        _ => 2,
    };

    /// <summary>The form's word in the job file.</summary>
    private static string WordOf(MakeUpForm form) => char.ToLowerInvariant(form.ToString()[0]) + form.ToString()[1..];

    private static int UsualPlies(MakeUpForm form) => form switch
    {
        MakeUpForm.Felled or MakeUpForm.FolderFelled or MakeUpForm.Bound => 4,
        MakeUpForm.Plain => 3,
        _ => 2,
    };
}
