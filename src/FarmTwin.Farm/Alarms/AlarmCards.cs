namespace FarmTwin.Farm.Alarms;

/// <summary>What a person does about an alarm, in a sentence: the card that hangs beside the box.</summary>
public static class AlarmCards
{
    /// <summary>The card of a condition.</summary>
    public static string Of(ProbeQuantity quantity, AlarmCondition condition) => (quantity, condition) switch
    {
        (_, AlarmCondition.SensorFault) => "test by hand; clean, calibrate or replace the probe; until then the process is not watched",
        (ProbeQuantity.WaterTemperature, AlarmCondition.Low or AlarmCondition.Falling) =>
            "close the coupling, cover the tanks, look at the flame and the gas; reheat no faster than 1 °C an hour",
        (ProbeQuantity.WaterTemperature, _) => "shade, air, no feed; look for a heater that runs on",
        (ProbeQuantity.AirTemperature, AlarmCondition.Low or AlarmCondition.Falling) => "look at the air heater, its gas and the vents",
        (ProbeQuantity.AirTemperature, _) => "open the vents, draw the shade, look at the fans",
        (ProbeQuantity.PH, _) => "test by hand, no feed; never mend pH by more than 0.2 a day",
        (ProbeQuantity.Oxygen, _) => "air or oxygen first, then stop the feed, then find the blower or pump that stands",
        (ProbeQuantity.Mains, _) => "battery air or oxygen first, then the generator, no feed; pumps last",
        (ProbeQuantity.Level, AlarmCondition.High) => "stop the transfer pump, close the coupling, find the blocked return",
        (ProbeQuantity.Level, _) => "stop the pump, find the leak; do not fill up blindly",
        _ => "test by hand; look for a dose, a leak or a float valve that runs on",
    };

    /// <summary>The condition in a word or two.</summary>
    public static string Words(AlarmCondition condition) => condition switch
    {
        AlarmCondition.High => "high",
        AlarmCondition.Low => "low",
        AlarmCondition.Rising => "rises fast",
        AlarmCondition.Falling => "falls fast",
        _ => "sensor fault",
    };
}
