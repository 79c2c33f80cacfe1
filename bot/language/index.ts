export { languageOfTag, localeOf } from './locale.ts';
export { readerLanguage, readIn } from './reader.ts';
export { type MessageKey, say } from './say.ts';
