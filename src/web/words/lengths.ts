export {
  areaIn,
  fromInchText,
  inchText,
  inchUnitOf,
  lengthFigure,
  lengthWords,
  sizeWords,
  smallAreaWords,
} from '../../words/lengths.ts';
