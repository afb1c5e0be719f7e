/** What is shown while the file has no course in it: the ways to begin. */
package roundwright.desktop.welcome;
