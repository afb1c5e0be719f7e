/** Starting the desktop: where things are kept, what is remembered, the window itself. */
package roundwright.desktop.start;
