export { isTold, told, toldOr } from '../../words/told.ts';
