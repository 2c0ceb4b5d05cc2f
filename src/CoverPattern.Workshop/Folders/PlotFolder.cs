using System;
using System.IO;
using CoverPattern.Files.Results;

namespace CoverPattern.Workshop.Folders;

/// <summary>Finds out whether a folder may take plots.</summary>
public static class PlotFolder
{
    /// <summary>Refuses a folder in which plots would replace something else: a result, which they are made from, or plots of another form.</summary>
    /// <param name="folder">Where plots shall go.</param>
    /// <param name="form">Their form.</param>
    /// <exception cref="FolderException">They may not.</exception>
    public static void Try(string folder, string form)
    {
        var summary = Path.Combine(Path.GetFullPath(folder), SummaryFile.Name);
        try
        {
            var earlier = File.Exists(summary) ? File.ReadAllBytes(summary) : null;
            var holds = earlier is null ? form : SummaryFile.ReadForm(earlier);
            if (holds != form && !SummaryFile.ReadFileNames(earlier).IsEmpty)
            {
                throw new FolderException(folder, holds is null
                    ? "it holds a result, which the plots would replace. Name another folder for plots."
                    : $"it holds plots of the form {holds}, which those of the form {form} would replace. Name a folder for each form.");
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderException(folder, fault.Message);
        }

        ResultFolder.Try(folder);
    }
}
