export { figureText, fixed, thousands } from '../../words/figures.ts';
