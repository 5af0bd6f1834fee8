/**
 * What a quantity measures. The SI unit of each, used for every stored value:
 * length m, area m², volume m³, mass kg, massPerArea kg/m², massPerVolume kg/m³, massFraction kg/kg,
 * chargePerMass mol/kg, chargePerSoilVolume mol/m³, alkalinity mol/m³ (= meq/L), temperature °C,
 * conductivity S/m, waterDepth m (irrigation or rain, 1 mm = 0.001), money (in the person's currency).
 */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'massPerArea'
  | 'massPerVolume'
  | 'massFraction'
  | 'chargePerMass'
  | 'chargePerSoilVolume'
  | 'alkalinity'
  | 'temperature'
  | 'conductivity'
  | 'waterDepth'
  | 'money';

export type UnitSystem = 'metric' | 'us';
