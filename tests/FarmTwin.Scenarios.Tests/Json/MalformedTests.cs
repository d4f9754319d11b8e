using System.Text;
using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Json;

public class MalformedTests
{
    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("{\n  \"name\": \"x\"\n  \"start\": 1 }", 3, 3)]
    [InlineData("{ \"é°\": 1 x }", 1, 11)]
    [InlineData("{ } { }", 1, 5)]
    [InlineData("{ \"name\": ", 1, 11)]
    [InlineData("[1, 2]", 1, 1)]
    [InlineData("\"text\"", 1, 1)]
    [InlineData("{ \"name\": \"\\ud800\" }", 1, 11)]
    [InlineData("{\n\"a\": 01 }", 2, 7)]
    public void Text_that_is_no_scenario_is_refused_at_its_place(string text, int line, int column)
    {
        ScenarioError error = Assert.Single(Reading.Errors(text));
        Assert.Equal((line, column), (error.Line, error.Column));
    }

    [Fact]
    public void Bytes_that_are_no_Unicode_are_refused()
    {
        using var folder = new TemporaryFolder();
        string path = folder.Write("farm.json", string.Empty);
        File.WriteAllBytes(path, [.. "{ \"name\": \""u8, 0xff, 0xfe, .. "\" }"u8]);
        Assert.Single(Assert.Throws<ScenarioException>(() => Reading.Read(path)).Errors);
    }

    [Fact]
    public void A_byte_order_mark_does_not_shift_places()
    {
        using var folder = new TemporaryFolder();
        string path = folder.Write("farm.json", string.Empty);
        File.WriteAllText(path, "{ \"x\": 1 }", new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        Assert.Contains(Assert.Throws<ScenarioException>(() => Reading.Read(path)).Errors, e => (e.Line, e.Column, e.Path) == (1, 3, "x"));
    }

    [Fact]
    public void Deep_nesting_is_refused_not_followed() =>
        Assert.Contains("not JSON", Assert.Single(Reading.Errors(string.Concat(Enumerable.Repeat("{\"a\":", 5000)))).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_file_that_does_not_exist_is_named_with_the_nearest()
    {
        using var folder = new TemporaryFolder();
        folder.Write("season-one.json", Reading.Good);
        ScenarioError error = Assert.Single(Assert.Throws<ScenarioException>(
            () => Reading.Read(Path.Combine(folder.Folder, "seasonone.json"))).Errors);
        Assert.Equal((0, "season-one.json"), (error.Line, error.Suggestion));
        Assert.Single(Assert.Throws<ScenarioException>(() => Reading.Read(folder.Folder)).Errors);
    }
}
