/** What the program says to a person, in one catalogue by room; the lowest room, it knows nothing of the others. */
package roundwright.wording;
