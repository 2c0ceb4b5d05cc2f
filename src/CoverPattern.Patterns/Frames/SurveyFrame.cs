using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Makes the frame of a survey.</summary>
internal static class SurveyFrame
{
    internal static Frame Build(FrameSurvey survey)
    {
        var mending = SurveyMender.Mend(survey);
        var mesh = mending.Mesh
            ?? throw new ArgumentException("The survey is no frame, the reader of jobs should have refused it: " + mending.Faults[0].Said, nameof(survey));
        return new FrameSketch(mesh.Points, mesh.Facets) { Names = mesh.Names, Folds = mesh.Folds, ClassesMm = survey.ClassesMm }.Finish();
    }
}
