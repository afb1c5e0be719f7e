/** The window: its head, the strip, the pages, what lies over them, and the frame that holds all this. */
package roundwright.desktop.window;
