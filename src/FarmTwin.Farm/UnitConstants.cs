namespace FarmTwin.Farm;

/// <summary>Unit constants, each from exact constituents or stated atomic weights. The only place where they stand.</summary>
public static class UnitConstants
{
    /// <summary>Hours in a day.</summary>
    public const double HoursPerDay = 24;

    /// <summary>Days in a week.</summary>
    public const double DaysPerWeek = 7;

    /// <summary>Seconds in an hour.</summary>
    public const double SecondsPerHour = 3600;

    /// <summary>Seconds in a minute.</summary>
    public const long SecondsPerMinute = 60;

    /// <summary>Seconds in a day.</summary>
    public const long SecondsPerDay = 86400;

    /// <summary>Kelvin at 0 °C.</summary>
    public const double ZeroCelsiusInKelvin = 273.15;

    /// <summary>Litres in a cubic metre.</summary>
    public const double LitresPerCubicMetre = 1000;

    /// <summary>Cubic metres an hour in a litre a minute.</summary>
    public const double CubicMetresPerHourPerLitrePerMinute = 60 / LitresPerCubicMetre;

    /// <summary>Grams in a kilogram; also milligrams in a gram.</summary>
    public const double GramsPerKilogram = 1000;

    /// <summary>Megajoules in a kilowatt hour.</summary>
    public const double MegajoulesPerKilowattHour = 3.6;

    /// <summary>Litres in a US liquid gallon (231 cubic inches of 2.54 cm, exact).</summary>
    public const double LitresPerUsGallon = 3.785411784;

    /// <summary>Joules in an international-table British thermal unit.</summary>
    public const double JoulesPerBtu = 1055.05585262;

    /// <summary>Grams of CaCO3 in an equivalent of alkalinity (molar mass 100.0869 over two charges).</summary>
    public const double GramsCalciumCarbonatePerEquivalent = 50.04345;

    /// <summary>Molar gas constant, J/(mol K) (exact since 2019, rounded here to ten digits).</summary>
    public const double GasConstantJoulePerMoleKelvin = 8.314462618;

    /// <summary>Standard atomic weights (IUPAC 2021, abridged), g/mol.</summary>
    public static class AtomicWeight
    {
        /// <summary>Hydrogen.</summary>
        public const double Hydrogen = 1.008;

        /// <summary>Carbon.</summary>
        public const double Carbon = 12.011;

        /// <summary>Nitrogen.</summary>
        public const double Nitrogen = 14.007;

        /// <summary>Oxygen.</summary>
        public const double Oxygen = 15.999;

        /// <summary>Sodium.</summary>
        public const double Sodium = 22.990;

        /// <summary>Magnesium.</summary>
        public const double Magnesium = 24.305;

        /// <summary>Phosphorus.</summary>
        public const double Phosphorus = 30.974;

        /// <summary>Sulfur.</summary>
        public const double Sulfur = 32.06;

        /// <summary>Chlorine.</summary>
        public const double Chlorine = 35.45;

        /// <summary>Potassium.</summary>
        public const double Potassium = 39.098;

        /// <summary>Calcium.</summary>
        public const double Calcium = 40.078;

        /// <summary>Iron.</summary>
        public const double Iron = 55.845;
    }

    /// <summary>Grams of CO2 per gram of inorganic carbon.</summary>
    public const double CarbonDioxidePerCarbon = (AtomicWeight.Carbon + (2 * AtomicWeight.Oxygen)) / AtomicWeight.Carbon;

    /// <summary>Milligrams of CO2 in a mole.</summary>
    public const double CarbonDioxideMilligramsPerMole = (AtomicWeight.Carbon + (2 * AtomicWeight.Oxygen)) * 1000;
}
