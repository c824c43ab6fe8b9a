import { Player } from '../../simulation/player/Player.tsx';
import { END, type WholeCarModel } from './model.ts';
import { words } from './words.en.ts';

export const Hand = ({ model: { givens, hot } }: { readonly model: WholeCarModel }) => (
  <Player name={words.player} at={givens.time} end={END} events={() => hot.peek().solved.events} />
);
