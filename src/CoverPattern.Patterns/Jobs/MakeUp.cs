using System.Text.Json;

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
    /// <summary>Whether the edges are welded, so that they are never slit.</summary>
    public bool IsWelded => Form is MakeUpForm.Welded or MakeUpForm.SplitWelded;

    /// <summary>Whether the edges are folded into each other.</summary>
    public bool IsFelled => Form is MakeUpForm.Felled or MakeUpForm.FolderFelled;

    /// <summary>Layers of cloth one above the other in the finished seam.</summary>
    public int Plies => Form switch
    {
        MakeUpForm.Felled or MakeUpForm.FolderFelled or MakeUpForm.Bound => 4,
        MakeUpForm.Plain => 3,
        _ => 2,
    };

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
        return new MakeUp(JsonNamingPolicy.CamelCase.ConvertName(form.ToString()), form, width, over, under, UsualRows(form));
    }

    private static int UsualRows(MakeUpForm form) => form switch
    {
        MakeUpForm.Welded or MakeUpForm.SplitWelded => 0,
        MakeUpForm.Plain or MakeUpForm.Bound => 1,
        _ => 2,
    };
}
