using CoverPattern.Files.Dxf;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Plots;
using CoverPattern.Lays.Models;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Cli;

/// <summary>What the command line asks of plot.</summary>
/// <param name="Folder">The result.</param>
/// <param name="Out">Where the files go.</param>
/// <param name="Form">The form of file, one of the words of <see cref="PlotFlags"/>.</param>
/// <param name="Plot">Machine and section, for those forms that have them.</param>
/// <param name="Tiles">Paper with its margin and overlap; null when none was named.</param>
/// <param name="Scale">How many times smaller a model is; null when not said.</param>
/// <param name="Release">The form of DXF.</param>
/// <param name="Units">Units of a pattern exchange file.</param>
internal sealed record PlotOrder(string Folder, string Out, string Form, PlotWish Plot, TileWish? Tiles, double? Scale, DxfRelease Release, ExchangeUnits Units)
{
    private static readonly SheetSize A4 = new(210, 297);

    /// <summary>Scale and paper of a model; A4 when none was named.</summary>
    internal ModelWish Model => Tiles is null ? new ModelWish(Scale, A4) : new ModelWish(Scale, Tiles.Sheet, Tiles.MarginMm);
}
