using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Tests.Results;

public class JsonLayoutTests
{
    [Fact]
    public void Write_ShortAndLongLists_ShortOnOneLineLongOnSeveral()
    {
        JsonArray[] ring = [.. Enumerable.Range(0, 20).Select(i => new JsonArray(i + 0.0009765625, -100000.5))];
        var node = new JsonObject { ["name"] = "Tür \"1\"", ["short"] = new JsonArray(1, 2), ["none"] = null, ["ring"] = new JsonArray([.. ring]) };

        var lines = Encoding.UTF8.GetString(JsonLayout.Write(node)).Split('\n');

        Assert.Equal(["{", "  \"name\": \"Tür \\\"1\\\"\",", "  \"short\": [1, 2],", "  \"none\": null,", "  \"ring\": [", "    [0.0009765625, -100000.5],"], lines[..6]);
        Assert.Equal(["    [19.0009765625, -100000.5]", "  ]", "}", ""], lines[^4..]);
    }
}
