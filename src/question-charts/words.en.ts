/** What is drawn in the charts of questions, never what it shows: that is the question. */
export const words = {
  letter: (place: number) => String.fromCharCode(65 + place),
  line: (letter: string) => `Line ${letter}`,
  pressure: 'Pressure',
  temperature: 'Fluid temperature',
  leak: 'Leak',
  turbine: 'Turbine speed',
  slip: 'Slip',
  afterBrake: 'Time after the brake is let go',
  afterSelection: 'Time after selection',
  viscosity: 'Kinematic viscosity',
  minutes: 'Time from a cold start',
  lineAndTap:
    'Two gauges on one car, Drive selected, foot brake on, idle: line pressure and the tap of the forward clutch, from {temperature 20} to {temperature 110}.',
  threeTaps:
    'The taps of three clutches of one car, each applied in its turn at idle, from {temperature 20} to {temperature 110}.',
  lineOverHeat:
    'Line pressure of one car, from {temperature 20} to {temperature 110}: once at idle, once at {speed 1500}.',
  twoLeaks: 'Two leaks behind the same pressure, from {temperature 20} to {temperature 110}.',
  oneStop:
    'Turbine speed of one car after Drive is selected with the foot brake on, the fluid at {temperature 95}.',
  twoStops:
    'Turbine speed of two cars after Drive is selected with the foot brake on, the fluid at {temperature 95}.',
  frostStop:
    'Turbine speed of one car after Drive is selected with the foot brake on: in frost at {temperature -15}, and at {temperature 60}.',
  takeOff:
    'Slip of two cars in the same gentle take-off in first gear, the fluid at {temperature 95}.',
  twoFluids: 'Kinematic viscosity of two fluids, from {temperature 20} to {temperature 110}.',
  threeDrives:
    'Fluid temperature of one car on three days alike, from a cold start: idling, driven gently, and pulling a load.',
};
