export { setWordsInUse, wordsInUse } from '../../words/wordsInUse.ts';
