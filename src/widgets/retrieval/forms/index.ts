export { Form } from './Form.tsx';
