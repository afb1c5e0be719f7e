/** The window: the strip, the pages, and what they share. The only room that knows Swing. */
package roundwright.desktop;
