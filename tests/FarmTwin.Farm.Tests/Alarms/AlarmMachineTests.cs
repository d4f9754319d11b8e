using FarmTwin.Farm.Alarms;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>The state machine against the published vocabulary.</summary>
public class AlarmMachineTests
{
    [Fact]
    public void States_follow_the_published_transitions()
    {
        PublishedTable table = PublishedTable.Read("alarm-states");
        Assert.All(table.Rows, row => Assert.Equal(
            Enum.Parse<AlarmState>(row["next"]),
            AlarmMachine.Next(Enum.Parse<AlarmState>(row["state"]), Enum.Parse<AlarmInput>(row["input"]), row["latching"] == "yes")));
        Assert.Equal(Enum.GetNames<AlarmState>().Order(), table.Rows.Select(r => r["state"]).Distinct().Order());
    }

    [Fact]
    public void Whatever_happens_an_alarm_that_nobody_acknowledged_never_looks_normal()
    {
        foreach (AlarmInput second in new[] { AlarmInput.Returns, AlarmInput.Reset, AlarmInput.Occurs })
        {
            foreach (bool latching in new[] { false, true })
            {
                AlarmState state = AlarmMachine.Next(AlarmMachine.Next(AlarmState.Normal, AlarmInput.Occurs, latching), second, latching);
                Assert.True(AlarmMachine.WantsAcknowledgement(state), $"{second}, {latching}: {state}");
            }
        }
    }
}
