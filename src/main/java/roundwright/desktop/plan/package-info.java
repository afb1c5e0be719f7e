/** The page on which a teacher plans: the lessons, the chosen round, the pattern's own text. */
package roundwright.desktop.plan;
