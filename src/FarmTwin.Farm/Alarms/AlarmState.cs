namespace FarmTwin.Farm.Alarms;

/// <summary>The states of an alarm, in the words of ANSI/ISA-18.2 and IEC 62682.</summary>
public enum AlarmState
{
    /// <summary>The value is in order, and nobody need know anything.</summary>
    Normal,

    /// <summary>In alarm; nobody has said that they know.</summary>
    Unacknowledged,

    /// <summary>In alarm; somebody knows.</summary>
    Acknowledged,

    /// <summary>The value has returned, but nobody has said that they know.</summary>
    ReturnedUnacknowledged,

    /// <summary>The value has returned; the alarm is latched, and nobody has said that they know.</summary>
    LatchedUnacknowledged,

    /// <summary>The value has returned and somebody knows; the alarm stays until it is reset.</summary>
    LatchedAcknowledged,

    /// <summary>Put aside by a person for a time.</summary>
    Shelved,

    /// <summary>Kept quiet by a rule: the basin is dry, there are no fish, its probe is at fault.</summary>
    SuppressedByDesign,

    /// <summary>Taken out of use: the alarm box has no power.</summary>
    OutOfService,
}

/// <summary>What may happen to an alarm.</summary>
public enum AlarmInput
{
    /// <summary>The condition has held for the on-delay.</summary>
    Occurs,

    /// <summary>The value has been back by the deadband for the off-delay.</summary>
    Returns,

    /// <summary>A person says that they know.</summary>
    Acknowledge,

    /// <summary>A person resets a latched alarm.</summary>
    Reset,

    /// <summary>A person puts it aside.</summary>
    Shelve,

    /// <summary>A rule keeps it quiet.</summary>
    Suppress,

    /// <summary>It is taken out of use.</summary>
    TakeOut,

    /// <summary>What put it aside, kept it quiet or took it out has ended.</summary>
    Resume,
}
