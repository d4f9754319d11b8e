using FarmTwin.Farm.Description;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Network;

namespace FarmTwin.Reports.RunReport;

/// <summary>The water network: drawing, and tables of valves, pumps and basins under the same numbers.</summary>
internal static class NetworkPart
{
    public static void Add(HtmlSection section, FarmDescription farm)
    {
        FarmNetwork network = FarmNetwork.Of(farm);
        section.Figure(NetworkPicture.Of(network));
        var valves = new HtmlTable("Valves, with the position in which each stands", HtmlColumn.Words("valve"), HtmlColumn.Words("from"), HtmlColumn.Words("to"),
            HtmlColumn.Words("loops apart"), HtmlColumn.Words("loops coupled"), HtmlColumn.Words("what it does"));
        foreach (NetworkLink link in network.Links.Where(l => l.Valve is not null))
        {
            bool joins = link.Kind == LinkKind.WhenCoupled;
            string does = !joins ? link.Does : link.CoupledLitresPerHour >= 1 ? $"passes {Say.Number(link.CoupledLitresPerHour)} L/h when fully open" : "level line: keeps both sumps level";
            valves.Row(link.Valve!, link.From, link.To, "closed", joins ? "open" : "closed", does);
        }

        var pumps = new HtmlTable("Pumps", HtmlColumn.Words("pump"), HtmlColumn.Words("from"), HtmlColumn.Words("to"), HtmlColumn.Number("flow", "L/h"), HtmlColumn.Number("power", "W"));
        foreach (NetworkLink link in network.Links.Where(l => l.Pump is not null))
        {
            pumps.Row(link.Pump!, link.From, link.To, Say.Number(link.ApartLitresPerHour), Say.Number(link.PowerWatts));
        }

        var basins = new HtmlTable("Basins", HtmlColumn.Words("basin"), HtmlColumn.Number("water", "L"), HtmlColumn.Number("air", "L/min"), HtmlColumn.Words("float valve"), HtmlColumn.Words("holds"));
        foreach (NetworkBasin basin in network.Basins.Where(b => b.Use is not null))
        {
            basins.Row(basin.Name, Say.Number(basin.Litres), Say.Number(farm.Basins[basin.Name].AirLitresPerMinute), basin.FloatValve ?? "–", basin.Detail.Length > 0 ? basin.Detail : Say.Words(basin.Use.ToString()!).Trim());
        }

        section.Section("Valves").Paragraph("Every valve that joins the loops moves with the others. A valve for washing or decanting is opened for the work and shut again.").Table(valves);
        section.Section("Pumps and basins").Table(pumps).Table(basins);
    }
}
