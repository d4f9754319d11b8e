namespace FarmTwin.Farm.Alarms;

/// <summary>The state machine of an alarm (ANSI/ISA-18.2-2016, IEC 62682:2014).</summary>
public static class AlarmMachine
{
    /// <summary>The next state; the same where the input means nothing in this state.</summary>
    /// <param name="state">The present state.</param>
    /// <param name="input">What happens.</param>
    /// <param name="latching">Whether the alarm stays after its return until it is reset.</param>
    public static AlarmState Next(AlarmState state, AlarmInput input, bool latching) => (state, input) switch
    {
        (AlarmState.Shelved or AlarmState.SuppressedByDesign or AlarmState.OutOfService, AlarmInput.Resume) => AlarmState.Normal,
        (_, AlarmInput.TakeOut) => AlarmState.OutOfService,
        (AlarmState.OutOfService, _) => state,
        (_, AlarmInput.Shelve) => AlarmState.Shelved,
        (AlarmState.Shelved, _) => state,
        (_, AlarmInput.Suppress) => AlarmState.SuppressedByDesign,
        (AlarmState.SuppressedByDesign, _) => state,

        (AlarmState.Normal or AlarmState.ReturnedUnacknowledged or AlarmState.LatchedUnacknowledged or AlarmState.LatchedAcknowledged,
            AlarmInput.Occurs) => AlarmState.Unacknowledged,
        (AlarmState.Unacknowledged, AlarmInput.Acknowledge) => AlarmState.Acknowledged,
        (AlarmState.Unacknowledged, AlarmInput.Returns) => latching ? AlarmState.LatchedUnacknowledged : AlarmState.ReturnedUnacknowledged,
        (AlarmState.Acknowledged, AlarmInput.Returns) => latching ? AlarmState.LatchedAcknowledged : AlarmState.Normal,
        (AlarmState.ReturnedUnacknowledged, AlarmInput.Acknowledge) => AlarmState.Normal,
        (AlarmState.LatchedUnacknowledged, AlarmInput.Acknowledge) => AlarmState.LatchedAcknowledged,
        (AlarmState.LatchedAcknowledged, AlarmInput.Reset) => AlarmState.Normal,
        _ => state,
    };

    /// <summary>Whether the alarm's condition stands in this state.</summary>
    public static bool IsActive(AlarmState state) => state is AlarmState.Unacknowledged or AlarmState.Acknowledged;

    /// <summary>Whether a person has still to say that they know.</summary>
    public static bool WantsAcknowledgement(AlarmState state) =>
        state is AlarmState.Unacknowledged or AlarmState.ReturnedUnacknowledged or AlarmState.LatchedUnacknowledged;

    /// <summary>Whether the alarm is out of the game for now.</summary>
    public static bool IsInhibited(AlarmState state) =>
        state is AlarmState.Shelved or AlarmState.SuppressedByDesign or AlarmState.OutOfService;
}
