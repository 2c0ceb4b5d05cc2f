using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CsCheck;

namespace CoverPattern.Files.Tests.Results;

public class LaysFileTests
{
    [Fact]
    public void Write_RandomLays_AreReadAsTheyWere()
    {
        // The other road: .NET's own serializer shows both lists whole.
        RandomPieces.Lays.Sample(
            lays => JsonSerializer.Serialize(LaysFile.Read(LaysFile.Write(lays))) == JsonSerializer.Serialize(lays), iter: 300);
    }

    [Fact]
    public void Write_Lay_HasTheDocumentedFieldsAndNumbers()
    {
        var file = JsonNode.Parse(LaysFile.Write([SamplePieces.Lay]))!;

        Assert.Equal(["formatVersion", "units", "view", "lays"], file.AsObject().Select(field => field.Key));
        Assert.StartsWith("All drawings are seen from outside", (string?)file["view"], StringComparison.Ordinal);
        var lay = file["lays"]![0]!.AsObject();
        Assert.Equal(
            ["cloth", "number", "rollWidthMm", "usableWidthMm", "endAllowanceMm", "lengthMm", "spacingMm", "faceDown", "roll", "rollName", "fromMm", "plies", "faceToFace", "flaws", "making", "placements"],
            lay.Select(field => field.Key));
        Assert.Equal(5000.5, (double)lay["lengthMm"]!);
        Assert.Equal("""{"piece":"P2.01","x":3800,"y":200,"turn":33.3,"mirrored":true}""", lay["placements"]![4]!.ToJsonString());
    }

    public static IEnumerable<object[]> Faults()
    {
        static object[] Row(string place, Action<JsonNode> plant) => [place, plant];

        yield return Row("formatVersion", file => file["formatVersion"] = 0);
        yield return Row("lays", file => file["lays"] = "none");
        yield return Row("lays[0]", file => file["lays"]![0]!.AsObject().Remove("faceDown"));
        yield return Row("lays[0].usableWidthMm", file => file["lays"]![0]!["usableWidthMm"] = 1500.5);
        yield return Row("lays[0].spacingMm", file => file["lays"]![0]!["spacingMm"] = -0.1);
        yield return Row("lays[0].placements[0]", file => file["lays"]![0]!["placements"]![0]!["locked"] = true);
        yield return Row("lays[0].placements[1].piece", file => file["lays"]![0]!["placements"]![1]!["piece"] = "P1.01");
        yield return Row("lays[0]", file => file["lays"]![0]!.AsObject().Remove("roll"));
        yield return Row("lays[0].plies", file => file["lays"]![0]!["plies"] = 0);
        yield return Row("lays[0].making.origin", file => file["lays"]![0]!["making"]!["origin"] = "found");
        yield return Row("lays[0].placements[0].under[0]", file => file["lays"]![0]!["placements"]![0]!["under"] = new JsonArray(7));
        yield return Row("lays[0].placements[2].turn", file => file["lays"]![0]!["placements"]![2]!["turn"] = null);
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void Read_PlantedFault_IsNamedByItsPlace(string place, Action<JsonNode> plant)
    {
        var file = JsonNode.Parse(LaysFile.Write([SamplePieces.Lay]))!;
        plant(file);

        var fault = Assert.Throws<ResultFormatException>(() => LaysFile.Read(Encoding.UTF8.GetBytes(file.ToJsonString())));

        Assert.Equal(place, fault.Place);
    }

    [Fact]
    public void Read_FileOfAnEarlierVersion_IsASinglePlyWithoutFlaws()
    {
        var file = JsonNode.Parse(LaysFile.Write([SamplePieces.Lay]))!;
        foreach (var field in new[] { "roll", "rollName", "fromMm", "plies", "faceToFace", "flaws", "making" })
        {
            file["lays"]![0]!.AsObject().Remove(field);
        }

        var lay = LaysFile.Read(Encoding.UTF8.GetBytes(file.ToJsonString())).Single();

        Assert.True(SamplePieces.Lay.Placements.SequenceEqual(lay.Placements));
        Assert.Equal((1, 0, false), (lay.Plies, lay.Roll, lay.FaceToFace));
        Assert.Empty(lay.Flaws);
    }
}
