using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Every key of the job file, in the order in which a job is written.</summary>
/// <remarks>Limits refuse slips of the keyboard and of the unit, not unusual covers. Defaults: the shop's table in docs/job-file.md.</remarks>
internal static class JobKeys
{
    internal const string CommonPractice = "common practice, no source";
    internal const string ByMakeUp = "by make-up";
    internal const string Size = "frame.size";
    internal const string Survey = "frame.survey";
    private const string Table = "[Vilumsone-Nemes, 4.2.3]: up to 3 cm at the first ply";
    internal const string OwnChoice = "the program's own choice";
    private static readonly ImmutableArray<string> Forms = ["plain", "lapped", "felled", "folderFelled", "welded", "splitWelded", "bound", "zip"];

    internal static readonly ImmutableArray<JobKey> All =
    [
        Whole("schemaVersion", "Version of the form of this file.", 1, 1) with { IsRequired = true },
        new("title", KeyKind.Line, "What the shop calls the order.") { Most = 200 },
        new("date", KeyKind.Day, "Day of the order; the only date that any output carries.") { IsRequired = true },
        Whole("covers", "Number of equal covers.", 1, 1000) with { Default = "1", Standing = CommonPractice },
        new("frame", KeyKind.Section, "The frame to be covered.") { IsRequired = true },
        Word("frame.family", "The solid divided.", "icosahedron", "octahedron") with { Default = "icosahedron", Standing = CommonPractice },
        Whole("frame.frequency", "Parts into which an edge of the solid is divided.", 1, 12) with { IsRequired = true },
        Word("frame.division", "How the faces of the solid are divided: class I in equal chords when not stated.", "equalChord", "equalArc", "levelByEdgeHubs", "levelByInnerHubs", "classTwo"),
        Word("frame.up", "What of the solid is at the top: a corner when not stated.", "vertex", "edge", "face"),
        new("frame.cut", KeyKind.Cut, "Rows of facets kept, by name or counted from the top; or the hubs along the cut.") { IsRequired = true },
        new(Size, KeyKind.Section, "Exactly one of four measures, hub centre to hub centre.") { IsRequired = true },
        Length("frame.size.radius", "Radius of the sphere through the hub centres.", 200, 60_000),
        Length("frame.size.diameter", "Diameter of the sphere through the hub centres.", 400, 120_000),
        Length("frame.size.floorDiameter", "Diameter of the circle through the lowest hub centres.", 100, 120_000),
        Length("frame.size.height", "Height of the top hub centre above the lowest hub centres.", 10, 120_000),
        new("frame.struts", KeyKind.Section, "The struts as measured, in place of the size.") { InPlaceOf = ["size"] },
        new("frame.struts.lengths", KeyKind.Lines, "A length for each class, the shortest first.") { IsRequired = true, Least = 1, Most = 100 },
        new("frame.struts.odd", KeyKind.Lines, "Struts that differ from their class, named by their two hubs.") { Least = 1, Most = 1000 },
        Length("frame.struts.endAllowance", "From the hole at an end to the hub centre.", 0, 500) with { Default = "0 mm", Standing = OwnChoice },
        Length("frame.struts.bendAt", "From hole to bend, where lengths were measured along the tube before it was bent; else straight, as built.", 0, 500),
        Length("frame.struts.floorDiameter", "Measured diameter of the circle through the lowest hub centres; else all base hubs are put on one circle.", 100, 120_000),
        Length("frame.struts.raise", "Measured raise of the highest base hubs over the lowest; held against the frame's, never used to make it.", 0, 5000),
        new("frame.stretch", KeyKind.Section, "How the ball is drawn out after sizing; a sphere when not stated.") { IsAsked = false },
        Ratio("frame.stretch.front", "Along the front, x.", 0.2, 5),
        Ratio("frame.stretch.side", "Across the front, y.", 0.2, 5),
        Ratio("frame.stretch.height", "In height, z.", 0.2, 5),
        Length("frame.riser", "Height of an upright wall from its foot to the lowest base hubs; none when not stated.", 0, 10_000),
        new("frame.gores", KeyKind.Section, "A roof of equal gores, in place of family, frequency, cut and size.") { InPlaceOf = ["frequency", "cut", "size"] },
        Whole("frame.gores.sides", "Gores.", 3, 64) with { IsRequired = true },
        Word("frame.gores.meridian", "The line of a seam from top to eaves.", "circle", "ellipse", "cone", "points") with { IsRequired = true },
        Whole("frame.gores.chords", "Straight parts of that line.", 1, 60),
        Length("frame.gores.radius", "From the axis to an eaves hub centre.", 100, 60_000),
        Length("frame.gores.height", "Of the top over the eaves; with a crown ring, of the top that the line would have without.", 50, 60_000),
        Length("frame.gores.crown", "Radius of the ring left open at the top; closed when not stated.", 20, 30_000),
        new("frame.gores.points", KeyKind.Lines, "Radius; height over the eaves of each ring of hubs, from the top down; a first radius of 0 mm closes the top.") { Least = 2, Most = 60 },
        new("frame.stock", KeyKind.Section, "Bars of stock, for a cutting list of the struts; no list without it.") { IsWish = true },
        Length("frame.stock.bar", "Length of a bar.", 200, 20_000) with { IsRequired = true },
        Length("frame.stock.kerf", "What the saw takes at a cut.", 0, 20) with { Default = "3 mm", Standing = OwnChoice },
        new(Survey, KeyKind.Section, "The frame as measured or drawn, in place of family, frequency, cut and size.") { InPlaceOf = ["frequency", "cut", "size"] },
        new("frame.survey.file", KeyKind.FileName, "A file beside the job: lines of hubs, struts and facets, or a mesh."),
        new("frame.survey.lines", KeyKind.Lines, "The same lines in the job itself.") { Least = 1, Most = 20_000 },
        Word("frame.survey.unit", "Unit of bare numbers; a mesh needs it.", "mm", "cm", "m", "in", "ft"),
        Word("frame.survey.up", "The coordinate that points up; base: square to the line of base hubs.", "z", "y", "base") with { Default = "z", Standing = OwnChoice },
        Length("frame.survey.classes", "Struts whose lengths differ by no more than this stand in one class of the schedules; no length is changed by it.", 0, 50) with { Default = "2 mm", Standing = OwnChoice },
        Length("frame.survey.weld", "Hubs nearer than this are one hub.", 0, 50) with { Default = "0.1 mm", Standing = OwnChoice },
        new("standOff", KeyKind.Section, "What holds the cloth off the hub centres, as a calliper measures it."),
        Length("standOff.tubeRadius", "Half the outer diameter of the struts' tube.", 0, 200) with { Default = "17 mm", Standing = CommonPractice },
        Length("standOff.hubHeight", "How far the hub stands out above the hub centre.", 0, 300) with { Default = "25 mm", Standing = CommonPractice },
        Length("standOff.padding", "Padding or liner between frame and cloth.", 0, 300) with { Default = "0 mm", Standing = CommonPractice },
        Length("standOff.hubRadius", "How far a hub with its bolts reaches along the facets; openings keep clear of it.", 0, 500) with { Default = "50 mm", Standing = CommonPractice },
        new("ease", KeyKind.Ratio, "Signed ratio by which every length of the finished cover grows.")
        {
            Least = -0.05, Most = 0.05, Default = "0.3 %", Standing = CommonPractice,
        },
        new("deck", KeyKind.Section, "Where the deck or ground lies under the base hubs; drives skirt and hem only."),
        Word("deck.datum", "Which height of the base hub centres the deck passes through.", "lowest", "mean") with { Default = "lowest", Standing = CommonPractice },
        Length("deck.plinth", "How far the lowest hub centres stand above the deck.", 0, 3000),
        Heights("deck.heights", "Measured height of each base hub centre above the deck."),
        Length("deck.raise", "Measured height of all high base hubs above the low ones; short for heights.", 0, 3000),
        Heights("deck.ground", "Height of the ground below each base hub, above the deck; the hem follows it, straight between hubs."),
        new("deck.fall", KeyKind.Fall, "How much a tilted deck falls, under a frame that stands upright.") { Least = 0, Most = 0.5 },
        new("deck.towards", KeyKind.Degrees, "Where the deck falls to, counter-clockwise seen from above, 0 at the front.") { Least = 0, Most = 360 },
        new("skirt", KeyKind.Section, "The strip that hangs from the base chords."),
        Length("skirt.drop", "How far the finished edge hangs below the deck or ground, with chords below each hub; before ease.", 0, 1000) with { Default = "60 mm", Standing = CommonPractice },
        Word("skirt.shape", "Straight down; on in the slope of the facets; or straight down with an edge parallel to the base chords.", "vertical", "slope", "chords") with { Default = "vertical", Standing = CommonPractice },
        new("skirt.splash", KeyKind.Section, "A band of coated cloth over the foot of the cover; none without this section.") { IsAsked = false },
        new("skirt.splash.cloth", KeyKind.ClothName, "Its cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        Length("skirt.splash.width", "How high it reaches above the finished edge.", 50, 1000) with { Default = "250 mm", Standing = CommonPractice },
        new("hem", KeyKind.Section, "The finished lower edge."),
        Word("hem.kind", "Turned up; with webbing in it; a sleeve for pipe, rod or rope; or held by a screw strip.", "turned", "webbing", "sleeve", "strip") with { Default = "turned", Standing = CommonPractice },
        Length("hem.depth", "Cloth turned up inside.", 0, 300) with { Default = ByMakeUp, Standing = CommonPractice },
        Length("hem.turnUnder", "Cloth turned under the raw edge of the hem; not more than its depth.", 0, 100) with { Default = ByMakeUp, Standing = CommonPractice },
        Length("hem.pipe", "Diameter of the pipe, rod or rope of a sleeve.", 3, 120),
        Length("hem.gap", "Length without turned-up cloth on either side of a base hub, where a sleeve is broken.", 10, 500) with { Default = HemDefaults.Gap, Standing = CommonPractice, IsAsked = false },
        Length("hem.webbing", "Width of the webbing in the hem.", 10, 100) with { Default = HemDefaults.Webbing, Standing = CommonPractice, IsAsked = false },
        new("hem.fixings", KeyKind.Section, "Points at which the hem is held, drawn on the pieces: at every base hub and evenly between."),
        Length("hem.fixings.spacing", "Largest distance between two of them; 3 % more is let pass.", 50, 5000) with { Default = "500 mm", Standing = CommonPractice },
        Length("hem.fixings.height", "Of the points over the finished edge.", 0, 300) with { Default = "25 mm", Standing = CommonPractice },
        Length("hem.fitting", "Cloth beyond depth and turn-under, to be trimmed on the frame; 50 mm is usual.", 1, 500),
        new("seam", KeyKind.Section, "How pieces are joined."),
        MakeUp("seam.makeUp", "The construction: a name of the shop's table, or a form.") with { Default = "plain", Standing = CommonPractice },
        Length("seam.width", "Plain and bound: the allowance of each side; zip: the cloth turned back; else the finished width.", 1, 200) with { Default = ByMakeUp, Standing = CommonPractice },
        Word("seam.corners", "How the cut line goes round corners between seams.", "mitred", "squared", "trimmed") with { Default = "mitred", Standing = CommonPractice },
        new("seam.stopAtHubs", KeyKind.Flag, "Whether felled seams stop 30 mm short of hubs, plain and trimmed, under a patch; of no effect on others.") { Default = "true", Standing = CommonPractice },
        new("seam.turned", KeyKind.Labels, "Struts at whose seam the other side than usual lies over, such as \"H0.02-H1.01\".") { Least = 0, Most = 2000 },
        new("seam.others", KeyKind.Sections, "Seams made otherwise than the rest; of two that name one seam the later holds.") { Most = 100 },
        new("seam.others[].between", KeyKind.Seams, "Which seams: between rows, all others, or over struts that are named.") { IsRequired = true, Least = 1, Most = 500, Words = ["rows", "uprights"] },
        MakeUp("seam.others[].makeUp", "Their construction.") with { IsRequired = true },
        new("seam.zips", KeyKind.Sections, "Zips that take a part of a seam's length each, so that it opens there.") { Least = 1, Most = 50 },
        new("seam.zips[].strut", KeyKind.Line, "Strut that the seam runs over, such as \"H0.02-H1.01\".") { IsRequired = true, Most = 80 },
        Length("seam.zips[].from", "From the hub named first to where the zip begins, along the finished cover.", 0, 20_000) with { IsRequired = true },
        Length("seam.zips[].length", "Length of its teeth.", 50, 20_000) with { IsRequired = true },
        new("seam.closing", KeyKind.Section, "The upright seam that is kept open until the girth is measured, and sewn last.") { IsWish = true },
        new("seam.closing.at", KeyKind.Line, "Base hub it rises from; \"rear\": the one opposite the front.") { Most = 20, Default = ClosingWish.Rear, Standing = CommonPractice },
        Length("seam.closing.allowance", "Cloth beyond the sew line on each side.", 1, 300) with { Default = "40 mm", Standing = CommonPractice },
        Whole("seam.closing.to", "Ring of hubs at which it ends, counted from 0 at the base; else the ring below the top row.", 0, 23),
        new("makeUps", KeyKind.Sections, "The shop's own table of make-ups.") { Least = 1, Most = 50 },
        new("makeUps[].name", KeyKind.ClothName, "The shop's name for it.") { IsRequired = true, Least = 1, Most = 40 },
        new("makeUps[].form", KeyKind.Word, "How the edges come together.") { IsRequired = true, Words = Forms },
        Length("makeUps[].width", "As seam.width.", 1, 200) with { IsRequired = true },
        Length("makeUps[].over", "Cloth beyond the sew line on the side that lies over; else by form.", 0, 300),
        Length("makeUps[].under", "The same on the side that lies under.", 0, 300),
        Whole("makeUps[].rows", "Rows of stitches; else by form.", 0, 8),
        Length("makeUps[].rowGap", "Distance between two rows of stitches.", 1, 50),
        Length("makeUps[].turnIn", "Bound: cloth turned in at each edge of the binding.", 0, 50),
        new("makeUps[].joins", KeyKind.Names, "Cloths it may join, by name, or \"weldable\" or \"any\"; else by form.") { Least = 1, Most = 20 },
        Word("makeUps[].notches", "Whether notches are slit or drawn; else by form.", "slit", "tick"),
        Whole("makeUps[].plies", "Layers of cloth in the finished seam; else by form.", 1, 12),
        new("panels", KeyKind.Sections, "What is cut as one piece; every facet in exactly one entry. Left out: each facet is a piece.") { Least = 1, Most = 200 },
        Word("panels[].as", "Single facets, rows cut into parts, sectors from top to base, or named facets as one piece.", "facets", "bands", "gores", "group") with { IsRequired = true },
        new("panels[].rows", KeyKind.Rows, "Its rows, counted from the deck up; left out or \"rest\": what no other entry takes.") { Most = 35 },
        new("panels[].facets", KeyKind.Labels, "Its facets, such as \"F1.07\", instead of rows.") { Least = 1, Most = 2000 },
        new("panels[].name", KeyKind.PieceName, "What a group is called.") { Least = 1, Most = 20 },
        Whole("panels[].parts", "Parts into which each row of bands is cut; left out: at the sector edges.", 1, 200),
        new("panels[].at", KeyKind.Labels, "Struts along which bands are cut, repeated in every sector.") { Least = 1, Most = 2000 },
        Length("panels[].longest", "Longest part of a band.", 100, 100_000),
        new("panels[].slits", KeyKind.Labels, "Struts along which gores, in every sector, or a group are slit.") { Least = 1, Most = 2000 },
        new("limits", KeyKind.Section, "What the shop's machines sew."),
        Length("limits.thickness", "Greatest thickness under the needle, where seams cross.", 0.5, 50) with { Default = "8 mm", Standing = CommonPractice },
        Whole("limits.felledSeamsAtHub", "Most seams that may meet at a hub when felled ones run into it.", 1, 12) with { Default = "4", Standing = CommonPractice },
        Whole("limits.seamsAtHub", "Most seams that may meet at a hub otherwise: plain, welded, or stopped short under a patch.", 1, 12) with { Default = "6", Standing = CommonPractice },
        Whole("limits.seamsElsewhere", "Most seams that may meet where no hub is.", 1, 12) with { Default = "3", Standing = CommonPractice },
        new("marks", KeyKind.Section, "What is sewn on at hubs and drawn for it."),
        Word("marks.ties", "Hubs that get a tie: none; every one of the top two rings, every second below and all base hubs; every one.", "none", "usual", "every") with { Default = "usual", Standing = CommonPractice },
        Length("marks.tieDistance", "From the hub to the tie, along the seam over a strut; 0 at the hub itself.", 0, 1000) with { Default = "80 mm", Standing = CommonPractice },
        Word("marks.hubPatches", "Patches over hubs: inside against wear, outside against water.", "none", "inside", "outside", "both") with { Default = ByMakeUp, Standing = CommonPractice },
        Length("marks.patchDiameter", "Diameter of a hub's patch.", 70, 1000) with { Default = "180 mm", Standing = CommonPractice },
        Length("marks.apexDiameter", "Diameter of the top hub's patch.", 70, 1000) with { Default = "260 mm", Standing = CommonPractice },
        new("marks.pierce", KeyKind.Flag, "Whether marks that lie under a patch or in an allowance are pierced; all others are drawn.") { Default = "false", Standing = CommonPractice },
        new("notions", KeyKind.Section, "How zips, bindings and tapes are sold; read where the job takes any."),
        Length("notions.zipStep", "Zips are sold in multiples of this length.", 1, 1000) with { Default = "100 mm", Standing = CommonPractice },
        Length("notions.zipEnds", "Tape of a zip beyond its seam, both ends together, with the stops.", 0, 500) with { Default = "50 mm", Standing = CommonPractice },
        Length("notions.tapeStep", "Bindings, webbing and tape are sold in multiples of this length.", 1, 200_000) with { Default = "1 m", Standing = CommonPractice },
        Length("notions.tapeEnds", "Binding or webbing beyond what it is sewn to, both ends of each length together.", 0, 500) with { Default = "50 mm", Standing = CommonPractice },
        new("notions.zipType", KeyKind.Line, "The shop's name for the zips of openings.") { Least = 1, Most = 40, Default = "No. 10 coil", Standing = CommonPractice },
        Length("notions.zipRadius", "Smallest radius of a curve on which such a zip runs.", 20, 1000) with { Default = "150 mm", Standing = CommonPractice },
        Length("notions.zipLongest", "Longest such zip; longer runs are parted evenly.", 200, 20_000) with { Default = "4 m", Standing = CommonPractice },
        Length("notions.zipChain", "Width of its chain: sheet and mesh end in a binding at half of it from the middle of the teeth.", 2, 30) with { Default = "10 mm", Standing = CommonPractice },
        Length("notions.hookLoop", "Width of hook and loop.", 10, 100) with { Default = "25 mm", Standing = CommonPractice },
        new("cloths", KeyKind.Sections, "Cloths by use; the first is the cover's.") { IsRequired = true, Least = 1, Most = 20 },
        new("cloths[].name", KeyKind.ClothName, "The shop's name for it; becomes part of file names.") { IsRequired = true, Least = 1, Most = 40 },
        Length("cloths[].rollWidth", "Full width of the roll, as measured.", 100, 6000) with { IsRequired = true },
        Length("cloths[].selvedge", "Firm woven edge on each side, not used.", 0, 100) with { Default = "10 mm", Standing = CommonPractice },
        Length("cloths[].safetyStrip", "Further strip on each side, not used.", 0, 200) with { Default = "10 mm", Standing = CommonPractice },
        new("cloths[].mass", KeyKind.Mass, "Mass per area; no weights are given without it.") { Least = 20, Most = 5000 },
        Length("cloths[].thickness", "Thickness of one ply; where seams cross no thickness is told without it.", 0.05, 5),
        Word("cloths[].nap", "Whether all pieces must point the same way.", "none", "oneWay") with { Default = "none", Standing = CommonPractice },
        Word("cloths[].face", "Whether the two sides differ, so that mirror twins are different pieces.", "oneSided", "reversible") with { Default = "oneSided", Standing = CommonPractice },
        new("cloths[].weld", KeyKind.ClothName, "Family it welds with, such as \"pvc\": cloths weld with equal family only.") { Least = 1, Most = 40 },
        Whole("cloths[].serviceTemperature", "Service temperature on its maker's sheet, degrees Celsius; cloth round a stove pipe must state it.", 50, 1500),
        new("cloths[].rolls", KeyKind.Sections, "Rolls that there are; cloth as much as is needed when not stated.") { Least = 1, Most = 20 },
        new("cloths[].rolls[].name", KeyKind.ClothName, "What is written on it.") { Least = 1, Most = 40 },
        Length("cloths[].rolls[].length", "Cloth on it; as much as is needed when not stated, on the last roll only.", 100, 1_000_000),
        new("cloths[].rolls[].flaws", KeyKind.Sections, "Its flawed areas, upright rectangles as the cloth lies.") { Least = 1, Most = 200 },
        Length("cloths[].rolls[].flaws[].at", "From the roll's cut end to where it begins.", 0, 1_000_000) with { IsRequired = true },
        Length("cloths[].rolls[].flaws[].across", "From the lower edge of the roll to where it begins.", 0, 6000) with { IsRequired = true },
        Length("cloths[].rolls[].flaws[].long", "Its extent along the roll.", 1, 20_000) with { IsRequired = true },
        Length("cloths[].rolls[].flaws[].wide", "Its extent across the roll.", 1, 6000) with { IsRequired = true },
        Whole("cloths[].rolls[].flaws[].grade", "Least grade of the pieces that may lie on it; none may when not stated.", 1, 9),
        new("windows", KeyKind.Sections, "Round windows, one in each facet named.") { Least = 1, Most = 50 },
        new("windows[].facets", KeyKind.Labels, "Facets that get one, such as \"F2.07\"; or rows instead.") { Least = 1, Most = 2000 },
        new("windows[].rows", KeyKind.Rows, "Rows of facets that get one each, counted from the deck up.") { Most = 23 },
        Length("windows[].aperture", "Diameter that one sees through.", 60, 5000) with { IsRequired = true },
        Length("windows[].ring", "Width of the window ring beyond the aperture.", 10, 300) with { Default = "35 mm", Standing = CommonPractice },
        Length("windows[].lap", "How far pane and screen reach beyond the aperture; at least 5 mm less than the ring.", 5, 200) with { Default = "20 mm", Standing = CommonPractice },
        Length("windows[].turnUnder", "Cloth turned under at the rim and at both edges of the ring; at most half the ring.", 3, 100) with { Default = "12 mm", Standing = CommonPractice },
        new("windows[].pane", KeyKind.ClothName, "Clear sheet of the panes, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        new("windows[].screen", KeyKind.ClothName, "Mesh of the screens, one of the cloths; no screens without it.") { Least = 1, Most = 40 },
        new("windows[].right", KeyKind.SignedLength, "How far right of the facet's incentre, seen from outside.") { Least = -10_000, Most = 10_000 },
        new("windows[].up", KeyKind.SignedLength, "How far above the incentre, square to the facet's ring edge.") { Least = -10_000, Most = 10_000 },
        .. OpeningKeys.All,
        .. PipeKeys.All,
        .. VentKeys.All,
        .. RoofKeys.All,
        .. LinerKeys.All,
        .. BagKeys.All,
        new("outside", KeyKind.Sections, "Pieces drawn elsewhere that every cover gets.") { Least = 1, Most = 20 },
        new("outside[].file", KeyKind.ExchangeFile, "A pattern exchange file beside the job; each block with its quantity a cover.") { IsRequired = true },
        new("outside[].cloth", KeyKind.ClothName, "Its cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        new("clearances", KeyKind.Section, "What openings keep clear, from the outer edge of their rings; read where there are openings."),
        Length("clearances.tube", "To the wall of a strut's tube.", 0, 1000) with { Default = "20 mm", Standing = CommonPractice },
        Length("clearances.hub", "To the rim of a hub.", 0, 1000) with { Default = "20 mm", Standing = CommonPractice },
        Length("clearances.seam", "To a seam.", 0, 1000) with { Default = "30 mm", Standing = CommonPractice },
        Length("clearances.opening", "To the ring of another opening.", 0, 1000) with { Default = "120 mm", Standing = CommonPractice },
        Length("clearances.hem", "Height above the finished lower edge.", 0, 1000) with { Default = "150 mm", Standing = CommonPractice },
        Length("clearances.tight", "What is above the least by less than this is allowed and told of.", 0, 200) with { Default = "5 mm", Standing = CommonPractice },
        new("lay", KeyKind.Section, "How pieces are laid on the roll."),
        Length("lay.spacing", "Least distance between two pieces; 6 mm for shears, 2 mm for a knife table.", 0, 200) with { Default = "6 mm", Standing = CommonPractice },
        Length("lay.endAllowance", "Cloth left free at each end of the lay.", 0, 1000) with { Default = "30 mm", Standing = Table },
        Word("lay.turns", "Grain along the roll, either end first; or any turn.", "grain", "free") with { Default = "grain", Standing = CommonPractice },
        new("lay.faceDown", KeyKind.Flag, "Whether the cloth lies face down, so that drawn marks land inside.") { Default = "true", Standing = CommonPractice },
        Whole("lay.effort", "Work units of the search for a short lay; more is shorter and slower.", 1, 1_000_000) with { Default = "30", Standing = OwnChoice },
        Whole("lay.seed", "Seed of the search's chance; same seed, same lay.", 0, int.MaxValue) with { Default = "1", Standing = OwnChoice },
        Word("lay.style", "The shortest lay; or rows with straight cuts for shears and rule.", "tight", "byHand") with { Default = "tight" },
        new("lay.offGrain", KeyKind.Degrees, "How far the grain may run off the roll's length, or off the turn allowed, either way.") { Least = 0, Most = 15 },
        new("lay.inHoles", KeyKind.Flag, "Whether smaller pieces may lie in the openings of others.") { Default = "true" },
        Length("lay.table", "Longest lay, end allowances included; as long as it gets when not stated.", 500, 131_000),
        Whole("lay.plies", "Layers of cloth cut at once; what does not fill them all is laid on a single one.", 1, 100) with { Default = "1" },
        Word("lay.spread", "How plies lie: all the same side up, or face to face, which gives mirror twins.", "oneWay", "faceToFace") with { Default = "oneWay" },
        new("lay.grades", KeyKind.Sections, "Pieces that may lie on flaws; all others may not.") { Least = 1, Most = 50 },
        new("lay.grades[].pieces", KeyKind.Labels, "Labels of pieces such as \"P1.07\", or kinds of pieces such as \"patch\" or \"strip\".") { IsRequired = true, Least = 1, Most = 2000 },
        Whole("lay.grades[].grade", "They may lie on flaws that ask for this grade or less.", 1, 9) with { IsRequired = true },
        new("lay.start", KeyKind.LaysFile, "Lays of an earlier result, or moved by hand, from which the search goes on."),
        new("lay.locked", KeyKind.Labels, "Pieces that stay where these lays have them.") { Least = 1, Most = 2000 },
        new("lay.keep", KeyKind.LaysFile, "Lays that are checked and used as they are, never searched again."),
        new("rates", KeyKind.Section, "What cloth and work cost; whatever is not stated is not priced."),
        new("rates.currency", KeyKind.Line, "The word behind sums.") { Most = 12 },
        Amount("rates.perHour", "Money for an hour of work."),
        Amount("rates.piece", "Minutes for a piece handled."),
        Amount("rates.hem", "Minutes for a metre of hem."),
        new("rates.cloths", KeyKind.Sections, "Prices of cloths, clear sheet among them.") { Most = 20 },
        new("rates.cloths[].cloth", KeyKind.ClothName, "Name of the cloth.") { IsRequired = true, Least = 1, Most = 40 },
        Amount("rates.cloths[].perMetre", "Money for a running metre off the roll.") with { IsRequired = true },
        new("rates.seams", KeyKind.Sections, "Minutes by make-up.") { Most = 100 },
        new("rates.seams[].makeUp", KeyKind.Line, "Name of the make-up; \", closing\" behind it for its closing seam, which else takes the same.") { IsRequired = true, Most = 60 },
        Amount("rates.seams[].perMetre", "Minutes for a metre of seam, all rows together.") with { IsRequired = true },
        new("confirmed", KeyKind.Places, "Places of defaults that somebody has confirmed.") { Most = 1000 },
    ];

    /// <summary>The key at a place, with empty brackets for any member of a list; null when there is none.</summary>
    internal static JobKey? Find(string place) => All.FirstOrDefault(key => string.Equals(key.Place, place, StringComparison.Ordinal));

    /// <summary>Keys that stand directly in a section; "" is the top.</summary>
    internal static ImmutableArray<JobKey> In(string section) =>
        [.. All.Where(key => string.Equals(key.Section, section, StringComparison.Ordinal))];

    /// <summary>Names of the keys of a section, for messages.</summary>
    internal static string Listing(string section) => string.Join(", ", In(section).Select(key => key.Name));

    /// <summary>Places whose defaults may be confirmed, in a job of so many cloths and entries of windows, openings and pipes.</summary>
    internal static ImmutableArray<string> Confirmable(int cloths, int windows, int openings, int pipes) =>
    [
        .. All.Where(key => key.IsAssumable).SelectMany(key => key.Place.Contains("[]", StringComparison.Ordinal)
            ? Enumerable.Range(0, CountOf(key, cloths, windows, openings, pipes)).Select(index => key.Place.Replace("[]", FormattableString.Invariant($"[{index}]"), StringComparison.Ordinal))
            : [key.Place]),
    ];

    /// <summary>Which count tells how many sections of a list there are.</summary>
    private static int CountOf(JobKey key, int cloths, int windows, int openings, int pipes) =>
        key.Place.StartsWith("pipes", StringComparison.Ordinal) ? pipes : key.Place.StartsWith("windows", StringComparison.Ordinal) ? windows : key.Place.StartsWith("openings", StringComparison.Ordinal) ? openings : cloths;

    private static JobKey Whole(string place, string meaning, double least, double most) =>
        new(place, KeyKind.Whole, meaning) { Least = least, Most = most };

    private static JobKey Ratio(string place, string meaning, double least, double most) =>
        new(place, KeyKind.Ratio, meaning) { Least = least, Most = most };

    private static JobKey Length(string place, string meaning, double least, double most) =>
        new(place, KeyKind.Length, meaning) { Least = least, Most = most };

    private static JobKey Heights(string place, string meaning) => new(place, KeyKind.HubLengths, meaning) { Least = -3000, Most = 10_000 };

    private static JobKey Amount(string place, string meaning) => new(place, KeyKind.Amount, meaning) { Least = 0, Most = 1_000_000 };

    private static JobKey MakeUp(string place, string meaning) => new(place, KeyKind.MakeUpName, meaning) { Least = 1, Most = 40, Words = Forms };

    private static JobKey Word(string place, string meaning, params ReadOnlySpan<string> words) =>
        new(place, KeyKind.Word, meaning) { Words = [.. words] };
}
