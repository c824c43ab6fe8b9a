import { training } from './transmissions.ts';

/** The training transmission under the name that callers not yet on src/car use. */
export const gearbox = training;
/** Its drivetrain, likewise. */
export const drivetrain = training.drive;
/** Its test points, likewise. */
export const testPoints = training.testPoints;
