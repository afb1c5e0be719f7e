/**
 * The piece lying on its side above every page: a column a round, as high as its count, parts one after another, lessons below,
 * first techniques above, students where they are.
 */
package roundwright.desktop.strip;
