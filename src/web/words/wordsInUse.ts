export { setWordsInUse, type WordsInUse, wordsInUse } from '../../words/wordsInUse.ts';
