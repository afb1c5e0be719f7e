/** The page on which a teacher types the counts that students report, and reads what they say. */
package roundwright.desktop.counts;
