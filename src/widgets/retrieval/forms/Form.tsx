import type { FormProps } from '../form-props.ts';
import { Match } from './Match.tsx';
import { Order } from './Order.tsx';
import { Spot } from './Spot.tsx';

export function Form({ model, asked, id }: FormProps) {
  switch (asked.kind) {
    case 'order':
      return <Order key={asked.id} {...{ model, asked, id }} />;
    case 'match':
      return <Match key={asked.id} {...{ model, asked, id }} />;
    case 'spot':
      return <Spot key={asked.id} {...{ model, asked, id }} />;
  }
}
