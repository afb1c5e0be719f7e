/** One field that finds rounds, lessons, students and techniques. */
package roundwright.desktop.find;
