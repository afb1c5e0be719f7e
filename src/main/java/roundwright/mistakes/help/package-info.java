/**
 * Who needs help, where, and with what: students who are stuck and why, rounds where many of a group go wrong, what to teach
 * again, and what the group will find hard next. Every claim comes as a sentence with its evidence, and none is made of what
 * chance alone would often do.
 */
package roundwright.mistakes.help;
