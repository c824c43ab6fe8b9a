import { illustrativeSettings } from '../../engine/index.ts';

/** Kilometres in a mile, exact (NIST SP 811, appendix B). */
const KM_PER_MILE = 1.609344;
const kmh = illustrativeSettings.parkSpeed * 3.6;

/** In both systems at once, since a drawing prints one text: "5 km/h (3 mph)". */
export const parkSpeedWords = `${kmh.toFixed(0)} km/h (${(kmh / KM_PER_MILE).toFixed(0)} mph)`;
