/**
 * The chart of a round: the trade's signs round a ring, each joined to the stitches below that it uses. Where everything stands
 * is worked out without Swing; painters draw it.
 */
package roundwright.desktop.chart;
