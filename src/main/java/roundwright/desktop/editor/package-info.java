/** The course's own text, to be edited: problems are marked as one types, and what to write instead is one key away. */
package roundwright.desktop.editor;
