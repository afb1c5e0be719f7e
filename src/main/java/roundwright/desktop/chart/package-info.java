/** The chart of a round on the screen: it is painted, gone through step by step, and has a key. */
package roundwright.desktop.chart;
