export const words = {
  label: 'The clutch has to',
  options: {
    idle: { words: 'Stand in gear', note: (p: { speed: string }) => `engine at ${p.speed}` },
    gentle: {
      words: 'Take off gently',
      note: (p: { speed: string }) => `engine at ${p.speed}, car not yet moving`,
    },
    'take-off': {
      words: 'Take off firmly',
      note: (p: { speed: string }) => `engine at ${p.speed}, car not yet moving`,
    },
  },
};
