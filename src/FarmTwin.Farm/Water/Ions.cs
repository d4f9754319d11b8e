namespace FarmTwin.Farm.Water;

/// <summary>The ions of a water that carry its alkalinity, each as total moles of the element (or nitrogen) per litre.</summary>
/// <remarks>Inorganic carbon is not among them: it carries no alkalinity of its own in this form. Not a charge balance.</remarks>
/// <param name="Na">Sodium, mol/L.</param>
/// <param name="K">Potassium, mol/L.</param>
/// <param name="Ca">Calcium, mol/L.</param>
/// <param name="Mg">Magnesium, mol/L.</param>
/// <param name="Cl">Chloride, mol/L.</param>
/// <param name="NitrateN">Nitrate nitrogen, mol/L.</param>
/// <param name="NitriteN">Nitrite nitrogen, mol/L.</param>
/// <param name="SulfateS">Sulfate sulfur, mol/L.</param>
/// <param name="P">Dissolved phosphate phosphorus, mol/L.</param>
/// <param name="TAN">Total ammonia nitrogen, NH4 and NH3, mol/L.</param>
public readonly record struct Ions(
    double Na, double K, double Ca, double Mg, double Cl, double NitrateN, double NitriteN, double SulfateS, double P, double TAN);
