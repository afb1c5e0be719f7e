/** Drawings of the sheets as vectors: for documents, and as SVG. */
package roundwright.sheet.chart;
