/** The verbs: they call exactly the code that the desktop calls, and alone with it speak to a person. */
package roundwright.command;
