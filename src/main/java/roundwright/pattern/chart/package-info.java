/**
 * The chart of a round: the trade's signs round a ring, each joined to the stitches below that it uses. Where everything stands, what the
 * signs look like and how the chart is told in words; screens and sheets draw it.
 */
package roundwright.pattern.chart;
