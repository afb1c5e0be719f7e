/** Planning on the desktop: lessons moved by hand and split again, dates, getting ready, planning the rest of a running group. */
package roundwright.desktop.planning;
