/** The page that says who needs help first and why, where many go wrong, what to teach again, and what comes next. */
package roundwright.desktop.stuck;
