namespace FarmTwin.Farm.Climate;

/// <summary>Where the farm stands.</summary>
/// <param name="LatitudeDegrees">-90 to 90, north positive.</param>
/// <param name="LongitudeEastDegrees">-180 to 180, EAST positive.</param>
/// <param name="ElevationMetres">Above sea level, m.</param>
/// <param name="TimeZoneHours">Local standard time less UTC, h; never daylight time.</param>
public readonly record struct WeatherSite(
    double LatitudeDegrees, double LongitudeEastDegrees, double ElevationMetres, double TimeZoneHours);
