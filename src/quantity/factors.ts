/*
 * Conversion factors: NIST SP 811 (2008), appendix B. Each follows from exact definitions given there (inch 0.0254 m,
 * pound 0.453 592 37 kg, standard gravity 9.806 65 m/s², US gallon 231 cubic inches, mile 5280 ft, foot 12 in); the test
 * derives them again and holds those that the engine has too against the engine's.
 */
export const KPA_PER_PSI = 6.894757293168361;
export const LITRE_PER_US_GALLON = 3.785411784;
export const NEWTON_PER_POUND_FORCE = 4.4482216152605;
export const NEWTON_METRE_PER_POUND_FOOT = 1.3558179483314;
export const MM_PER_INCH = 25.4;
export const KM_PER_MILE = 1.609344;
/** Of 550 ft·lbf/s. */
export const KILOWATT_PER_HORSEPOWER = 0.7456998715822702;
export const GRAM_PER_POUND = 453.59237;
