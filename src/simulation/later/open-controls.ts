/** How many of your own controls stand open where a simulation does not say. */
export const OPEN_CONTROLS = 3;
