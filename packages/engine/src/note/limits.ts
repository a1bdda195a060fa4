/** Longest note that is read, in UTF-16 code units; a longer one is refused at once. */
export const MOST_TEXT = 1 << 19;
/** Most lines of a note that is read. */
export const MOST_LINES = 60_000;
/** Longest YAML head that is read. */
export const MOST_HEAD = 1 << 14;
/** Brackets or dashes that one line of the head may open, and brackets the whole head may have open. */
export const MOST_HEAD_DEPTH = 40;
/** Quotes and lists within one another that are told apart. */
export const MOST_CONTAINERS = 12;
/** Blocks of the working within one another. */
export const MOST_NESTING = 16;
/** Longest paragraph that is read as sentences. */
export const MOST_SENTENCE = 2000;
/** Words of one move or one sentence of the ending; nobody says as many in one breath. */
export const MOST_WORDS = 120;
/** Steps of one working. */
export const MOST_STEPS = 10_000;
/** Sentences of one ending. */
export const MOST_ENDINGS = 500;
/** Piles that one note may name. */
export const MOST_PILES = 500;
/** Numbers that one note may name. */
export const MOST_NUMBERS = 50;
/** Attempts to read, counted in tokens, before reading stops. */
export const MOST_WORK = 2_000_000;
/** Diagnostics of one kind of severity that are told one by one. */
export const MOST_TOLD = 200;
/** Sentences for which near ones are searched. */
export const MOST_SUGGESTED = 25;
