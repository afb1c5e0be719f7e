/** What the window asks a person for: small cards that lie over the page until they are answered or sent away. */
package roundwright.desktop.ask;
