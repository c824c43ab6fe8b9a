import type { AskedForm } from '../../quiz/asked.ts';
import type { RetrievalModel } from './model.ts';

export interface FormProps<Form extends AskedForm = AskedForm> {
  readonly model: RetrievalModel;
  readonly asked: Form;
  readonly id: string;
}
