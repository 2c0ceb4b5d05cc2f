using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CsCheck;

namespace CoverPattern.Files.Tests.Results;

public class PiecesFileTests
{
    [Fact]
    public void Write_RandomSets_AreReadAsTheyWere()
    {
        // The other road: .NET's own serializer shows both sets whole.
        RandomPieces.Set.Sample(
            set => JsonSerializer.Serialize(PiecesFile.Read(PiecesFile.Write(set))) == JsonSerializer.Serialize(set), iter: 300);
    }

    [Fact]
    public void Write_Pattern_HasTheDocumentedFieldsAndNumbers()
    {
        var set = SamplePieces.Set;

        var pattern = Parse(set)["patterns"]![1]!;

        Assert.Equal(
            ["id", "cloth", "kind", "quantity", "sewLine", "cutLine", "runs", "folds", "notches", "drills", "lines", "cutouts", "grain", "facets", "labelSpot", "labelRadiusMm"],
            Fields(pattern));
        Assert.Equal(["role", "arcClass", "makeUp", "side", "from", "to", "lengthMm", "allowanceMm"], Fields(pattern["runs"]![0]!));
        Assert.Equal(["run", "atMm", "form", "onSewLine", "outer", "inner"], Fields(pattern["notches"]![0]!));
        Assert.Equal(["at", "purpose", "pierced"], Fields(pattern["drills"]![0]!));
        Assert.Equal(["purpose", "rim", "cutLine", "run"], Fields(pattern["cutouts"]![0]!));
        Assert.Equal(["from", "to"], Fields(pattern["grain"]!));
        Assert.Equal("[[0,0],[800.5,0],[800.5,700.25],[0,600]]", pattern["sewLine"]!.ToJsonString());
        Assert.Equal("[[250,250],[250,500],[550,500],[550,250]]", pattern["cutouts"]![0]!["cutLine"]!.ToJsonString());
        Assert.Equal("""{"role":"hem","arcClass":"c0","makeUp":"","side":"none","from":0,"to":1,"lengthMm":800.5,"allowanceMm":15}""", pattern["runs"]![0]!.ToJsonString());
        Assert.Equal("tick", (string?)pattern["notches"]![0]!["form"]);
    }

    [Fact]
    public void Write_Piece_HasPartnerOnlyWhereThereIsOne()
    {
        var piece = Parse(SamplePieces.Set)["pieces"]![1]!;

        Assert.Equal(["label", "pattern", "mirrored", "facets", "runs"], Fields(piece));
        Assert.Equal(["arc", "role"], Fields(piece["runs"]![0]!));
        Assert.Equal("""{"arc":"S001","role":"seam","partner":{"piece":"P1.01","run":1}}""", piece["runs"]![1]!.ToJsonString());
        Assert.True((bool)piece["mirrored"]!);
    }

    [Fact]
    public void Write_Header_SaysVersionUnitsAndView()
    {
        var file = Parse(SamplePieces.Set);

        Assert.Equal(["formatVersion", "units", "view", "patterns", "pieces"], Fields(file));
        Assert.Equal(1, (int)file["formatVersion"]!);
        Assert.Equal("mm", (string?)file["units"]);
        Assert.StartsWith("All drawings are seen from outside", (string?)file["view"], StringComparison.Ordinal);
    }

    [Fact]
    public void Write_DecimalCommaCulture_SameBytesInUnixLines()
    {
        var before = CultureInfo.CurrentCulture;
        var expected = PiecesFile.Write(SamplePieces.Set);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, PiecesFile.Write(SamplePieces.Set));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.DoesNotContain((byte)'\r', expected);
        Assert.Equal((byte)'\n', expected[^1]);
    }

    [Fact]
    public void Write_NumberNotFinite_Throws()
    {
        var set = SamplePieces.Set;
        var broken = set with { Patterns = set.Patterns.SetItem(0, set.Patterns[0] with { LabelRadius = double.NaN }) };

        Assert.ThrowsAny<ArgumentException>(() => PiecesFile.Write(broken));
    }

    public static IEnumerable<object[]> Faults()
    {
        static object[] Row(string place, Action<JsonNode> plant) => [place, plant];

        yield return Row("file", file => file.AsObject().Remove("formatVersion"));
        yield return Row("formatVersion", file => file["formatVersion"] = 2);
        yield return Row("units", file => file["units"] = "in");
        yield return Row("file", file => file["extra"] = 1);
        yield return Row("file", file => file.AsObject().Remove("pieces"));
        yield return Row("patterns[0]", file => file["patterns"]![0]!.AsObject().Remove("grain"));
        yield return Row("patterns[1].id", file => file["patterns"]![1]!["id"] = "T01");
        yield return Row("patterns[0].quantity", file => file["patterns"]![0]!["quantity"] = 1.5);
        yield return Row("patterns[0].quantity", file => file["patterns"]![0]!["quantity"] = -1);
        yield return Row("patterns[0].sewLine", file => file["patterns"]![0]!["sewLine"]!.AsArray().RemoveAt(0));
        yield return Row("patterns[0].sewLine[2]", file => file["patterns"]![0]!["sewLine"]![2]!.AsArray().Add(0));
        yield return Row("patterns[0].sewLine[2][1]", file => file["patterns"]![0]!["sewLine"]![2]![1] = "NaN");
        yield return Row("patterns[0].runs[1].from", file => file["patterns"]![0]!["runs"]![1]!["from"] = 3);
        yield return Row("patterns[0].runs[1].from", file => file["patterns"]![0]!["runs"]![1]!["from"] = 0);
        yield return Row("patterns[0].runs[2].to", file => file["patterns"]![0]!["runs"]![2]!["to"] = -1);
        yield return Row("patterns[0].runs[0].role", file => file["patterns"]![0]!["runs"]![0]!["role"] = "Hem");
        yield return Row("patterns[0].runs[0].side", file => file["patterns"]![0]!["runs"]![0]!["side"] = "1");
        yield return Row("patterns[0].runs[0].lengthMm", file => file["patterns"]![0]!["runs"]![0]!["lengthMm"] = -1);
        yield return Row("patterns[0].runs[0]", file => file["patterns"]![0]!["runs"]![0]!["lenghtMm"] = 1);
        yield return Row("patterns[0].notches[1].run", file => file["patterns"]![0]!["notches"]![1]!["run"] = 3);
        yield return Row("pieces[1].label", file => file["pieces"]![1]!["label"] = "P1.01");
        yield return Row("pieces[0].pattern", file => file["pieces"]![0]!["pattern"] = "T99");
        yield return Row("pieces[0].mirrored", file => file["pieces"]![0]!["mirrored"] = "no");
        yield return Row("pieces[0].runs", file => file["pieces"]![0]!["runs"]!.AsArray().RemoveAt(0));
        yield return Row("pieces[0].facets", file => file["pieces"]![0]!["facets"]!.AsArray().RemoveAt(0));
        yield return Row("pieces[0].runs[1].partner.piece", file => file["pieces"]![0]!["runs"]![1]!["partner"]!["piece"] = "P9.99");
        yield return Row("pieces[0].runs[1].partner.run", file => file["pieces"]![0]!["runs"]![1]!["partner"]!["run"] = 3);
        yield return Row("pieces[0].runs[1].partner", file => file["pieces"]![0]!["runs"]![1]!["partner"] = null);
        yield return Row("pieces[0].runs[1]", file => file["pieces"]![0]!["runs"]![1]!["parner"] = 1);
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void Read_PlantedFault_IsNamedByItsPlace(string place, Action<JsonNode> plant)
    {
        var file = Parse(SamplePieces.Set);
        plant(file);

        var fault = Assert.Throws<ResultFormatException>(() => PiecesFile.Read(Encoding.UTF8.GetBytes(file.ToJsonString())));

        Assert.Equal(place, fault.Place);
        Assert.StartsWith(place + ": ", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "line 1, column 1")]
    [InlineData("{\n  \"formatVersion\": NaN\n}", "line 2, column 20")]
    [InlineData("{\"formatVersion\": 1,\n \"units\": \"mm\"", "line 2, column 15")]
    public void Read_NoJson_NamesLineAndColumn(string text, string place)
    {
        var fault = Assert.Throws<ResultFormatException>(() => PiecesFile.Read(Encoding.UTF8.GetBytes(text)));

        Assert.Equal(place, fault.Place);
    }

    [Fact]
    public void Read_NumberBeyondAllBounds_IsAFault()
    {
        var text = Encoding.UTF8.GetString(PiecesFile.Write(SamplePieces.Set)).Replace("[450, 780]", "[450, 1e999]", StringComparison.Ordinal);

        var fault = Assert.Throws<ResultFormatException>(() => PiecesFile.Read(Encoding.UTF8.GetBytes(text)));

        Assert.Equal("patterns[0].sewLine[2][1]", fault.Place);
    }

    [Fact]
    public void Read_FieldTwice_IsAFault()
    {
        var text = Encoding.UTF8.GetString(PiecesFile.Write(SamplePieces.Set))
            .Replace("\"quantity\": 2", "\"quantity\": 2, \"quantity\": 3", StringComparison.Ordinal);

        Assert.Throws<ResultFormatException>(() => PiecesFile.Read(Encoding.UTF8.GetBytes(text)));
    }

    private static JsonNode Parse(CoverPattern.Patterns.Pieces.PieceSet set) => JsonNode.Parse(PiecesFile.Write(set))!;

    private static string[] Fields(JsonNode node) => [.. node.AsObject().Select(field => field.Key)];
}
