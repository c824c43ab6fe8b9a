/** Overnight cold and warm from a drive [°C], wherever the two are set beside each other. */
export const COLD_C = 20;
/** See COLD_C. */
export const HOT_C = 100;
