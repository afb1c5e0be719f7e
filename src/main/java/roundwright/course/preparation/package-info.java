/**
 * What a teacher gets ready: yarn by colour, tools and notions, samples, what has to be done before what, and the usual
 * cautions, each deferring to local rules and qualified people.
 */
package roundwright.course.preparation;
