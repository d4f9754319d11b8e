namespace FarmTwin.Engine.Tests;

public class PublishedTableTests
{
    [Fact]
    public void Every_published_file_is_listed_and_cites_its_source()
    {
        string[] files = [.. Directory.GetFiles(PublishedTable.Folder, "*.csv")
            .Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];
        Assert.Equal(PublishedTable.Names, files);
        Assert.All(files, name => Assert.NotEmpty(PublishedTable.Read(name).Rows));
    }
}
