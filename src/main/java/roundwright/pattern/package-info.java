/**
 * Patterns, parts and rounds; the steps of a round with its repeats written out; the arithmetic of a round and of a whole
 * part, and the mends of one that does not add up.
 */
package roundwright.pattern;
