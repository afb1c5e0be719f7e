package roundwright.sheet.markup;

/** A piece of a document: an element, text, or a drawing. */
public sealed interface Node permits Element, Text, Picture {}
